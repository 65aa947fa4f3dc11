package pegbook.testing;

import java.nio.file.Path;

/**
 * What every page of a document keeps to. Tolerances are of the reading back, not of the drawing:
 * half of what an eye sees on paper.
 *
 * @param leastType smallest type, the title strip included, in points
 * @param left margin in millimetres, kept free for filing
 * @param right margin in millimetres
 * @param top margin in millimetres
 * @param bottom margin in millimetres, the title strip's room included
 * @param edge border of the paper that many printers cannot print on, in millimetres
 */
public record Rules(
    double leastType, double left, double right, double top, double bottom, double edge) {
  /** Letters may lie this deep in one another, mm: outlines of round letters swell by less. */
  public static final double TOUCH = 0.1;

  /** Text may stick out of its clip this far, mm: anti-aliasing, rounding of boxes. */
  public static final double CUT = 0.15;

  /** Type may be this much smaller, points: sizes are rounded on their way into the PDF. */
  public static final double TYPE = 0.05;

  /** A line may run this far into a letter's box, mm. */
  public static final double CROSSING = 0.25;

  /** A page whose content ends above this part of the room is nearly empty. */
  public static final double LEAST_REACH = 0.15;

  /** Binder and review packet. */
  public static Rules binder() {
    return new Rules(8, 20, 11, 11, 26, 5);
  }

  /** Day sheets: read on a clipboard in the field. */
  public static Rules daySheet() {
    return new Rules(11, 20, 11, 11, 24, 5);
  }

  /** The rules for a file of a packet, by its name. */
  public static Rules of(Path file) {
    return file.getFileName().toString().matches("(day|pour)-.*") ? daySheet() : binder();
  }

  /** The room for content on a paper. */
  public Box room(Box paper) {
    return new Box(
        paper.left() + left, paper.bottom() + bottom, paper.right() - right, paper.top() - top);
  }
}
