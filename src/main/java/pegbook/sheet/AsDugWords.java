package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.asdug.AsDug.Depth;
import pegbook.calc.asdug.AsDug.Row;
import pegbook.calc.asdug.DugChecks.Between;
import pegbook.calc.asdug.DugChecks.OffCentre;
import pegbook.calc.asdug.DugChecks.Purpose;
import pegbook.calc.asdug.DugChecks.Room;
import pegbook.calc.asdug.DugChecks.Tape;
import pegbook.job.Field.Moved;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.packet.Packet;

/**
 * The words and cells of the sheet of holes as they were dug.
 *
 * @param packet whose holes
 * @param writing words and formats
 */
record AsDugWords(Packet packet, Writing writing) {
  private static final Length NOTHING = Length.ofMillimetres(0.5);

  private String say(String key) {
    return say(key, Map.of());
  }

  private String say(String key, Map<String, String> values) {
    return writing.texts().say("as-dug." + key, values);
  }

  private Formats formats() {
    return writing.formats();
  }

  private static String word(Enum<?> any) {
    return any.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  String number(String formula) {
    return packet.workings().numberOf("as-dug." + formula).orElse("");
  }

  String lead() {
    return say(
        "lead",
        Map.of(
            "measured", formats().count(packet.asDug().rows().size()),
            "holes", formats().count(packet.asDug().holes().size())));
  }

  List<AsDugSheet.Row> rows() {
    return packet.asDug().rows().stream().map(this::row).toList();
  }

  AsDugSheet.Row workings() {
    return new AsDugSheet.Row(
        say("working"), "", "", number("deeper"), "", number("moved"), poured(), "");
  }

  private String poured() {
    return packet.workings().numberOf("concrete-plan.poured").orElse("");
  }

  private AsDugSheet.Row row(Row row) {
    return new AsDugSheet.Row(
        row.mark(),
        formats().tape(row.planned().dug()),
        row.dug().depth().map(formats()::tape).orElse(say("not-measured")),
        row.deeper().map(this::signed).orElse(""),
        wide(row),
        moved(row),
        concrete(row),
        todo(row));
  }

  /** "2 in deeper", "3 in short", "as planned". */
  private String signed(Length deeper) {
    if (!deeper.abs().isMoreThan(NOTHING)) {
      return say("same");
    }
    return say(
        deeper.isMoreThan(Length.ZERO) ? "deeper" : "short",
        Map.of("by", formats().tape(deeper.abs())));
  }

  private String wide(Row row) {
    return row.dug()
        .diameter()
        .map(
            found ->
                say(
                    "wide",
                    Map.of(
                        "planned", formats().size(row.planned().diameter()),
                        "found", formats().size(found))))
        .orElse(formats().size(row.planned().diameter()));
  }

  private String moved(Row row) {
    List<String> parts = new ArrayList<>();
    row.dug()
        .movedBy()
        .ifPresent(
            by -> {
              part(parts, by.east(), "east", "west");
              part(parts, by.north(), "north", "south");
            });
    if (parts.isEmpty()) {
      return row.dug().movedBy().isPresent() ? say("on-mark") : "";
    }
    return String.join(", ", parts);
  }

  private void part(List<String> parts, Length by, String ahead, String back) {
    if (by.abs().isMoreThan(NOTHING)) {
      String side = by.isMoreThan(Length.ZERO) ? ahead : back;
      parts.add(say("side." + side, Map.of("by", formats().tape(by.abs()))));
    }
  }

  /** What the hole takes now. */
  private String concrete(Row row) {
    var fill = packet.concretePlan().fill(row.mark());
    return ConcretePlanSheet.isByVolume(packet)
        ? formats().volume(fill.poured())
        : say(
            "concrete",
            Map.of(
                "volume", formats().volume(fill.poured()),
                "bags", formats().count(fill.bags())));
  }

  private String todo(Row row) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("by", row.deeper().map(by -> formats().tape(by.abs())).orElse(""));
    values.put("gravel", formats().size(row.filled().gravel()));
    List<String> sentences = new ArrayList<>();
    if (row.dug().depth().isPresent()) {
      boolean inRock = row.depth() == Depth.SHALLOW && row.dug().rock().isPresent();
      sentences.add(say("do." + word(row.depth()) + (inRock ? "-rock" : ""), values));
    }
    row.dug()
        .soil()
        .filter(soil -> soil != packet.job().ground().soil())
        .ifPresent(
            soil ->
                sentences.add(
                    say("do.soil", Map.of("soil", writing.texts().say("soil." + soil.id())))));
    row.dug()
        .water()
        .ifPresent(at -> sentences.add(say("do.water", Map.of("at", formats().tape(at)))));
    row.dug()
        .rock()
        .ifPresent(at -> sentences.add(say("do.rock", Map.of("at", formats().tape(at)))));
    if (row.moved().isMoreThan(NOTHING)) {
      sentences.add(say("do.moved", Map.of("back", back(row.dug().movedBy().orElseThrow()))));
    }
    return sentences.isEmpty() ? say("do.nothing") : String.join(" ", sentences);
  }

