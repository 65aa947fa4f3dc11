package pegbook.testing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Made-up place, land, load and crew. */
final class MadeSite {
  private final ObjectNode job;
  private final Chance chance;
  private final Written written;
  private final boolean imperial;

  /** Which name the first feature has. */
  private int first;

  MadeSite(ObjectNode job, Chance chance, Written written, boolean imperial) {
    this.job = job;
    this.chance = chance;
    this.written = written;
    this.imperial = imperial;
  }

  /** As many as the job file takes, their names and numbers as long as it takes. */
  private static void calls(ArrayNode calls) {
    calls.addObject().put("who", "emergency").put("number", "112");
    calls.addObject().put("who", "utility marking").put("number", "555-0107");
    for (String who : List.of("inspector", "engineer", "electrician", "owner")) {
      calls
          .addObject()
          .put("who", who)
          .put("name", "Office of weights, ways and wells 7b")
          .put("number", "+0 (555) 0142 then 17, or 0143");
    }
  }

  MadeSite place() {
    if (chance.often(0.7)) {
      ObjectNode place = job.putObject("place");
      place.put("country", imperial ? "US" : chance.oneOf(List.of("NO", "DE", "NZ")));
      place.put("authority", chance.oneOf(LongNames.AUTHORITIES));
      place.put("parcel", "lot " + chance.whole(1, 99));
      if (chance.often(0.5)) {
        place.putObject("utilities").put("confirmed", "2027-05-06").put("ticket", "T-2207");
        calls(place.putArray("calls"));
      }
    }
    return this;
  }

  MadeSite site(double reach) {
    if (chance.often(0.8)) {
      ObjectNode site = job.putObject("site");
      if (chance.often(0.6)) {
        boundary(site, reach + chance.between(2000, 15_000));
      }
      ArrayNode features = site.putArray("features");
      first = chance.whole(0, LongNames.FEATURES.size() - 1);
      int count = chance.whole(0, 7);
      for (int i = 0; i < count; i++) {
        feature(features.addObject(), reach, i);
      }
    }
    return this;
  }

  private void boundary(ObjectNode site, double half) {
    ArrayNode corners = site.putArray("boundary");
    corners.add(written.place(new Position(-half, -half)));
    corners.add(written.place(new Position(half * 1.1, -half)));
    corners.add(written.place(new Position(half, half * 1.2)));
    corners.add(written.place(new Position(-half, half)));
    site.put("setback", written.length(chance.oneOf(List.of(0.0, 1500.0, 3048.0))));
  }

  private void feature(ObjectNode feature, double reach, int which) {
    feature.put("name", LongNames.FEATURES.get((which + first) % LongNames.FEATURES.size()));
    double far = reach + chance.between(2500, 9000);
    double turn = chance.between(0, 2 * Math.PI);
    Position at = new Position(far * Math.sin(turn), far * Math.cos(turn));
    switch (chance.whole(0, 3)) {
      case 0 -> {
        feature.put("kind", chance.often(0.6) ? "buried line" : "overhead wire");
        feature.put("from", written.place(new Position(-far, at.y())));
        feature.put("to", written.place(new Position(far, at.y() + 1500)));
        feature.put("keepClear", written.length(600));
      }
      case 1 -> {
        ArrayNode corners = feature.putArray("corners");
        corners.add(written.place(at));
        corners.add(written.place(new Position(at.x() + 2500, at.y())));
        corners.add(written.place(new Position(at.x() + 2500, at.y() + 2000)));
        corners.add(written.place(new Position(at.x(), at.y() + 2000)));
      }
      default -> feature.put("at", written.place(at));
    }
  }

