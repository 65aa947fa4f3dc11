package pegbook.calc.markaccuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.calc.markaccuracy.PairSearch.Found;
import pegbook.figures.BaselineErrors;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Crossings;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/** The search for the best pair against looking at every pair to the end. */
class PairSearchTest {
  private static final BaselineErrors ERRORS =
      new BaselineErrors(
          TapeAccuracy.of(
              LayoutJob.of(new Outline.Regular(3, new Length(3))).job().layout().tape()),
          Crossings.onTape(Length.ofMillimetres(1)));

  private static Found found(int beyond, double radius, double metres) {
    return new Found(0, 1, beyond, 2, radius, metres);
  }

  /** Fewest tapes out of reach first, then the smallest radius, then the longest baseline. */
  @Test
  void whatIsBetter() {
    Found known = found(1, 0.01, 6);
    assertThat(found(0, 0.02, 3).isBetterThan(known)).isTrue();
    assertThat(found(2, 0.001, 9).isBetterThan(known)).isFalse();
    assertThat(found(1, 0.0099, 3).isBetterThan(known)).isTrue();
    assertThat(found(1, 0.0101, 9).isBetterThan(known)).isFalse();
    // Alike to a part in a million millions: the longer one, and of those the first.
    for (double alike : new double[] {0.01, 0.01 * (1 + 1e-12), 0.01 * (1 - 1e-12)}) {
      assertThat(found(1, alike, 6.1).isBetterThan(known)).isTrue();
      assertThat(found(1, alike, 6).isBetterThan(known)).isFalse();
      assertThat(found(1, alike, 5.9).isBetterThan(known)).isFalse();
      assertThat(found(1, alike, 6 * (1 + 1e-12)).isBetterThan(known)).isFalse();
    }
    assertThat(known.radius()).contains(new Length(0.01));
    assertThat(found(1, Double.POSITIVE_INFINITY, 6).radius()).isEmpty();
  }

  private static List<Point> chance(Random random, int count) {
    List<Point> places = new ArrayList<>();
    while (places.size() < count) {
      places.add(new Point(random.nextInt(800) / 100.0 - 4, random.nextInt(800) / 100.0 - 4));
    }
    return places;
  }

  private static int beyond(List<Point> ends, List<Point> marks, int one, int two, double reach) {
    int beyond = ends.get(one).distanceTo(ends.get(two)).metres() > reach ? 1 : 0;
    for (Point mark : marks) {
      beyond += ends.get(one).distanceTo(mark).metres() > reach ? 1 : 0;
      beyond += ends.get(two).distanceTo(mark).metres() > reach ? 1 : 0;
    }
    return beyond;
  }

  private static Found whole(
      List<Point> ends, List<Point> marks, boolean among, int one, int two, double reach) {
    Segment line = new Segment(ends.get(one), ends.get(two));
    double worst = among ? ERRORS.atSecond(line).radiusHolding(0.95).metres() : 0;
    int which = among ? two : -1;
    for (int i = 0; i < marks.size(); i++) {
      if (!among || (i != one && i != two)) {
        double radius =
            ERRORS
                .at(line, marks.get(i))
                .map(ellipse -> ellipse.radiusHolding(0.95).metres())
                .orElse(Double.POSITIVE_INFINITY);
        which = radius > worst ? i : which;
        worst = Math.max(worst, radius);
      }
    }
    int beyond = beyond(ends, marks, one, two, reach);
    return new Found(one, two, beyond, which, worst, line.length().metres());
  }

  private static void holds(
      List<Point> ends, List<Point> marks, boolean among, double reach, Found found) {
    Optional<Found> best = Optional.empty();
    for (int i = 0; i < ends.size(); i++) {
      for (int j = 0; j < ends.size(); j++) {
        if (i != j) {
          Found next = whole(ends, marks, among, i, j, reach);
          best = best.isEmpty() || next.isBetterThan(best.get()) ? Optional.of(next) : best;
        }
      }
    }
    Found expected = best.orElseThrow();
    assertThat(found.first()).isEqualTo(expected.first());
    assertThat(found.second()).isEqualTo(expected.second());
    assertThat(found.beyondReach()).isEqualTo(expected.beyondReach());
    assertThat(found.metres()).isCloseTo(expected.metres(), within(1e-12));
    if (Double.isFinite(expected.radiusMetres())) {
      assertThat(found.worst()).isEqualTo(expected.worst());
      assertThat(found.radiusMetres()).isCloseTo(expected.radiusMetres(), within(1e-12));
    } else {
      assertThat(found.radius()).isEmpty();
    }
  }

  /** With a long tape, and with one that does not reach all marks from any two. */
  @ParameterizedTest
  @ValueSource(doubles = {30, 6, 4, 2.5})
  void amongTheMarks(double reach) {
    Random random = new Random(11);
    for (int round = 0; round < 25; round++) {
      List<Point> marks = chance(random, 3 + round % 5);
      Found found = PairSearch.among(ERRORS, marks, new Length(reach)).best().orElseThrow();
      holds(marks, marks, true, reach, found);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {30, 6, 4, 2.5})
  void besideTheMarks(double reach) {
    Random random = new Random(12);
    for (int round = 0; round < 25; round++) {
      List<Point> marks = chance(random, 2 + round % 4);
      List<Point> places = chance(random, 7);
      Found found =
          PairSearch.beside(ERRORS, places, marks, new Length(reach)).best().orElseThrow();
      holds(places, marks, false, reach, found);
    }
  }

  /**
   * A to B 4 m, B to C 3 m, A to C 5 m; a tape of just the length reaches. From B and C one tape of
   * 4 m goes to A and one of 5 m; with less than 3 m they miss one another too, either way.
   */
  @ParameterizedTest
  @CsvSource({"5, 0", "4.999, 1", "3.999, 2", "2.999, 5"})
  void whatIsOutOfReach(double reach, int beyond) {
    List<Point> marks = List.of(new Point(0, 0), new Point(4, 0), new Point(4, 3));
    Found found = PairSearch.among(ERRORS, marks, new Length(reach)).best().orElseThrow();
    assertThat(found.beyondReach()).isEqualTo(beyond);
  }

  @Test
  void oneMarkMakesNoPair() {
    assertThat(PairSearch.among(ERRORS, List.of(Point.ORIGIN), new Length(30)).best()).isEmpty();
  }
}
