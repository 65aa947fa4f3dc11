package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.testing.PrintedJob;
import pegbook.testing.PrintedTable;
import pegbook.testing.PrintedValue;

/** The concrete sheet, printed and read back: the right figure in the right row, sums that sum. */
class ConcretePlanSheetTest {
  private static final String SHEET = "Concrete and gravel";
  private static final List<String> VALUES =
      List.of(
          "Gravel, loose",
          "Stands on",
          "Area on the bottom",
          "Below ground",
          "Above ground",
          "To mix",
          "Bags",
          "Pour, minutes");

  private static final PrintedJob DECK = PrintedJob.example("sky-deck");
  private static final PrintedJob HUT = PrintedJob.example("forest-hut");

  private static PrintedTable holes(PrintedJob job) {
    return PrintedTable.headed(job.tables(SHEET), "Hole");
  }

  private static List<String> row(PrintedJob job, String hole) {
    PrintedTable holes = holes(job);
    return VALUES.stream().map(head -> holes.cell(hole, head)).toList();
  }

  /** Names one by one, where holes that are alike share a row. */
  private static List<String> marks(PrintedTable holes) {
    return holes.names().stream().flatMap(name -> PrintedValue.marks(name).stream()).toList();
  }

  /** Volume of a cylinder in cubic feet, by the pencil: inches in. */
  private static double cubicFeet(double diameter, double height) {
    return Math.PI / 4 * diameter * diameter * height / 1728;
  }

  @Test
  void everyHoleHasItsOwnFiguresUnderTheRightHeads() {
    PrintedTable holes = holes(DECK);
    assertThat(marks(holes))
        .containsExactly("S1", "S2", "S3", "S4", "S5", "S6", "P1", "Sum", "Working");
    // Supports: 21 in wide, 42 in deep, a tube of 14 in from the ground up, 6 in high.
    for (String support : List.of("S1", "S6")) {
      assertVolume(holes.cell(support, "Below ground"), cubicFeet(21, 42));
      assertVolume(holes.cell(support, "Above ground"), cubicFeet(14, 6));
      assertThat(holes.cell(support, "Stands on")).isEqualTo("21″");
    }
    // The pier: 22 in wide, 58 in deep, a tube of 16 in, 36 in high, no gravel.
    assertVolume(holes.cell("P1", "Below ground"), cubicFeet(22, 58));
    assertVolume(holes.cell("P1", "Above ground"), cubicFeet(16, 36));
    assertThat(holes.cell("P1", "Stands on")).isEqualTo("22″");
    assertThat(holes.cell("P1", "Gravel, loose")).isEqualTo("none");
  }

  private static void assertVolume(String printed, double cubicFeet) {
    assertThat(printed).endsWith(" ft³");
    assertThat(PrintedValue.number(printed)).isCloseTo(cubicFeet, within(0.05));
  }

