package pegbook.calc.tapetable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static pegbook.testing.LayoutJob.supports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.calc.tapetable.TapeTable.Stand;
import pegbook.figures.Finding;
import pegbook.figures.Placement;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.geometry.Crossings;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.LayoutJob;

class TapeTableCalculatorTest {
  private static TapeTable table(LayoutJob job) {
    Placement placement = PlacementCalculator.calculate(job.job());
    return TapeTableCalculator.calculate(job.job(), placement);
  }

  private static Row row(TapeTable table, String mark) {
    return table.rows().stream().filter(row -> row.mark().equals(mark)).findFirst().orElseThrow();
  }

  private static List<String> ids(TapeTable table) {
    return table.findings().stream().map(Finding::id).toList();
  }

  /** Thales: from opposite corners of a hexagon every other corner is seen under a right angle. */
  @Test
  void aHexagonIsTapedFromOppositeCorners() {
    TapeTable table = table(new LayoutJob().pier("P1", 0, 0));
    assertThat(table.baseline().first()).isEqualTo("S1");
    assertThat(table.baseline().second()).isEqualTo("S4");
    assertThat(table.baseline().chosen()).isTrue();
    assertThat(table.rows())
        .filteredOn(row -> !row.stand().isOnLine())
        .hasSize(4)
        .allSatisfy(
            row -> assertThat(row.crossing().orElseThrow().degrees()).isCloseTo(90, within(1e-9)));
    assertThat(row(table, "P1").stand()).isEqualTo(Stand.BETWEEN);
    assertThat(row(table, "P1").crossing()).isEmpty();
    assertThat(ids(table)).isEmpty();
  }

  /** A hexagon taped from one side crosses at exactly 30 degrees, which is not outside 30. */
  @Test
  void thirtyDegreesIsThirtyWithinTheTolerance() {
    for (double degrees : new double[] {0, 8, 77.7, 359}) {
      LayoutJob job = new LayoutJob().named("S1", "S2");
      job.azimuth = Optional.of(Angle.ofDegrees(degrees));
      TapeTable table = table(job);
      assertThat(row(table, "S4").crossing().orElseThrow().degrees()).isCloseTo(30, within(1e-9));
      assertThat(ids(table)).isEmpty();
    }
    assertThat(Crossings.isWeak(1 / Math.tan(Math.toRadians(29.999999)))).isFalse();
    assertThat(Crossings.isWeak(1 / Math.tan(Math.toRadians(29.9999)))).isTrue();
  }

  @Test
  void aWeakBaselineNamesABetterOne() {
    LayoutJob job = LayoutJob.of(new Outline.Regular(8, new Length(4))).named("S1", "S2");
    TapeTable table = table(job);
    Finding finding = table.findings().get(0);
    assertThat(finding.id()).isEqualTo("tape-table-weak-baseline");
    // The side of an octagon is seen from the other corners under half of 45 degrees.
    assertThat(finding.subjects()).containsExactly("S3", "S4", "S5", "S6", "S7", "S8");
    assertThat(finding.arguments().get("weakest").toString()).contains("0.39269");
    assertThat(finding.arguments().get("betterFirst").toString()).contains("S1");
    assertThat(finding.arguments().get("betterSecond").toString()).contains("S5");
    assertThat(finding.arguments().get("betterCrossing").toString()).contains("1.5707");
  }

  @Test
  void sidesAreThoseOfSomeoneLookingAlongTheBaseline() {
    LayoutJob job = supports(0, -4, 0, 4, -3, 1, 3, -1, 0, 0, 0, 6).named("S1", "S2");
    TapeTable table = table(job);
    assertThat(table.baseline().left()).isEqualTo(Compass.WEST);
    assertThat(table.baseline().right()).isEqualTo(Compass.EAST);
    assertThat(row(table, "S3").stand()).isEqualTo(Stand.LEFT);
    assertThat(row(table, "S4").stand()).isEqualTo(Stand.RIGHT);
    assertThat(row(table, "S5").stand()).isEqualTo(Stand.BETWEEN);
    assertThat(row(table, "S6").stand()).isEqualTo(Stand.BEYOND_SECOND);
    assertThat(row(table, "S5").check().orElseThrow().to()).isEqualTo("S2");
  }

