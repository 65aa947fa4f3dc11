package pegbook.calc.frostgrip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.frostgrip.FrostGrip.Footing;
import pegbook.calc.frostgrip.FrostGrip.Grip;
import pegbook.calc.frostgrip.FrostGrip.Verdict;
import pegbook.calc.frostgrip.FrostGrip.Water;
import pegbook.calc.frostgrip.FrostGrip.WindLift;
import pegbook.figures.Argument;
import pegbook.figures.CombinedLoad;
import pegbook.figures.Finding;
import pegbook.figures.Formula;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.MarkRuns;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.AllowablePressure;
import pegbook.job.Frost;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.job.Side;
import pegbook.job.Widenings;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.FrostSoil;
import pegbook.published.FrostSoil.Susceptibility;
import pegbook.published.SoilBearing;

/**
 * Holds what lifts footings against what holds them.
 *
 * <p>The soil decides first, then the water and what is round the concrete: where the soil drains,
 * or a sleeve or granular backfill keeps the frost off, there is no figure of grip. Where there is
 * one it is a range, of the printed mean stress and a higher one over the whole frozen side.
 */
public final class FrostGripCalculator {
  /** Water this far under the frost feeds it. */
  private static final Length FEEDS = Length.ofFeet(5);

  private final Job job;
  private final List<CombinedLoad> loads;
  private final Length estimate;
  private final FrostGripFormulas formulas;
  private final Susceptibility soil;
  private final Optional<Pressure> allowed;
  private final List<FrostSleeve> sleeves = new ArrayList<>();
  private final List<Need> needs = new ArrayList<>();
  private final List<Working> workings = new ArrayList<>();

  private FrostGripCalculator(Job job, List<CombinedLoad> loads, Optional<Length> estimate) {
    this.job = job;
    this.loads = loads;
    this.estimate = estimate.orElse(Length.ZERO);
    this.formulas = new FrostGripFormulas(job.heading().units());
    String name = job.ground().soil().id();
    this.soil = FrostSoil.find(name).susceptibility();
    this.allowed =
        job.ground()
            .allowablePressure()
            .map(AllowablePressure::value)
            .or(() -> SoilBearing.find(name).map(SoilBearing::pressure));
  }

  /**
   * Holds lift against weight and anchorage.
   *
   * @param job the job: soil, water, frost, wind, what is round the concrete
   * @param holes every hole with its depth
   * @param loads one for each support
   * @param estimate how deep frost may go, where there is an estimate
   */
  public static FrostGrip calculate(
      Job job, List<Hole> holes, List<CombinedLoad> loads, Optional<Length> estimate) {
    return new FrostGripCalculator(job, loads, estimate).hold(holes);
  }

  private FrostGrip hold(List<Hole> holes) {
    List<Footing> footings = new ArrayList<>();
    groups(holes).forEach((alike, group) -> footings.addAll(footings(group, alike)));
    List<String> order = holes.stream().map(Hole::mark).toList();
    footings.sort(Comparator.comparing(footing -> order.indexOf(footing.mark())));
    List<WindLift> lifts = new WindLifts(job, loads, formulas).of(footings, workings);
    Water water = water();
    List<Finding> findings = new FrostGripFindings(job, footings, water, lifts).all();
    sleeves.sort(Comparator.comparing(sleeve -> order.indexOf(sleeve.mark())));
    return new FrostGrip(footings, water, lifts, sleeves, needs, findings, workings);
  }

  /** What makes footings alike; lengths in micrometres. */
  private record Alike(
      MarkKind kind, List<Long> lengths, Widenings widenings, Optional<Side> side, Force dead) {}

  private Map<Alike, List<Hole>> groups(List<Hole> holes) {
    Map<Alike, List<Hole>> groups = new LinkedHashMap<>();
    for (Hole hole : holes) {
      List<Long> lengths =
          List.of(hole.standing(), hole.shaft(), hole.formAbove(), hole.depth(), hole.top())
              .stream()
              .map(length -> Math.round(length.metres() * 1e6))
              .toList();
      Alike alike = new Alike(hole.kind(), lengths, hole.widenings(), side(hole), dead(hole));
      groups.computeIfAbsent(alike, key -> new ArrayList<>()).add(hole);
    }
    return groups;
  }

  private Optional<Pier> pier(Hole hole) {
    return job.piers().stream().filter(pier -> pier.id().equals(hole.mark())).findFirst();
  }

  private Optional<Side> side(Hole hole) {
    return job.side(hole.mark());
  }

  /** What is always there: dead load, or the instrument. */
  private Force dead(Hole hole) {
    if (hole.kind() == MarkKind.PIER) {
      return new Force(
          pier(hole).flatMap(Pier::instrument).map(mass -> mass.kilograms() * 9.80665).orElse(0.0));
    }
    return loads.stream()
        .filter(load -> load.mark().equals(hole.mark()))
        .findFirst()
        .map(load -> load.parts().dead())
        .orElse(Force.ZERO);
  }

