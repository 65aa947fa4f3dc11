package pegbook.calc.footingloads;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.footingloads.FootingLoads.Pressures;
import pegbook.calc.footingloads.FootingLoads.Taken;
import pegbook.figures.Argument;
import pegbook.job.Design;
import pegbook.job.Floor;
import pegbook.job.Frost;
import pegbook.job.Ground;
import pegbook.job.Job;
import pegbook.job.UnitWeight;
import pegbook.job.Water;
import pegbook.published.SoilWeight;

/** What the design rests on, gathered once: what the job says, what was assumed, what is open. */
final class DesignBasis {
  private DesignBasis() {}

  static List<BasisLine> of(Job job, Pressures pressures) {
    Design design = job.design();
    List<BasisLine> lines = new ArrayList<>();
    lines.add(said("code", design.code()));
    lines.add(
        known("use", job.floor().map(Floor::use).map(use -> Argument.entry("use." + use.id()))));
    occupancy(design, lines);
    lines.add(load("dead", pressures.dead()));
    lines.add(load("live", pressures.live()));
    lines.add(known("snow", pressures.snow().map(Argument::of)));
    wind(design, lines);
    lines.add(
        design
            .seismic()
            .map(some -> BasisLine.job("seismic", Argument.words(some.category()), some.from()))
            .orElseGet(() -> BasisLine.notGiven("seismic")));
    lines.add(said("exposure", design.salt()));
    ground(job.ground(), lines);
    lines.add(said("lateral", design.lateral()));
    return lines;
  }

  private static BasisLine said(String item, Optional<Design.Said> said) {
    return said.map(some -> BasisLine.job(item, Argument.words(some.words()), some.from()))
        .orElseGet(() -> BasisLine.notGiven(item));
  }

  private static void occupancy(Design design, List<BasisLine> lines) {
    Optional<Design.Occupancy> known = design.occupancy();
    lines.add(
        known
            .map(some -> BasisLine.job("occupancy", Argument.words(some.group()), some.from()))
            .orElseGet(() -> BasisLine.notGiven("occupancy")));
    lines.add(
        known
            .flatMap(Design.Occupancy::category)
            .map(
                category ->
                    BasisLine.job(
                        "risk",
                        Argument.words(category),
                        known.map(Design.Occupancy::from).orElse("")))
            .orElseGet(() -> BasisLine.notGiven("risk")));
  }

  private static void wind(Design design, List<BasisLine> lines) {
    lines.add(
        design
            .wind()
            .map(wind -> BasisLine.job("wind", Argument.of(wind.speed()), wind.from()))
            .orElseGet(() -> BasisLine.notGiven("wind")));
    lines.add(
        design
            .wind()
            .map(
                wind ->
                    BasisLine.job("wind-exposure", Argument.words(wind.exposure()), wind.from()))
            .orElseGet(() -> BasisLine.notGiven("wind-exposure")));
  }

  private static void ground(Ground ground, List<BasisLine> lines) {
    String soil = ground.soil().id();
    lines.add(BasisLine.job("soil", Argument.entry("soil." + soil)));
    lines.add(ground.unitWeight().map(DesignBasis::weight).orElseGet(() -> tableWeight(soil)));
    lines.add(ground.water().map(DesignBasis::water).orElseGet(() -> BasisLine.notGiven("water")));
    lines.add(
        ground.frost().map(DesignBasis::frost).orElseGet(() -> BasisLine.notGiven("frost-depth")));
  }

  private static BasisLine weight(UnitWeight weight) {
    return BasisLine.job("soil-weight", Argument.of(weight.value()), weight.from());
  }

  private static BasisLine tableWeight(String soil) {
    SoilWeight weight = SoilWeight.find(soil);
    return BasisLine.by(
        "soil-weight", BasisLine.Known.TABLE, Argument.of(weight.bank()), weight.citation());
  }

  private static BasisLine water(Water water) {
    Argument depth = Argument.of(water.depth());
    return water
        .from()
        .map(from -> BasisLine.job("water", depth, from))
        .orElseGet(() -> BasisLine.job("water", depth));
  }

  private static BasisLine frost(Frost frost) {
    return BasisLine.job("frost-depth", Argument.of(frost.depth()), frost.from());
  }

  private static BasisLine load(String item, Taken load) {
    return load.given()
        ? BasisLine.job(item, Argument.of(load.value()))
        : BasisLine.by(item, BasisLine.Known.ASSUMED, Argument.of(load.value()), load.source());
  }

  private static BasisLine known(String item, Optional<Argument> value) {
    return value.map(some -> BasisLine.job(item, some)).orElseGet(() -> BasisLine.notGiven(item));
  }
}