  /** Every hole opens whole bags; 80 lb make 0.6 ft³, the yield printed on the sheet. */
  @Test
  void bagsFollowFromWhatIsMixed() {
    PrintedTable holes = holes(DECK);
    for (String hole : List.of("S1", "S2", "S3", "S4", "S5", "S6", "P1")) {
      double mixed = PrintedValue.number(holes.cell(hole, "To mix"));
      double bags = PrintedValue.number(holes.cell(hole, "Bags"));
      assertThat(bags).isBetween((mixed - 0.05) / 0.6, (mixed + 0.05) / 0.6 + 1);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck", "smallest"})
  void rowsAddUpToTheSumAndToTheTotals(String example) {
    PrintedJob job = PrintedJob.example(example);
    PrintedTable holes = holes(job);
    assertThat(sum(holes, "Bags")).isEqualTo(PrintedValue.number(holes.cell("Sum", "Bags")));
    int rows = marks(holes).size() - 2;
    double half = holes.cell("Sum", "To mix").endsWith(" L") ? 0.5 : 0.05;
    for (String head : List.of("To mix", "Gravel, loose")) {
      String printed = holes.cell("Sum", head);
      double litres = printed.endsWith(" m³") ? 1000 : 1;
      double halfPrinted = printed.endsWith(" m³") ? 5 : half;
      double halfRow = printed.endsWith(" ft³") ? 0.05 : 0.5;
      assertThat(sum(holes, head))
          .as(head)
          .isCloseTo(PrintedValue.number(printed) * litres, within(rows * halfRow + halfPrinted));
    }
    PrintedTable totals =
        job.tables(SHEET).stream()
            .filter(table -> table.heads().isEmpty())
            .findFirst()
            .orElseThrow();
    List<String> bags =
        totals.rows().stream()
            .filter(row -> row.get(0).startsWith("Bags") || row.get(0).endsWith("ready bags"))
            .findFirst()
            .orElseThrow();
    assertThat(PrintedValue.number(bags.get(1)))
        .isEqualTo(PrintedValue.number(holes.cell("Sum", "Bags")));
    List<String> first = PrintedTable.headed(job.tables(SHEET), "What").rows().get(0);
    if (first.get(0).contains("concrete mix")) {
      assertThat(first.get(1)).isEqualTo(holes.cell("Sum", "Bags"));
    } else {
      assertThat(first.get(0))
          .as("gravel leads where a truck brings the concrete")
          .contains("gravel");
    }
  }

  private static double sum(PrintedTable holes, String head) {
    return marks(holes).stream()
        .filter(name -> !name.equals("Sum") && !name.equals("Working"))
        .map(name -> holes.cell(name, head))
        .filter(cell -> !cell.equals("none"))
        .mapToDouble(PrintedValue::number)
        .sum();
  }

  /** The truck's quarter yards hold what is to be mixed, and not a quarter more. */
  @Test
  void theTruckIsSetUpToAQuarterYard() {
    PrintedTable totals =
        DECK.tables(SHEET).stream()
            .filter(table -> table.heads().isEmpty())
            .findFirst()
            .orElseThrow();
    List<String> truck =
        totals.rows().stream()
            .filter(row -> row.get(0).contains("truck"))
            .findFirst()
            .orElseThrow();
    double mixed = PrintedValue.number(holes(DECK).cell("Sum", "To mix")) / 27;
    double yards = PrintedValue.number(truck.get(1));
    assertThat(yards * 4).isEqualTo(Math.rint(yards * 4));
    assertThat(yards).isBetween(mixed - 0.05 / 27, mixed + 0.25);
  }

  @Test
  void unitsAreThoseOfTheJob() {
    String imperial = String.join(" ", row(DECK, "S1")) + row(DECK, "P1");
    String metric = String.join(" ", row(HUT, "S1")) + row(HUT, "P1");
    assertThat(imperial).contains("ft³", "ft²", "″").doesNotContain("mm", "m²", " L");
    assertThat(metric).contains(" L", "m²", "mm").doesNotContain("ft", "″", "′");
    // The hut's supports: 400 mm wide, 1200 mm deep: 150.8 litres.
    assertThat(PrintedValue.number(holes(HUT).cell("S9", "Below ground"))).isEqualTo(151);
    assertThat(holes(HUT).cell("S9", "Stands on")).isEqualTo("400 mm");
  }

  @Test
  void aHigherPierChangesItsOwnRowAndTheSum() {
    PrintedJob higher =
        PrintedJob.example(
            "sky-deck",
            "higher-pier",
            job -> ((ObjectNode) job.at("/piers/0")).put("top", "42 in"));
    for (String support : List.of("S1", "S2", "S3", "S4", "S5", "S6")) {
      assertThat(row(higher, support)).isEqualTo(row(DECK, support));
    }
    assertVolume(holes(higher).cell("P1", "Above ground"), cubicFeet(16, 42));
    assertThat(holes(higher).cell("P1", "Below ground"))
        .isEqualTo(holes(DECK).cell("P1", "Below ground"));
    assertThat(PrintedValue.number(holes(higher).cell("Sum", "To mix")))
        .isGreaterThan(PrintedValue.number(holes(DECK).cell("Sum", "To mix")));
  }

  @Test
  void moreGravelChangesOnlyTheGravelOfSupports() {
    PrintedJob more =
        PrintedJob.example(
            "sky-deck",
            "more-gravel",
            job -> ((ObjectNode) job.get("supports")).put("gravel", "6 in"));
    assertThat(row(more, "P1")).isEqualTo(row(DECK, "P1"));
    for (String support : List.of("S1", "S2", "S3", "S4", "S5", "S6")) {
      assertThat(row(more, support).subList(1, VALUES.size()))
          .isEqualTo(row(DECK, support).subList(1, VALUES.size()));
      // Half as thick again is half as much again, between two values printed to a tenth.
      assertThat(PrintedValue.number(holes(more).cell(support, "Gravel, loose")))
          .isCloseTo(
              1.5 * PrintedValue.number(holes(DECK).cell(support, "Gravel, loose")), within(0.125));
    }
  }
}
