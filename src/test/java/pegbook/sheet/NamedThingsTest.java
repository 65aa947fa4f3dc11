package pegbook.sheet;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.packet.Packet;
import pegbook.testing.TrialPacket;

/**
 * What sheets and day sheets tell people to use is on the buying list, or is a tool that one has or
 * borrows. A word that nobody has put into one of the two fails here.
 */
class NamedThingsTest {
  /** Words of the boxes under "Lay out", and the needs of which at least one counts them. */
  private static final Map<String, Set<String>> COUNTED =
      Map.ofEntries(
          entry("paint", Set.of("marking-paint")),
          entry("pegs", Set.of("safe-pegs", "ground-stakes")),
          entry("string", Set.of("peg-string", "datum-string")),
          entry("forms", Set.of("form-tube", "form-boards", "frost-sleeves", "template-board")),
          entry("tie wire", Set.of("wire-ties", "bar-feet")),
          entry("feet", Set.of("bar-feet")),
          entry("spacers", Set.of("side-spacers")),
          entry("caps", Set.of("bar-caps")),
          entry("covers", Set.of("hole-covers", "hole-covers-wide")),
          entry("cement", Set.of("cement-bags")),
          entry("sand", Set.of("mix-sand", "power-sand")),
          entry("stone", Set.of("mix-stone")),
          entry("pipe", Set.of("conduit")),
          entry("bends", Set.of("power-bends")),
          entry("cable", Set.of("power-cable")),
          entry("wire", Set.of("power-wire", "power-cable")),
          entry("warning tape", Set.of("power-warning-tape")),
          entry("barriers", Set.of("barrier-fence")));

  /** Tools and what people wear, drink or have; not counted, but named on the list. */
  private static final Set<String> HAD =
      Set.of(
          "two tapes",
          "spades",
          "mattock",
          "fish tape",
          "hammer",
          "wire brush",
          "chisel",
          "stick",
          "depths marked",
          "barrow",
          "barrows",
          "tarps",
          "boards",
          "bucket",
          "buckets",
          "tamper",
          "saw",
          "spirit level",
          "bar cutter",
          "bender",
          "pliers",
          "scale",
          "mixer or tub",
          "hoe",
          "rod",
          "float",
          "level",
          "goggles",
          "square",
          "ear muffs",
          "drill",
          "driver bits",
          "long level",
          "clamps",
          "braces",
          "gap pieces",
          "chalk line",
          "rubber gloves",
          "first aid",
          "phone",
          "drinking water");

  /**
   * Material words of all sheets, each with the needs that count it. Sentences of any subject may
   * use them; what they name must then be known to the list.
   */
  private static final Map<String, List<String>> MATERIALS =
      Map.ofEntries(
          entry("\\bpaint\\b", List.of("marking-paint")),
          entry("\\b[Ss]takes?\\b", List.of("datum-stakes", "ground-stakes")),
          entry("\\b[Ss]tring\\b", List.of("peg-string", "datum-string")),
          entry("\\bribbon\\b|[Ff]lag every peg", List.of("flagging")),
          entry("\\b[Ff]ence\\b", List.of("barrier-fence", "fence-posts")),
          entry("\\b[Cc]overs?\\b.*\\bhole|\\bhole.*\\bcover", List.of("hole-covers")),
          entry("\\b[Cc]ap every bar", List.of("bar-caps")),
          entry("\\bspacers\\b", List.of("side-spacers")),
          entry("[Ss]mooth sleeve", List.of("frost-sleeves")),
          entry("cable sleeve", List.of("cable-sleeve")),
          entry("box of boards", List.of("form-boards")),
          entry("hang the bolts", List.of("anchor-bolts", "template-board")),
          entry("bar and bolt", List.of("bar-caps", "bolt-caps")),
          entry("keep wet", List.of("curing-sheet")));

  static Stream<TrialPacket> jobs() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(12));
  }

  private static Set<String> listed(Packet packet) {
    return packet.buyingList().lines().stream()
        .map(line -> line.need().id())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void whatIsLaidOutIsBoughtOrHad(TrialPacket trial) {
    Packet packet = trial.packet();
    Set<String> own =
        packet.job().tools().stream().map(tool -> tool.name()).collect(Collectors.toSet());
    packet.job().plan().machine().ifPresent(machine -> own.add(machine.what()));
    Set<String> listed = listed(packet);
    for (WorkDay day : packet.dayPlan().days()) {
      DayTools tools = new DayTools(packet, trial.writing(), day);
      for (DaySheet.Tick tick : tools.ticks()) {
        if (own.contains(tick.words())
            || tick.words()
                .matches("gravel, .*|\\d+\\sbags of .*|truck with .*|buckets marked .*")) {
          continue;
        }
        for (String thing : things(tick.words())) {
          if (COUNTED.containsKey(thing)) {
            assertThat(listed)
                .as("day %s: %s", day.number(), thing)
                .containsAnyElementsOf(COUNTED.get(thing));
          } else {
            assertThat(HAD).as("neither counted nor had").contains(thing);
          }
        }
      }
    }
  }

  private static List<String> things(String words) {
    return Pattern.compile(", ").splitAsStream(words).toList();
  }

  /** What is on the list is not named a second time as something to have or to borrow. */
  @ParameterizedTest
  @MethodSource("jobs")
  void nothingBoughtIsAlsoHad(TrialPacket trial) {
    for (WorkDay day : trial.packet().dayPlan().days()) {
      new DayTools(trial.packet(), trial.writing(), day)
          .toLayOut().stream()
              .flatMap(words -> things(words).stream())
              .forEach(thing -> assertThat(COUNTED).doesNotContainKey(thing));
    }
  }

  /** Every material word that the texts use has needs with words, and some job orders each. */
  @Test
  void whatTheTextsNameIsKnownToTheList() {
    Set<String> ordered = new TreeSet<>();
    jobs().forEach(trial -> ordered.addAll(listed(trial.packet())));
    Map<String, List<String>> used = new TreeMap<>();
    MATERIALS.forEach(
        (word, needs) -> {
          boolean named =
              TrialPacket.TEXTS.keys().stream()
                  .filter(key -> !key.startsWith("need.") && !key.startsWith("supplies."))
                  .anyMatch(key -> TrialPacket.TEXTS.raw(key).matches("(?s).*(" + word + ").*"));
          if (named) {
            used.put(word, needs);
          }
        });
    assertThat(used).as("each word is still used somewhere").hasSameSizeAs(MATERIALS);
    used.forEach(
        (word, needs) ->
            needs.forEach(
                need -> {
                  assertThat(TrialPacket.TEXTS.has("need." + need)).as(need).isTrue();
                  assertThat(ordered).as(word).contains(need);
                }));
  }
}