  @Test
  void theOrderTakesTheStringLineThenWalksRoundTheSite() {
    TapeTable table = table(new LayoutJob().pier("P1", 0, 0).pier("P2", 3.5, 0.4));
    assertThat(table.rows()).extracting(Row::order).containsExactly(3, 4, 5, 6, 7, 8);
    LayoutJob circle = LayoutJob.of(new Outline.Circle(new Length(8), 8));
    // Clockwise about the middle, beginning behind S1.
    assertThat(table(circle).rows())
        .extracting(Row::mark)
        .containsExactly("S2", "S3", "S4", "S6", "S7", "S8");
  }

  /** By hand: 3-4-5 triangles, and the readings on a coarse tape. */
  @Test
  void readingsAreSetToTheNearestDivision() {
    LayoutJob job = supports(0, 0, 0, 8, 3, 4, -3.0004, 4).named("S1", "S2");
    TapeTable table = table(job);
    Row right = row(table, "S3");
    assertThat(right.fromFirst().millimetres()).isCloseTo(5000, within(1e-9));
    assertThat(right.fromSecond().millimetres()).isCloseTo(5000, within(1e-9));
    assertThat(right.crossing().orElseThrow().degrees())
        .isCloseTo(2 * Math.toDegrees(Math.atan2(4, 3)), within(1e-9));
    assertThat(right.shift().orElseThrow().metres()).isCloseTo(0, within(1e-9));
    // True tapes 5000.24 mm; both set to 5000 put the mark 0.4 mm nearer to the line.
    Row left = row(table, "S4");
    assertThat(left.fromFirst().millimetres()).isCloseTo(5000, within(1e-9));
    assertThat(left.shift().orElseThrow().millimetres()).isCloseTo(0.4, within(1e-6));
    assertThat(table.largestShift().orElseThrow().mark()).isEqualTo("S4");
    assertThat(table.largestShift().orElseThrow().distance().millimetres())
        .isCloseTo(0.4, within(1e-6));
  }

  @Test
  void aDivisionTooCoarseForTheToleranceIsFound() {
    LayoutJob job = LayoutJob.of(new Outline.Regular(7, new Length(4)));
    job.division = Length.ofMillimetres(10);
    job.tolerance = Length.ofMillimetres(2);
    TapeTable table = table(job);
    assertThat(ids(table)).containsExactly("tape-table-division");
    assertThat(table.findings().get(0).subjects()).isNotEmpty();
  }

  @Test
  void marksNearTheLineOfEveryPairGetABetterPairOrAWord() {
    // Four in a row but for a hand's breadth, and one well beside them.
    LayoutJob job = supports(0, 0, 0, 4, 0.3, 6, 0, 8, 5, 4).named("S1", "S4");
    TapeTable table = table(job);
    assertThat(row(table, "S3").weak()).isTrue();
    assertThat(table.rows().get(table.rows().size() - 1).mark()).as("last").isEqualTo("S3");
    assertThat(ids(table)).hasSize(1);
    assertThat(table.betterPairs()).hasSize(1);
    assertThat(table.betterPairs().get(0).mark()).isEqualTo("S3");
    assertThat(table.betterPairs().get(0).crossing().degrees()).isBetween(30.0, 150.0);
    LayoutJob row = supports(0, 0, 0, 4, 0.1, 6, 0, 8).named("S1", "S4");
    assertThat(ids(table(row))).contains("tape-table-weak-left");
  }

  @Test
  void tapesThatNoLongerMeetAfterSettingAreFound() {
    LayoutJob job = supports(0, 0, 0, 8.0031, 0.008, 3.0019, 4, 4).named("S1", "S2");
    job.division = Length.ofMillimetres(5);
    TapeTable table = table(job);
    assertThat(row(table, "S3").shift()).isEmpty();
    assertThat(ids(table)).contains("tape-table-no-meeting");
  }

