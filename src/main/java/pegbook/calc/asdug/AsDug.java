package pegbook.calc.asdug;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.job.Field.Dug;
import pegbook.measure.Length;

/**
 * The holes as they were dug.
 *
 * @param planned every hole as it was planned
 * @param holes the same as they are to be filled: with the width, the place and the depth that were
 *     found, those that were not measured as planned
 * @param rows one for each hole that was measured, in the order of the marks
 */
public record AsDug(
    List<Hole> planned,
    List<Hole> holes,
    List<Row> rows,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public AsDug {
    planned = List.copyOf(planned);
    holes = List.copyOf(holes);
    rows = List.copyOf(rows);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** What a found depth asks for. */
  public enum Depth {
    /** Nobody measured it. */
    UNKNOWN,
    AS_PLANNED,
    /** The depth target is not reached: dig on. */
    SHALLOW,
    /** The target is reached; the layer of gravel is thinner than planned. */
    LESS_GRAVEL,
    /** Too deep, filled up with gravel, tamped. */
    MORE_GRAVEL,
    /** Too deep, filled up with concrete. */
    MORE_CONCRETE
  }

  /**
   * A hole that was measured.
   *
   * @param planned as it was planned
   * @param filled as it is to be filled
   * @param dug what was found
   * @param depth what its depth asks for
   * @param deeper than planned; below zero where it is less deep, none where nobody measured it
   * @param moved from the mark to the middle of the bottom
   */
  public record Row(
      Hole planned, Hole filled, Dug dug, Depth depth, Optional<Length> deeper, Length moved) {
    public String mark() {
      return planned.mark();
    }
  }

  /** A hole as it was planned. */
  Hole planned(String mark) {
    return planned.stream().filter(hole -> hole.mark().equals(mark)).findFirst().orElseThrow();
  }

  /** What was measured of a hole, where anything was. */
  public Optional<Row> row(String mark) {
    return rows.stream().filter(row -> row.mark().equals(mark)).findFirst();
  }
}
