package pegbook.calc.asdug;

import java.util.List;
import java.util.Optional;
import pegbook.figures.DugSoFar;
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
 * @param soFar how far each hole was dug of which the bottom was reached, in the order of the marks
 */
public record AsDug(
    List<Hole> planned,
    List<Hole> holes,
    List<Row> rows,
    List<DugSoFar> soFar,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public AsDug {
    planned = List.copyOf(planned);
    holes = List.copyOf(holes);
    rows = List.copyOf(rows);
    soFar = List.copyOf(soFar);
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

  /** The holes as they are to be filled, where form and post stand: on their marks. */
  public List<Hole> onMarks() {
    return holes.stream()
        .map(
            hole ->
                hole.asDug(
                    planned(hole.mark()).centre(), hole.diameter(), hole.depth(), hole.gravel()))
        .toList();
  }

  /**
   * The holes as their steel is made for them: as deep to the concrete's underside as they were
   * found, all else as planned. Steel stands on its mark with its cover, or the hole is mended;
   * what gravel lies under it makes no other cage.
   */
  public List<Hole> forSteel() {
    return holes.stream()
        .map(
            hole -> {
              Hole plan = planned(hole.mark());
              return plan.asDug(plan.centre(), plan.diameter(), hole.depth(), plan.gravel());
            })
        .toList();
  }

  /** Marks of holes at which nothing is left to dig. */
  public List<String> dug() {
    return soFar.stream().filter(DugSoFar::isDug).map(DugSoFar::mark).toList();
  }

  /** What was measured of a hole, where anything was. */
  public Optional<Row> row(String mark) {
    return rows.stream().filter(row -> row.mark().equals(mark)).findFirst();
  }
}
