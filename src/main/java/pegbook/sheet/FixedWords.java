package pegbook.sheet;

import java.util.Locale;
import java.util.Map;
import pegbook.calc.siteplan.SitePlan.Fixed;
import pegbook.geometry.Compass;

/** How fixed things are named that are measured from. */
record FixedWords(Texts texts) {
  /** The name of a fixed thing, or of its corner. */
  String of(Fixed fixed) {
    if (fixed instanceof Fixed.Thing thing) {
      return thing.name();
    }
    if (fixed instanceof Fixed.Corner corner) {
      return texts.say(
          "site-plan.corner", Map.of("name", corner.name(), "side", wind(corner.side())));
    }
    if (fixed instanceof Fixed.OfBenchmark benchmark) {
      return texts.say("site-plan.of-benchmark", Map.of("on", benchmark.on()));
    }
    Fixed.LotCorner lot = (Fixed.LotCorner) fixed;
    return texts.say("site-plan.lot-corner", Map.of("side", wind(lot.side())));
  }

  private String wind(Compass wind) {
    return texts.say("compass." + wind.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }
}
