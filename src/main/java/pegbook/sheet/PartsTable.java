package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.concreteplan.ConcretePlan.Fill;
import pegbook.calc.concreteplan.ConcretePlan.Part;
import pegbook.calc.concreteplan.ConcretePlan.PartKind;
import pegbook.job.Widenings.Shape;
import pegbook.measure.Volume;
import pegbook.packet.Packet;
import pegbook.sheet.ConcretePlanSheet.PartRow;
import pegbook.sheet.ConcretePlanSheet.Parts;

/** The concrete of footings part by part, where some have a bell, a pad or a cap. */
record PartsTable(Packet packet, Writing writing, List<PartKind> kinds) {

  static Optional<Parts> of(Packet packet, Writing writing) {
    boolean widened = packet.asDug().holes().stream().anyMatch(hole -> hole.widenings().isAny());
    List<PartKind> kinds =
        Stream.of(PartKind.values())
            .filter(
                kind ->
                    packet.concretePlan().fills().stream()
                        .anyMatch(fill -> fill.part(kind).isMoreThan(Volume.ZERO)))
            .toList();
    return widened ? Optional.of(new PartsTable(packet, writing, kinds).table()) : Optional.empty();
  }

  private String say(String key) {
    return writing.texts().say("concrete-plan.part." + key);
  }

  private Parts table() {
    Map<List<Part>, List<String>> alike = new LinkedHashMap<>();
    packet
        .concretePlan()
        .fills()
        .forEach(
            fill -> alike.computeIfAbsent(fill.parts(), any -> new ArrayList<>()).add(fill.mark()));
    List<PartRow> rows = new ArrayList<>();
    alike
        .values()
        .forEach(
            marks -> {
              Fill fill = packet.concretePlan().fill(marks.get(0));
              rows.add(new PartRow(writing.formats().names(marks), cells(fill)));
            });
    List<String> heads = new ArrayList<>();
    kinds.forEach(kind -> heads.add(say(kind.name().toLowerCase(Locale.ROOT))));
    heads.add(say("all"));
    return new Parts(heads, rows, new PartRow(say("working"), workings()));
  }

  private List<String> cells(Fill fill) {
    List<String> cells = new ArrayList<>();
    for (PartKind kind : kinds) {
      Volume volume = fill.part(kind);
      cells.add(
          volume.isMoreThan(Volume.ZERO)
              ? writing.formats().volume(volume)
              : writing.texts().say("concrete-plan.none"));
    }
    cells.add(writing.formats().volume(fill.drawn()));
    return cells;
  }

  private List<String> workings() {
    List<String> numbers = new ArrayList<>();
    kinds.forEach(kind -> numbers.add(String.join(", ", workings(kind))));
    numbers.add("");
    return numbers;
  }

  private List<String> workings(PartKind kind) {
    List<String> formulas =
        switch (kind) {
          case BELL -> List.of("bell");
          case PAD -> List.of("pad");
          case SHAFT -> List.of("below");
          case COLUMN -> List.of("above", "boxed");
          case CAP -> shapes();
        };
    return formulas.stream()
        .flatMap(id -> packet.workings().numberOf("concrete-plan." + id).stream())
        .toList();
  }

  private List<String> shapes() {
    return packet.asDug().holes().stream()
        .flatMap(hole -> hole.widenings().cap().stream())
        .map(cap -> cap.shape() == Shape.ROUND ? "cap" : "square-cap")
        .distinct()
        .toList();
  }
}
