package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.tapetable.TapeTable;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;
import pegbook.testing.TrialPacket;

class TapeTableSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50));
  }

  private static final Map<String, TapeTableSheet> SHEETS = new ConcurrentHashMap<>();

  /** Made once for each packet: the pictures take a while. */
  static TapeTableSheet sheet(TrialPacket trial) {
    return SHEETS.computeIfAbsent(
        trial.name(), name -> TapeTableSheet.of(trial.packet(), trial.writing()));
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyMarkButTheBaselinesHasItsRow(TrialPacket trial) {
    TapeTableSheet sheet = sheet(trial);
    TapeTable table = trial.packet().tapeTable();
    List<String> marks = new ArrayList<>();
    marks.add(table.baseline().first());
    marks.add(table.baseline().second());
    sheet.rows().forEach(row -> marks.add(row.mark()));
    assertThat(marks).doesNotHaveDuplicates().hasSameSizeAs(trial.packet().placement().marks());
    for (int i = 0; i < sheet.rows().size(); i++) {
      assertThat(sheet.rows().get(i).order()).isEqualTo(String.valueOf(i + 3));
    }
    assertThat(sheet.first()).endsWith(table.baseline().first());
    assertThat(sheet.second()).endsWith(table.baseline().second());
  }

  /** A check goes to a mark that is there by then. */
  @ParameterizedTest
  @MethodSource("packets")
  void checksGoBackNeverAhead(TrialPacket trial) {
    List<String> there = new ArrayList<>();
    there.add(trial.packet().tapeTable().baseline().second());
    for (TapeTableSheet.MarkRow row : sheet(trial).rows()) {
      if (!row.check().isEmpty()) {
        assertThat(there).contains(row.checkTo());
      }
      there.add(row.mark());
    }
  }

  /** On paper each pair of arcs, with radii as long as the tapes, crosses at its mark. */
  @ParameterizedTest
  @MethodSource("packets")
  void arcsCrossAtTheirMarks(TrialPacket trial) {
    List<Element> elements = sheet(trial).swings().elements();
    List<Element.Arc> arcs =
        elements.stream()
            .filter(Element.Arc.class::isInstance)
            .map(Element.Arc.class::cast)
            .toList();
    Element.Line baseline =
        elements.stream()
            .filter(Element.Line.class::isInstance)
            .map(Element.Line.class::cast)
            .filter(line -> line.pen().equals(Pen.HEAVY))
            .findFirst()
            .orElseThrow();
    List<Row> swung =
        trial.packet().tapeTable().rows().stream().filter(row -> !row.stand().isOnLine()).toList();
    assertThat(arcs).hasSize(2 * swung.size());
    for (int i = 0; i < arcs.size(); i += 2) {
      assertThat(arcs.get(i).centre()).isEqualTo(baseline.from());
      assertThat(arcs.get(i + 1).centre()).isEqualTo(baseline.to());
      assertThat(Spots.distanceMm(middle(arcs.get(i)), middle(arcs.get(i + 1)))).isLessThan(1e-6);
    }
  }

  private static Spot middle(Element.Arc arc) {
    return Spots.towards(arc.centre(), arc.fromDegrees() + arc.sweepDegrees() / 2, arc.radiusMm());
  }

  @ParameterizedTest
  @MethodSource("packets")
  void stepsFitWhatTheJobHas(TrialPacket trial) {
    boolean tied = !trial.packet().sitePlan().ties().isEmpty();
    boolean string =
        trial.packet().tapeTable().rows().stream().anyMatch(row -> row.stand().isOnLine());
    List<String> steps = sheet(trial).steps();
    assertThat(steps).hasSize(7 + (tied ? 1 : 0) + (string ? 1 : 0));
    assertThat(steps.stream().anyMatch(step -> step.contains("T1"))).isEqualTo(tied);
  }

  @Test
  void weakCrossingsAreMarkedAndGetTheirPairs() {
    int weak = 0;
    for (TrialPacket trial : packets().toList()) {
      TapeTableSheet sheet = sheet(trial);
      List<String> marked =
          sheet.rows().stream()
              .filter(row -> row.crossing().endsWith("weak"))
              .map(TapeTableSheet.MarkRow::mark)
              .toList();
      weak += marked.size();
      assertThat(sheet.weak()).isEqualTo(!sheet.pairs().isEmpty());
      assertThat(marked)
          .containsAll(sheet.pairs().stream().map(TapeTableSheet.PairRow::mark).toList());
    }
    assertThat(weak).as("some made-up job has weak crossings").isPositive();
  }
}
