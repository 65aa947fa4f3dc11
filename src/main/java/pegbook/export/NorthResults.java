package pegbook.export;

import pegbook.calc.truenorth.TrueNorth;
import pegbook.calc.truenorth.TrueNorth.CompassLine;
import pegbook.calc.truenorth.TrueNorth.EqualShadows;
import pegbook.calc.truenorth.TrueNorth.NoonShadow;
import pegbook.calc.truenorth.TrueNorth.SunDay;
import pegbook.calc.truenorth.TrueNorth.Turn;

/** The figures of true north. */
final class NorthResults {
  private NorthResults() {}

  static void write(JsonFigures json, TrueNorth north) {
    json.list("days", north.days(), NorthResults::day);
    north.noon().ifPresent(noon -> json.object("noonShadow", content -> noon(content, noon)));
    north.equal().ifPresent(equal -> json.object("equalShadows", content -> equal(content, equal)));
    json.object("turn", content -> turn(content, north.turn()));
    north
        .compass()
        .ifPresent(compass -> json.object("compass", content -> compass(content, compass)));
  }

  private static void day(JsonFigures json, SunDay day) {
    json.text("date", day.date().toString())
        .text("noon", day.noon().toString())
        .text("offset", day.offset().getId())
        .quantity("altitudeRadians", day.altitude())
        .text("height", day.height().name())
        .quantity("shadowMetres", day.shadow())
        .quantity("turnPerMinuteRadians", day.turnPerMinute())
        .text("light", day.light().name())
        .text("sunrise", day.rise().map(Object::toString))
        .text("sunset", day.set().map(Object::toString));
  }

  private static void noon(JsonFigures json, NoonShadow noon) {
    json.text("date", noon.date().toString())
        .text("time", noon.time().toString())
        .flag("toNorth", noon.toNorth())
        .quantity("shadowMetres", noon.shadow())
        .quantity("errorRadians", noon.error())
        .quantity("offMetres", noon.off());
  }

  private static void equal(JsonFigures json, EqualShadows equal) {
    json.text("date", equal.date().toString())
        .text("before", equal.before().toString())
        .text("after", equal.after().toString())
        .quantity("shadowMetres", equal.shadow())
        .quantity("firstShadowRadians", equal.firstShadow())
        .quantity("secondShadowRadians", equal.secondShadow())
        .quantity("swingMetres", equal.swing())
        .quantity("driftRadians", equal.drift())
        .quantity("errorRadians", equal.error())
        .quantity("offMetres", equal.off());
  }

  private static void turn(JsonFigures json, Turn turn) {
    json.text("mark", turn.mark())
        .quantity("azimuthRadians", turn.azimuth())
        .text("peg", turn.peg().name())
        .text("side", turn.side().name())
        .quantity("alongMetres", turn.along())
        .quantity("chordMetres", turn.chord())
        .quantity("checkMetres", turn.check())
        .quantity("toMarkMetres", turn.toMark());
  }

  private static void compass(JsonFigures json, CompassLine compass) {
    json.quantity("declinationRadians", compass.declination())
        .text("from", compass.from())
        .text("date", compass.date().toString())
        .quantity("northShowsRadians", compass.north())
        .quantity("firstShowsRadians", compass.first());
  }
}