  private Length rule() {
    return job.ground().frost().map(Frost::depth).orElse(Length.ZERO);
  }

  private List<Footing> footings(List<Hole> group, Alike alike) {
    Hole hole = group.get(0);
    String subject = MarkRuns.brief(group.stream().map(Hole::mark).toList());
    Length frost = rule().max(estimate);
    boolean freezes = frost.isMoreThan(Length.ZERO);
    boolean grips = freezes && soil.heaves() && alike.side().isEmpty();
    boolean blown = alike.kind() == MarkKind.SUPPORT ? job.wind().isPresent() : isBlown(hole);
    Force hold = Force.ZERO;
    if (grips || blown) {
      hold = hold(hole, subject, alike.dead());
    }
    Length frozen = frost.min(hole.depth());
    Optional<Grip> grip = grips ? Optional.of(grip(hole, subject, hold)) : Optional.empty();
    if (freezes && alike.side().equals(Optional.of(Side.SMOOTH_SLEEVE))) {
      Length sleeved = frozen.min(hole.shaftDepth());
      needs.add(sleeves(hole, sleeved, group.size()));
      group.forEach(one -> sleeves.add(new FrostSleeve(one.mark(), one.shaft(), sleeved)));
    }
    Force held = hold;
    Verdict verdict = verdict(freezes, alike.side(), grip, held);
    return group.stream()
        .map(one -> new Footing(one.mark(), frozen, alike.side(), held, grip, verdict))
        .toList();
  }

  /** Load and concrete; the soil that lies on a bell or a pad is left out. */
  private Force hold(Hole hole, String subject, Force dead) {
    Force shaft =
        work(
                formulas.hold(),
                subject,
                dead,
                hole.shaft(),
                hole.shaftDepth(),
                hole.formAbove(),
                hole.column())
            .asForce();
    return hole.widenings().isAny()
        ? work(
                formulas.holdWidened(),
                subject,
                shaft,
                hole.bottomVolume(),
                hole.widenings().capVolume())
            .asForce()
        : shaft;
  }

  /** Sleeves that reach from the ground down through the frost. */
  private static Need sleeves(Hole hole, Length frozen, int count) {
    return new Need(
        "frost-sleeves",
        Map.of("across", Argument.of(hole.shaft()), "length", Argument.of(frozen)),
        count,
        count,
        Unit.NONE,
        Optional.empty());
  }

  private boolean isBlown(Hole hole) {
    return pier(hole).flatMap(Pier::uplift).isPresent();
  }

  private Grip grip(Hole hole, String subject, Force hold) {
    Length frozen = work(formulas.frozen(), subject, hole.depth(), rule(), estimate).asLength();
    // Where the frost reaches a bell or a pad, it grips that as well: then all counts as wide.
    Length across = frozen.isMoreThan(hole.shaftDepth()) ? hole.standing() : hole.shaft();
    Force typical =
        work(formulas.grip(), subject, FrostGrip.typicalStress(), across, frozen).asForce();
    Force high = work(formulas.grip(), subject, FrostGrip.highStress(), across, frozen).asForce();
    if (allowed.isEmpty()) {
      return new Grip(typical, high, Force.ZERO, Optional.empty());
    }
    Pressure q = allowed.get();
    Pressure most = mostFriction();
    Force anchorage =
        work(formulas.anchorage(), subject, q, most, across, hole.shaftDepth().max(frozen), frozen)
            .asForce();
    Force holds = hold.plus(anchorage);
    Optional<Length> deeper =
        typical.isMoreThan(holds)
            ? Optional.of(
                work(formulas.deeper(), subject, typical, hold, anchorage, q, most, across)
                    .asLength())
            : Optional.empty();
    return new Grip(typical, high, anchorage, deeper);
  }

  private Pressure mostFriction() {
    return job.heading().units() == UnitSystem.IMPERIAL
        ? Pressure.ofPsf(500)
        : Pressure.ofKilopascals(24);
  }

  private Verdict verdict(boolean freezes, Optional<Side> side, Optional<Grip> grip, Force hold) {
    if (!freezes) {
      return Verdict.NO_FROST;
    }
    if (grip.isEmpty()) {
      return soil.heaves() && side.isPresent() ? Verdict.KEPT_OFF : Verdict.DRAINS;
    }
    Force holds = hold.plus(grip.get().anchorage()).times(1 + 1e-6);
    if (grip.get().typical().isMoreThan(holds)) {
      return Verdict.LIFTS;
    }
    return grip.get().high().isMoreThan(holds) ? Verdict.MAY_LIFT : Verdict.HELD;
  }

  private Water water() {
    Length frost = rule().max(estimate);
    return job.ground()
        .waterDepth()
        .map(depth -> depth.isLessThan(frost.plus(FEEDS)) ? Water.NEAR : Water.DEEP)
        .orElse(Water.UNKNOWN);
  }

  private Working work(Formula formula, String subject, Quantity... quantities) {
    Working working = Working.of(formula, subject, quantities);
    workings.add(working);
    return working;
  }
}
