package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.bearing.Allowable;
import pegbook.calc.bearing.Bearing;
import pegbook.calc.bearing.Bearing.Check;
import pegbook.calc.bearing.Bearing.Footing;
import pegbook.calc.bearing.Bearing.Needed;
import pegbook.calc.bearing.Bearing.Verdict;
import pegbook.figures.MarkKind;
import pegbook.measure.Force;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;

/**
 * The footings against the ground.
 *
 * @param lead how they stand, in a sentence
 * @param ground what the ground may carry, and whose word it is
 * @param rows alike footings in one row
 * @param working the numbers of the workings behind the columns
 * @param remedies what to widen, one sentence each
 * @param notes how to read it
 */
public record BearingPart(
    String lead,
    String ground,
    List<Row> rows,
    Row working,
    List<String> remedies,
    List<String> notes) {

  /** A row of the table, cells in the order of its columns; emphasis is a class of the style. */
  public record Row(
      String marks,
      String carried,
      String own,
      String standing,
      String pressure,
      String needed,
      String byGross,
      String verdict,
      String emphasis) {}

  /** A force to the pound, or to ten newtons. */
  static String force(Force force, Formats formats) {
    return formats.units() == UnitSystem.IMPERIAL
        ? formats.in(force, Unit.POUND_FORCE, 0)
        : formats.in(force, Unit.KILONEWTON, 2);
  }

  static BearingPart of(Packet packet, Writing writing) {
    return new Maker(packet, writing).part();
  }

  private record Maker(Packet packet, Writing writing) {
    BearingPart part() {
      return new BearingPart(lead(), ground(), rows(), working(), remedies(), notes());
    }

    private String say(String key) {
      return writing.texts().say(key);
    }

    private Bearing bearing() {
      return packet.bearing();
    }

    private String lead() {
      if (bearing().allowable().isEmpty()) {
        return say("footings.lead.no-value");
      }
      List<String> over =
          bearing().footings().stream()
              .filter(footing -> footing.check().filter(Maker::isOver).isPresent())
              .map(Footing::mark)
              .toList();
      return over.isEmpty()
          ? say("footings.lead.within")
          : writing
              .texts()
              .say("footings.lead.exceeds", Map.of("marks", writing.formats().names(over)));
    }

    private static boolean isOver(Check check) {
      return check.verdict() == Verdict.EXCEEDS || check.verdict() == Verdict.NO_WIDTH;
    }

    private String ground() {
      Optional<Allowable> allowable = bearing().allowable();
      if (allowable.isEmpty()) {
        return say("footings.ground.none");
      }
      Map<String, String> words = new LinkedHashMap<>();
      words.put("pressure", writing.formats().pressure(allowable.get().value()));
      words.put("from", allowable.get().from().orElse(""));
      words.put("source", new Sources(writing.texts()).write(allowable.get().sources()));
      words.put(
          "kind", say(allowable.get().gross() ? "footings.ground.gross" : "footings.ground.net"));
      return writing
          .texts()
          .say(
              allowable.get().assumed() ? "footings.ground.assumed" : "footings.ground.given",
              words);
    }

    /** One row for footings whose cells all read the same. */
    private List<Row> rows() {
      Map<Row, List<String>> alike = new LinkedHashMap<>();
      for (Footing footing : bearing().footings()) {
        alike.computeIfAbsent(row("", footing), row -> new ArrayList<>()).add(footing.mark());
      }
      List<Row> rows = new ArrayList<>();
      alike.forEach(
          (row, marks) ->
              rows.add(
                  new Row(
                      writing.formats().names(marks),
                      row.carried(),
                      row.own(),
                      row.standing(),
                      row.pressure(),
                      row.needed(),
                      row.byGross(),
                      row.verdict(),
                      row.emphasis())));
      return rows;
    }

    private Row row(String marks, Footing footing) {
      Formats formats = writing.formats();
      Optional<Needed> needed = footing.check().flatMap(Check::needed);
      return new Row(
          marks,
          footing.carried().isMoreThan(Force.ZERO)
              ? force(footing.carried(), formats)
              : say(footing.kind() == MarkKind.PIER ? "footings.not-given" : "footings.nothing"),
          force(footing.own(), formats),
          formats.size(footing.standing()),
          formats.units() == UnitSystem.IMPERIAL
              ? formats.in(footing.pressure(), Unit.PSF, 0)
              : formats.in(footing.pressure(), Unit.KILOPASCAL, 1),
          needed.map(Needed::diameter).map(formats::size).orElse(""),
          needed.flatMap(Needed::byGross).map(formats::size).orElse(""),
          footing.check().map(check -> verdict(check.verdict())).orElse(say("footings.no-value")),
          footing.check().filter(Maker::isOver).isPresent() ? "strong" : "");
    }

    private String verdict(Verdict verdict) {
      return say("footings.verdict." + verdict.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private Row working() {
      boolean gross = bearing().allowable().map(Allowable::gross).orElse(true);
      return new Row(
          say("footings.working"),
          number("instrument"),
          number("own-weight"),
          number("contact-area"),
          number(gross ? "gross-pressure" : "net-pressure"),
          number("round"),
          number("round-by-gross"),
          number(gross ? "gross-may-carry" : "net-may-carry"),
          "");
    }

    private String number(String formula) {
      return packet.workings().numberOf("bearing." + formula).orElse("");
    }

    private List<String> remedies() {
      return bearing().remedies().stream()
          .map(
              remedy ->
                  writing
                      .texts()
                      .say(
                          "footings.remedy",
                          Map.of(
                              "marks", writing.formats().names(remedy.marks()),
                              "diameter", writing.formats().size(remedy.diameter()),
                              "side", writing.formats().size(remedy.side()),
                              "thickness", writing.formats().size(remedy.thickness()))))
          .toList();
    }

    private List<String> notes() {
      List<String> notes = new ArrayList<>();
      bearing()
          .snowRoom()
          .map(
              room ->
                  writing
                      .texts()
                      .say(
                          "footings.note.snow-room",
                          Map.of(
                              "marks", writing.formats().names(room.marks()),
                              "snow",
                                  writing.formats().units() == UnitSystem.IMPERIAL
                                      ? writing.formats().in(room.snow(), Unit.PSF, 0)
                                      : writing.formats().in(room.snow(), Unit.KILOPASCAL, 1),
                              "working", number("snow-room"))))
          .ifPresent(notes::add);
      notes.add(say("footings.note.two-ways"));
      notes.add(say("footings.note.weight"));
      return notes;
    }
  }
}
