package pegbook.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pegbook.calc.provingmarks.ProvingMarks;
import pegbook.calc.provingmarks.ProvingMarks.Check;
import pegbook.calc.provingmarks.ProvingMarks.Hidden;
import pegbook.calc.provingmarks.ProvingMarks.Kind;
import pegbook.calc.provingmarks.ProvingMarks.Tie;
import pegbook.calc.provingmarks.ProvingMarks.Tried;
import pegbook.calc.siteplan.SitePlan;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;

/** The sentences of the sheet that proves the marks. */
record ProvingMarksWords(Packet packet, ProvingMarks proving, Writing writing) {
  private static final List<Kind> WHOLE =
      List.of(Kind.MIRRORED_WHOLE, Kind.TURNED_WHOLE, Kind.TURNED_AND_MIRRORED);

  private String say(String key, String... namesAndValues) {
    Map<String, String> values = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      values.put(namesAndValues[i], namesAndValues[i + 1]);
    }
    return writing.texts().say("proving-marks." + key, values);
  }

  private String count(long count) {
    return writing.formats().count(count);
  }

  /** Up to the next division: a mistake that may hide is never written smaller. */
  private String upwards(Length length) {
    return writing.formats().tape(length.setTo(proving.division(), Rounding.UP));
  }

  private String working(String formula) {
    return packet.workings().numberOf(formula).orElse("");
  }

  /** What the distances show. */
  String lead() {
    String checks = count(proving.checks().size());
    Hidden worst = proving.worst();
    if (proving.isWithinTolerance()) {
      return say(
          "lead.within",
          "count",
          checks,
          "tolerance",
          writing.formats().length(proving.tolerance()),
          "mark",
          worst.mark(),
          "radius",
          worst.radius().map(this::upwards).orElse(""),
          "working",
          working("proving-marks.hidden"));
    }
    if (worst.radius().isEmpty()) {
      return say("lead.none", "count", checks, "mark", worst.mark());
    }
    return say(
        "lead.coarse",
        "count",
        checks,
        "tolerance",
        writing.formats().length(proving.tolerance()),
        "others",
        others(),
        "mark",
        worst.mark(),
        "radius",
        worst.radius().map(this::upwards).orElse(""),
        "working",
        working("proving-marks.hidden"));
  }

  /** The marks at which every mistake of more than the tolerance shows. */
  private String others() {
    List<String> within =
        proving.hidden().stream().filter(Hidden::within).map(Hidden::mark).toList();
    return within.isEmpty()
        ? say("others.none")
        : say(
            "others.some",
            "tolerance",
            writing.formats().length(proving.tolerance()),
            "marks",
            writing.formats().names(within));
  }

  /** How small the set is. */
  String smallest() {
    return say(
        howSmall(),
        "count",
        count(proving.checks().size()),
        "least",
        count(proving.size().least()),
        "possible",
        count(proving.size().possible()),
        "more",
        proving.isWithinTolerance() || proving.checks().size() == proving.size().possible()
            ? ""
            : say("more"));
  }

  private String howSmall() {
    if (!proving.size().smallest()) {
      return "small";
    }
    return proving.size().all() ? "smallest" : "smallest.looked";
  }

  /** One distance between marks. */
  ProvingMarksSheet.CheckRow row(Check check) {
    Formats formats = writing.formats();
    return new ProvingMarksSheet.CheckRow(
        check.pair().first() + "–" + check.pair().second(),
        formats.tape(check.expected()),
        formats.tape(check.limit()),
        formats.tape(check.least()),
        formats.tape(check.most()));
  }

  /** How often good marks fail. */
  List<String> alarms() {
    List<String> alarms = new ArrayList<>();
    proving.checks().stream()
        .filter(Check::held)
        .max(Comparator.comparingDouble(Check::alarm))
        .ifPresent(
            worst ->
                alarms.add(
                    say(
                        "held",
                        "count",
                        count(proving.checks().stream().filter(Check::held).count()),
                        "worst",
                        worst.pair().first() + "–" + worst.pair().second(),
                        "often",
                        count((long) Math.floor(1 / worst.alarm())),
                        "working",
                        working("proving-marks.alarm"))));
    alarms.add(say("alarms", "number", writing.formats().number(100 * proving.falseAlarms(), 0)));
    return alarms;
  }

  /** One distance from a fixed thing. */
  ProvingMarksSheet.TieRow tie(Tie tie) {
    Formats formats = writing.formats();
    Point from = packet.sitePlan().tiedFrom().get(tie.station());
    SitePlan.Fixed fixed =
        packet.sitePlan().ties().stream()
            .filter(some -> some.from().equals(from))
            .map(SitePlan.Tie::fixed)
            .findFirst()
            .orElseThrow();
    return new ProvingMarksSheet.TieRow(
        new FixedWords(writing.texts()).of(fixed),
        tie.mark(),
        formats.tape(tie.least()),
        formats.tape(tie.most()),
        tie.mirrored()
            .map(length -> formats.tape(length.setTo(proving.division(), Rounding.NEAREST)))
            .orElse(say("mirrored.same")));
  }

  /** What the ties are for. */
  String tiesWhy() {
    return say(proving.ties().isEmpty() ? "ties.none" : "ties.why");
  }

  /** What was tried. */
  List<String> shown() {
    List<String> shown = new ArrayList<>();
    shown.add(say("shown.one"));
    for (Kind kind : List.of(Kind.SWAPPED, Kind.MIRRORED_PART, Kind.SLIPPED)) {
      proving.tried().stream()
          .filter(tried -> tried.kind() == kind)
          .forEach(tried -> shown.add(tried(tried)));
    }
    if (proving.joined()
        && proving.tried().stream().noneMatch(tried -> tried.kind() == Kind.MIRRORED_PART)
        && proving.unseen().stream().noneMatch(some -> some.kind() == Kind.MIRRORED_PART)) {
      shown.add(say("shown.any-part"));
    }
    shown.add(whole());
    return shown;
  }

  /** The figure put down wrong as a whole, in one line. */
  private String whole() {
    List<Tried> whole =
        proving.tried().stream().filter(tried -> WHOLE.contains(tried.kind())).toList();
    Tried all =
        new Tried(
            Kind.MIRRORED_WHOLE,
            whole.stream().mapToInt(Tried::count).sum(),
            whole.stream().mapToInt(Tried::byDistances).sum(),
            whole.stream().mapToInt(Tried::byTies).sum());
    return tried(all);
  }

  private String tried(Tried tried) {
    boolean imperial = writing.formats().units() == UnitSystem.IMPERIAL;
    String what =
        say(
            "shown." + tried.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
            "count",
            count(tried.count()),
            "slips",
            say(imperial ? "slips.imperial" : "slips.metric"));
    return what + " " + found(tried);
  }

  private String found(Tried tried) {
    int left = tried.count() - tried.byDistances() - tried.byTies();
    if (tried.byDistances() == tried.count()) {
      return say("found.distances");
    }
    if (tried.byTies() == tried.count()) {
      return say("found.ties");
    }
    if (left == tried.count()) {
      return say("found.none");
    }
    return say(
        "found.some",
        "distances",
        count(tried.byDistances()),
        "ties",
        count(tried.byTies()),
        "left",
        count(left));
  }

  /** What the limits rest on. */
  String basis() {
    return say(
        "basis",
        "working",
        working("proving-marks.limit"),
        "first",
        packet.tapeTable().baseline().first(),
        "second",
        packet.tapeTable().baseline().second(),
        "tolerance",
        writing.formats().length(proving.tolerance()));
  }
}
