package pegbook.calc.siteplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.siteplan.SitePlan.Clearance;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.geometry.Polygon;
import pegbook.job.Benchmark;
import pegbook.job.Feature;
import pegbook.job.Site;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.published.Citation;

/** What the reader of the site plan must act on. */
final class SitePlanFindings {
  private final Surroundings surroundings;
  private final List<Finding> findings = new ArrayList<>();

  SitePlanFindings(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  List<Finding> all() {
    return findings;
  }

  private static Finding finding(Kind kind, String id, String place, Decider decides) {
    return Finding.of(kind, id, place, decides, Citation.COMMON_PRACTICE);
  }

  /** Of one feature: holes, the floor under a wire, heaps. */
  void feature(Feature feature) {
    List<Clearance> holes = surroundings.holesTo(feature);
    switch (feature.kind()) {
      case BURIED_LINE -> buriedLine(feature, holes);
      case OVERHEAD_WIRE -> overheadWire(feature, holes);
      case OBJECT -> object(feature, holes);
    }
    heaps(feature);
  }

  private static List<Clearance> breaches(List<Clearance> clearances) {
    return clearances.stream().filter(Clearance::breach).toList();
  }

  private static List<Clearance> overlapping(List<Clearance> clearances) {
    return clearances.stream()
        .filter(clearance -> clearance.distance().isLessThan(Surroundings.TOLERANCE))
        .toList();
  }

  private static List<String> marks(List<Clearance> clearances) {
    return clearances.stream().map(Clearance::mark).toList();
  }

  private void add(Finding finding, Feature feature, List<Clearance> clearances) {
    findings.add(
        finding
            .about(marks(clearances))
            .with("feature", Argument.words(feature.name()))
            .with(
                "distance", Argument.of(Surroundings.nearest(clearances).orElseThrow().distance()))
            .with("keepClear", Argument.of(feature.keepClear().orElse(Length.ZERO))));
  }

  private void buriedLine(Feature feature, List<Clearance> holes) {
    if (feature.keepClear().isPresent()) {
      List<Clearance> breaches = breaches(holes);
      if (!breaches.isEmpty()) {
        add(
            finding(Kind.STOP, "site-plan-buried-line", "site.features", Decider.UTILITY_SERVICE),
            feature,
            breaches);
      }
      return;
    }
    List<Clearance> over = overlapping(holes);
    if (over.isEmpty()) {
      findings.add(unknown("site-plan-buried-unknown", feature, Decider.UTILITY_SERVICE));
    } else {
      add(
          finding(Kind.STOP, "site-plan-buried-under", "site.features", Decider.UTILITY_SERVICE),
          feature,
          over);
    }
  }

  private static Finding unknown(String id, Feature feature, Decider decides) {
    return finding(Kind.ASK, id, "site.features", decides)
        .about(List.of(feature.name()))
        .with("feature", Argument.words(feature.name()));
  }

  private void overheadWire(Feature feature, List<Clearance> holes) {
    Clearance floor = surroundings.floorTo(feature);
    Length nearest = holes.stream().map(Clearance::distance).reduce(floor.distance(), Length::min);
    boolean over = nearest.isLessThan(Surroundings.TOLERANCE);
    boolean breach = floor.breach() || !breaches(holes).isEmpty();
    if (over || breach) {
      List<Clearance> near = breach ? breaches(holes) : overlapping(holes);
      findings.add(
          finding(
                  Kind.STOP,
                  over ? "site-plan-wire-over" : "site-plan-wire-near",
                  "site.features",
                  Decider.ELECTRICAL_AUTHORITY)
              .about(marks(near))
              .with("feature", Argument.words(feature.name()))
              .with("distance", Argument.of(nearest.max(Length.ZERO)))
              .with("keepClear", Argument.of(feature.keepClear().orElse(Length.ZERO))));
    } else if (feature.keepClear().isEmpty()) {
      findings.add(
          unknown("site-plan-wire-unknown", feature, Decider.ELECTRICAL_AUTHORITY)
              .with("distance", Argument.of(nearest)));
    }
  }

  private void object(Feature feature, List<Clearance> holes) {
    List<Clearance> over = overlapping(holes);
    List<Clearance> breaches = breaches(holes);
    if (!over.isEmpty()) {
      add(
          finding(Kind.ASK, "site-plan-hole-on-object", "site.features", Decider.OWNER),
          feature,
          over);
    } else if (!breaches.isEmpty()) {
      add(
          finding(Kind.ASK, "site-plan-keep-clear", "site.features", Decider.OWNER),
          feature,
          breaches);
    }
  }

  private void heaps(Feature feature) {
    List<Clearance> heaps = surroundings.heapsTo(feature);
    List<Clearance> near = feature.keepClear().isPresent() ? breaches(heaps) : overlapping(heaps);
    if (!near.isEmpty()) {
      add(
          finding(Kind.ASK, "site-plan-heap-keep-clear", "site.features", Decider.CREW),
          feature,
          near);
    }
  }

  /** Of the lot lines and the setback. */
  void boundary(Site site) {
    if (site.boundary().isEmpty()) {
      findings.add(
          finding(Kind.NOTE, "site-plan-no-boundary", "site.boundary", Decider.BUILDING_AUTHORITY));
      return;
    }
    Polygon lot = site.boundary().get();
    List<String> outside = surroundings.holesOutside(lot);
    if (surroundings.isFloorOutside(lot) || !outside.isEmpty()) {
      findings.add(
          finding(Kind.STOP, "site-plan-over-boundary", "site.boundary", Decider.SURVEYOR)
              .about(outside));
      return;
    }
    if (site.setback().isEmpty()) {
      findings.add(
          finding(Kind.ASK, "site-plan-no-setback", "site.setback", Decider.BUILDING_AUTHORITY));
      return;
    }
    setback(lot, site.setback().get());
  }

  private void setback(Polygon lot, Length setback) {
    List<Clearance> kept = new ArrayList<>();
    surroundings.nearestHoleTo(lot, Optional.of(setback)).ifPresent(kept::add);
    kept.addAll(surroundings.floorTo(lot, Optional.of(setback)));
    List<Clearance> breaches = breaches(kept);
    if (!breaches.isEmpty()) {
      Length least = breaches.stream().map(Clearance::distance).reduce(Length::min).orElseThrow();
      findings.add(
          finding(Kind.ASK, "site-plan-setback", "site.setback", Decider.BUILDING_AUTHORITY)
              .with("distance", Argument.of(least))
              .with("setback", Argument.of(setback)));
    }
  }

  /** Of the benchmark: it must stay. */
  void benchmark(Benchmark benchmark) {
    if (surroundings.isInTheWay(benchmark.at())) {
      findings.add(
          finding(Kind.ASK, "site-plan-benchmark", "ground.benchmark", Decider.OWNER)
              .with("on", Argument.words(benchmark.on())));
    }
  }

  /** Of the ties, where there are any. */
  void ties(Optional<Ties.Chosen> chosen, Length reach) {
    if (chosen.isEmpty()) {
      findings.add(finding(Kind.ASK, "site-plan-no-ties", "site.features", Decider.OWNER));
      return;
    }
    if (isWeak(chosen.get().weakest())) {
      findings.add(
          finding(Kind.ASK, "site-plan-weak-ties", "site.features", Decider.OWNER)
              .with("crossing", Argument.of(chosen.get().weakest()))
              .with("least", Argument.of(Ties.LEAST)));
    }
    if (!chosen.get().withinReach()) {
      findings.add(
          finding(Kind.ASK, "site-plan-ties-reach", "layout.tape.length", Decider.OWNER)
              .with("reach", Argument.of(reach)));
    }
  }

  private static boolean isWeak(Angle weakest) {
    return weakest.isLessThan(Ties.LEAST.minus(Ties.TOLERANCE));
  }
}
