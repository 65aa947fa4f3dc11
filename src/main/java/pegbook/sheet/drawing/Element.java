package pegbook.sheet.drawing;

import java.util.List;
import java.util.Optional;

/** One thing drawn. */
public sealed interface Element {

  /** A straight line. */
  record Line(Spot from, Spot to, Pen pen) implements Element {}

  /** Straight lines through the spots in order; closed joins the last to the first. */
  record Path(List<Spot> spots, boolean closed, Optional<Pen> pen, Optional<Ink> fill)
      implements Element {
    public Path {
      spots = List.copyOf(spots);
      if (spots.size() < 2) {
        throw new IllegalArgumentException("a path needs two spots");
      }
    }
  }

  /** A full circle. */
  record Circle(Spot centre, double radiusMm, Optional<Pen> pen, Optional<Ink> fill)
      implements Element {}

  /** Part of a circle, from an angle (degrees, anticlockwise from x) over a sweep (signed). */
  record Arc(Spot centre, double radiusMm, double fromDegrees, double sweepDegrees, Pen pen)
      implements Element {}

  /** Parallel lines filling a polygon: soil, concrete, gravel. */
  record Hatch(List<Spot> polygon, double angleDegrees, double spacingMm, Pen pen)
      implements Element {
    public Hatch {
      polygon = List.copyOf(polygon);
    }
  }

  /**
   * A line of text.
   *
   * @param at the place that the anchor names
   * @param text what is written, in characters of the packet's fonts
   * @param size height of type in points, at least 8
   * @param anchor which part of the text stands at the place
   * @param turnDegrees turn of the baseline, anticlockwise
   * @param bold true for the bold face
   * @param cleared true when what lies under the text is cleared in white first
   */
  record Label(
      Spot at,
      String text,
      double size,
      Anchor anchor,
      double turnDegrees,
      boolean bold,
      boolean cleared)
      implements Element {}

  /**
   * Which part of a line of text stands at its place: horizontally; vertically base line or middle.
   */
  enum Anchor {
    LEFT,
    CENTRE,
    RIGHT,
    LEFT_MIDDLE,
    CENTRE_MIDDLE,
    RIGHT_MIDDLE
  }
}
