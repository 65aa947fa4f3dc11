package pegbook.figures;

import pegbook.job.Layout.Tape;
import pegbook.job.Layout.TapeItself;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.TapeLimit;

/**
 * How far one taped distance may be off, as standard deviations. Two times in three an error is
 * smaller than its standard deviation.
 *
 * <p>Three errors that know nothing of each other add up by their squares (law of propagation of
 * variances):
 *
 * <ul>
 *   <li>holding and reading: the job's own figure, or common practice;
 *   <li>the tape itself, with its pull, sag and slope as far as nobody corrects them: a figure that
 *       grows with the distance, or the limit of the tape's class. A class gives the greatest error
 *       allowed, not a standard deviation. Nobody knows where between the limits a tape lies, so
 *       every error up to the limit is held equally likely; the standard deviation of such an error
 *       is the limit over the square root of three. The tape is taken to be hooked or held by its
 *       end, which the class allows a little more for;
 *   <li>rounding to the division: equally likely up to half a division either way, so the division
 *       over the square root of twelve.
 * </ul>
 *
 * @param reading standard deviation of holding and reading
 * @param itself what the tape itself adds
 * @param division to which distances are set
 */
public record TapeAccuracy(Length reading, TapeItself itself, Length division) {
  /** Common practice, no source: 1/32 in per 10 ft, about 0.26 mm per metre. */
  private static final TapeItself.Growing COMMON =
      new TapeItself.Growing(Length.ofInches(1 / 32.0), Length.ofFeet(10));

  private static final double SQUARE_ROOT_OF_THREE = 1.7320508075688772;

  /** The accuracy of a job's tape. */
  public static TapeAccuracy of(Tape tape) {
    return new TapeAccuracy(tape.accuracy().reading(), tape.accuracy().itself(), tape.division());
  }

  /** Standard deviation of one taped distance, all parts together. */
  public Length sigma(Length distance) {
    double readingMetres = reading.metres();
    double tapeMetres = tapeSigma(distance).metres();
    double roundingMetres = roundingSigma().metres();
    return new Length(
        Math.sqrt(
            readingMetres * readingMetres
                + tapeMetres * tapeMetres
                + roundingMetres * roundingMetres));
  }

  /** The part of the tape itself. */
  public Length tapeSigma(Length distance) {
    if (itself instanceof TapeItself.OfClass tape) {
      TapeLimit limit = TapeLimit.find(tape.tapeClass().name());
      return limit.fromEndSurface(distance).times(1 / SQUARE_ROOT_OF_THREE);
    }
    return growing().error().times(distance.dividedBy(growing().over()));
  }

  /** The error that grows evenly with the distance: the job's own, or that of common practice. */
  public TapeItself.Growing growing() {
    return itself instanceof TapeItself.Growing own ? own : COMMON;
  }

  /** The part of the rounding to the division. */
  public Length roundingSigma() {
    return division.times(0.5 / SQUARE_ROOT_OF_THREE);
  }

  /** Where the tape's own part is from; the job's own figure counts as the trade's. */
  public Citation source() {
    return itself instanceof TapeItself.OfClass tape
        ? TapeLimit.find(tape.tapeClass().name()).citation()
        : Citation.COMMON_PRACTICE;
  }
}
