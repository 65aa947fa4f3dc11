package pegbook.job;

import java.util.List;
import pegbook.measure.Duration;
import pegbook.measure.Length;

/**
 * What was really done on the ground.
 *
 * @param marked distances taped between marks once they were painted
 * @param dug holes that were dug, with the time they took
 */
public record Field(List<Taped> marked, List<Dug> dug) {
  /** Nothing yet. */
  public static final Field NOTHING = new Field(List.of(), List.of());

  public Field {
    marked = List.copyOf(marked);
    dug = List.copyOf(dug);
  }

  /**
   * A level distance between two marks as it was read.
   *
   * @param from one mark
   * @param to the other
   * @param tape the reading
   */
  public record Taped(String from, String to, Length tape) {}

  /**
   * A hole that was dug.
   *
   * @param hole its mark
   * @param hours person-hours that digging it took, cleaning and measuring included, carting not
   */
  public record Dug(String hole, Duration hours) {}
}
