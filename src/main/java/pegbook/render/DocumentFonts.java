package pegbook.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import pegbook.lettering.Face;
import pegbook.lettering.Faces;

/** The fonts of one document, each embedded once, for running text and drawings alike. */
final class DocumentFonts {
  private final PDDocument document;
  private final Faces faces;
  private final Map<Face, PDFont> embedded = new EnumMap<>(Face.class);

  DocumentFonts(PDDocument document, Faces faces) {
    this.document = document;
    this.faces = faces;
  }

  Faces faces() {
    return faces;
  }

  PDFont font(Face face) {
    return embedded.computeIfAbsent(face, this::embed);
  }

  private PDFont embed(Face face) {
    try {
      return PDType0Font.load(document, faces.font(face), true);
    } catch (IOException failed) {
      throw new UncheckedIOException(face.path(), failed);
    }
  }
}
