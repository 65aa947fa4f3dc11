package pegbook.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;

/**
 * The rules by which small things are counted, each with its working; only those that this job
 * uses.
 *
 * @param packet whose things
 * @param writing words and formats
 */
record SuppliesWords(Packet packet, Writing writing) {
  List<String> rules() {
    boolean metric = writing.formats().units() == UnitSystem.METRIC;
    return Stream.of(
            rule("paint", "paint"),
            rule(metric ? "covers-metric" : "covers", "cover"),
            rule(metric ? "fence-metric" : "fence", "fence"),
            rule("hangers", "hanger"),
            rule("braces", "brace"),
            rule("boards", "box-boards"),
            rule("caps", "cap-deck"),
            rule("curing", "curing-sheet"))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<String> rule(String rule, String formula) {
    return packet
        .workings()
        .numberOf("supplies." + formula)
        .map(number -> writing.texts().say("supplies.rule." + rule, Map.of("working", number)));
  }
}
