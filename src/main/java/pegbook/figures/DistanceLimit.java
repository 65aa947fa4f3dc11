package pegbook.figures;

import java.util.List;
import pegbook.measure.Unit;
import pegbook.published.Citation;

/**
 * How much a good distance between two marks may differ from the plan: the error of its tape and
 * that of both places together, a number of times. Marks that are proved and marks that were
 * painted are judged by the same.
 */
public final class DistanceLimit {
  /** Testing for one error at a time. */
  public static final Citation TESTING = new Citation("baarda-1968", "");

  private DistanceLimit() {}

  /**
   * The formula: factor, standard deviation of the reading, standard deviation of the two places.
   *
   * @param id of the subject that uses it
   * @param unit of the lengths
   */
  public static Formula formula(String id, Unit unit) {
    return new Formula(
        id,
        "L = k · √(s² + p²)",
        List.of(
            new Symbol("k", "limit-factor", Unit.NONE),
            new Symbol("s", "reading-deviation", unit),
            new Symbol("p", "places-deviation", unit)),
        new Symbol("L", "difference-limit", unit),
        TESTING,
        "",
        x -> x[0] * Math.sqrt(x[1] * x[1] + x[2] * x[2]));
  }
}
