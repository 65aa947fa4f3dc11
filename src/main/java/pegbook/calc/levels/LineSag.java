package pegbook.calc.levels;

import java.util.List;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * How far a string line hangs through between its stakes.
 *
 * <p>A string pulled well hangs in a parabola: weight by length squared over eight times the pull.
 * Its weight and the pull are common practice, no source: thin mason's line, pulled hard by hand.
 *
 * @param span from stake to stake: the longest way between two marks, and a stake's distance beyond
 *     each
 * @param sag at its middle when nothing props it
 * @param allowed what may pass unseen: half a division of the tape
 * @param longestSpan that sags no more than allowed, set down to a whole step
 * @param spans into how many the line is parted, all alike
 * @param propEvery how long each is
 */
public record LineSag(
    Length span, Length sag, Length allowed, Length longestSpan, int spans, Length propEvery) {
  /** Mass of thin braided mason's line; common practice, no source. */
  public static final double KILOGRAMS_PER_METRE = 0.0015;

  public static final double POUNDS_PER_FOOT = 0.001;

  /** Pull by hand; common practice, no source. */
  public static final double PULL_NEWTONS = 45;

  public static final double PULL_POUNDS = 10;

  /** How far beyond the outermost marks the stakes stand; common practice, no source. */
  public static Length stakeBeyond(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? Length.ofFeet(3) : new Length(1);
  }

  /**
   * Works out the sag.
   *
   * @param between the longest way between two marks
   * @param workings takes the steps
   */
  static LineSag of(Job job, Length between, List<Working> workings) {
    LevelsFormulas formulas = LevelsFormulas.in(job.heading().units());
    Length division = job.layout().tape().division();
    Length span = between.plus(stakeBeyond(job.heading().units()).times(2));
    Working sag = formulas.sagOver(span);
    Working free = formulas.freeSpan(division);
    Working spans = Working.of(formulas.spans(), "", span, free.asLength());
    workings.addAll(List.of(sag, free, spans));
    int count = (int) Math.round(spans.result());
    return new LineSag(
        span, sag.asLength(), division.times(0.5), free.asLength(), count, span.times(1.0 / count));
  }
}
