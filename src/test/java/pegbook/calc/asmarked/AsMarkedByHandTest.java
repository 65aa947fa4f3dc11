package pegbook.calc.asmarked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.asmarked.AsMarked.Gaps;
import pegbook.calc.asmarked.AsMarked.Move;
import pegbook.calc.asmarked.AsMarked.NewTape;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Reason;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Triangle;
import pegbook.calc.asmarked.AsMarked.Verdict;
import pegbook.calc.asmarked.Distances.Distance;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.Placement;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Point;
import pegbook.job.Field;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/** Steps, gaps, triangles and judgements on a figure of five marks, in metres, by hand. */
class AsMarkedByHandTest {
  private static final LayoutJob LAYOUT = layout();
  private static final Placement PLACEMENT = PlacementCalculator.calculate(LAYOUT.job());

  /** The baseline S1–S2 runs 8 m north; S3 east of it, S4 on it, S5 near its end. */
  private static LayoutJob layout() {
    List<Point> supports =
        List.of(
            new Point(0, 0), new Point(0, 8), new Point(6, 4), new Point(0, 4), new Point(2, 6));
    List<Point> corners =
        List.of(new Point(-50, -50), new Point(50, -50), new Point(50, 50), new Point(-50, 50));
    LayoutJob job = LayoutJob.of(new Outline.Free(corners, Optional.of(supports)));
    job.azimuth = Optional.empty();
    job.tape = new Length(100);
    return job;
  }

  private static Suspect suspect(String mark, double east, double north) {
    return suspect(Optional.of(mark), Optional.empty(), 2, east, north, 0, 1);
  }

  private static Suspect suspect(
      Optional<String> mark,
      Optional<Pair> reading,
      int quantities,
      double east,
      double north,
      double lead,
      double left) {
    return new Suspect(
        mark,
        reading,
        quantities,
        east,
        north,
        new Length(Math.hypot(east, north)),
        new Length(0.001),
        100,
        left,
        10,
        lead);
  }

  private static Move move(Suspect suspect, String... taped) {
    return new MoveSearch(PLACEMENT, "S1", "S2", Length.ofMillimetres(1), Length.ofMillimetres(10))
        .of(suspect, List.of(taped));
  }

  private static List<String> steps(Move move) {
    return move.steps().stream()
        .map(
            step ->
                Math.round(step.amount().millimetres())
                    + " "
                    + step.way()
                    + " "
                    + step.first()
                    + " "
                    + step.second())
        .toList();
  }

  /**
   * S4 on the line, painted 20 mm east and 30 mm south of its place: 30 mm toward S2, 20 mm to the
   * left as one looks there. S1 painted 20 mm west is moved to the right, seen toward S2; S2, seen
   * toward S1, to the left.
   */
  @Test
  void aMarkOnTheLineMovesTowardTheOtherEnd() {
    assertThat(steps(move(suspect("S4", 0.02, -0.03))))
        .containsExactly("30 TOWARD S2 S2", "20 LEFT S2 S2");
    assertThat(steps(move(suspect("S4", -0.02, 0.03))))
        .containsExactly("30 AWAY S2 S2", "20 RIGHT S2 S2");
    assertThat(steps(move(suspect("S1", -0.02, 0)))).containsExactly("20 RIGHT S2 S2");
    assertThat(steps(move(suspect("S2", -0.02, 0)))).containsExactly("20 LEFT S1 S1");
  }

  /**
   * From S3 the ways to S1 and S2 cross the way from the line under 33.7°, less than 45°: it moves
   * along the baseline, in its direction or back, and to the line or from it.
   */
  @Test
  void aMarkFarBesideMovesAlongTheLine() {
    assertThat(steps(move(suspect("S3", 0.03, 0.02))))
        .containsExactly("20 ALONG S2 S1", "30 TO_LINE S1 S2");
    assertThat(steps(move(suspect("S3", -0.03, -0.02))))
        .containsExactly("20 ALONG S1 S2", "30 FROM_LINE S1 S2");
    assertThat(steps(move(suspect("S3", 0.03, 0)))).containsExactly("30 TO_LINE S1 S2");
  }

