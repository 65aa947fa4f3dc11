package pegbook.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;

/** Reads back what was printed. */
public final class PdfReader {
  private PdfReader() {}

  /** Everything on the pages of a PDF. */
  public static PrintedDocument read(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return read(document);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static PrintedDocument read(PDDocument document) throws IOException {
    TagTree tree = new TagTree(document);
    LetterShapes shapes = new LetterShapes();
    List<PrintedPage> pages = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      PageEngine engine = new PageEngine(page, tree, shapes);
      engine.processPage(page);
      pages.add(
          new PrintedPage(
              pages.size() + 1,
              boxOf(page.getMediaBox(), page.getMediaBox()),
              engine.runs(),
              engine.paths(),
              engine.drawings(),
              fieldsOn(page, document)));
    }
    List<PrintedDocument.Bookmark> bookmarks = new ArrayList<>();
    PDOutlineNode outline = document.getDocumentCatalog().getDocumentOutline();
    if (outline != null) {
      collect(outline, 1, document, bookmarks);
    }
    return new PrintedDocument(pages, bookmarks);
  }

  private static Box boxOf(PDRectangle rectangle, PDRectangle paper) {
    double left = rectangle.getLowerLeftX() - paper.getLowerLeftX();
    double bottom = rectangle.getLowerLeftY() - paper.getLowerLeftY();
    return new Box(
        left * PageEngine.MM,
        bottom * PageEngine.MM,
        (left + rectangle.getWidth()) * PageEngine.MM,
        (bottom + rectangle.getHeight()) * PageEngine.MM);
  }

  private static List<PrintedPage.Field> fieldsOn(PDPage page, PDDocument document)
      throws IOException {
    PDAcroForm form = document.getDocumentCatalog().getAcroForm();
    List<PrintedPage.Field> fields = new ArrayList<>();
    if (form == null) {
      return fields;
    }
    List<PDAnnotationWidget> here =
        page.getAnnotations().stream()
            .filter(PDAnnotationWidget.class::isInstance)
            .map(PDAnnotationWidget.class::cast)
            .toList();
    for (PDField field : form.getFieldTree()) {
      for (PDAnnotationWidget widget : field.getWidgets()) {
        if (here.stream().anyMatch(found -> found.getCOSObject() == widget.getCOSObject())) {
          fields.add(
              new PrintedPage.Field(
                  field.getFullyQualifiedName(),
                  Optional.ofNullable(field.getFieldType()).orElse(""),
                  boxOf(widget.getRectangle(), page.getMediaBox())));
        }
      }
    }
    return fields;
  }

  private static void collect(
      PDOutlineNode node, int level, PDDocument document, List<PrintedDocument.Bookmark> found)
      throws IOException {
    for (PDOutlineItem item : node.children()) {
      PDPage page = item.findDestinationPage(document);
      int number = page == null ? 0 : document.getPages().indexOf(page) + 1;
      found.add(new PrintedDocument.Bookmark(item.getTitle(), level, number));
      collect(item, level + 1, document, found);
    }
  }
}