  void work() {
    if (chance.often(0.7)) {
      job.putObject("floor")
          .put("use", chance.oneOf(List.of("private deck", "hut", "private platform")))
          .put("live", imperial ? "40 psf" : "2 kPa")
          .put("dead", imperial ? "10 psf" : "0.6 kPa")
          .put("groundSnow", imperial ? "40 psf" : "3 kPa");
    }
    if (chance.often(0.7)) {
      ObjectNode crew = job.putObject("crew");
      crew.put("people", chance.whole(1, 6));
      crew.put("hoursPerDay", chance.whole(4, 9) + " h");
      crew.putArray("lifts")
          .addObject()
          .put("name", "bag from the bed of a low trailer up the ramp to the drum")
          .put("from", "700 mm")
          .put("to", "49 in")
          .put("perMinute", 2);
      if (chance.often(0.7)) {
        crew.put("start", "2027-05-0" + chance.whole(1, 9));
      }
      crew.putArray("workDays").add("fri").add("sat");
    }
    if (chance.often(0.5)) {
      job.putObject("concrete")
          .put("bag", imperial ? "60 lb" : "40 kg")
          .put("mixing", chance.oneOf(List.of("by hand", "mixer", "ready mix")));
    }
    if (chance.often(0.3)) {
      ArrayNode tools = job.putArray("tools");
      tools
          .addObject()
          .put("kind", "clamshell")
          .put("name", chance.oneOf(LongNames.TOOLS))
          .put("reach", written.length(chance.between(600, 1500)));
    }
    // What follows came later: drawn last, it leaves the jobs as they were.
    if (job.get("floor") instanceof ObjectNode floor && chance.often(0.7)) {
      floor.put("top", written.length(chance.between(500, 2000)));
      if (chance.often(0.5)) {
        floor.put("buildUp", written.length(chance.between(150, 450)));
      }
    }
    if (chance.often(0.7)) {
      onEarth(job.get("place") instanceof ObjectNode place ? place : job.putObject("place"));
    }
    if (chance.often(0.6)) {
      plan();
    }
    if (chance.often(0.3)) {
      ObjectNode field =
          job.get("field") instanceof ObjectNode some ? some : job.putObject("field");
      field.putArray("dug").addObject().put("hole", "S1").put("hours", chance.whole(1, 9) + " h");
    }
    shop();
    if (job.get("concrete") instanceof ObjectNode concrete && chance.often(0.6)) {
      concrete.put("air", chance.oneOf(List.of("0 %", "3 %", "5 %", "6.5 %")));
      concrete.put("strength", imperial ? chance.whole(5, 10) * 500 + " psi" : "28 MPa");
    }
    if (job.get("concrete") instanceof ObjectNode concrete && chance.often(0.5)) {
      concrete.put("truckMinimum", imperial ? chance.whole(1, 4) + " yd3" : "1.5 m3");
      concrete.put("batch", imperial ? chance.whole(1, 4) + " ft3" : chance.whole(20, 120) + " L");
      if (!concrete.path("mixing").asText().equals("ready mix") && chance.often(0.5)) {
        ObjectNode mix = concrete.putObject("ownMix");
        mix.put("sand", chance.oneOf(List.of("fine", "medium", "coarse")));
        mix.put("stone", chance.oneOf(List.of("3/8 in", "20 mm", "1 in", "40 mm")));
        mix.put("sandWater", chance.whole(0, 9) + " %");
      }
    }
  }

  /** What the days reckon with; dates only beside a first day. */
  private void plan() {
    ObjectNode plan = job.putObject("plan");
    plan.put("rainDays", chance.whole(0, 4));
    plan.putObject("utility").put("notice", chance.oneOf(List.of("2 work days", "3 days")));
    plan.putObject("inspection")
        .put("notice", "1 work day")
        .put("looks", chance.oneOf(List.of("steel", "open hole and steel")));
    if (job.at("/crew/start").isMissingNode()) {
      return;
    }
    if (chance.often(0.5)) {
      plan.put("deadline", "2027-0" + chance.whole(6, 9) + "-15");
    }
    if (chance.often(0.4)) {
      plan.putObject("machine")
          .put("what", chance.oneOf(LongNames.TOOLS))
          .put("for", "pouring")
          .put("date", "2027-05-2" + chance.whole(0, 9));
    }
    if (chance.often(0.3)) {
      plan.putArray("estimates")
          .addObject()
          .put("work", "dig")
          .put("least", "2 h")
          .put("most", chance.whole(2, 9) + " h");
    }
  }

  /** Loads, ways of selling and prices; dear money has many digits. */
  private void shop() {
    if (chance.often(0.5)) {
      ObjectNode shop = job.putObject("shop");
      if (chance.often(0.7)) {
        shop.put("load", (chance.whole(2, 30) * 100) + (imperial ? " lb" : " kg"));
      }
      if (chance.often(0.5)) {
        shop.put("tube", written.length(chance.between(600, 4000)));
        shop.put("gravelBag", imperial ? "0.4 ft3" : "20 L");
      }
    }
    if (chance.often(0.5)) {
      String currency = chance.oneOf(List.of("USD", "NOK", "JPY", "IDR"));
      ObjectNode prices = job.putObject("prices").put("currency", currency);
      prices.put("bag", currency.equals("IDR") ? "98500" : "6.20");
      if (chance.often(0.6)) {
        prices.put("readyMix", "165 " + currency).put("gravel", "48.5").put("gravelBag", "5");
        prices.put("peg", "0.8").put("nail", "0.045");
        prices.put("cement", "14.2").put("sand", "0.021").put("stone", "0.0195");
      }
    }
  }

  /** Both hemispheres, the tropics and beyond the polar circle. */
  private static final List<List<String>> PLACES =
      List.of(
          List.of("44.9 deg", "-91.4 deg", "America/Chicago"),
          List.of("61.1 deg", "10.4 deg", "Europe/Oslo"),
          List.of("-43.5 deg", "172.6 deg", "Pacific/Auckland"),
          List.of("12 deg", "-86.2 deg", "America/Managua"),
          List.of("78.2 deg", "15.6 deg", "Arctic/Longyearbyen"),
          List.of("-77.8 deg", "166.7 deg", "Antarctica/McMurdo"));

  private void onEarth(ObjectNode place) {
    List<String> where = chance.oneOf(PLACES);
    place.put("latitude", where.get(0)).put("longitude", where.get(1));
    place.put("timeZone", where.get(2));
    if (chance.often(0.5)) {
      place
          .putObject("declination")
          .put("value", chance.oneOf(List.of("-14.5 deg", "3.2 deg", "57 deg")))
          .put("from", "the geological survey's page for the nearest town")
          .put("date", chance.oneOf(List.of("2020-01-01", "2027-03-01")));
    }
  }
}
