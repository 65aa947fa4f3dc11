package pegbook.geometry.network;

import java.util.Optional;
import pegbook.geometry.Point;

/**
 * The supposition that one expected point, and no other, is not where it was expected.
 *
 * @param eastMetres how far east of its expected place it would be
 * @param northMetres how far north
 * @param seen in how many independent directions the distances see it move: 0, 1 or 2; with 1 the
 *     shift is the shortest that fits, and the point may have moved across that direction as well
 * @param spread how far the supposed shift may be off; absent unless seen in two directions
 * @param fall by how much the weighted sum of squares falls under this supposition; with nothing
 *     wrong, chi-squared with {@code seen} degrees of freedom
 */
public record Shift(
    double eastMetres, double northMetres, int seen, Optional<Spread> spread, double fall) {
  /** Where the point would be. */
  public Point from(Point expected) {
    return expected.plus(eastMetres, northMetres);
  }
}