  /** The way from the hole's middle back to the mark. */
  private String back(Moved by) {
    List<String> parts = new ArrayList<>();
    part(parts, by.east().negated(), "east", "west");
    part(parts, by.north().negated(), "north", "south");
    return String.join(", ", parts);
  }

  List<AsDugSheet.LoadRow> loads() {
    return packet.dugChecks().loads().stream().map(this::load).toList();
  }

  AsDugSheet.LoadRow loadWorkings() {
    return new AsDugSheet.LoadRow(
        say("working"), number("moved"), "", number("kern"), "", number("edge-pressure"), "", "");
  }

  private AsDugSheet.LoadRow load(OffCentre load) {
    return new AsDugSheet.LoadRow(
        load.mark(),
        formats().tape(load.moved()),
        formats().size(load.width()),
        formats().tape(load.kern()),
        pressure(load.pressure()),
        load.edge().map(this::pressure).orElse(say("none")),
        load.allowable().map(this::pressure).orElse(say("unknown")),
        say("verdict." + word(load.verdict())));
  }

  private String pressure(Pressure pressure) {
    return formats().quantity(pressure);
  }

  /** Steel, tube and neighbour of each hole that lies off or has another width. */
  List<String> rooms() {
    List<String> lines = new ArrayList<>();
    for (Row row : packet.asDug().rows()) {
      List<String> parts = new ArrayList<>();
      packet.dugChecks().rooms().stream()
          .filter(room -> room.mark().equals(row.mark()))
          .forEach(room -> room(room, parts));
      packet.dugChecks().betweens().stream()
          .filter(between -> between.mark().equals(row.mark()))
          .forEach(between -> parts.add(between(between)));
      if (!parts.isEmpty()) {
        lines.add(say("room", Map.of("hole", row.mark(), "parts", String.join("; ", parts))));
      }
    }
    return lines;
  }

  private void room(Room room, List<String> parts) {
    room.cover()
        .ifPresent(
            cover ->
                parts.add(
                    say(
                        "room.cover",
                        Map.of(
                            "cover", formats().tape(cover.max(Length.ZERO)),
                            "wanted", formats().size(room.wantedCover()),
                            "working", number("cover")))));
    room.tube()
        .ifPresent(
            beside ->
                parts.add(
                    say(
                        beside.isLessThan(Length.ZERO) ? "room.tube-over" : "room.tube",
                        Map.of("room", formats().tape(beside.abs()), "working", number("room")))));
  }

  private String between(Between between) {
    return say(
        "room.between",
        Map.of(
            "neighbour", between.neighbour(),
            "soil", formats().tape(between.soil().max(Length.ZERO)),
            "planned", formats().tape(between.planned()),
            "working", number("between")));
  }

  List<AsDugSheet.TapeRow> tapes() {
    return packet.dugChecks().tapes().stream().map(this::tape).toList();
  }

  private AsDugSheet.TapeRow tape(Tape tape) {
    boolean back = tape.purpose() == Purpose.TRUE_MARK;
    Map<String, String> hole = Map.of("hole", tape.mark());
    return new AsDugSheet.TapeRow(
        back ? tape.from() : say("middle-of", hole),
        back ? say("true-mark", hole) : tape.to(),
        formats().tape(tape.reading()),
        say(back ? "other.middle" : "other.mark", Map.of("tape", formats().tape(tape.other()))));
  }

  List<String> basis() {
    List<String> basis = new ArrayList<>();
    basis.add(say("basis.measured"));
    basis.add(say("basis.filled"));
    if (!packet.dugChecks().loads().isEmpty()) {
      basis.add(say("basis.load"));
    }
    if (!packet.dugChecks().tapes().isEmpty()) {
      basis.add(say("basis.tapes"));
    }
    Optional.of(say("basis.steel"))
        .filter(any -> packet.asDug().rows().stream().anyMatch(this::isDeeper))
        .ifPresent(basis::add);
    return basis;
  }

  private boolean isDeeper(Row row) {
    return row.depth() == Depth.MORE_CONCRETE && row.planned().steel().isPresent();
  }
}
