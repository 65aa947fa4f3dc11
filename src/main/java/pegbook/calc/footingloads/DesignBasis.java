package pegbook.calc.footingloads;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.footingloads.FootingLoads.Pressures;
import pegbook.calc.footingloads.FootingLoads.Taken;
import pegbook.figures.Argument;
import pegbook.job.Floor;
import pegbook.job.Frost;
import pegbook.job.Ground;
import pegbook.job.Job;
import pegbook.published.SoilWeight;

/** What the design rests on, gathered once: what the job says, what was assumed, what is open. */
final class DesignBasis {
  private DesignBasis() {}

  static List<BasisLine> of(Job job, Pressures pressures) {
    List<BasisLine> lines = new ArrayList<>();
    lines.add(BasisLine.notGiven("code"));
    lines.add(
        known("use", job.floor().map(Floor::use).map(use -> Argument.entry("use." + use.id()))));
    lines.add(BasisLine.notGiven("occupancy"));
    lines.add(load("dead", pressures.dead()));
    lines.add(load("live", pressures.live()));
    lines.add(known("snow", pressures.snow().map(Argument::of)));
    lines.add(BasisLine.notGiven("wind"));
    lines.add(BasisLine.notGiven("seismic"));
    lines.add(BasisLine.notGiven("exposure"));
    ground(job.ground(), lines);
    lines.add(BasisLine.notGiven("lateral"));
    return lines;
  }

  private static void ground(Ground ground, List<BasisLine> lines) {
    String soil = ground.soil().id();
    lines.add(BasisLine.job("soil", Argument.entry("soil." + soil)));
    SoilWeight weight = SoilWeight.find(soil);
    lines.add(
        BasisLine.by(
            "soil-weight", BasisLine.Known.TABLE, Argument.of(weight.bank()), weight.citation()));
    lines.add(known("water", ground.water().map(Argument::of)));
    lines.add(
        ground.frost().map(DesignBasis::frost).orElseGet(() -> BasisLine.notGiven("frost-depth")));
  }

  private static BasisLine frost(Frost frost) {
    return new BasisLine(
        "frost-depth",
        BasisLine.Known.JOB,
        Optional.of(Argument.of(frost.depth())),
        Optional.of(frost.from()),
        List.of());
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
