package pegbook.testing;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Made-up ground: soil, frost, bearing, levels. */
final class MadeGround {
  private static final List<String> RETURNS = List.of("100 years", "mean", "30 years", "10 years");
  private static final List<String> SURFACES =
      List.of("shaded", "bare soil", "turf", "trees", "concrete", "asphalt");

  private final ObjectNode job;
  private final Chance chance;
  private final Written written;
  private final boolean imperial;

  MadeGround(ObjectNode job, Chance chance, Written written, boolean imperial) {
    this.job = job;
    this.chance = chance;
    this.written = written;
    this.imperial = imperial;
  }

  /**
   * Adds the ground.
   *
   * @param fall how far below and above the benchmark it lies at most, mm
   */
  void ground(List<String> marks, double reach, double fall) {
    ObjectNode ground = job.putObject("ground").put("soil", JobMaker.soil(chance));
    ground.put("digging", chance.oneOf(List.of("easy", "ordinary", "heavy", "stony")));
    if (chance.often(0.4)) {
      ground.put("water", written.length(chance.between(800, 4000)));
    }
    if (chance.often(0.6)) {
      ground
          .putObject("allowablePressure")
          .put("value", imperial ? "1500 psf" : "75 kPa")
          .put("kind", chance.often(0.5) ? "gross" : "net")
          .put("from", "presumptive table of the authority");
    }
    if (chance.often(0.7)) {
      frost(ground);
    }
    if (chance.often(0.7)) {
      ground
          .putObject("benchmark")
          .put("at", written.place(new Position(reach + 3000, chance.between(-2000, 2000))))
          .put("on", LongNames.cut("nail in the root of " + chance.oneOf(LongNames.FEATURES)));
      levels(ground, marks, fall);
    }
  }

  private void frost(ObjectNode ground) {
    ObjectNode frost = ground.putObject("frost");
    frost.put("depth", written.length(chance.oneOf(List.of(0.0, 610.0, 1066.8, 1500.0))));
    frost.put("from", "county building office, by phone 2027-03-02");
    if (chance.often(0.3)) {
      frost
          .putObject("exemption")
          .put("who", "building inspector")
          .put("when", "2027-05-25")
          .put("covers", chance.oneOf(List.of("supports", "piers", "all")));
    }
  }

  private void levels(ObjectNode ground, List<String> marks, double fall) {
    double known = chance.oneOf(List.of(0.0, 0.6, 1.0));
    ObjectNode levels = ground.putObject("levels");
    for (String mark : marks) {
      if (chance.often(known)) {
        levels.put(mark, written.level(chance.between(-fall, fall / 3)));
      }
    }
  }

  /** Frost in the air of some jobs; told by the number, so that no other chance shifts. */
  void freezing(int number) {
    if (number % 3 == 0 && job.get("ground") instanceof ObjectNode ground) {
      ObjectNode index =
          ground
              .putObject("airFreezingIndex")
              .put(
                  "value",
                  imperial
                      ? 300 + 60 * (number % JobMaker.ROUND) + " F-days"
                      : 200 + 30 * (number % JobMaker.ROUND) + " C-days")
              .put("return", RETURNS.get(number / 3 % RETURNS.size()))
              .put("surface", SURFACES.get(number / 3 % SURFACES.size()));
      if (number % 2 == 0) {
        index
            .put("days", 90 + number % JobMaker.ROUND)
            .put("meanYear", imperial ? "44 °F" : "5.5 °C");
      }
      if (number % 9 == 0) {
        index.put("from", LongNames.AUTHORITIES.get(number % LongNames.AUTHORITIES.size()));
        index.put("moisture", "9 %").put("dryDensity", imperial ? "105 pcf" : "1680 kg/m3");
      }
    }
  }

  /** Wind on some roofs and domes, sleeves round some footings; told by the number. */
  void uplift(int number) {
    if (number % 4 == 0) {
      ObjectNode wind = job.putObject("wind").put("uplift", imperial ? "15 psf" : "0.8 kPa");
      if (number % 8 == 0) {
        wind.put("area", imperial ? "180 ft2" : "17 m2");
      }
      wind.put("from", LongNames.AUTHORITIES.get(number % LongNames.AUTHORITIES.size()));
    }
    if (number % 5 == 2 && job.get("supports") instanceof ObjectNode supports) {
      supports.put("side", "smooth sleeve");
    }
    if (number % 3 == 1 && job.path("piers").path(0) instanceof ObjectNode pier) {
      pier.put("uplift", imperial ? "120 lbf" : "600 N");
    }
  }
}
