package pegbook.calc.provingmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pegbook.testing.LayoutJob.supports;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.provingmarks.ProvingMarks.Kind;
import pegbook.calc.provingmarks.ProvingMarks.Tried;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Placement;
import pegbook.figures.Swings;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.testing.LayoutJob;

/**
 * What is proved of whole figures, worked by hand, in metres. Four marks as in {@link
 * LimitsByHandTest}, and a square; the tape and its limits as there.
 */
class ProvingWholeTest {
  private static final double[] FOUR = {0, 0, 0, 8, 6, 4, -6, 2};

  private static ProvingMarks proving(LayoutJob layout, Point... stations) {
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    return ProvingMarksCalculator.calculate(
        job, placement, new Swings("S1", "S2", List.of()), List.of(stations));
  }

  private static List<String> ties(ProvingMarks proving) {
    return proving.ties().stream()
        .map(tie -> "T" + (tie.station() + 1) + " " + tie.mark())
        .toList();
  }

  private static Tried tried(ProvingMarks proving, Kind kind) {
    return proving.tried().stream().filter(some -> some.kind() == kind).findFirst().orElseThrow();
  }

  private static Finding finding(ProvingMarks proving, String id) {
    return proving.findings().stream()
        .filter(finding -> finding.id().equals("proving-marks-" + id))
        .findFirst()
        .orElseThrow();
  }

  private static void assertMillimetres(Length length, double expected) {
    assertThat(length.millimetres()).isCloseTo(expected, within(0.02));
  }

  /**
   * All six distances are needed. A tree at (10, 4) and one at (0, 20): ties to the baseline, and
   * S3's, 4 m, which reads 16 m when the figure is mirrored.
   */
  @Test
  void fourMarksAndTwoTrees() {
    ProvingMarks proving = proving(supports(FOUR), new Point(10, 4), new Point(0, 20));
    assertThat(proving.checks()).hasSize(6);
    assertThat(proving.size()).isEqualTo(new ProvingMarks.Size(true, 6, 6, true));
    assertThat(ties(proving)).containsExactly("T1 S1", "T1 S2", "T1 S3", "T2 S1", "T2 S2");
    assertThat(proving.ties().stream().filter(tie -> tie.mirrored().isPresent())).hasSize(1);
    assertMillimetres(proving.ties().get(2).mirrored().orElseThrow(), 16_000);
    assertThat(proving.unseen()).isEmpty();
    assertThat(proving.joined()).isFalse();
    // Six swaps, one of two marks beside the line, five tapes 100 mm wrong either way.
    assertThat(proving.tried())
        .containsExactly(
            new Tried(Kind.SWAPPED, 6, 6, 0),
            new Tried(Kind.MIRRORED_PART, 1, 1, 0),
            new Tried(Kind.SLIPPED, 10, 10, 0),
            new Tried(Kind.MIRRORED_WHOLE, 1, 0, 1),
            new Tried(Kind.TURNED_WHOLE, 1, 0, 1),
            new Tried(Kind.TURNED_AND_MIRRORED, 1, 0, 1));
    // Chances of the six limits, which LimitsByHandTest works.
    double alarms = proving.checks().stream().mapToDouble(ProvingMarks.Check::alarm).sum();
    assertThat(alarms).isBetween(0.05, 0.1);
    assertThat(proving.falseAlarms()).isCloseTo(alarms, within(1e-12));
  }