  /**
   * S5 at (2, 6) painted at (2.02, 6.01): of the ways (−0.319, −0.948) to S1 and (1, 0) from the
   * line it goes 10.5 and −16.6 mm, set to a millimetre.
   */
  @Test
  void aMarkBesideMovesTowardAnEndAndToTheLine() {
    assertThat(steps(move(suspect("S5", 0.02, 0.01))))
        .containsExactly("11 TOWARD S1 S1", "17 TO_LINE S1 S2");
    assertThat(steps(move(suspect("S5", -0.02, -0.01))))
        .containsExactly("11 AWAY S1 S1", "17 FROM_LINE S1 S2");
  }

  /**
   * From S1, S2, and of S3 and S4 the one that crosses both better: 0.316 to 0.447 at the least.
   */
  @Test
  void theNewPlaceIsTapedFromThree() {
    List<NewTape> tapes = move(suspect("S5", 0.02, 0.01), "S3", "S4", "S1").tapes();
    assertThat(tapes).extracting(NewTape::from).containsExactly("S1", "S2", "S4");
    assertThat(tapes)
        .extracting(each -> each.tape().millimetres())
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-6 ? 0 : 1)
        .containsExactly(6325.0, 2828.0, 2828.0);
    assertThat(move(suspect("S1", 0.02, 0), "S2", "S3").tapes())
        .extracting(NewTape::from)
        .containsExactly("S2", "S3");
  }

  private static Distance distance(String from, String to, double metres) {
    return new Distance(new Pair(from, to), new Length(metres), 1, Length.ofMillimetres(1));
  }

  /** Three deviations of 1 mm: 2.576 · √3 is 4.46 mm. 6 and 4 m do not reach 10.0045. */
  @Test
  void threeDistancesMustMeet() {
    Distance one = distance("S1", "S3", 6);
    Distance other = distance("S3", "S2", 4);
    assertThat(Triangles.impossible(List.of(distance("S1", "S2", 10.0044), one, other))).isEmpty();
    List<Triangle> found =
        Triangles.impossible(
            List.of(
                distance("S1", "S2", 10.0045),
                one,
                other,
                distance("S1", "S4", 5),
                distance("S4", "S2", 4)));
    assertThat(found).extracting(Triangle::corner).containsExactly("S4", "S3");
    assertThat(found.get(1).gap().millimetres()).isCloseTo(4.5, within(1e-6));
    assertThat(found.get(0).longest()).isEqualTo(new Pair("S1", "S2"));
  }

  private static Gaps gaps(double reach, Pair... taped) {
    return new GapSearch(PLACEMENT, new Length(reach), List.of(taped)).gaps();
  }

  /**
   * Of S1, S2 and S3 all is taped, S4 once, S5 never. S2 wants a third: S4 lies in line with S1, S5
   * crosses; S3 then has S5 or S4 too; what is missing brings all to three.
   */
  @Test
  void whatIsMissingBringsAllToThree() {
    Gaps gaps =
        gaps(
            100,
            new Pair("S1", "S2"),
            new Pair("S1", "S3"),
            new Pair("S2", "S3"),
            new Pair("S1", "S4"));
    assertThat(gaps.never()).containsExactly("S5");
    assertThat(gaps.once()).containsExactly("S4");
    assertThat(gaps.twice()).containsExactly("S2", "S3");
    assertThat(gaps.missing().get(0)).isEqualTo(new Pair("S2", "S5"));
    List<Pair> all = new ArrayList<>(gaps.missing());
    for (String mark : List.of("S4", "S5")) {
      int had = mark.equals("S4") ? 1 : 0;
      assertThat(all.stream().filter(pair -> pair.ends(mark)).count() + had)
          .isGreaterThanOrEqualTo(3);
    }
    // A tape of 3 m reaches from S5 to S2 and S4 only, and to no other two.
    assertThat(gaps(3).missing())
        .containsExactlyInAnyOrder(new Pair("S2", "S5"), new Pair("S4", "S5"));
  }

  private static List<Distance> all(int marks) {
    List<Distance> all = new ArrayList<>();
    for (int i = 1; i <= marks; i++) {
      for (int j = i + 1; j <= marks; j++) {
        all.add(distance("S" + i, "S" + j, 5));
      }
    }
    return all;
  }

  /** Two marks need one distance, each further mark two: 2 n − 3. */
  @ParameterizedTest
  @CsvSource({"2, 0", "3, 0", "4, 1", "5, 3", "6, 6"})
  void distancesToSpare(int marks, int spare) {
    assertThat(Judgement.redundancy(all(marks))).isEqualTo(spare);
    assertThat(Judgement.tapesTo("S2", all(marks))).isEqualTo(marks - 1L);
  }

  private static Judgement judged(List<Distance> distances, Suspect... suspects) {
    return Judgement.of(distances, List.of(suspects), "S1", "S2");
  }

  private static Suspect mark(String mark, double lead, double left, int quantities) {
    return suspect(Optional.of(mark), Optional.empty(), quantities, 0.1, 0, lead, left);
  }

  private static Suspect reading(double lead) {
    return suspect(Optional.empty(), Optional.of(new Pair("S1", "S3")), 1, 0, 0, lead, 1);
  }

  /** Fifty times as likely is 2 · ln 50 = 7.82 ahead; at most 10 may be left here. */
  @Test
  void oneSuspectIsNamedWhenItStandsAlone() {
    Judgement named = judged(all(5), mark("S3", 0, 9, 2), reading(7.9));
    assertThat(named.verdict()).isEqualTo(Verdict.MARK_MOVED);
    assertThat(named.reason()).isEmpty();
    assertThat(named.tied()).hasSize(1);
    assertThat(judged(all(5), reading(0), mark("S3", 7.9, 9, 2)).verdict())
        .isEqualTo(Verdict.READING_WRONG);
    Judgement equal = judged(all(5), mark("S3", 0, 9, 2), reading(7.8));
    assertThat(equal.verdict()).isEqualTo(Verdict.UNCLEAR);
    assertThat(equal.reason()).contains(Reason.EQUAL);
    assertThat(equal.tied()).hasSize(2);
    assertThat(judged(all(5), mark("S3", 0, 11, 2)).reason()).contains(Reason.SEVERAL);
    assertThat(judged(all(5), mark("S3", 0, 9, 1)).reason()).contains(Reason.TWO_TAPES);
    assertThat(judged(all(4), mark("S3", 0, 9, 2)).reason()).contains(Reason.ONE_REDUNDANCY);
  }

  /** Only two tapes reach S3, or all end at the baseline. */
  @Test
  void fewTapesNameNobody() {
    List<Distance> few = all(6);
    few.removeIf(
        each -> each.pair().ends("S3") && !each.pair().ends("S1") && !each.pair().ends("S2"));
    assertThat(judged(few, mark("S3", 0, 9, 2)).reason()).contains(Reason.TWO_TAPES);
    assertThat(judged(few, mark("S4", 0, 9, 2)).reason()).isEmpty();
    List<Distance> baseline = all(6);
    baseline.removeIf(each -> !each.pair().ends("S1") && !each.pair().ends("S2"));
    assertThat(judged(baseline, mark("S4", 0, 9, 2)).reason()).contains(Reason.BASELINE_ONLY);
  }

  private static Distances readings(double... millimetres) {
    List<Field.Taped> taped = new ArrayList<>();
    for (int i = 0; i < millimetres.length; i++) {
      boolean back = i % 2 == 1;
      taped.add(
          new Field.Taped(
              back ? "S2" : "S1", back ? "S1" : "S2", Length.ofMillimetres(millimetres[i])));
    }
    return Distances.of(taped, TapeAccuracy.of(LAYOUT.job().layout().tape()));
  }

  /**
   * Read to 1.5 mm and a division of 1 mm, 0.289 mm of rounding: 1.528 mm by hand; two readings
   * differ by 2.576 · √2 of that, 5.56 mm. The mean of two has the hand's variance halved.
   */
  @Test
  void readingsOfOneDistanceAreMetOrSetApart() {
    Distance mean = readings(8000, 8005).good().get(0);
    assertThat(mean.taped().millimetres()).isCloseTo(8002.5, within(1e-9));
    assertThat(mean.readings()).isEqualTo(2);
    Distance single = readings(8002.5).good().get(0);
    double saved =
        Math.pow(single.deviation().millimetres(), 2) - Math.pow(mean.deviation().millimetres(), 2);
    assertThat(saved).isCloseTo((1.5 * 1.5 + 1 / 12.0) / 2, within(1e-6));
    Distances apart = readings(8000, 8006);
    assertThat(apart.good()).isEmpty();
    assertThat(apart.doubled().get(0).limit().millimetres()).isCloseTo(5.564, within(0.001));
    assertThat(apart.doubled().get(0).pair()).isEqualTo(new Pair("S1", "S2"));
  }
}
