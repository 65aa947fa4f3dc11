package pegbook.calc.asdug;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.asdug.AsDug.Depth;
import pegbook.calc.asdug.AsDug.Row;
import pegbook.figures.DugSoFar;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Field.Dug;
import pegbook.job.Field.Moved;
import pegbook.job.Job;
import pegbook.measure.Length;

/**
 * Takes the holes as they were dug in place of those that were planned, so that bearing, concrete,
 * bags and clearances follow what is there.
 *
 * <p>What is too deep is filled up with gravel where gravel lies under the concrete anyway, else
 * with concrete: common practice. A hole that has not reached its depth target is dug on, so it is
 * filled as planned. A bottom that is wider or narrower is taken for the whole hole.
 */
public final class AsDugCalculator {
  /** What no tape shows is no difference. */
  static final Length TOLERANCE = Length.ofMillimetres(0.5);

  private final AsDugFormulas formulas;
  private final List<Working> workings = new ArrayList<>();

  private AsDugCalculator(Job job) {
    this.formulas = new AsDugFormulas(job.heading().units());
  }

  /**
   * The holes as they are to be filled.
   *
   * @param job what was found
   * @param planned every hole as the depth targets have it
   */
  public static AsDug calculate(Job job, List<Hole> planned) {
    AsDugCalculator calculator = new AsDugCalculator(job);
    List<Hole> holes = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    List<DugSoFar> soFar = new ArrayList<>();
    for (Hole hole : planned) {
      Optional<Dug> dug = job.field().dug(hole.mark());
      Optional<Row> row = dug.filter(Dug::isMeasured).map(some -> calculator.row(hole, some));
      row.ifPresent(rows::add);
      dug.filter(Dug::isDown).map(some -> soFar(hole, some)).ifPresent(soFar::add);
      holes.add(row.map(Row::filled).orElse(hole));
    }
    return new AsDug(planned, holes, rows, soFar, AsDugFindings.of(job, rows), calculator.workings);
  }

  /** Where only the hours are known, it counts as dug to its end. */
  private static DugSoFar soFar(Hole hole, Dug dug) {
    return new DugSoFar(
        hole.mark(), dug.depth().filter(found -> depth(hole, dug.depth()) == Depth.SHALLOW));
  }

  private Row row(Hole hole, Dug dug) {
    Optional<Length> deeper = dug.depth().map(found -> deeper(hole, found));
    Depth depth = depth(hole, dug.depth());
    Length moved = dug.movedBy().map(by -> moved(hole, by)).orElse(Length.ZERO);
    return new Row(hole, filled(hole, dug, depth), dug, depth, deeper, moved);
  }

  private Length deeper(Hole hole, Length found) {
    return keep(Working.of(formulas.deeper(), hole.mark(), found, hole.dug())).asLength();
  }

  private Length moved(Hole hole, Moved by) {
    return keep(Working.of(formulas.moved(), hole.mark(), by.east(), by.north())).asLength();
  }

  private Working keep(Working working) {
    workings.add(working);
    return working;
  }

  private static Depth depth(Hole hole, Optional<Length> found) {
    if (found.isEmpty()) {
      return Depth.UNKNOWN;
    }
    if (found.get().plus(TOLERANCE).isLessThan(hole.depth())) {
      return Depth.SHALLOW;
    }
    if (found.get().plus(TOLERANCE).isLessThan(hole.dug())) {
      return Depth.LESS_GRAVEL;
    }
    if (!found.get().minus(TOLERANCE).isMoreThan(hole.dug())) {
      return Depth.AS_PLANNED;
    }
    return hole.gravel().isMoreThan(Length.ZERO) ? Depth.MORE_GRAVEL : Depth.MORE_CONCRETE;
  }

  private static Hole filled(Hole hole, Dug dug, Depth depth) {
    Length found = dug.depth().orElse(hole.dug());
    boolean gravel = depth == Depth.MORE_GRAVEL || depth == Depth.LESS_GRAVEL;
    Moved by = dug.movedBy().orElse(new Moved(Length.ZERO, Length.ZERO));
    return hole.asDug(
        hole.centre().plus(by.east().metres(), by.north().metres()),
        dug.diameter().orElse(hole.diameter()),
        depth == Depth.MORE_CONCRETE ? found : hole.depth(),
        gravel ? found.minus(hole.depth()).max(Length.ZERO) : hole.gravel());
  }
}
