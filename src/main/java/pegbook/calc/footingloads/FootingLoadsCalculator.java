package pegbook.calc.footingloads;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.footingloads.FootingLoads.Pressures;
import pegbook.calc.footingloads.FootingLoads.Share;
import pegbook.calc.footingloads.FootingLoads.Taken;
import pegbook.figures.CombinedLoad;
import pegbook.figures.CombinedLoad.Combination;
import pegbook.figures.FloorPressures;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.MarkRuns;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.SupportLoad;
import pegbook.figures.Working;
import pegbook.geometry.NearestCells;
import pegbook.geometry.NearestCells.Opening;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.published.FloorLoad;

/**
 * Shares the floor out to the supports and loads them.
 *
 * <p>A support carries what the beams of a frame bring to it; without a frame the part of the floor
 * that is nearer to it than to any other support, which is shared out in either case. Piers carry
 * nothing of it: their concrete above the ground, with the gap all round, is an opening. Live and
 * dead load that the job leaves out are those of a private deck, or of a place where people gather;
 * snow that it leaves out stays unknown. Snow on the ground is taken for snow on the floor, without
 * the reduction that roofs get.
 */
public final class FootingLoadsCalculator {
  /** Parts of the floor that differ by less are the same: a square millimetre. */
  private static final double SAME_SQUARE_METRES = 1e-6;

  private final Job job;
  private final FootingLoadsFormulas formulas;
  private final Pressures pressures;
  private final Optional<Map<String, Area>> byBeam;
  private final List<Working> workings = new ArrayList<>();

  private FootingLoadsCalculator(Job job, Optional<Map<String, Area>> byBeam) {
    this.job = job;
    this.byBeam = byBeam;
    this.formulas = FootingLoadsFormulas.in(job.heading().units());
    this.pressures = pressures(job);
  }

  /**
   * Loads the supports of a job.
   *
   * @param job the job: floor, piers' gaps, ground
   * @param placement the floor's edge and the marks
   * @param holes for the piers' concrete above the ground
   * @param byBeam floor that the beams bring to each support; absent: by the floor nearest to it
   */
  public static FootingLoads calculate(
      Job job, Placement placement, List<Hole> holes, Optional<Map<String, Area>> byBeam) {
    return new FootingLoadsCalculator(job, byBeam).load(placement, holes);
  }

  private FootingLoads load(Placement placement, List<Hole> holes) {
    List<PlacedMark> supports =
        placement.marks().stream().filter(mark -> mark.kind() == MarkKind.SUPPORT).toList();
    NearestCells shared =
        NearestCells.of(
            placement.outline(), openings(holes), supports.stream().map(PlacedMark::at).toList());
    Area outline = placement.outline().area();
    Area openings = outline.minus(shared.floor()).max(Area.ZERO);
    workings.add(Working.of(formulas.floor(), "", outline, openings));
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < supports.size(); i++) {
      shares.add(new Share(supports.get(i).id(), shared.cells().get(i)));
    }
    List<CombinedLoad> loads = loads(shares);
    List<BasisLine> basis = DesignBasis.of(job, pressures);
    return new FootingLoads(
        outline,
        openings,
        shares,
        pressures,
        loads,
        basis,
        FootingLoadsFindings.of(job, placement, pressures, basis),
        workings);
  }

  /** Where piers come up through the floor, each with its gap. */
  private List<Opening> openings(List<Hole> holes) {
    List<Opening> openings = new ArrayList<>();
    for (Pier pier : job.piers()) {
      holes.stream()
          .filter(hole -> hole.mark().equals(pier.id()))
          .map(hole -> new Opening(hole.centre(), radius(hole, pier)))
          .forEach(openings::add);
    }
    return openings;
  }

  private static Length radius(Hole hole, Pier pier) {
    return hole.headAcross().times(0.5).plus(pier.gap());
  }

  private static Pressures pressures(Job job) {
    Optional<Floor> floor = job.floor();
    String live = FloorPressures.liveName(job);
    return new Pressures(
        taken(job, floor.flatMap(Floor::dead), "deck-dead"),
        taken(job, floor.flatMap(Floor::live), live),
        floor.flatMap(Floor::groundSnow));
  }

  private static Taken taken(Job job, Optional<Pressure> given, String otherwise) {
    FloorLoad load = FloorLoad.find(otherwise);
    return new Taken(
        given.orElseGet(() -> load.in(job.heading().units())), given.isPresent(), load.citation());
  }

  /** One group of supports after the other: those with equal areas share their workings. */
  private List<CombinedLoad> loads(List<Share> shares) {
    List<List<Carried>> groups = new ArrayList<>();
    for (Share share : shares) {
      Carried carried = carried(share);
      groups.stream()
          .filter(group -> same(group.get(0).area(), carried.area()))
          .findFirst()
          .ifPresentOrElse(
              group -> group.add(carried), () -> groups.add(new ArrayList<>(List.of(carried))));
    }
    List<CombinedLoad> loads = new ArrayList<>();
    groups.forEach(group -> loads.addAll(loadsOf(group)));
    List<String> order = shares.stream().map(Share::mark).toList();
    loads.sort(Comparator.comparing(load -> order.indexOf(load.mark())));
    return loads;
  }

  /** Floor that a support carries. */
  private record Carried(String mark, Area area) {}

  private Carried carried(Share share) {
    return new Carried(
        share.mark(),
        byBeam
            .map(beams -> beams.getOrDefault(share.mark(), Area.ZERO))
            .orElseGet(() -> share.cell().area()));
  }

  private static boolean same(Area one, Area other) {
    return Math.abs(one.squareMetres() - other.squareMetres()) < SAME_SQUARE_METRES;
  }

  private List<CombinedLoad> loadsOf(List<Carried> group) {
    List<String> marks = group.stream().map(Carried::mark).toList();
    String subject = MarkRuns.brief(marks);
    Area area = group.get(0).area();
    Force dead = work(formulas.dead(), subject, area, pressures.dead().value());
    Force live = work(formulas.live(), subject, area, pressures.live().value());
    Optional<Force> snow = pressures.snow().map(some -> work(formulas.snow(), subject, area, some));
    Force total =
        snow.map(some -> work(formulas.combined(), subject, dead, live, some))
            .orElseGet(() -> work(formulas.withoutSnow(), subject, dead, live));
    Combination governs =
        CombinationRule.governs(
            dead.newtons(), live.newtons(), snow.map(Force::newtons).orElse(0.0));
    return marks.stream()
        .map(
            mark ->
                new CombinedLoad(
                    byBeam.isPresent()
                        ? new SupportLoad.ByBeam(mark, area, dead, live, snow)
                        : new SupportLoad.ByArea(mark, area, dead, live, snow),
                    governs,
                    total))
        .toList();
  }

  private Force work(Formula formula, String subject, Quantity... quantities) {
    Working working = Working.of(formula, subject, quantities);
    workings.add(working);
    return working.asForce();
  }
}
