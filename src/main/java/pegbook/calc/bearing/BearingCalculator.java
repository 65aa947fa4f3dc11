package pegbook.calc.bearing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pegbook.calc.bearing.Bearing.Check;
import pegbook.calc.bearing.Bearing.Footing;
import pegbook.calc.bearing.Bearing.Needed;
import pegbook.calc.bearing.Bearing.Remedy;
import pegbook.calc.bearing.Bearing.SnowRoom;
import pegbook.calc.bearing.Bearing.Verdict;
import pegbook.figures.CombinedLoad;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.MarkRuns;
import pegbook.figures.SupportLoad;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.job.Widenings;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.UnitSystem;

/**
 * Holds every footing against the ground.
 *
 * <p>The pressure decides: load and, where the allowable pressure counts it, own weight over the
 * area that stands on the bottom. How wide a footing must be is given by two published ways: own
 * weight taken off the pressure, size set up; and own weight left out, size set to the nearest
 * step. The larger counts. Soil over a pad weighs less than the concrete counted there, so that one
 * diameter serves a wider hole, a bell and a pad.
 */
public final class BearingCalculator {
  private final Job job;
  private final List<Hole> holes;
  private final List<CombinedLoad> loads;
  private final BearingFormulas formulas;
  private final Optional<Allowable> allowable;
  private final List<Working> workings = new ArrayList<>();

  private BearingCalculator(Job job, List<Hole> holes, List<CombinedLoad> loads) {
    this.job = job;
    this.holes = holes;
    this.loads = loads;
    this.formulas = new BearingFormulas(job.heading().units());
    this.allowable = Allowable.of(job.ground());
  }

  /**
   * Holds the footings of a job against the ground.
   *
   * @param job the job: ground, piers' instruments
   * @param holes every hole with its depth
   * @param loads one for each support
   */
  public static Bearing calculate(Job job, List<Hole> holes, List<CombinedLoad> loads) {
    return new BearingCalculator(job, holes, loads).hold();
  }

  private Bearing hold() {
    List<Footing> footings = new ArrayList<>();
    groups()
        .forEach(
            (alike, group) -> {
              FootingCheck check =
                  new FootingCheck(job, allowable, group, new Force(alike.newtons()));
              footings.addAll(check.footings());
              workings.addAll(check.workings());
            });
    List<String> order = holes.stream().map(Hole::mark).toList();
    footings.sort(Comparator.comparing(footing -> order.indexOf(footing.mark())));
    List<Remedy> remedies = remedies(footings);
    Optional<SnowRoom> snowRoom = snowRoom(footings);
    BearingZones zones = BearingZones.of(job, holes);
    workings.addAll(zones.workings());
    List<Finding> findings = new ArrayList<>(zones.findings());
    findings.addAll(new BearingFindings(job, allowable, footings).of(remedies, isByBeam()));
    RemedyRoom room = RemedyRoom.of(job, holes, remedies);
    workings.addAll(room.workings());
    findings.addAll(room.findings());
    return new Bearing(allowable, footings, remedies, snowRoom, findings, workings);
  }

  /** What makes footings alike; lengths in micrometres. */
  private record Alike(
      MarkKind kind, List<Long> lengths, boolean formed, Widenings widenings, double newtons) {}

  private Map<Alike, List<Hole>> groups() {
    Map<Alike, List<Hole>> groups = new LinkedHashMap<>();
    for (Hole hole : holes) {
      Alike alike =
          new Alike(
              hole.kind(),
              List.of(
                  micrometres(hole.standing()),
                  micrometres(hole.shaft()),
                  micrometres(hole.formAbove()),
                  micrometres(hole.depth()),
                  micrometres(hole.top())),
              hole.tube().isPresent() && hole.tubeFromBottom().isEmpty(),
              hole.widenings(),
              carried(hole).newtons());
      groups.computeIfAbsent(alike, key -> new ArrayList<>()).add(hole);
    }
    return groups;
  }

  private static long micrometres(Length length) {
    return Math.round(length.metres() * 1e6);
  }

