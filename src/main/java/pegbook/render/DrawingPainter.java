package pegbook.render;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import pegbook.lettering.Face;
import pegbook.lettering.Faces;
import pegbook.lettering.Lettering;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** Paints a drawing's elements into a content stream whose unit is the millimetre. */
final class DrawingPainter {
  private final PDPageContentStream page;
  private final DocumentFonts fonts;

  DrawingPainter(PDPageContentStream page, DocumentFonts fonts) {
    this.page = page;
    this.fonts = fonts;
  }

  void paint(Drawing drawing) throws IOException {
    page.setLineJoinStyle(1);
    for (Element element : drawing.elements()) {
      paint(element);
    }
  }

  private void paint(Element element) throws IOException {
    if (element instanceof Element.Line line) {
      stroke(line.from(), line.to(), line.pen());
    } else if (element instanceof Element.Path path) {
      prepare(path.pen(), path.fill());
      trace(path.spots(), path.closed());
      finish(path.pen(), path.fill());
    } else if (element instanceof Element.Circle circle) {
      prepare(circle.pen(), circle.fill());
      trace(Curves.arc(circle.centre(), circle.radiusMm(), 0, 360));
      page.closePath();
      finish(circle.pen(), circle.fill());
    } else if (element instanceof Element.Arc arc) {
      prepare(Optional.of(arc.pen()), Optional.empty());
      trace(Curves.arc(arc.centre(), arc.radiusMm(), arc.fromDegrees(), arc.sweepDegrees()));
      page.stroke();
    } else if (element instanceof Element.Hatch hatch) {
      for (Hatching.Stroke stroke : Hatching.strokes(hatch)) {
        stroke(stroke.from(), stroke.to(), hatch.pen());
      }
    } else if (element instanceof Element.Label label) {
      write(label);
    } else {
      throw new IllegalArgumentException("an element that cannot be painted: " + element);
    }
  }

  private void stroke(Spot from, Spot to, Pen pen) throws IOException {
    prepare(Optional.of(pen), Optional.empty());
    trace(List.of(from, to), false);
    page.stroke();
  }

  /** Takes up pen and ink: a PDF allows it before an outline is begun, not between. */
  private void prepare(Optional<Pen> pen, Optional<Ink> fill) throws IOException {
    if (fill.isPresent()) {
      page.setNonStrokingColor(grey(fill.get()));
    }
    if (pen.isPresent()) {
      page.setStrokingColor(grey(pen.get().ink()));
      page.setLineWidth((float) pen.get().widthMm());
      page.setLineDashPattern(dashes(pen.get()), 0);
    }
  }

  private void trace(List<Spot> spots, boolean closed) throws IOException {
    moveTo(spots.get(0));
    for (Spot spot : spots.subList(1, spots.size())) {
      page.lineTo((float) spot.x(), (float) spot.y());
    }
    if (closed) {
      page.closePath();
    }
  }

  private void trace(List<Curves.Piece> pieces) throws IOException {
    moveTo(pieces.get(0).from());
    for (Curves.Piece piece : pieces) {
      page.curveTo(
          (float) piece.leaving().x(),
          (float) piece.leaving().y(),
          (float) piece.arriving().x(),
          (float) piece.arriving().y(),
          (float) piece.to().x(),
          (float) piece.to().y());
    }
  }

  private void moveTo(Spot spot) throws IOException {
    page.moveTo((float) spot.x(), (float) spot.y());
  }

  private void finish(Optional<Pen> pen, Optional<Ink> fill) throws IOException {
    if (pen.isPresent() && fill.isPresent()) {
      page.fillAndStroke();
    } else if (pen.isPresent()) {
      page.stroke();
    } else if (fill.isPresent()) {
      page.fill();
    } else {
      throw new IllegalArgumentException("an outline with neither pen nor fill");
    }
  }

  /** Lengths of dashes and gaps in multiples of the line's width, after ISO 128-2 table 2. */
  private static float[] dashes(Pen pen) {
    float width = (float) pen.widthMm();
    return switch (pen.pattern()) {
      case SOLID -> new float[0];
      case DASHED -> new float[] {12 * width, 3 * width};
      case DOTTED -> new float[] {width, 3 * width};
      case CENTRE -> new float[] {24 * width, 3 * width, width, 3 * width};
      case BOUNDARY -> new float[] {24 * width, 3 * width, width, 3 * width, width, 3 * width};
    };
  }

  private static float grey(Ink ink) {
    return switch (ink) {
      case BLACK -> 0;
      case GREY -> 0.5f;
      case LIGHT -> 0.87f;
      case WHITE -> 1;
    };
  }

  private void write(Element.Label label) throws IOException {
    Face face = label.bold() ? Face.BOLD : Face.REGULAR;
    List<Faces.Run> runs = fonts.faces().runs(label.text(), face);
    LabelPlace place = LabelPlace.of(label, fonts.faces());
    if (label.cleared()) {
      prepare(Optional.empty(), Optional.of(Ink.WHITE));
      trace(place.ground(), true);
      page.fill();
    }
    page.setNonStrokingColor(grey(Ink.BLACK));
    page.beginText();
    page.setTextMatrix(place.matrix());
    for (Faces.Run run : runs) {
      page.setFont(fonts.font(run.face()), (float) (label.size() / Lettering.POINTS_PER_MM));
      page.showText(run.text());
    }
    page.endText();
  }
}
