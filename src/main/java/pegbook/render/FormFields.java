package pegbook.render;

import com.openhtmltopdf.pdfboxout.PagePosition;
import com.openhtmltopdf.pdfboxout.PdfBoxAccessibilityHelper;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.Box;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDCheckBox;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.pdmodel.interactive.form.PDNonTerminalField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTerminalField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;

/**
 * Puts form fields over the boxes that a laid out document keeps for them. The boxes are printed by
 * the page; a field itself shows only what is filled in, a tick being drawn as lines.
 *
 * <p>Written here rather than left to the layout library, whose fields come in hash order, need a
 * symbol font and ask the reader to draw them.
 */
final class FormFields {
  private static final COSName TICKED = COSName.getPDFName("Yes");
  private static final COSName TEXT_FONT = COSName.HELV;

  private final PDDocument pdf;
  private final PDAcroForm form;
  private final Map<String, PDNonTerminalField> groups = new LinkedHashMap<>();
  private final Map<PDNonTerminalField, List<PDField>> children = new LinkedHashMap<>();

  private FormFields(PDDocument pdf) {
    this.pdf = pdf;
    this.form = new PDAcroForm(pdf);
  }

  /** Adds the fields of a document that the renderer has just painted. */
  static void add(List<FormPlaces.Place> places, PdfBoxRenderer renderer, String where)
      throws IOException {
    if (places.isEmpty()) {
      return;
    }
    Map<String, PagePosition<Box>> positions = new LinkedHashMap<>();
    renderer
        .findPagePositionsByID(Pattern.compile("^field-\\d+$"))
        .forEach(position -> positions.put(position.getId(), position));
    FormFields fields = new FormFields(renderer.getPdfDocument());
    fields.start();
    for (FormPlaces.Place place : places) {
      PagePosition<Box> position = positions.get(place.id());
      if (position == null) {
        throw new RenderException(where, "the field " + place.name() + " has no place on a page");
      }
      fields.add(place, position, where);
    }
    fields.finish();
  }

  private void start() {
    // Not embedded, and nothing printed uses it: the reader needs a font only to show typing. Made
    // by hand, because the library's own class searches the machine for a font to measure with.
    COSDictionary font = new COSDictionary();
    font.setItem(COSName.TYPE, COSName.FONT);
    font.setItem(COSName.SUBTYPE, COSName.TYPE1);
    font.setItem(COSName.BASE_FONT, COSName.getPDFName("Helvetica"));
    font.setItem(COSName.ENCODING, COSName.WIN_ANSI_ENCODING);
    COSDictionary fonts = new COSDictionary();
    fonts.setItem(TEXT_FONT, font);
    PDResources resources = new PDResources();
    resources.getCOSObject().setItem(COSName.FONT, fonts);
    form.setDefaultResources(resources);
    form.setDefaultAppearance("/" + TEXT_FONT.getName() + " 11 Tf 0 g");
    pdf.getDocumentCatalog().setAcroForm(form);
  }

  private void add(FormPlaces.Place place, PagePosition<Box> position, String where)
      throws IOException {
    PDTerminalField field = place.tick() ? new PDCheckBox(form) : new PDTextField(form);
    PDAnnotationWidget widget = field.getWidgets().get(0);
    PDPage page = pdf.getPage(position.getPageNo());
    widget.setRectangle(
        new PDRectangle(
            position.getX(), position.getY(), position.getWidth(), position.getHeight()));
    widget.setPage(page);
    widget.setPrinted(true);
    field.setAlternateFieldName(place.description());
    widget.setContents(place.description());
    name(field, place.name());
    show(place, widget);
    page.getAnnotations().add(widget);
    tag(widget, position.getElement(), place, where);
  }

  /** Hangs the field into the tree of names. */
  private void name(PDField field, String name) {
    int cut = name.lastIndexOf('.');
    field.setPartialName(name.substring(cut + 1));
    if (cut < 0) {
      form.getFields().add(field);
    } else {
      PDNonTerminalField group = group(name.substring(0, cut));
      field.getCOSObject().setItem(COSName.PARENT, group.getCOSObject());
      children.computeIfAbsent(group, fresh -> new ArrayList<>()).add(field);
    }
  }

  private PDNonTerminalField group(String name) {
    PDNonTerminalField known = groups.get(name);
    if (known != null) {
      return known;
    }
    PDNonTerminalField group = new PDNonTerminalField(form);
    groups.put(name, group);
    name(group, name);
    return group;
  }

  private void finish() {
    children.forEach((group, fields) -> group.setChildren(fields));
  }

  private void show(FormPlaces.Place place, PDAnnotationWidget widget) throws IOException {
    PDAppearanceDictionary appearance = new PDAppearanceDictionary();
    if (place.tick()) {
      COSDictionary states = new COSDictionary();
      states.setItem(TICKED, appearance(widget, true));
      states.setItem(COSName.Off, appearance(widget, false));
      appearance.getCOSObject().setItem(COSName.N, states);
      widget.setAppearanceState(COSName.Off.getName());
      widget.getCOSObject().setItem(COSName.V, COSName.Off);
    } else {
      appearance.setNormalAppearance(appearance(widget, false));
      widget.getCOSObject().setString(COSName.DA, "/" + TEXT_FONT.getName() + " 11 Tf 0 g");
    }
    widget.setAppearance(appearance);
  }

  private PDAppearanceStream appearance(PDAnnotationWidget widget, boolean ticked)
      throws IOException {
    float width = widget.getRectangle().getWidth();
    float height = widget.getRectangle().getHeight();
    PDAppearanceStream stream = new PDAppearanceStream(pdf);
    stream.setBBox(new PDRectangle(width, height));
    stream.setResources(new PDResources());
    try (PDPageContentStream lines = new PDPageContentStream(pdf, stream)) {
      if (ticked) {
        lines.setLineWidth(Math.min(width, height) / 8);
        lines.moveTo(width * 0.2f, height * 0.2f);
        lines.lineTo(width * 0.8f, height * 0.8f);
        lines.moveTo(width * 0.2f, height * 0.8f);
        lines.lineTo(width * 0.8f, height * 0.2f);
        lines.stroke();
      }
    }
    return stream;
  }

  /** The box's tag becomes a form tag that holds the field, and the field knows its tag. */
  private void tag(PDAnnotationWidget widget, Box box, FormPlaces.Place place, String where) {
    PDStructureElement tag = PdfBoxAccessibilityHelper.getStructualElementForBox(box);
    if (tag == null) {
      throw new RenderException(
          where, "the field " + place.name() + " was laid out but not tagged");
    }
    tag.setStructureType(StandardStructureTypes.FORM);
    PDObjectReference reference = new PDObjectReference();
    reference.setReferencedObject(widget);
    tag.appendKid(reference);
    PDStructureTreeRoot root = pdf.getDocumentCatalog().getStructureTreeRoot();
    int key = root.getParentTreeNextKey();
    COSBase numbers = root.getParentTree().getCOSObject().getDictionaryObject(COSName.NUMS);
    ((COSArray) numbers).add(COSInteger.get(key));
    ((COSArray) numbers).add(tag);
    widget.setStructParent(key);
    root.setParentTreeNextKey(key + 1);
  }
}
