package pegbook.testing;

import java.awt.geom.AffineTransform;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.apache.pdfbox.util.Matrix;

/**
 * Small PDFs made by hand, good and bad ones, to prove that the reading back sees what is there.
 */
final class TrialPdf {
  static final double POINTS = 72 / 25.4;

  private static final byte[] PRIVATE_MEANING =
      """
      /CIDInit /ProcSet findresource begin 12 dict begin begincmap
      /CMapName /Adobe-Identity-UCS def /CMapType 2 def
      1 begincodespacerange <0000> <ffff> endcodespacerange
      1 beginbfrange <0000> <00ff> <e000> endbfrange
      endcmap CMapName currentdict /CMap defineresource pop end end
      """
          .getBytes(StandardCharsets.US_ASCII);

  private final PDDocument document = new PDDocument();
  private final PDType0Font font;
  private final PDStructureTreeRoot tags = new PDStructureTreeRoot();
  private final PDDocumentOutline outline = new PDDocumentOutline();
  private PDPage page = new PDPage();
  private final Map<String, PDStructureNode> branches = new LinkedHashMap<>();
  private int marks;

  TrialPdf() throws IOException {
    font = PDType0Font.load(document, packetFont(), true);
    document.getDocumentCatalog().setStructureTreeRoot(tags);
    document.getDocumentCatalog().setDocumentOutline(outline);
    document.getDocumentCatalog().setAcroForm(new PDAcroForm(document));
    nextPage();
  }

  /** The packet's font as the packet uses it: a ligature would extract as nothing. */
  static TrueTypeFont packetFont() throws IOException {
    TrueTypeFont parsed = new TTFParser().parse(new RandomAccessReadBufferedFile(fontFile()));
    parsed.setEnableGsub(false);
    return parsed;
  }

  private static Path fontFile() {
    Path home = Path.of(System.getProperty("pegbook.home", "."));
    return home.resolve("templates/fonts/SourceSans3-Regular.ttf");
  }

  /** Something painted, in points. */
  interface Painting {
    void paint(PDPageContentStream content) throws IOException;
  }

  /** A new page of A4, content so far goes on the one before. */
  TrialPdf nextPage() {
    page = new PDPage(PDRectangle.A4);
    document.addPage(page);
    marks = 0;
    return this;
  }

  TrialPdf paint(Painting painting) throws IOException {
    try (var content =
        new PDPageContentStream(
            document, page, PDPageContentStream.AppendMode.APPEND, true, true)) {
      painting.paint(content);
    }
    return this;
  }

  /** Text at a place in mm. */
  TrialPdf text(double x, double y, double size, String text) throws IOException {
    return paint(content -> write(content, Matrix.getTranslateInstance(pt(x), pt(y)), size, text));
  }

  /** Text turned anticlockwise. */
  TrialPdf turned(double x, double y, double size, double degrees, String text) throws IOException {
    Matrix matrix = Matrix.getRotateInstance(Math.toRadians(degrees), pt(x), pt(y));
    return paint(content -> write(content, matrix, size, text));
  }

  /**
   * Text under a tag, or an artifact. A tag may stand under others, "Table/TBody/TR 2/TD": what the
   * path names before its end is made once, with the word before the space as its name.
   */
  TrialPdf tagged(String tag, double x, double y, String text) throws IOException {
    return paint(
        content -> {
          if (tag.equals("Artifact")) {
            content.beginMarkedContent(COSName.getPDFName(tag));
          } else {
            content.beginMarkedContent(COSName.P, mark(tag));
          }
          write(content, Matrix.getTranslateInstance(pt(x), pt(y)), 12, text);
          content.endMarkedContent();
        });
  }

  private PDPropertyList mark(String path) {
    int end = path.lastIndexOf('/');
    PDStructureNode parent = end < 0 ? tags : branch(path.substring(0, end));
    PDStructureElement element = new PDStructureElement(path.substring(end + 1), parent);
    element.setPage(page);
    element.getCOSObject().setInt(COSName.K, marks);
    parent.appendKid(element);
    COSDictionary properties = new COSDictionary();
    properties.setInt(COSName.MCID, marks++);
    return PDPropertyList.create(properties);
  }

