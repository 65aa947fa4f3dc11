package pegbook.job;

import java.util.Optional;
import pegbook.measure.Length;

/**
 * Reinforcement of one footing.
 *
 * @param bars number of vertical bars
 * @param size name of the bar, such as "#4" or "12 mm"
 * @param ties ties or hoops round the verticals, where there are any
 * @param cover concrete between the outermost steel and the earth or the form
 * @param foot how the lowest bars end
 * @param firstLift height of the concrete that is poured first, from its underside; absent: all in
 *     one pour
 */
public record Steel(
    int bars,
    String size,
    Optional<Ties> ties,
    Length cover,
    Foot foot,
    Optional<Length> firstLift) {

  /** How bars end at the bottom. */
  public enum Foot {
    STRAIGHT,
    /** In a standard hook of 90 degrees. */
    HOOKED
  }

  /**
   * Ties round the vertical bars.
   *
   * @param size name of the bar
   * @param spacing distance from tie to tie
   */
  public record Ties(String size, Length spacing) {}
}
