package pegbook.render;

import java.util.List;
import org.apache.pdfbox.util.Matrix;
import pegbook.lettering.Faces;
import pegbook.lettering.FontLettering;
import pegbook.lettering.Lettering;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;

/**
 * Where a line of text stands.
 *
 * @param matrix moves the text's own frame (origin at the start of its base line) onto the drawing
 * @param ground corners of the patch that is cleared for it
 */
record LabelPlace(Matrix matrix, List<Spot> ground) {
  /** White left round a cleared text. */
  private static final double MARGIN_MM = 0.4;

  static LabelPlace of(Element.Label label, Faces faces) {
    double width = new FontLettering(faces).widthMm(label.text(), label.size(), label.bold());
    double sizeMm = label.size() / Lettering.POINTS_PER_MM;
    double left =
        switch (label.anchor()) {
          case LEFT, LEFT_MIDDLE -> 0;
          case CENTRE, CENTRE_MIDDLE -> -width / 2;
          case RIGHT, RIGHT_MIDDLE -> -width;
        };
    double base =
        switch (label.anchor()) {
          case LEFT, CENTRE, RIGHT -> 0;
          case LEFT_MIDDLE, CENTRE_MIDDLE, RIGHT_MIDDLE -> -Lettering.CAPITAL_HEIGHT / 2 * sizeMm;
        };
    Turn turn = Turn.of(label);
    Spot start = turn.place(left, base);
    double low = base - Lettering.DESCENT * sizeMm - MARGIN_MM;
    double high = base + Lettering.ASCENT * sizeMm + MARGIN_MM;
    double right = left + width + MARGIN_MM;
    return new LabelPlace(
        new Matrix(
            (float) turn.cosine,
            (float) turn.sine,
            (float) -turn.sine,
            (float) turn.cosine,
            (float) start.x(),
            (float) start.y()),
        List.of(
            turn.place(left - MARGIN_MM, low),
            turn.place(right, low),
            turn.place(right, high),
            turn.place(left - MARGIN_MM, high)));
  }

  /** A turn about the label's place. */
  private record Turn(Spot about, double cosine, double sine) {
    static Turn of(Element.Label label) {
      double radians = StrictMath.toRadians(label.turnDegrees());
      return new Turn(label.at(), StrictMath.cos(radians), StrictMath.sin(radians));
    }

    Spot place(double along, double across) {
      return new Spot(
          about.x() + along * cosine - across * sine, about.y() + along * sine + across * cosine);
    }
  }
}
