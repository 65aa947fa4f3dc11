package pegbook.calc.bearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.bearing.Bearing.Check;
import pegbook.calc.bearing.Bearing.Footing;
import pegbook.calc.bearing.Bearing.Needed;
import pegbook.calc.bearing.Bearing.Verdict;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.MarkRuns;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.UnitWeight;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.measure.UnitSystem;
import pegbook.published.SoilWeight;

/** Holds footings that are alike against the ground, and keeps the steps. */
final class FootingCheck {
  /** A pressure this little over the allowable one, as a share of it, lies on it. */
  private static final double TIE = 1e-6;

  private final Job job;
  private final Optional<Allowable> allowable;
  private final BearingFormulas formulas;
  private final Hole hole;
  private final List<String> marks;
  private final Force carried;
  private final List<Working> workings = new ArrayList<>();

  /**
   * Footings of holes that are alike and carry the same.
   *
   * @param carried by each of them
   */
  FootingCheck(Job job, Optional<Allowable> allowable, List<Hole> holes, Force carried) {
    this.job = job;
    this.allowable = allowable;
    this.formulas = new BearingFormulas(job.heading().units());
    this.hole = holes.get(0);
    this.marks = holes.stream().map(Hole::mark).toList();
    this.carried = carried;
  }

  /** The steps, once {@link #footings()} was asked. */
  List<Working> workings() {
    return List.copyOf(workings);
  }

  /** One footing for each of the holes. */
  List<Footing> footings() {
    Length standing = hole.standing();
    Force own = ownWeight();
    Area area = work(formulas.contactArea(), standing).asArea();
    boolean gross = allowable.map(Allowable::gross).orElse(true);
    Pressure pressure =
        (gross
                ? work(formulas.grossPressure(), carried, own, area)
                : work(formulas.netPressure(), carried, area))
            .asPressure();
    Optional<Check> check = allowable.map(allowed -> check(allowed, own, area, pressure));
    return marks.stream()
        .map(mark -> new Footing(mark, hole.kind(), carried, own, standing, area, pressure, check))
        .toList();
  }

  /** Concrete part by part, and the soil that lies on a bell or a pad. */
  private Force ownWeight() {
    Force shaft =
        work(formulas.ownWeight(), hole.shaft(), hole.shaftDepth(), hole.formAbove(), hole.column())
            .asForce();
    if (!hole.widenings().isAny()) {
      return shaft;
    }
    SoilWeight soil =
        SoilWeight.find(job.ground().soil().id(), job.ground().unitWeight().map(UnitWeight::value));
    return work(
            new WidenedFormulas(job.heading().units()).ownWeight(soil.citation()),
            shaft,
            hole.bottomVolume(),
            hole.widenings().capVolume(),
            soil.bank(),
            hole.standing(),
            hole.depth(),
            hole.shaft(),
            hole.shaftDepth())
        .asForce();
  }

  private Check check(Allowable allowed, Force own, Area area, Pressure pressure) {
    Pressure value = allowed.value();
    Force mayCarry =
        (allowed.gross()
                ? work(formulas.grossMayCarry(), value, area, own)
                : work(formulas.netMayCarry(), value, area))
            .asForce();
    boolean within = pressure.pascals() <= value.pascals() * (1 + TIE);
    Optional<Needed> needed = neededArea(allowed).map(some -> needed(some, value));
    return new Check(mayCarry, needed, verdict(within, needed));
  }

  private Verdict verdict(boolean within, Optional<Needed> needed) {
    if (!within) {
      return needed.isPresent() ? Verdict.EXCEEDS : Verdict.NO_WIDTH;
    }
    Length wanted = needed.map(Needed::decided).orElse(Length.ZERO);
    return wanted.isMoreThan(hole.standing().times(1 + TIE)) ? Verdict.NARROW : Verdict.WITHIN;
  }

  /** Nothing where the footing carries nothing, or where its own weight uses up the pressure. */
  private Optional<Area> neededArea(Allowable allowed) {
    if (!allowed.gross()) {
      return carried.isMoreThan(Force.ZERO)
          ? Optional.of(work(formulas.neededNetArea(), carried, allowed.value()).asArea())
          : Optional.empty();
    }
    boolean widensAbove =
        !hole.widenings().isAny() && (hole.tube().isEmpty() || hole.tubeFromBottom().isPresent());
    Force above = widensAbove ? Force.ZERO : weightAbove();
    Length widens = widensAbove ? hole.depth().plus(hole.top()) : hole.depth();
    Working area =
        Working.of(formulas.neededArea(), subject(), carried, above, allowed.value(), widens);
    if (!carried.plus(above).isMoreThan(Force.ZERO) || !(area.result() > 0)) {
      return Optional.empty();
    }
    workings.add(area);
    return Optional.of(area.asArea());
  }

  /** Of what stands above the ground, a cap with it. */
  private Force weightAbove() {
    Force column = work(formulas.shaft(), hole.formAbove(), hole.column()).asForce();
    return hole.widenings().cap().isEmpty()
        ? column
        : work(
                new WidenedFormulas(job.heading().units()).withCap(),
                column,
                hole.widenings().capVolume())
            .asForce();
  }

  private Needed needed(Area area, Pressure allowed) {
    Length step = step(job.heading().units());
    Length diameter = work(formulas.round(), area, step).asLength();
    Optional<Length> byGross =
        hole.kind() == MarkKind.SUPPORT
            ? Optional.of(work(formulas.roundByGross(), carried, allowed, step, least()).asLength())
            : Optional.empty();
    return new Needed(area, diameter, byGross);
  }

  /** Sizes are set to whole inches, or to 10 mm. */
  static Length step(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? Length.ofInches(1) : Length.ofMillimetres(10);
  }

  /** The smallest footing of the table that goes by gross pressure: 14 in, set up to 360 mm. */
  private Length least() {
    return job.heading().units() == UnitSystem.IMPERIAL
        ? Length.ofInches(14)
        : Length.ofMillimetres(360);
  }

  private String subject() {
    return MarkRuns.brief(marks);
  }

  private Working work(Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, subject(), quantities);
    workings.add(working);
    return working;
  }
}
