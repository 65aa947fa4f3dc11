package pegbook.calc.tapetable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pegbook.testing.LayoutJob.supports;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.tapetable.TapeTable.BetterPair;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.calc.tapetable.TapeTable.Stand;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.PlacedMark;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/** Marks in metres about a baseline from S1 in the south to S2, 8 m north, worked by hand. */
class TapeTableByHandTest {
  private static LayoutJob named(double... eastNorth) {
    return supports(eastNorth).named("S1", "S2");
  }

  private static TapeTable table(LayoutJob job) {
    return TapeTableCalculator.calculate(job.job(), PlacementCalculator.calculate(job.job()));
  }

  private static Row row(TapeTable table, String mark) {
    return table.rows().stream().filter(row -> row.mark().equals(mark)).findFirst().orElseThrow();
  }

  private static Finding finding(TapeTable table, String id) {
    return table.findings().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<String> ids(TapeTable table) {
    return table.findings().stream().map(Finding::id).toList();
  }

  /** Drawn out 2000.4 mm beyond the first mark, taped 2000: 0.4 mm off. */
  @Test
  void aMarkBeyondTheFirstIsPutBackwards() {
    TapeTable table = table(named(0, 0, 0, 8, 3, 4, 0, -2.0004, 0, 10.0003));
    assertThat(row(table, "S4").stand()).isEqualTo(Stand.BEYOND_FIRST);
    assertThat(row(table, "S4").shift().orElseThrow().millimetres()).isCloseTo(0.4, within(1e-6));
    assertThat(row(table, "S5").stand()).isEqualTo(Stand.BEYOND_SECOND);
    assertThat(row(table, "S5").shift().orElseThrow().millimetres()).isCloseTo(0.3, within(1e-6));
  }

  /** A baseline of 8000.4 mm set to 8000 puts its second mark off more than any other. */
  @Test
  void theSecondMarkItselfMayBeFurthestOff() {
    TapeTable table = table(named(0, 0, 0, 8.0004, 3, 4.0002));
    assertThat(table.largestShift().orElseThrow().mark()).isEqualTo("S2");
    assertThat(table.largestShift().orElseThrow().distance().millimetres())
        .isCloseTo(0.4, within(1e-6));
  }

  /** On the line from south to north first; beside it by direction, the nearer of two first. */
  @Test
  void theOrderOfWork() {
    TapeTable table = table(named(0, 0, 0, 8, 0, 6, 0, 2, 4, 4, 2, 4, -2, 4));
    assertThat(table.rows()).extracting(Row::mark).containsExactly("S4", "S3", "S7", "S6", "S5");
    assertThat(table.rows()).extracting(Row::order).containsExactly(3, 4, 5, 6, 7);
  }

  private static PlacedMark mark(String id, double east, double north) {
    return new PlacedMark(
        id, pegbook.figures.MarkKind.SUPPORT, new Point(east, north), Optional.empty());
  }

  private static String check(double reach, PlacedMark... placed) {
    Segment baseline = new Segment(new Point(0, 0), new Point(0, 8));
    return new CheckChoice(baseline, new Length(reach), new Length(0.001))
        .among(new Point(3, 0), List.of(placed))
        .map(PlacedMark::id)
        .orElse("");
  }

  /**
   * Taped 3 m due east of S1 and from S2, directions (1, 0) and (0.351, −0.936): the place is known
   * to 1.00 of a tape's variance along east, 1.28 along north, 1.52 along north-east, 0.77 along
   * south-east. The nearest mark that sees four fifths of the best, 1.21, is taken.
   */
  @Test
  void aCheckLooksWhereTheMarkIsLeastSure() {
    PlacedMark northEast = mark("far", 5, 2);
    assertThat(check(30, northEast, mark("north", 3, 1))).isEqualTo("north");
    assertThat(check(30, mark("north", 3, 3), northEast)).isEqualTo("far");
    assertThat(check(30, northEast, mark("east", 4, 0))).isEqualTo("far");
    assertThat(check(30, mark("south-east", 4, -1), northEast)).isEqualTo("far");
    // Out of the tape's reach of 2 m.
    assertThat(check(2, mark("south-east", 4, -1), northEast)).isEqualTo("south-east");
    assertThat(check(1, mark("north", 3, 1))).isEqualTo("north");
    assertThat(check(0.5, mark("north", 3, 1))).isEmpty();
  }

  /** A mark on the line sees no mirror image: taken only where there is no other. */
  @Test
  void aCheckFromTheLineIsTheLastResort() {
    assertThat(check(30, mark("line", 0, 1), mark("south-east", 4, -1))).isEqualTo("south-east");
    assertThat(check(30, mark("line", 0, 1))).isEqualTo("line");
  }

  /** S4 is 9.85 m from S1, S5 11.40 m from S2; S3 5 m from both. */
  @Test
  void onlyMarksOutOfReachAreNamed() {
    LayoutJob job = named(0, 0, 0, 8, 3, 4, 9, 4, 3, -3);
    job.tape = new Length(9);
    Finding finding = finding(table(job), "tape-table-tape-short");
    assertThat(finding.subjects()).containsExactlyInAnyOrder("S4", "S5");
    assertThat(finding.arguments().get("longest"))
        .isEqualTo(Argument.of(row(table(job), "S5").fromSecond()));
    // A tape as long as the longest distance reaches.
    LayoutJob just = named(0, 0, 0, 8, 3, 4, -3, 4);
    just.tape = new Length(8);
    assertThat(ids(table(just))).isEmpty();
  }

  private static double weakest(TapeTable table) {
    Finding weak =
        table.findings().stream()
            .filter(one -> one.arguments().containsKey("weakest"))
            .findFirst()
            .orElseThrow();
    Argument.Measured angle = (Argument.Measured) weak.arguments().get("weakest");
    return ((Angle) angle.quantity()).degrees();
  }

  /**
   * At (0.3, 4) the tapes cross at 2 · atan(4 / 0.3) = 171.4°, 8.6° from straight; at (1, 20) at
   * atan(1/12) − atan(1/20) = 1.9°; at (4, 14) at 17.7°.
   */
  @Test
  void theWeakestCrossingIsTheSharpest() {
    assertThat(weakest(table(named(0, 0, 0, 8, 0.3, 4, 1, 20)))).isCloseTo(1.90, within(0.005));
    assertThat(weakest(table(named(0, 0, 0, 8, 0.3, 4, 4, 14)))).isCloseTo(171.42, within(0.005));
    assertThat(weakest(table(named(0, 0, 0, 8, 4, 14, 0.3, 4)))).isCloseTo(171.42, within(0.005));
  }

  /** Only S4 is 0.4 mm off; the tolerance decides whether that is too much. */
  @Test
  void theDivisionIsTooCoarseForSome() {
    LayoutJob job = named(0, 0, 0, 8, 3, 4, -3.0004, 4);
    job.tolerance = Length.ofMillimetres(0.3);
    assertThat(finding(table(job), "tape-table-division").subjects()).containsExactly("S4");
    job.tolerance = Length.ofMillimetres(0.5);
    assertThat(ids(table(job))).isEmpty();
  }

  /** A third mark on the string line has the second tape as its check; one beside it has none. */
  @Test
  void threeMarksInARowAreChecked() {
    assertThat(ids(table(named(0, 0, 0, 8, 0, 4)))).isEmpty();
    assertThat(finding(table(named(0, 0, 0, 8, 3, 4)), "tape-table-no-check").subjects())
        .containsExactly("S3");
  }

  /**
   * S3 lies 0.3 m beside the line S1–S4. From S5 and S1 it is seen under 69.8°, S4 121.6°, S2
   * 75.5°: the last is nearest to a right angle. It lies on the left of the way from S2 to S5.
   */
  @Test
  void theStrongestPairIsTheNearestToARightAngle() {
    TapeTable table = table(supports(0, 0, 0, 4, 0.3, 6, 0, 8, 5, 4).named("S1", "S4"));
    BetterPair pair = table.betterPairs().get(0);
    assertThat(pair.mark()).isEqualTo("S3");
    assertThat(List.of(pair.first(), pair.second())).containsExactlyInAnyOrder("S2", "S5");
    assertThat(pair.crossing().degrees()).isCloseTo(75.5, within(0.05));
    assertThat(pair.left()).isEqualTo(pair.first().equals("S2"));
    double fromS2 = (pair.first().equals("S2") ? pair.fromFirst() : pair.fromSecond()).metres();
    assertThat(fromS2).isCloseTo(2.022, within(1e-9));
    assertThat(table.swings().ownPairs()).hasSize(1);
    assertThat(table.swings().pairOf("S3")).isPresent();
  }

  /** Half an hour for the baseline and 6 min for each of three marks; 3 min for each check. */
  @Test
  void hours() {
    TapeTable table = table(named(0, 0, 0, 8, 3, 4, -3, 4, 2, 2));
    assertThat(table.tasks().get(0).least().hours()).isCloseTo(48 / 60.0, within(1e-9));
    assertThat(table.tasks().get(0).most().hours()).isCloseTo(128 / 60.0, within(1e-9));
    assertThat(table.tasks().get(1).least().hours()).isCloseTo(9 / 60.0, within(1e-9));
    assertThat(table.tasks().get(1).most().hours()).isCloseTo(24 / 60.0, within(1e-9));
  }
}
