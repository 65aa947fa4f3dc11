package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.frostgrip.FrostGrip;
import pegbook.calc.frostgrip.FrostGrip.Footing;
import pegbook.calc.frostgrip.FrostGrip.Verdict;
import pegbook.calc.frostgrip.FrostGrip.WindLift;
import pegbook.job.Pier;
import pegbook.job.Wind;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.published.Adfreeze;
import pegbook.published.Citation;

/**
 * What lifts footings, and what holds them.
 *
 * @param lead what decides, in a sentence
 * @param grips one table of alike footings in one row; none where there is no figure of grip
 * @param rests what the figures take; none where there are none
 * @param remedies what keeps a footing down; none where nothing lifts
 * @param needs the sleeves to buy, one sentence each
 * @param wind what the job says of wind
 * @param winds one table of what wind lifts; none where the job gives no wind
 */
public record FrostGripPart(
    String lead,
    List<Grips> grips,
    List<String> rests,
    List<Remedies> remedies,
    List<String> needs,
    List<String> wind,
    List<Winds> winds) {

  /** What keeps a footing down, the cheapest first. */
  public record Remedies(List<String> lines) {}

  /** A table, with the numbers of the workings in its last row. */
  public record Grips(List<Row> rows, Row working) {}

  /** A row of the table of grip, cells in the order of its columns. */
  public record Row(
      String marks,
      String frozen,
      String grip,
      String hold,
      String anchorage,
      String deeper,
      String verdict) {}

  /** A table, with the numbers of the workings in its last row. */
  public record Winds(List<WindRow> rows, WindRow working) {}

  /** A row of the table of wind, cells in the order of its columns. */
  public record WindRow(String marks, String up, String hold, String anchor, String net) {}

  static FrostGripPart of(Packet packet, Writing writing) {
    return new Maker(packet, writing).part();
  }

  private record Maker(Packet packet, Writing writing) {
    FrostGripPart part() {
      boolean figures = footings().stream().anyMatch(footing -> footing.grip().isPresent());
      return new FrostGripPart(
          lead(),
          figures ? List.of(new Grips(rows(), working())) : List.of(),
          figures ? List.of(rests()) : List.of(),
          lifted().isEmpty() ? List.of() : List.of(remedies()),
          needs(),
          wind(),
          packet.frostGrip().lifts().isEmpty()
              ? List.of()
              : List.of(new Winds(windRows(), windWorking())));
    }

    private String say(String key) {
      return writing.texts().say("frost-grip." + key);
    }

    private String say(String key, Map<String, String> words) {
      return writing.texts().say("frost-grip." + key, words);
    }

    private String source(Citation citation) {
      return new Sources(writing.texts()).write(citation);
    }

    private String number(String formula) {
      return packet.workings().numberOf("frost-grip." + formula).orElse("");
    }

    private List<Footing> footings() {
      return packet.frostGrip().footings();
    }

    private List<Footing> lifted() {
      return footings().stream()
          .filter(
              footing ->
                  footing.verdict() == Verdict.LIFTS || footing.verdict() == Verdict.MAY_LIFT)
          .toList();
    }

    /** What lifts comes first; else the first footing speaks for all. */
    private String lead() {
      if (!lifted().isEmpty()) {
        String water = packet.frostGrip().water().name().toLowerCase(Locale.ROOT);
        return say(
            "lead.lifts",
            Map.of(
                "marks",
                writing.formats().names(lifted().stream().map(Footing::mark).toList()),
                "soil",
                writing.texts().say("soil." + packet.job().ground().soil().id()),
                "water",
                say("water." + water)));
      }
      Adfreeze wet = Adfreeze.find("wet-gravel-on-steel");
      Map<String, String> words =
          Map.of("wet", writing.formats().pressure(wet.stress()), "source", source(wet.citation()));
      Verdict verdict = footings().get(0).verdict();
      boolean asked = packet.job().ground().frost().isPresent();
      return switch (verdict) {
        case NO_FROST -> say(asked ? "lead.none-asked" : "lead.no-frost");
        case DRAINS -> say("lead.drains", words);
        case KEPT_OFF -> say("lead.kept-off");
        case HELD, MAY_LIFT, LIFTS -> say("lead.held");
      };
    }

    private List<Row> rows() {
      Map<Row, List<String>> alike = new LinkedHashMap<>();
      for (Footing footing : footings()) {
        alike.computeIfAbsent(row(footing), row -> new ArrayList<>()).add(footing.mark());
      }
      List<Row> rows = new ArrayList<>();
      alike.forEach(
          (row, marks) ->
              rows.add(
                  new Row(
                      writing.formats().names(marks),
                      row.frozen(),
                      row.grip(),
                      row.hold(),
                      row.anchorage(),
                      row.deeper(),
                      row.verdict())));
      return rows;
    }

    private Row row(Footing footing) {
      return new Row(
          "",
          writing.formats().length(footing.frozen()),
          footing
              .grip()
              .map(
                  grip ->
                      say(
                          "grip",
                          Map.of("typical", about(grip.typical()), "high", about(grip.high()))))
              .orElse(""),
          footing.grip().isPresent() ? about(footing.hold()) : "",
          footing.grip().map(grip -> about(grip.anchorage())).orElse(""),
          footing
              .grip()
              .flatMap(FrostGrip.Grip::deeper)
              .map(depth -> say("deeper", Map.of("depth", whole(depth))))
              .orElse(""),
          say(
              "verdict." + footing.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'),
              Map.of("side", footing.side().map(side -> say("side." + side.id())).orElse(""))));
    }

    /** An estimate in round figures: to the hundred pounds, or half a kilonewton. */
    private String about(Force force) {
      Formats formats = writing.formats();
      return formats.units() == UnitSystem.IMPERIAL
          ? formats.in(force.setTo(Force.ofPoundsForce(100), Rounding.NEAREST), Unit.POUND_FORCE, 0)
          : formats.in(force.setTo(Force.ofKilonewtons(0.5), Rounding.NEAREST), Unit.KILONEWTON, 1);
    }

    /** A length up to the foot or the decimetre. */
    private String whole(Length length) {
      Formats formats = writing.formats();
      return formats.units() == UnitSystem.IMPERIAL
          ? formats.in(length.setTo(Length.ofFeet(1), Rounding.UP), Unit.FOOT, 0)
          : formats.in(length.setTo(new Length(0.1), Rounding.UP), Unit.METRE, 1);
    }

    private Row working() {
      return new Row(
          say("working"),
          number("frozen"),
          number("grip"),
          number("hold"),
          number("anchorage"),
          number("deeper"),
          "");
    }

    private String rests() {
      Adfreeze typical = Adfreeze.find("fine-on-concrete");
      Formats formats = writing.formats();
      return say(
          "rests",
          Map.of(
              "typical", stress(FrostGrip.typicalStress(), formats),
              "high", stress(FrostGrip.highStress(), formats),
              "source", source(typical.citation()),
              "friction", source(FrostGrip.FRICTION)));
    }

    private static String stress(pegbook.measure.Pressure stress, Formats formats) {
      return formats.in(
          stress, formats.units() == UnitSystem.IMPERIAL ? Unit.PSF : Unit.KILOPASCAL, 0);
    }

    private Remedies remedies() {
      return new Remedies(
          List.of("water", "sleeve", "backfill", "bell", "deeper", "key").stream()
              .map(key -> say("remedy." + key))
              .toList());
    }

    private List<String> needs() {
      return packet.frostGrip().needs().stream()
          .map(need -> Purchase.of(need, writing))
          .map(buy -> say("buy", Map.of("name", buy.what(), "count", buy.order())))
          .toList();
    }

    private List<String> wind() {
      List<String> lines = new ArrayList<>();
      Optional<Wind> wind = packet.job().wind();
      wind.map(this::taken).ifPresent(lines::add);
      boolean piers = packet.job().piers().stream().map(Pier::uplift).anyMatch(Optional::isPresent);
      if (piers) {
        lines.add(say("wind.piers", Map.of("source", source(FrostGrip.UPLIFT))));
      }
      if (lines.isEmpty()) {
        lines.add(say("wind.not-given"));
      }
      return List.copyOf(lines);
    }

    private String taken(Wind wind) {
      Formats formats = writing.formats();
      return say(
          "wind.taken",
          Map.of(
              "uplift", formats.pressure(wind.uplift()),
              "area", wind.area().map(formats::area).orElse(say("wind.area-of-floor")),
              "from", wind.from(),
              "source", source(FrostGrip.UPLIFT)));
    }

    private List<WindRow> windRows() {
      Map<WindRow, List<String>> alike = new LinkedHashMap<>();
      for (WindLift lift : packet.frostGrip().lifts()) {
        alike.computeIfAbsent(windRow(lift), row -> new ArrayList<>()).add(lift.mark());
      }
      List<WindRow> rows = new ArrayList<>();
      alike.forEach(
          (row, marks) ->
              rows.add(
                  new WindRow(
                      writing.formats().names(marks),
                      row.up(),
                      row.hold(),
                      row.anchor(),
                      row.net())));
      return rows;
    }

    private WindRow windRow(WindLift lift) {
      Formats formats = writing.formats();
      return new WindRow(
          "",
          BearingPart.force(lift.up(), formats),
          BearingPart.force(lift.hold(), formats),
          left(lift.anchor()),
          left(lift.net()));
    }

    private String left(Force force) {
      return force.newtons() > 1
          ? BearingPart.force(force, writing.formats())
          : say("wind.nothing");
    }

    private WindRow windWorking() {
      return new WindRow(
          say("working"),
          number("wind-up"),
          number("hold"),
          number("wind-anchor"),
          number("wind-net"));
    }
  }
}
