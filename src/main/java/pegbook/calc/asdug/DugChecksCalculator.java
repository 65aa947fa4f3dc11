package pegbook.calc.asdug;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.asdug.AsDug.Row;
import pegbook.calc.asdug.DugChecks.Between;
import pegbook.calc.asdug.DugChecks.OffCentre;
import pegbook.calc.asdug.DugChecks.Room;
import pegbook.calc.asdug.DugChecks.Verdict;
import pegbook.figures.Bottom;
import pegbook.figures.Finding;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Swings;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;

/**
 * Holds holes that lie off their marks or have another width against load, steel, tube and
 * neighbours. Post, form and anchors are taken to stand on the true mark; the whole weight, the
 * concrete's too, is taken to stand off the middle of the bottom, which is on the careful side.
 */
public final class DugChecksCalculator {
  private static final double TIE = 1e-6;

  private final AsDug asDug;
  private final AsDugFormulas formulas;
  private final List<Working> workings = new ArrayList<>();

  private DugChecksCalculator(Job job, AsDug asDug) {
    this.asDug = asDug;
    this.formulas = new AsDugFormulas(job.heading().units());
  }

  /**
   * The checks.
   *
   * @param job its tape and its tolerance
   * @param asDug what was found
   * @param swings from which marks each mark is taped
   * @param bottoms what each footing presses with, its real width counted
   */
  public static DugChecks calculate(Job job, AsDug asDug, Swings swings, List<Bottom> bottoms) {
    DugChecksCalculator checks = new DugChecksCalculator(job, asDug);
    List<OffCentre> loads = new ArrayList<>();
    List<Room> rooms = new ArrayList<>();
    List<Between> betweens = new ArrayList<>();
    for (Row row : asDug.rows()) {
      bottoms.stream()
          .filter(bottom -> bottom.mark().equals(row.mark()))
          .findFirst()
          .flatMap(bottom -> checks.load(row, bottom))
          .ifPresent(loads::add);
      if (isElsewhere(row)) {
        checks.room(row).ifPresent(rooms::add);
        checks.between(row).ifPresent(betweens::add);
      }
    }
    NewTapes tapes = NewTapes.of(job, asDug, swings);
    checks.workings.addAll(tapes.workings());
    DugBearingLines lines = DugBearingLines.of(asDug, checks.formulas.bearingLine());
    checks.workings.addAll(lines.workings());
    List<Finding> findings = new ArrayList<>(lines.findings());
    findings.addAll(new DugChecksFindings(job, asDug, bottoms).of(loads, rooms, betweens));
    return new DugChecks(loads, rooms, betweens, tapes.tapes(), findings, checks.workings);
  }

  private static boolean isElsewhere(Row row) {
    Length wider = row.filled().diameter().minus(row.planned().diameter()).abs();
    return wider.isMoreThan(AsDugCalculator.TOLERANCE)
        || row.moved().isMoreThan(AsDugCalculator.TOLERANCE);
  }

  private Working work(Row row, Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, row.mark(), quantities);
    workings.add(working);
    return working;
  }

  /** A tube from the bottom carries its own concrete to its mark: nothing is off the middle. */
  private Optional<OffCentre> load(Row row, Bottom bottom) {
    if (!row.moved().isMoreThan(AsDugCalculator.TOLERANCE)
        || row.filled().tubeFromBottom().isPresent()) {
      return Optional.empty();
    }
    Length width = bottom.width();
    Length kern = work(row, formulas.kern(), width).asLength();
    boolean inside = row.moved().metres() <= kern.metres() * (1 + TIE);
    Optional<Pressure> edge =
        inside
            ? Optional.of(
                work(row, formulas.edgePressure(), bottom.pressure(), row.moved(), width)
                    .asPressure())
            : Optional.empty();
    return Optional.of(
        new OffCentre(
            row.mark(),
            row.moved(),
            width,
            kern,
            bottom.pressure(),
            edge,
            bottom.allowable(),
            edge.map(pressure -> verdict(pressure, bottom)).orElse(Verdict.OUTSIDE_KERN)));
  }

  private static Verdict verdict(Pressure edge, Bottom bottom) {
    return bottom
        .allowable()
        .map(
            most -> edge.pascals() <= most.pascals() * (1 + TIE) ? Verdict.WITHIN : Verdict.EXCEEDS)
        .orElse(Verdict.UNKNOWN);
  }

  private Optional<Room> room(Row row) {
    Hole hole = row.filled();
    Optional<Steel> steel = hole.steel().filter(any -> hole.tubeFromBottom().isEmpty());
    if (steel.isEmpty() && hole.tube().isEmpty()) {
      return Optional.empty();
    }
    Optional<Length> cover = steel.map(some -> cover(row, some));
    Optional<Length> beside =
        hole.tube()
            .map(
                tube ->
                    work(row, formulas.room(), hole.diameter(), tube.inside(), row.moved())
                        .asLength());
    return Optional.of(
        new Room(row.mark(), cover, steel.map(Steel::cover).orElse(Length.ZERO), beside));
  }

  private Length cover(Row row, Steel steel) {
    Length across =
        row.planned()
            .tube()
            .map(Tube::inside)
            .orElse(row.planned().diameter())
            .min(row.planned().diameter());
    Length cage = work(row, formulas.cage(), across, steel.cover()).asLength();
    return work(row, formulas.cover(), row.filled().diameter(), cage, row.moved()).asLength();
  }

  /** The hole whose edge is nearest, both as they were dug. */
  private Optional<Between> between(Row row) {
    Hole hole = row.filled();
    return asDug.holes().stream()
        .filter(other -> !other.mark().equals(hole.mark()))
        .min(Comparator.comparing(other -> soil(hole, other)))
        .map(
            other ->
                new Between(
                    row.mark(),
                    other.mark(),
                    work(
                            row,
                            formulas.between(),
                            hole.centre().distanceTo(other.centre()),
                            hole.diameter(),
                            other.diameter())
                        .asLength(),
                    soil(row.planned(), asDug.planned(other.mark()))));
  }

  private static Length soil(Hole hole, Hole other) {
    return hole.centre()
        .distanceTo(other.centre())
        .minus(hole.diameter().plus(other.diameter()).times(0.5));
  }
}
