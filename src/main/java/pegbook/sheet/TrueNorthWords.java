package pegbook.sheet;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.truenorth.TrueNorth;
import pegbook.calc.truenorth.TrueNorth.CompassLine;
import pegbook.calc.truenorth.TrueNorth.EqualShadows;
import pegbook.calc.truenorth.TrueNorth.Light;
import pegbook.calc.truenorth.TrueNorth.NoonShadow;
import pegbook.calc.truenorth.TrueNorth.SunDay;
import pegbook.calc.truenorth.TrueNorth.Turn;
import pegbook.geometry.Compass;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.sheet.plan.NorthPicture;

/** The words of true north. */
record TrueNorthWords(Packet packet, TrueNorth north, Writing writing) {
  private String say(String key, Map<String, String> values) {
    return writing.texts().say("true-north." + key, values);
  }

  private Formats formats() {
    return writing.formats();
  }

  private boolean imperial() {
    return formats().units() == UnitSystem.IMPERIAL;
  }

  /** By the clock, to the second. */
  private static String second(LocalTime time) {
    return String.format(
        Locale.ROOT, "%02d:%02d:%02d", time.getHour(), time.getMinute(), time.getSecond());
  }

  /** By the clock, to the minute. */
  private static String minute(LocalTime time) {
    LocalTime set = time.plusSeconds(30);
    return String.format(Locale.ROOT, "%02d:%02d", set.getHour(), set.getMinute());
  }

  private String degrees(Angle angle) {
    return formats().in(angle, Unit.DEGREE, 2);
  }

  private String small(Length length) {
    return formats().in(length, imperial() ? Unit.INCH : Unit.MILLIMETRE, imperial() ? 2 : 0);
  }

  private String number(String formula) {
    return packet.workings().numberOf("true-north." + formula).orElse("");
  }

  private Length pole() {
    return imperial() ? TrueNorth.POLE_IMPERIAL : TrueNorth.POLE_METRIC;
  }

  private String wind(Compass wind) {
    return writing.texts().say("true-north.wind." + wind.name().toLowerCase(Locale.ROOT));
  }

  String lead() {
    if (north.days().isEmpty()) {
      return say("lead.compass", Map.of());
    }
    return north
        .noon()
        .map(
            noon ->
                say(
                    noon.toNorth() ? "lead.north" : "lead.south",
                    Map.of(
                        "day", formats().weekday(noon.date()),
                        "time", second(noon.time()),
                        "working", number("noon"))))
        .orElse(say("lead.none", Map.of()));
  }

  NorthPicture.Words picture() {
    Turn turn = north.turn();
    return new NorthPicture.Words(
        say("picture.north", Map.of()),
        say("picture.south", Map.of()),
        say("picture.foot", Map.of()),
        north
            .noon()
            .map(noon -> say("picture.noon", Map.of("time", second(noon.time()))))
            .orElse(""),
        north
            .equal()
            .map(equal -> say("picture.first", Map.of("time", minute(equal.before()))))
            .orElse(""),
        north
            .equal()
            .map(equal -> say("picture.second", Map.of("time", minute(equal.after()))))
            .orElse(""),
        say("picture.pegs", Map.of("along", formats().tape(turn.along()))),
        say("picture.chord", Map.of("chord", formats().tape(turn.chord()))),
        say(
            "picture.mark",
            Map.of("mark", turn.mark(), "azimuth", formats().angle(turn.azimuth()))));
  }

