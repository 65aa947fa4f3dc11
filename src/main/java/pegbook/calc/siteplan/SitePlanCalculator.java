package pegbook.calc.siteplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.siteplan.SitePlan.Clearance;
import pegbook.calc.siteplan.SitePlan.Tie;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.figures.Working;
import pegbook.geometry.BaselineChoice;
import pegbook.geometry.Crossings;
import pegbook.geometry.Polygon;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.job.Layout;
import pegbook.measure.Length;

/**
 * Sets the figure among its surroundings: how far holes, heaps and the floor's edge keep from lot
 * lines and features, edge to edge; four ties that show a figure shifted or turned as a whole; the
 * outline's sizes.
 *
 * <p>A feature's keep-clear distance holds for every hole's edge and heap, and for the floor's edge
 * too where the feature is a wire over the ground; the setback holds for floor and holes.
 */
public final class SitePlanCalculator {
  private final Job job;
  private final Placement placement;
  private final Surroundings surroundings;
  private final SitePlanFormulas formulas;

  private SitePlanCalculator(
      Job job, Placement placement, List<Hole> holes, List<SpoilHeap> heaps) {
    this.job = job;
    this.placement = placement;
    this.formulas = SitePlanFormulas.in(job.heading().units());
    this.surroundings = new Surroundings(formulas, placement, holes, heaps);
  }

  /** Works out a job's clearances, ties and sizes. */
  public static SitePlan calculate(
      Job job, Placement placement, List<Hole> holes, List<SpoilHeap> heaps) {
    return new SitePlanCalculator(job, placement, holes, heaps).plan();
  }

  private SitePlan plan() {
    List<Clearance> clearances = clearances();
    surroundings.work(clearances);
    List<Working> workings = new ArrayList<>(surroundings.workings());
    Optional<Ties.Chosen> chosen = Optional.empty();
    if (placement.marks().size() >= 2) {
      Ties ties = new Ties(job, formulas, tied().get(0), tied().get(1));
      chosen = ties.choose();
      workings.addAll(ties.workings());
    }
    List<Tie> ties = chosen.map(Ties.Chosen::ties).orElse(List.of());
    return new SitePlan(
        clearances,
        ties,
        Sizes.of(job.layout().outline(), placement.outline().corners()),
        findings(chosen),
        workings);
  }

  /** The two marks of the baseline, as the tape table has them. */
  private List<PlacedMark> tied() {
    Layout layout = job.layout();
    if (layout.baseline() instanceof Layout.Baseline.Named named) {
      return List.of(placement.mark(named.first()), placement.mark(named.second()));
    }
    List<PlacedMark> marks = placement.marks();
    BaselineChoice choice =
        BaselineChoice.among(
            marks.stream().map(PlacedMark::at).toList(),
            Crossings.onTape(layout.tape().division()),
            layout.tape().length());
    return List.of(marks.get(choice.first()), marks.get(choice.second()));
  }

  /** Of each feature the nearest hole, of one with a keep-clear distance the nearest heap too. */
  private List<Clearance> clearances() {
    List<Clearance> clearances = new ArrayList<>();
    Optional<Length> setback = job.site().setback();
    if (job.site().boundary().isPresent()) {
      Polygon lot = job.site().boundary().get();
      List<Clearance> floor = surroundings.floorTo(lot, setback);
      clearances.addAll(floor);
      surroundings
          .nearestHoleTo(lot, setback)
          .filter(hole -> isNearer(hole, floor))
          .ifPresent(clearances::add);
    }
    for (Feature feature : job.site().features()) {
      Surroundings.nearest(surroundings.holesTo(feature)).ifPresent(clearances::add);
      if (feature.kind() == Feature.Kind.OVERHEAD_WIRE) {
        clearances.add(surroundings.floorTo(feature));
      }
      Surroundings.nearest(surroundings.heapsTo(feature))
          .filter(heap -> heap.required().isPresent())
          .ifPresent(clearances::add);
    }
    return clearances;
  }

  private static boolean isNearer(Clearance hole, List<Clearance> floor) {
    return floor.stream()
        .noneMatch(clearance -> clearance.distance().compareTo(hole.distance()) <= 0);
  }

  private List<Finding> findings(Optional<Ties.Chosen> ties) {
    SitePlanFindings findings = new SitePlanFindings(surroundings);
    job.site().features().forEach(findings::feature);
    findings.boundary(job.site());
    job.ground().benchmark().ifPresent(findings::benchmark);
    findings.ties(ties, job.layout().tape().length());
    return findings.all();
  }
}