  private Force carried(Hole hole) {
    if (hole.kind() == MarkKind.SUPPORT) {
      return load(hole.mark()).map(CombinedLoad::total).orElse(Force.ZERO);
    }
    Optional<Mass> instrument =
        job.piers().stream()
            .filter(pier -> pier.id().equals(hole.mark()))
            .findFirst()
            .flatMap(Pier::instrument);
    return instrument
        .map(
            mass -> {
              Working working = Working.of(formulas.instrument(), hole.mark(), mass);
              workings.add(working);
              return working.asForce();
            })
        .orElse(Force.ZERO);
  }

  private Optional<CombinedLoad> load(String mark) {
    return loads.stream().filter(load -> load.mark().equals(mark)).findFirst();
  }

  /** The largest size needed serves all supports, or all piers, that press too hard. */
  private List<Remedy> remedies(List<Footing> footings) {
    List<Remedy> remedies = new ArrayList<>();
    for (MarkKind kind : MarkKind.values()) {
      List<Footing> failing =
          footings.stream()
              .filter(footing -> footing.kind() == kind)
              .filter(footing -> is(footing, Verdict.EXCEEDS))
              .toList();
      failing.stream()
          .max(Comparator.comparing(BearingCalculator::neededArea))
          .ifPresent(worst -> remedies.add(remedy(kind, failing, worst)));
    }
    return remedies;
  }

  private static boolean is(Footing footing, Verdict verdict) {
    return footing.check().filter(check -> check.verdict() == verdict).isPresent();
  }

  private static Area neededArea(Footing footing) {
    return footing.check().flatMap(Check::needed).map(Needed::area).orElse(Area.ZERO);
  }

  private Remedy remedy(MarkKind kind, List<Footing> failing, Footing worst) {
    UnitSystem units = job.heading().units();
    List<String> marks = failing.stream().map(Footing::mark).toList();
    Length step = FootingCheck.step(units);
    Length least = units == UnitSystem.IMPERIAL ? Length.ofInches(6) : Length.ofMillimetres(150);
    Length diameter =
        worst.check().flatMap(Check::needed).map(Needed::decided).orElse(worst.standing());
    Working side =
        Working.of(formulas.square(BearingFormulas.NET_WAY), worst.mark(), neededArea(worst), step);
    Length wide = diameter.max(side.asLength());
    Working thickness =
        Working.of(formulas.padThickness(), worst.mark(), wide, shaft(worst), least, step);
    workings.add(side);
    workings.add(thickness);
    return new Remedy(kind, marks, diameter, side.asLength(), thickness.asLength());
  }

  /** Width of what stands on a pad. */
  private Length shaft(Footing footing) {
    return holes.stream()
        .filter(hole -> hole.mark().equals(footing.mark()))
        .findFirst()
        .map(Hole::shaft)
        .orElse(footing.standing());
  }

  /** Where snow is not known: the least snow on the ground that fully uses a support. */
  private Optional<SnowRoom> snowRoom(List<Footing> footings) {
    TreeMap<Long, List<Working>> byPascal = new TreeMap<>();
    for (Footing footing : footings) {
      snowRoom(footing)
          .ifPresent(
              working ->
                  byPascal
                      .computeIfAbsent(Math.round(working.si()), key -> new ArrayList<>())
                      .add(working));
    }
    return byPascal.values().stream()
        .findFirst()
        .map(
            least -> {
              List<String> marks = least.stream().map(Working::subject).toList();
              Working first =
                  new Working(least.get(0).formula(), MarkRuns.brief(marks), least.get(0).inputs());
              workings.add(first);
              return new SnowRoom(marks, first.asPressure().max(Pressure.ZERO));
            });
  }

  private Optional<Working> snowRoom(Footing footing) {
    Optional<SupportLoad> parts =
        load(footing.mark())
            .map(CombinedLoad::parts)
            .filter(some -> some.snow().isEmpty())
            .filter(some -> area(some).isMoreThan(Area.ZERO));
    return parts.flatMap(
        some ->
            footing
                .check()
                .map(
                    check ->
                        Working.of(
                            formulas.snowRoom(),
                            footing.mark(),
                            check.mayCarry(),
                            some.dead(),
                            some.live(),
                            area(some))));
  }

  private boolean isByBeam() {
    return loads.stream().anyMatch(load -> load.parts() instanceof SupportLoad.ByBeam);
  }

  private static Area area(SupportLoad load) {
    return load.area();
  }
}