  List<String> noon(NoonShadow noon) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("pole", formats().distance(pole()));
    values.put("time", second(noon.time()));
    values.put("shadow", formats().distance(noon.shadow()));
    values.put("turn", degrees(noon.turnPerMinute()));
    return List.of(
        say("noon.pole", values),
        say("noon.clock", values),
        say("noon.mark", values),
        say(noon.toNorth() ? "noon.line.north" : "noon.line.south", values));
  }

  List<String> equal(EqualShadows equal) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("day", formats().weekday(equal.date()));
    values.put("pole", formats().distance(pole()));
    values.put("before", minute(equal.before()));
    values.put("after", minute(equal.after()));
    values.put("shadow", formats().distance(equal.shadow()));
    values.put("swing", formats().distance(equal.swing()));
    values.put("drift", degrees(equal.drift().abs()));
    return List.of(
        say("equal.first", values),
        say("equal.circle", values),
        say("equal.second", values),
        say("equal.line", values));
  }

  TrueNorthSheet.ErrorRow noonError(NoonShadow noon) {
    return new TrueNorthSheet.ErrorRow(
        say("error.noon", Map.of()),
        degrees(noon.error()),
        small(noon.off()),
        number("noon-error"));
  }

  TrueNorthSheet.ErrorRow equalError(EqualShadows equal) {
    return new TrueNorthSheet.ErrorRow(
        say("error.equal", Map.of()),
        degrees(equal.error()),
        small(equal.off()),
        number("equal-error"));
  }

  TrueNorthSheet.ErrorRow compassError(CompassLine compass) {
    return new TrueNorthSheet.ErrorRow(
        say("error.compass", Map.of()),
        degrees(TrueNorth.COMPASS_READING),
        small(compass.off()),
        number("compass-off"));
  }

  TrueNorthSheet.DayRow day(SunDay day) {
    return new TrueNorthSheet.DayRow(
        formats().weekday(day.date()),
        second(day.noon()),
        day.shadow()
            .map(formats()::distance)
            .orElse(
                say(
                    "day." + day.height().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    Map.of())),
        day.turnPerMinute().map(this::degrees).orElse(""),
        light(day, day.rise()),
        light(day, day.set()));
  }

  private String light(SunDay day, Optional<LocalTime> time) {
    if (day.light() == Light.NEVER_SETS) {
      return say("day.never-sets", Map.of());
    }
    return time.map(TrueNorthWords::minute).orElse(say("day.never-rises", Map.of()));
  }

  /** The clock's distance from universal time, and the pole. */
  String dayNotes() {
    return north.days().stream()
        .findFirst()
        .map(
            day ->
                say(
                    "day.note",
                    Map.of(
                        "zone", packet.job().place().timeZone().orElse(""),
                        "offset",
                            day.offset().getTotalSeconds() == 0 ? "+00:00" : day.offset().getId(),
                        "pole", formats().distance(pole()))))
        .orElse("");
  }

  String turnTitle() {
    return say("turn", Map.of("mark", north.turn().mark()));
  }

  List<String> turn() {
    Turn turn = north.turn();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("mark", turn.mark());
    values.put("azimuth", formats().angle(turn.azimuth()));
    values.put("peg", wind(turn.peg()));
    values.put("other", wind(turn.peg() == Compass.NORTH ? Compass.SOUTH : Compass.NORTH));
    values.put("side", wind(turn.side()));
    values.put("along", formats().tape(turn.along()));
    values.put("chord", formats().tape(turn.chord()));
    values.put("check", formats().tape(turn.check()));
    values.put("toMark", formats().tape(turn.toMark()));
    values.put("working", number("chord"));
    if (turn.onLine()) {
      return List.of(say("turn.on-line", values));
    }
    return List.of(
        say("turn.pegs", values),
        say("turn.swing", values),
        say("turn.check", values),
        say("turn.mark", values),
        say("turn.paint", values));
  }

  List<String> compass(CompassLine compass) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("declination", formats().angle(compass.declination().abs()));
    values.put("from", compass.from());
    values.put("date", formats().date(compass.date()));
    values.put("north", formats().angle(compass.north()));
    values.put("first", formats().angle(compass.first()));
    values.put("mark", north.turn().mark());
    values.put("working", number("compass"));
    List<String> lines = new ArrayList<>();
    boolean east = !compass.declination().isLessThan(Angle.ZERO);
    lines.add(say(east ? "compass.east" : "compass.west", values));
    lines.add(say("compass.reads", values));
    lines.add(say("compass.iron", values));
    return lines;
  }

  String basis() {
    return say(
        "basis",
        Map.of(
            "clock",
            formats().number(TrueNorth.CLOCK_MINUTES * 60, 0),
            "mark",
            formats().size(imperial() ? TrueNorth.MARK_IMPERIAL : TrueNorth.MARK_METRIC),
            "radius",
            formats().distance(north.radius())));
  }
}
