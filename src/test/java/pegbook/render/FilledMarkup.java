package pegbook.render;

import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Optional;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import pegbook.lettering.Face;

/** A document as it goes to the layout, but with the fonts' addresses, for another printer. */
public final class FilledMarkup {
  private FilledMarkup() {}

  /** The templates of the program's home. */
  public static TemplateFolder folder() {
    return TemplateFolder.of(
        Optional.empty(), Optional.ofNullable(System.getProperty("pegbook.home")).map(Path::of));
  }

  /** The HTML of a document; drawings are empty boxes of their size. */
  public static String of(PacketDocument document) {
    TemplateFolder folder = folder();
    Document markup = Markup.parse(new SheetTemplates(folder).fill(document), "bench");
    DocumentHead.complete(markup, document, fonts() + folder.text("style/packet.css"));
    try {
      Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
      writer.setOutputProperty(OutputKeys.METHOD, "html");
      StringWriter text = new StringWriter();
      writer.transform(new DOMSource(markup), new StreamResult(text));
      return "<!DOCTYPE html>" + text;
    } catch (TransformerException failed) {
      throw new IllegalStateException(failed);
    }
  }

  private static String fonts() {
    StringBuilder fonts = new StringBuilder();
    for (Face face : Face.values()) {
      fonts
          .append("@font-face { font-family: ")
          .append(face.name().startsWith("SYMBOLS") ? "\"Packet Symbols\"" : "Packet")
          .append("; font-weight: ")
          .append(face.name().endsWith("BOLD") ? 700 : 400)
          .append("; font-style: ")
          .append(face == Face.ITALIC ? "italic" : "normal")
          .append("; src: url(")
          .append(Path.of("templates", face.path()).toUri())
          .append("); }\n");
    }
    return fonts.toString();
  }
}