  @Test
  void aShortTapeIsFoundAndAvoidedWhereTheBaselineIsOpen() {
    LayoutJob job = new LayoutJob().named("S1", "S4");
    job.tape = new Length(3.2);
    Finding finding =
        table(job).findings().stream()
            .filter(some -> some.id().equals("tape-table-tape-short"))
            .findFirst()
            .orElseThrow();
    // Centre to support: 2 m less 0.2 / cos 30 degrees; the baseline is twice that.
    assertThat(finding.arguments().get("longest").toString()).contains("3.538");
    LayoutJob open = new LayoutJob().pier("P1", 0, 0);
    open.tape = new Length(3.2);
    assertThat(table(open).baseline().first() + table(open).baseline().second())
        .as("from the middle every tape is short")
        .contains("P1");
  }

  @Test
  void checksGoToMarksThatAreThereAndSeeAMirroredMark() {
    TapeTable table = table(LayoutJob.of(new Outline.Regular(12, new Length(6))).pier("P1", 0, 0));
    List<String> there = new ArrayList<>(List.of(table.baseline().second()));
    int blind = 0;
    for (Row row : table.rows()) {
      assertThat(there).contains(row.check().orElseThrow().to());
      blind += !row.stand().isOnLine() && !row.check().orElseThrow().seesMirror() ? 1 : 0;
      there.add(row.mark());
    }
    assertThat(blind).as("only the first beside the line, checked from the pier").isEqualTo(1);
  }

  @Test
  void withTwoMarksThereIsOnlyABaselineAndWithThreeNothingChecks() {
    TapeTable two = table(supports(0, 0, 3, 4));
    assertThat(two.rows()).isEmpty();
    assertThat(two.baseline().tape().metres()).isCloseTo(5, within(1e-12));
    assertThat(ids(table(supports(0, 0, 3, 4, 4, -3)))).containsExactly("tape-table-no-check");
    LayoutJob one = supports(0, 0);
    Placement placement = PlacementCalculator.calculate(one.job());
    assertThatThrownBy(() -> TapeTableCalculator.calculate(one.job(), placement))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void workingsGiveThePrintedFigures() {
    for (UnitSystem units : UnitSystem.values()) {
      LayoutJob job = new LayoutJob().pier("P1", 0, 0).pier("P2", 0.7, -0.3);
      job.units = units;
      TapeTable table = table(job);
      Row row = row(table, "P2");
      Working crossing =
          table.workings().stream()
              .filter(some -> some.formula().id().equals("tape-table.crossing"))
              .filter(some -> some.subject().equals("P2"))
              .findFirst()
              .orElseThrow();
      assertThat(crossing.asAngle()).isEqualTo(row.crossing().orElseThrow());
      assertThat(table.workings())
          .extracting(some -> some.formula().id())
          .contains("tape-table.shift");
    }
  }

  @Test
  @Tag("long")
  void fiveHundredMarksAreChosenAmongInReasonableTime() {
    List<Double> places = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      places.add((i % 25) * 1.2);
      places.add(Math.floor(i / 25.0) * 1.3);
    }
    LayoutJob job = supports(places.stream().mapToDouble(Double::doubleValue).toArray());
    long start = System.nanoTime();
    TapeTable table = table(job);
    assertThat((System.nanoTime() - start) / 1e9).as("seconds").isLessThan(20);
    assertThat(table.rows()).hasSize(498);
  }

  @Test
  void markingOutAndProvingAreWorkToDo() {
    TapeTable table = table(new LayoutJob());
    assertThat(table.tasks())
        .extracting(Task::kind)
        .containsExactly(Task.Kind.MARK_OUT, Task.Kind.PROVE);
    assertThat(table.tasks()).allSatisfy(task -> assertThat(task.least()).isLessThan(task.most()));
  }
}
