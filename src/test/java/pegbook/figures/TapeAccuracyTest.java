package pegbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import pegbook.job.Layout.Accuracy;
import pegbook.job.Layout.Tape;
import pegbook.job.Layout.TapeClass;
import pegbook.job.Layout.TapeItself;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.TapeLimit;
import pegbook.testing.Chance;

class TapeAccuracyTest {
  private static final Length MILLIMETRE = Length.ofMillimetres(1);

  private static TapeAccuracy accuracy(Length reading, TapeItself itself, Length division) {
    return TapeAccuracy.of(new Tape(division, new Length(30), new Accuracy(reading, itself)));
  }

  /** Directive 2014/32/EU, Annex X, Chapter I, Table 1, to the printed 0.1 mm. */
  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/figures/tape-limits.csv", numLinesToSkip = 5)
  void limitsOfTheThreeClasses(
      double metres,
      int begunMetres,
      double firstMarks,
      double firstEnd,
      double secondMarks,
      double secondEnd,
      double thirdMarks,
      double thirdEnd) {
    Length distance = new Length(metres);

    assertThat(Math.ceil(metres)).isEqualTo(begunMetres);
    limits("I", distance, firstMarks, firstEnd);
    limits("II", distance, secondMarks, secondEnd);
    limits("III", distance, thirdMarks, thirdEnd);
  }

  private static void limits(String tapeClass, Length distance, double marks, double end) {
    TapeLimit limit = TapeLimit.find(tapeClass);
    assertThat(limit.betweenMarks(distance).millimetres()).isCloseTo(marks, within(0.05));
    assertThat(limit.fromEndSurface(distance).millimetres()).isCloseTo(end, within(0.05));
  }

  /**
   * By hand: limit 2.5 mm at 10 m from the end; 2.5/√3 = 1.443; 1/√12 = 0.289; reading 1.5; all
   * 2.102.
   */
  @Test
  void aLimitIsTakenForAnEvenSpreadAndThePartsAddUpBySquares() {
    TapeAccuracy tape =
        accuracy(Length.ofMillimetres(1.5), new TapeItself.OfClass(TapeClass.II), MILLIMETRE);

    assertThat(tape.tapeSigma(new Length(10)).millimetres()).isCloseTo(1.443, within(0.0005));
    assertThat(tape.roundingSigma().millimetres()).isCloseTo(0.289, within(0.0005));
    assertThat(tape.sigma(new Length(10)).millimetres()).isCloseTo(2.102, within(0.0005));
    assertThat(tape.source()).isEqualTo(new Citation("eu-2014-32", "Table 1"));
  }

  /** By hand: 1/32 in at 10 ft; √(0.0625² + 0.03125² + (0.0625/3.4641)²) = 0.07217 in. */
  @Test
  void commonPracticeGrowsEvenly() {
    TapeAccuracy tape =
        accuracy(
            Length.ofInches(1 / 16.0), new TapeItself.CommonPractice(), Length.ofInches(1 / 16.0));

    assertThat(tape.tapeSigma(Length.ofFeet(10)).inches()).isCloseTo(0.03125, within(1e-12));
    assertThat(tape.tapeSigma(Length.ofFeet(40)).inches()).isCloseTo(0.125, within(1e-12));
    assertThat(tape.sigma(Length.ofFeet(10)).inches()).isCloseTo(0.07217, within(0.000005));
    assertThat(tape.source()).isEqualTo(Citation.COMMON_PRACTICE);
  }

  @Test
  void aJobsOwnFigureIsTakenAsItStands() {
    TapeItself own = new TapeItself.Growing(Length.ofMillimetres(0.3), new Length(1));
    TapeAccuracy tape = accuracy(Length.ZERO, own, MILLIMETRE);

    assertThat(tape.tapeSigma(new Length(7)).millimetres()).isCloseTo(2.1, within(1e-9));
  }

  /** A begun metre counts whole, but a hair over a whole metre is that metre. */
  @Test
  void aWholeMetreWithinAHairIsWhole() {
    TapeLimit limit = TapeLimit.find("I");

    assertThat(limit.betweenMarks(new Length(3 + 1e-12)))
        .isEqualTo(limit.betweenMarks(new Length(3)));
    assertThat(limit.betweenMarks(new Length(3 + 1e-6)))
        .isEqualTo(limit.betweenMarks(new Length(4)));
  }

  @Property(seed = Chance.SEED)
  void aLongerDistanceIsNeverBetter(
      @ForAll @DoubleRange(min = 0, max = 100) double one,
      @ForAll @DoubleRange(min = 0, max = 100) double more,
      @ForAll TapeClass tapeClass) {
    TapeAccuracy tape = accuracy(MILLIMETRE, new TapeItself.OfClass(tapeClass), MILLIMETRE);
    Length shorter = new Length(one);

    assertThat(tape.sigma(shorter.plus(new Length(more))))
        .isGreaterThanOrEqualTo(tape.sigma(shorter));
  }
}