  /**
   * What passes at S4: at most 9.445 mm from S1, towards (6, −2), as 6.32456 m are set to 6.325,
   * and 10.281 mm back from S2, towards (6, 6): these edges cross 3.83 mm east and 18.37 mm south,
   * 18.77 mm off. S3's tape, towards (12, 2), reads 0.8 mm less there and passes.
   */
  @Test
  void theLargestHiddenMistake() {
    ProvingMarks proving = proving(supports(FOUR), new Point(10, 4), new Point(0, 20));
    assertThat(proving.hidden())
        .extracting(ProvingMarks.Hidden::distances)
        .containsExactly(5, 5, 4, 3);
    assertThat(proving.worst()).isEqualTo(proving.hidden().get(3));
    assertMillimetres(proving.worst().radius().orElseThrow(), 18.77);
    assertThat(proving.hidden()).noneMatch(ProvingMarks.Hidden::within);
    assertThat(proving.isWithinTolerance()).isFalse();
    Finding coarse = finding(proving, "coarse");
    assertThat(coarse.subjects()).containsExactly("S1", "S2", "S3", "S4");
    assertThat(coarse.arguments().get("worst")).isEqualTo(Argument.words("S4"));
    assertThat(coarse.arguments().get("radius"))
        .isEqualTo(Argument.of(Length.ofMillimetres(19).setTo(proving.division(), Rounding.UP)));
    assertThat(proving.findings()).hasSize(1);
    assertThat(proving.workings())
        .extracting(working -> working.formula().id().substring(14) + " " + working.subject())
        .containsExactly(
            "limit S1–S2",
            "limit S1–S3",
            "limit S1–S4",
            "limit S2–S3",
            "limit S2–S4",
            "limit S3–S4",
            "held S3–S4",
            "alarm S3–S4",
            "tie-limit T1–S1",
            "tie-limit T1–S2",
            "tie-limit T1–S3",
            "tie-limit T2–S1",
            "tie-limit T2–S2",
            "hidden S4");
  }

  /**
   * With a wide tolerance nothing of one mark is left open. A tree halfway up the baseline's side
   * would not tell a figure turned end for end and mirrored back: this one stands 1 m lower.
   */
  @Test
  void aWideToleranceIsKept() {
    LayoutJob job = supports(FOUR);
    job.tolerance = Length.ofMillimetres(20);
    ProvingMarks proving = proving(job, new Point(10, 3));
    assertThat(proving.isWithinTolerance()).isTrue();
    assertThat(proving.findings()).isEmpty();
  }

  /** Inches are misread in a job in feet: 25.4 mm, more than the 19 mm that may pass. */
  @Test
  void tapesAreMisreadInTheUnitsOfTheJob() {
    LayoutJob job = supports(FOUR);
    job.units = UnitSystem.IMPERIAL;
    assertThat(tried(proving(job), Kind.SLIPPED).count()).isEqualTo(20);
  }

  /**
   * A tape of 8.6 m does not reach from S3 to S4: that S4 is on the wrong side is told by a tie, T1
   * from (7, −3) to S3. S4 alone may lie at its mirror image, 12 m off and 10.9 mm more.
   */
  @Test
  void aShortTapeLeavesTheSidesUnjoined() {
    LayoutJob job = supports(FOUR);
    job.tape = new Length(8.6);
    ProvingMarks proving = proving(job, new Point(7, -3));
    assertThat(proving.checks()).hasSize(5);
    assertThat(ties(proving)).containsExactly("T1 S1", "T1 S3");
    assertThat(tried(proving, Kind.MIRRORED_PART))
        .isEqualTo(new Tried(Kind.MIRRORED_PART, 1, 0, 1));
    // Only a wrong baseline moves a mark by more than it may be off and pass: S2, either way.
    assertThat(tried(proving, Kind.SLIPPED)).isEqualTo(new Tried(Kind.SLIPPED, 2, 2, 0));
    assertThat(proving.worst().mark()).isEqualTo("S4");
    assertThat(proving.worst().radius().orElseThrow().metres()).isCloseTo(12.011, within(0.001));
    ProvingMarks alone = proving(job);
    assertThat(alone.unseen())
        .extracting(unseen -> unseen.kind() + " " + unseen.marks())
        .contains("MIRRORED_PART [S3]");
    assertThat(finding(alone, "part-hidden").arguments().get("which"))
        .isEqualTo(Argument.of(List.of("S3")));
  }

