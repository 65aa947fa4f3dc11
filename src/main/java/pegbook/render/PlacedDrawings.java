package pegbook.render;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import pegbook.lettering.Lettering;
import pegbook.sheet.drawing.Drawing;

/**
 * The drawings of a document and where its templates place them. The layout sees a box of the
 * drawing's size; when it is painted, the drawing goes straight into the PDF, in true scale.
 */
final class PlacedDrawings implements FSObjectDrawerFactory, FSObjectDrawer {
  /** The type of the object element that stands for a drawing. */
  static final String TYPE = "application/x-pegbook-drawing";

  private final Map<String, Drawing> drawings = new LinkedHashMap<>();
  private final Map<String, List<Element>> asked = new LinkedHashMap<>();
  private final Map<String, Integer> painted = new LinkedHashMap<>();
  private final PDDocument pdf;
  private final DocumentFonts fonts;
  private final String where;

  PlacedDrawings(List<Drawing> drawings, PDDocument pdf, DocumentFonts fonts, String where) {
    this.pdf = pdf;
    this.fonts = fonts;
    this.where = where;
    for (Drawing drawing : drawings) {
      if (this.drawings.put(drawing.id(), drawing) != null) {
        throw new RenderException(where, "two drawings are called " + drawing.id());
      }
    }
  }

  /** Gives each place in the markup the size and the description of its drawing. */
  void prepare(Document markup) {
    for (Element place : Markup.elements(markup, "object")) {
      String id = place.getAttribute("data-drawing");
      Drawing drawing = drawings.get(id);
      if (drawing == null || !place.getAttribute("type").equals(TYPE)) {
        throw new RenderException(where, "<object>: there is no drawing \"" + id + '"');
      }
      asked.computeIfAbsent(id, any -> new ArrayList<>()).add(place);
      place.setAttribute("alt", drawing.description());
      place.setAttribute(
          "style",
          "width:"
              + Markup.millimetres(drawing.widthMm())
              + ";height:"
              + Markup.millimetres(drawing.heightMm()));
    }
  }

  /**
   * Passes when every drawing was painted where it was placed, once; one that stands in the other
   * form of its sheet, not at all.
   *
   * @param mayLeaveOut whether a drawing may have no place at all
   */
  void refuseUnpainted(boolean mayLeaveOut) {
    for (String id : drawings.keySet()) {
      List<Element> places = asked.getOrDefault(id, List.of());
      int times = painted.getOrDefault(id, 0);
      boolean leftOut = places.isEmpty() && mayLeaveOut;
      boolean once = places.size() == 1 && times == (SheetEnds.isHidden(places.get(0)) ? 0 : 1);
      if (!leftOut && !once) {
        throw new RenderException(
            where,
            "drawing "
                + id
                + " has "
                + places.size()
                + " places and was painted "
                + times
                + " times");
      }
    }
  }

  @Override
  public FSObjectDrawer createDrawer(Element place) {
    return this;
  }

  @Override
  public boolean isReplacedObject(Element place) {
    return true;
  }

  @Override
  public @Nullable Map<Shape, String> drawObject(
      Element place,
      double x,
      double y,
      double width,
      double height,
      OutputDevice device,
      RenderingContext context,
      int dotsPerPixel) {
    String id = place.getAttribute("data-drawing");
    Rectangle box = new Rectangle((int) x, (int) y, (int) width, (int) height);
    checkFits(id, box, context);
    painted.merge(id, 1, Integer::sum);
    ((PdfBoxOutputDevice) device).drawPdfAsImage(form(id), box, box.width, box.height);
    return null;
  }

  private void checkFits(String id, Rectangle box, RenderingContext context) {
    PageBox page = context.getPage();
    Rectangle room =
        new Rectangle(
            0, page.getTop(), page.getContentWidth(context), page.getBottom() - page.getTop());
    if (!room.contains(box)) {
      throw new RenderException(
          where, "drawing " + id + " does not fit the page: " + box + " is not inside " + room);
    }
  }

  private PDAppearanceStream form(String id) {
    Drawing drawing = drawings.get(id);
    if (drawing == null) {
      throw new RenderException(where, "there is no drawing \"" + id + '"');
    }
    PDAppearanceStream form = new PDAppearanceStream(pdf);
    form.setBBox(new PDRectangle((float) drawing.widthMm(), (float) drawing.heightMm()));
    form.setMatrix(
        AffineTransform.getScaleInstance(Lettering.POINTS_PER_MM, Lettering.POINTS_PER_MM));
    form.setResources(new PDResources());
    try (PDPageContentStream stream =
        new PDPageContentStream(
            pdf, form, form.getContentStream().createOutputStream(COSName.FLATE_DECODE))) {
      new DrawingPainter(stream, fonts).paint(drawing);
    } catch (IllegalArgumentException refused) {
      throw new RenderException(where, "drawing " + id + ": " + refused.getMessage(), refused);
    } catch (IOException failed) {
      throw new UncheckedIOException("drawing " + id, failed);
    }
    return form;
  }
}
