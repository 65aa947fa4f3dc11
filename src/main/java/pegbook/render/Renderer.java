package pegbook.render;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.logging.Level;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.transform.TransformerFactory;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.w3c.dom.Document;
import pegbook.lettering.Face;
import pegbook.lettering.Faces;
import pegbook.lettering.FontLettering;

/**
 * Prints documents: fills their templates, lays the pages out, paints the drawings, and writes a
 * tagged PDF that conforms to PDF/UA-1 and PDF/A-2a.
 *
 * <p>Build one for a batch: it parses each template and each font once. May be shared by threads.
 */
public final class Renderer {
  private static final String FAMILY = "Packet";
  private static final String SYMBOLS = "Packet Symbols";

  private static final String STYLE = "style/packet.css";

  /** What the layout complains of in a style sheet. */
  private static final Pattern OF_STYLE =
      Pattern.compile("\\(#inline_style_1\\) (.*?) at line (\\d+)");

  /**
   * Objects of a PDF that are compressed together. More make smaller files that are read back
   * faster; a reader has to unpack all of them to show the first page.
   */
  private static final int OBJECTS_TOGETHER = 2000;

  private final TemplateFolder folder;
  private final Faces faces;
  private final FontLettering lettering;
  private final SheetTemplates templates;
  private final String style;
  private final byte[] colours = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

  static {
    XRLog.setLoggerImpl(new Silence());
    // Java's own writer of XML: what else stands on the class path must not change a packet's
    // bytes, and looking for it takes longer than the writing.
    System.setProperty(
        "javax.xml.transform.TransformerFactory",
        TransformerFactory.newDefaultInstance().getClass().getName());
  }

  /**
   * A renderer that prints with the files of a folder.
   *
   * @param faces the packet's fonts, the same with which its labels were measured
   * @throws RenderException when the style sheet writes what no font can print
   */
  public Renderer(TemplateFolder folder, Faces faces) {
    this.folder = folder;
    this.faces = faces;
    this.lettering = new FontLettering(faces);
    this.templates = new SheetTemplates(folder);
    this.style = folder.text(STYLE);
    CharacterRules.checkStyle(style, STYLE, lettering);
  }

  /**
   * The bytes of a PDF; the same for the same document and the same files.
   *
   * @throws RenderException when a template is wrong, or anything would not be printed as meant: an
   *     unknown style, a character that no font has, a drawing that is missing or does not fit
   */
  public byte[] render(PacketDocument document) {
    return print(document).bytes();
  }

  /** As {@link #render}, and counts the pages. */
  public Printed print(PacketDocument document) {
    String where = document.template() + ".html";
    Document markup = Markup.parse(templates.fill(document), where);
    MarkupRules.check(markup, where);
    CharacterRules.check(markup, where, lettering);
    List<FormPlaces.Place> fields = FormPlaces.take(markup, where);
    DocumentHead.complete(markup, document, style);
    try (Complaints complaints = Complaints.listen();
        PDDocument pdf = new PDDocument()) {
      DocumentFonts fonts = new DocumentFonts(pdf, faces);
      PlacedDrawings drawings = new PlacedDrawings(document.drawings(), pdf, fonts, where);
      drawings.prepare(markup);
      try (PdfBoxRenderer layout = laidOut(markup, pdf, fonts, drawings)) {
        layout.createPDFWithoutClosing();
        FormFields.add(fields, layout, where);
      }
      DocumentMark.set(pdf, document);
      SmallObjects.inline(pdf);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      pdf.save(bytes, new CompressParameters(OBJECTS_TOGETHER));
      complaints.refuse(where);
      drawings.refuseUnpainted(folder.isChosen());
      return new Printed(bytes.toByteArray(), pdf.getNumberOfPages());
    } catch (IOException failed) {
      throw new UncheckedIOException(where, failed);
    }
  }

  /**
   * Lays the document out; where the ends of its sheets can be mended, these alone again and again,
   * and then the whole once more.
   */
  private PdfBoxRenderer laidOut(
      Document markup, PDDocument pdf, DocumentFonts fonts, PlacedDrawings drawings) {
    SheetEnds ends = new SheetEnds(markup);
    for (int time = 1; ; time++) {
      PdfBoxRenderer layout = layout(markup, pdf, fonts, drawings);
      layout.layout();
      boolean isLast = time >= SheetEnds.MOST_TIMES || !ends.mend(layout.getRootBox());
      if (isLast && ends.isWhole()) {
        return layout;
      }
      layout.close();
      if (isLast) {
        ends.showAll();
      }
    }
  }

  private PdfBoxRenderer layout(
      Document markup, PDDocument pdf, DocumentFonts fonts, PlacedDrawings drawings) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePDDocument(pdf);
    builder.withW3cDocument(markup, "");
    builder.usePdfUaAccessibility(true);
    builder.usePdfAConformance(PdfAConformance.PDFA_2_A);
    builder.useColorProfile(colours);
    builder.useObjectDrawerFactory(drawings);
    builder.usePageSupplier(new TaggedPages());
    builder.withDiagnosticConsumer(Renderer::hear);
    for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl(
          (address, type) -> {
            Complaints.heard("outside address " + address);
            return false;
          },
          when);
    }
    use(builder, fonts, Face.REGULAR, FAMILY, 400, FontStyle.NORMAL);
    use(builder, fonts, Face.BOLD, FAMILY, 700, FontStyle.NORMAL);
    use(builder, fonts, Face.ITALIC, FAMILY, 400, FontStyle.ITALIC);
    use(builder, fonts, Face.SYMBOLS, SYMBOLS, 400, FontStyle.NORMAL);
    use(builder, fonts, Face.SYMBOLS_BOLD, SYMBOLS, 700, FontStyle.NORMAL);
    return builder.buildPdfRenderer();
  }

  private static void use(
      PdfRendererBuilder builder,
      DocumentFonts fonts,
      Face face,
      String family,
      int weight,
      FontStyle style) {
    builder.useFont(new LazyFont(fonts, face), family, weight, style, true);
  }

  private static void hear(Diagnostic diagnostic) {
    if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
      Complaints.heard(
          OF_STYLE.matcher(diagnostic.getFormattedMessage()).replaceAll(Renderer::placed));
    }
  }

  /** The layout counts the lines of the style sheet from nought, and does not know its name. */
  private static String placed(MatchResult complaint) {
    int line = Integer.parseInt(complaint.group(2)) + 1;
    return Matcher.quoteReplacement(STYLE + ":" + line + ": " + complaint.group(1));
  }

  /** Embeds a font when the layout first asks for it. */
  private static final class LazyFont extends PDFontSupplier {
    private final DocumentFonts fonts;
    private final Face face;

    @SuppressWarnings("NullAway")
    LazyFont(DocumentFonts fonts, Face face) {
      super(null);
      this.fonts = fonts;
      this.face = face;
    }

    @Override
    public PDFont supply() {
      return fonts.font(face);
    }
  }
}
