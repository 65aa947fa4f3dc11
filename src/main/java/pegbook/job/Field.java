package pegbook.job;

import java.util.List;
import pegbook.measure.Length;

/**
 * What was really done on the ground.
 *
 * @param marked distances taped between marks once they were painted
 */
public record Field(List<Taped> marked) {
  /** Nothing yet. */
  public static final Field NOTHING = new Field(List.of());

  public Field {
    marked = List.copyOf(marked);
  }

  /**
   * A level distance between two marks as it was read.
   *
   * @param from one mark
   * @param to the other
   * @param tape the reading
   */
  public record Taped(String from, String to, Length tape) {}
}
