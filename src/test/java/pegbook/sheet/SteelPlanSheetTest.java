package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.testing.PrintedDocument;
import pegbook.testing.PrintedJob;
import pegbook.testing.PrintedTable;
import pegbook.testing.PrintedValue;

/** The steel sheet, printed and read back: count times piece is the total, everywhere the same. */
class SteelPlanSheetTest {
  private static final String SHEET = "Steel";
  private static final List<String> VALUES =
      List.of("Size", "Pieces", "Cut", "Each", "In all", "For");

  private static final PrintedJob DECK = PrintedJob.example("sky-deck");
  private static final PrintedJob HUT = PrintedJob.example("forest-hut");

  /** Pounds to the foot, ASTM A615 table 1; kilograms to the metre: 7850 kg/m³ on the circle. */
  private static final Pattern ORDER = Pattern.compile("(\\d+) of (\\d+′.\\d+″)");

  private static final Map<String, Double> MASS =
      Map.of(
          "#3", 0.376, "#4", 0.668, "#5", 1.043, "8 mm", 0.3946, "12 mm", 0.8878, "16 mm", 1.5783);

  private static PrintedTable bars(PrintedJob job) {
    return PrintedTable.headed(job.tables(SHEET), "Mark");
  }

  private static PrintedTable sizes(PrintedJob job) {
    return job.tables(SHEET).stream()
        .filter(table -> table.heads().contains("Length of all pieces"))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> row(PrintedJob job, String bar) {
    PrintedTable bars = bars(job);
    return VALUES.stream().map(head -> bars.cell(bar, head)).toList();
  }

  private static double unit(String size) {
    return size.startsWith("#") ? 0.3048 : 1;
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck"})
  void countTimesPieceIsTheTotalOfItsRowAndOfItsSize(String example) {
    PrintedJob job = PrintedJob.example(example);
    PrintedTable bars = bars(job);
    Map<String, Double> lengths = new LinkedHashMap<>();
    Map<String, Double> masses = new LinkedHashMap<>();
    for (String bar : bars.names()) {
      String size = bars.cell(bar, "Size");
      double pieces = PrintedValue.number(bars.cell(bar, "Pieces"));
      double each = PrintedValue.number(bars.cell(bar, "Each"));
      double all = PrintedValue.number(bars.cell(bar, "In all"));
      double metres = PrintedValue.length(bars.cell(bar, "Cut")).metres();
      assertThat(all).isCloseTo(pieces * each, within(0.05 * pieces + 0.05));
      assertThat(all).isCloseTo(pieces * metres / unit(size) * MASS.get(size), within(0.1));
      lengths.merge(size, pieces * metres, Double::sum);
      masses.merge(size, all, Double::sum);
    }
    PrintedTable sizes = sizes(job);
    assertThat(sizes.names()).containsExactlyInAnyOrderElementsOf(lengths.keySet());
    for (String size : sizes.names()) {
      double half = size.startsWith("#") ? 0.0254 / 2 : 0.005;
      assertThat(PrintedValue.length(sizes.cell(size, "Length of all pieces")).metres())
          .isCloseTo(lengths.get(size), within(half + 1e-9));
      assertThat(PrintedValue.number(sizes.cell(size, "In all")))
          .isCloseTo(masses.get(size), within(0.05 * (bars.names().size() + 1)));
    }
  }

  /** 4 bars in each of 6 supports, 6 in the pier: from the job file, by the pencil. */
  @Test
  void piecesAreThoseOfTheJob() {
    PrintedTable bars = bars(DECK);
    assertThat(bars.names()).containsExactly("A", "B", "C", "D");
    assertThat(row(DECK, "A")).startsWith("#4", "24").endsWith("S1 to S6");
    assertThat(row(DECK, "C")).startsWith("#5", "6").endsWith("P1");
    // From 3 in above the underside to 3 in below the top: 42 + 6 - 6 in, and 58 + 36 - 6 in.
    assertThat(bars.cell("A", "Cut")).isEqualTo("3′ 6″");
    assertThat(bars.cell("C", "Cut")).isEqualTo("7′ 4″");
  }

  /**
   * What is bought holds all pieces of a size. Of 24 pieces of 3' 6" the offcut in the shed gives
   * 2, a bar of 20 ft gives 5, one of 10 ft gives 2.
   */
  @Test
  void barsToBuyHoldThePieces() {
    PrintedTable sizes = sizes(DECK);
    String head = "Bars to order";
    for (String size : sizes.names()) {
      double bought =
          ORDER
              .matcher(sizes.cell(size, head))
              .results()
              .mapToDouble(
                  order ->
                      PrintedValue.number(order.group(1))
                          * PrintedValue.length(order.group(2)).feet())
              .sum();
      double needed = PrintedValue.length(sizes.cell(size, "Length of all pieces")).feet();
      double inTheShed = size.equals("#4") ? 7.25 : 0;
      assertThat(bought + inTheShed).isGreaterThanOrEqualTo(needed);
    }
    assertThat(ORDER.matcher(sizes.cell("#4", head)).results().map(MatchResult::group).toList())
        .containsExactly("4 of 20′ 0″", "1 of 10′ 0″");
  }

  /** The cages of the day sheets take as many pieces of each mark as the bar list has. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck"})
  void daySheetsTakeThePiecesOfTheBarList(String example) {
    PrintedJob job = PrintedJob.example(example);
    Map<String, Double> taken = new LinkedHashMap<>();
    Set<String> begun = new HashSet<>();
    for (PrintedDocument day : job.days()) {
      for (PrintedTable table : PrintedTable.of(day)) {
        for (int column = 0; column < table.heads().size(); column++) {
          if (table.heads().get(column).equals("Bars")) {
            int place = column;
            table.rows().stream()
                .filter(row -> place < row.size())
                // Steel that goes on was taken on an earlier day.
                .filter(row -> begun.add(row.get(0)))
                .forEach(row -> take(row.get(place), taken));
          }
        }
      }
    }
    PrintedTable bars = bars(job);
    assertThat(taken.keySet()).containsExactlyInAnyOrderElementsOf(bars.names());
    bars.names()
        .forEach(
            bar ->
                assertThat(taken.get(bar))
                    .as(bar)
                    .isEqualTo(PrintedValue.number(bars.cell(bar, "Pieces"))));
  }

  private static void take(String cage, Map<String, Double> taken) {
    Matcher pieces = Pattern.compile("(\\d+) ([A-Z]+)").matcher(cage);
    while (pieces.find()) {
      taken.merge(pieces.group(2), Double.parseDouble(pieces.group(1)), Double::sum);
    }
  }

  @Test
  void unitsAreThoseOfTheJob() {
    for (String bar : bars(DECK).names()) {
      assertThat(String.join(" ", row(DECK, bar))).contains("lb", "′").doesNotContain("mm", "kg");
    }
    for (String bar : bars(HUT).names()) {
      assertThat(String.join(" ", row(HUT, bar)))
          .contains("kg", "mm")
          .doesNotContain("lb", "′", "″", "#");
    }
  }

  @Test
  void moreBarsInThePierChangeItsUprightsAndTheirSize() {
    PrintedJob more =
        PrintedJob.example(
            "sky-deck", "more-bars", job -> ((ObjectNode) job.at("/piers/0/steel")).put("bars", 8));
    for (String same : List.of("A", "B", "D")) {
      assertThat(row(more, same)).isEqualTo(row(DECK, same));
    }
    assertThat(bars(more).cell("C", "Pieces")).isEqualTo("8");
    assertThat(sizes(more).cell("#5", "Length of all pieces")).isEqualTo("58′ 8″");
    assertThat(sizes(more).cell("#4", "In all")).isEqualTo(sizes(DECK).cell("#4", "In all"));
  }

  @Test
  void lessCoverInSupportsLeavesThePier() {
    PrintedJob less =
        PrintedJob.example(
            "sky-deck",
            "less-cover",
            job -> ((ObjectNode) job.at("/supports/steel")).put("cover", "2 1/2 in"));
    assertThat(row(less, "C")).isEqualTo(row(DECK, "C"));
    assertThat(row(less, "D")).isEqualTo(row(DECK, "D"));
    assertThat(row(less, "A")).isNotEqualTo(row(DECK, "A"));
    assertThat(row(less, "B")).isNotEqualTo(row(DECK, "B"));
  }
}