  private PDStructureNode branch(String path) {
    if (branches.containsKey(path)) {
      return branches.get(path);
    }
    int end = path.lastIndexOf('/');
    PDStructureNode parent = end < 0 ? tags : branch(path.substring(0, end));
    String name = path.substring(end + 1).replaceFirst(" .*", "");
    PDStructureElement element = new PDStructureElement(name, parent);
    parent.appendKid(element);
    branches.put(path, element);
    return element;
  }

  void write(PDPageContentStream content, Matrix matrix, double size, String text)
      throws IOException {
    content.beginText();
    content.setFont(font, (float) size);
    content.setTextMatrix(matrix);
    content.showText(text);
    content.endText();
  }

  /** Text whose font says it means private characters. */
  TrialPdf meaningless(double x, double y, String text) throws IOException {
    PDType0Font odd = PDType0Font.load(document, Files.newInputStream(fontFile()), false);
    PDStream meaning = new PDStream(document, new ByteArrayInputStream(PRIVATE_MEANING));
    odd.getCOSObject().setItem(COSName.TO_UNICODE, meaning);
    return paint(
        content -> {
          content.beginText();
          content.setFont(odd, 10);
          content.newLineAtOffset(pt(x), pt(y));
          content.showText(text);
          content.endText();
        });
  }

  TrialPdf line(double x1, double y1, double x2, double y2) throws IOException {
    return paint(content -> stroke(content, pt(x1), pt(y1), pt(x2), pt(y2)));
  }

  static void stroke(PDPageContentStream content, float x1, float y1, float x2, float y2)
      throws IOException {
    content.moveTo(x1, y1);
    content.lineTo(x2, y2);
    content.stroke();
  }

  /**
   * A drawing, its own unit the millimetre.
   *
   * @param x left edge on the page, mm
   * @param y lower edge on the page, mm
   */
  TrialPdf drawing(double x, double y, double width, double height, Painting painting)
      throws IOException {
    var form = new PDAppearanceStream(document);
    form.setBBox(new PDRectangle((float) width, (float) height));
    form.setMatrix(AffineTransform.getScaleInstance(POINTS, POINTS));
    form.setResources(new PDResources());
    try (var content = new PDPageContentStream(document, form)) {
      painting.paint(content);
    }
    return paint(
        content -> {
          content.saveGraphicsState();
          content.transform(Matrix.getTranslateInstance(pt(x), pt(y)));
          content.drawForm(form);
          content.restoreGraphicsState();
        });
  }

  /** Text in a drawing, place in the drawing's millimetres. */
  void label(PDPageContentStream content, double x, double y, double size, String text)
      throws IOException {
    write(content, Matrix.getTranslateInstance((float) x, (float) y), size / POINTS, text);
  }

  TrialPdf field(String name, double x, double y, double width, double height) throws IOException {
    PDAcroForm form = document.getDocumentCatalog().getAcroForm();
    PDTextField field = new PDTextField(form);
    field.setPartialName(name);
    PDAnnotationWidget widget = field.getWidgets().get(0);
    widget.setRectangle(new PDRectangle(pt(x), pt(y), pt(width), pt(height)));
    widget.setPage(page);
    page.getAnnotations().add(widget);
    form.getFields().add(field);
    return this;
  }

  TrialPdf bookmark(String title) {
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(title);
    item.setDestination(page);
    outline.addLast(item);
    return this;
  }

  byte[] bytes() throws IOException {
    try (document) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  PrintedDocument read() throws IOException {
    return PdfReader.read(bytes());
  }

  List<Problem> problems(Rules rules) throws IOException {
    return PageCheck.problems(bytes(), rules);
  }

  static float pt(double mm) {
    return (float) (mm * POINTS);
  }
}
