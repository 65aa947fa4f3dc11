package pegbook.job;

import java.util.Optional;
import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * The figure on the ground and how it is taped.
 *
 * @param outline the floor's edge
 * @param centreToFirstMark azimuth, clockwise from true north, of the line from the outline's
 *     centre to S1; marks then run clockwise; absent only for a free outline, which then lies as it
 *     is drawn
 * @param supportInset distance from the outline's edge, square to it, to a support's centre; at a
 *     corner on the bisector
 * @param baseline from which marks the others are taped
 * @param tape the tape
 * @param tolerance radius a mark may be off, 95 %
 */
public record Layout(
    Outline outline,
    Optional<Angle> centreToFirstMark,
    Length supportInset,
    Baseline baseline,
    Tape tape,
    Length tolerance) {

  /** From which two marks the others are taped. */
  public sealed interface Baseline {
    /** The pair of marks whose worst crossing is strongest. */
    record Choose() implements Baseline {}

    /** Two named marks. */
    record Named(String first, String second) implements Baseline {}
  }

  /**
   * The tape.
   *
   * @param division its smallest division; every reading is set to it
   * @param length how far it reaches
   * @param accuracy how far its distances may be off
   */
  public record Tape(Length division, Length length, Accuracy accuracy) {}

  /**
   * How far a taped distance may be off, beside the rounding to the division. {@code
   * figures.TapeAccuracy} turns it into a standard deviation.
   *
   * @param reading standard deviation of holding the tape at both ends and reading it, whatever the
   *     distance
   * @param itself what the tape itself adds
   */
  public record Accuracy(Length reading, TapeItself itself) {}

  /** What the tape itself adds to the error of a distance; it grows with the distance. */
  public sealed interface TapeItself {
    /** An ordinary builder's tape in ordinary hands. */
    record CommonPractice() implements TapeItself {}

    /** A tape with an accuracy class printed on it. */
    record OfClass(TapeClass tapeClass) implements TapeItself {}

    /**
     * A standard deviation that grows evenly with the distance.
     *
     * @param error standard deviation
     * @param over the distance that has it
     */
    record Growing(Length error, Length over) implements TapeItself {}
  }

  /** Accuracy classes of tapes, as they are printed on the blade in Roman numerals. */
  public enum TapeClass {
    I,
    II,
    III
  }
}
