package pegbook.calc.footingloads;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.footingloads.FootingLoads.Pressures;
import pegbook.calc.footingloads.FootingLoads.Taken;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Placement;
import pegbook.geometry.Gap;
import pegbook.job.Design;
import pegbook.job.Feature;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.published.Citation;

/** What of the loads someone must confirm, and what the job does not say at all. */
final class FootingLoadsFindings {
  /** A roof nearer than this may drop or drift its snow onto the floor (common practice). */
  private static final Length ROOF_NEAR = Length.ofFeet(20);

  /**
   * The largest load, of use or of snow on the ground, for which the code's own table of deck
   * footings has a column (70 psf, recalled).
   */
  private static final Pressure TABLE_ENDS = Pressure.ofPsf(70);

  private static final Citation TABLE = new Citation("irc-r507-3", "Table R507.3.1");

  private FootingLoadsFindings() {}

  static List<Finding> of(
      Job job, Placement placement, Pressures pressures, List<BasisLine> basis) {
    List<Finding> findings = new ArrayList<>();
    assumed(pressures.live(), "live-load-assumed", "floor.live").ifPresent(findings::add);
    assumed(pressures.dead(), "dead-load-assumed", "floor.dead").ifPresent(findings::add);
    findings.add(
        pressures
            .snow()
            .map(snow -> groundSnow(job, placement, snow))
            .orElseGet(FootingLoadsFindings::snowUnknown));
    pressures
        .snow()
        .filter(snow -> snow.isMoreThan(TABLE_ENDS))
        .ifPresent(
            snow -> findings.add(beyondTables("snow-beyond-tables", "floor.groundSnow", snow)));
    if (pressures.live().value().isMoreThan(TABLE_ENDS)) {
      findings.add(beyondTables("live-beyond-tables", "floor.live", pressures.live().value()));
    }
    if (job.floor().filter(floor -> floor.use() == Floor.Use.HUT).isPresent()) {
      findings.add(ask("hut-above-floor", "floor", Decider.ENGINEER));
    }
    long open = basis.stream().filter(line -> line.known() == BasisLine.Known.NOT_GIVEN).count();
    if (open > 0) {
      findings.add(
          ask("design-basis-open", "design", Decider.BUILDING_AUTHORITY)
              .with("count", Argument.of(open)));
    }
    job.design()
        .seismic()
        .filter(Design.Seismic::isHigh)
        .ifPresent(
            seismic ->
                findings.add(
                    ask("seismic-high", "design.seismic", Decider.ENGINEER)
                        .with("category", Argument.words(seismic.category()))));
    return findings;
  }

  private static Finding ask(String id, String place, Decider decides) {
    return Finding.of(Kind.ASK, id, place, decides, Citation.COMMON_PRACTICE);
  }

  private static Finding beyondTables(String id, String place, Pressure load) {
    return Finding.of(Kind.ASK, id, place, Decider.ENGINEER, TABLE)
        .with("load", Argument.of(load))
        .with("end", Argument.of(TABLE_ENDS));
  }

  private static Optional<Finding> assumed(Taken load, String id, String place) {
    return load.given()
        ? Optional.empty()
        : Optional.of(
            Finding.of(Kind.ASK, id, place, Decider.BUILDING_AUTHORITY, load.source())
                .with("load", Argument.of(load.value())));
  }

  private static Finding snowUnknown() {
    return Finding.of(
        Kind.ASK,
        "snow-not-given",
        "floor.groundSnow",
        Decider.BUILDING_AUTHORITY,
        FootingLoadsFormulas.COMBINATIONS);
  }

  /** Drift and sliding snow are a question where a building stands near, else worth knowing. */
  private static Finding groundSnow(Job job, Placement placement, Pressure snow) {
    Optional<Feature> near =
        job.site().features().stream()
            .filter(feature -> isNear(feature.shape(), placement))
            .findFirst();
    return near.map(
            feature ->
                ask("snow-from-roof", "floor.groundSnow", Decider.ENGINEER)
                    .with("name", Argument.words(feature.name())))
        .orElseGet(
            () ->
                Finding.of(
                    Kind.NOTE,
                    "snow-on-ground",
                    "floor.groundSnow",
                    Decider.ENGINEER,
                    FootingLoadsFormulas.COMBINATIONS))
        .with("snow", Argument.of(snow));
  }

  private static boolean isNear(Feature.Shape shape, Placement placement) {
    return shape instanceof Feature.Shape.Block block
        && Gap.between(block.corners().sides(), placement.outline().sides())
            .length()
            .isLessThan(ROOF_NEAR);
  }
}