  /** Opposite corners of a square exchanged, told by ties alone; without ties two are open. */
  @Test
  void cornersOfASquare() {
    LayoutJob square = supports(0, 0, 0, 4, 4, 4, 4, 0);
    ProvingMarks tied = proving(square, new Point(2, 9), new Point(-3, 1));
    assertThat(tried(tied, Kind.SWAPPED)).isEqualTo(new Tried(Kind.SWAPPED, 6, 4, 2));
    assertThat(tied.hidden())
        .extracting(ProvingMarks.Hidden::within)
        .containsExactly(true, true, false, false);
    assertThat(finding(tied, "coarse").subjects()).containsExactly("S3", "S4");
    ProvingMarks alone = proving(square);
    assertThat(tried(alone, Kind.SWAPPED)).isEqualTo(new Tried(Kind.SWAPPED, 6, 4, 0));
    assertThat(finding(alone, "swap-hidden").arguments().get("which"))
        .isEqualTo(Argument.of(List.of("S1–S3", "S2–S4")));
    assertThat(finding(alone, "swap-hidden").arguments().get("count")).isEqualTo(Argument.of(2));
    // Without a fixed thing nothing is said of the whole figure: the site plan says it.
    assertThat(alone.findings()).hasSize(2);
    assertThat(alone.unseen()).hasSize(5);
    // A tree on the line of the baseline leaves the mirrored figure open.
    ProvingMarks onLine = proving(square, new Point(0, 9));
    assertThat(onLine.unseen())
        .extracting(ProvingMarks.Unseen::kind)
        .contains(Kind.MIRRORED_WHOLE)
        .doesNotContain(Kind.TURNED_WHOLE);
    assertThat(onLine.findings()).extracting(Finding::id).contains("proving-marks-whole-hidden");
  }

  /** S5 stands 70 m off with a tape of 20 m: every mistake of it passes. */
  @Test
  void aMarkOutOfReach() {
    LayoutJob job = supports(0, 0, 0, 8, 6, 4, -6, 2, 50, 50);
    job.tape = new Length(20);
    ProvingMarks proving = proving(job);
    assertThat(proving.worst().mark()).isEqualTo("S5");
    assertThat(proving.worst().radius()).isEmpty();
    assertThat(proving.worst().within()).isFalse();
    assertThat(finding(proving, "out-of-reach").subjects()).containsExactly("S5");
    assertThat(finding(proving, "coarse").subjects()).containsExactly("S1", "S2", "S3", "S4");
    // What passes without bound has no working.
    assertThat(proving.workings())
        .noneMatch(working -> working.formula().id().equals("proving-marks.hidden"));
  }

  /**
   * Ten marks, four of them 5 m and more east of the line and four west: a tape of 9 m joins
   * neither to the other. Nine marks are tried part by part.
   */
  @Test
  void tenMarksAreJoinedRatherThanTried() {
    double[] ten = {0, 0, 0, 8, 5, 1, 6, 3, 5, 5, 6, 7, -5, 1, -6, 3, -5, 5, -6, 7};
    LayoutJob job = supports(ten);
    job.tape = new Length(9);
    ProvingMarks proving = proving(job);
    assertThat(proving.joined()).isTrue();
    assertThat(proving.unseen())
        .filteredOn(unseen -> unseen.kind() == Kind.MIRRORED_PART)
        .extracting(ProvingMarks.Unseen::marks)
        .containsExactly(List.of("S7", "S8", "S9", "S10"));
    assertThat(proving.tried()).noneMatch(some -> some.kind() == Kind.MIRRORED_PART);
    job.tape = new Length(30);
    assertThat(proving(job).unseen()).noneMatch(some -> some.kind() == Kind.MIRRORED_PART);
    LayoutJob nine = supports(Arrays.copyOf(ten, 18));
    ProvingMarks tried = proving(nine);
    assertThat(tried.joined()).isFalse();
    // Seven beside the line, of which the last stays: 2⁶ − 1 groups.
    assertThat(tried(tried, Kind.MIRRORED_PART).count()).isEqualTo(63);
  }
}
