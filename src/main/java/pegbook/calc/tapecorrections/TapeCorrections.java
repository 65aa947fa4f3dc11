package pegbook.calc.tapecorrections;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.MarkPair;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Length;

/**
 * What slope and heat do to taped distances.
 *
 * @param slopes one for each pair of marks whose levels are both known, in the order of work
 * @param unknown pairs with a mark without a level: how far the ground slopes there is not known
 * @param worst the pair that the slope changes most, where it changes any by more than half a
 *     division
 * @param heat what heat does to the longest of them
 */
public record TapeCorrections(
    List<Slope> slopes,
    List<MarkPair> unknown,
    Optional<Slope> worst,
    Heat heat,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public TapeCorrections {
    slopes = List.copyOf(slopes);
    unknown = List.copyOf(unknown);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /**
   * A taped distance over sloping ground, taken as an even slope.
   *
   * @param pair its marks
   * @param level the level distance, which the tape table gives
   * @param rise of the ground from the first mark to the second; negative: it falls
   * @param alongGround the distance along the ground
   * @param excess by how much that is longer: what a tape laid on the ground falls short by
   * @param matters true when the excess is more than half a division of the tape
   */
  public record Slope(
      MarkPair pair,
      Length level,
      Length rise,
      Length alongGround,
      Length excess,
      boolean matters) {}

  /**
   * What heat does to a steel tape; see {@link SteelTape}.
   *
   * @param longest the longest distance
   * @param halfDivisionKelvins warmer or colder than the tape's reference by so much, the longest
   *     distance is wrong by half a division
   * @param seasonKelvins how much warmer or colder a working day may well be; common practice
   * @param season by how much the longest distance is then wrong
   * @param matters true when a season reaches half a division
   * @param warm the reading at which the longest distance lies, that much warmer
   * @param cold the same, that much colder
   */
  public record Heat(
      Length longest,
      double halfDivisionKelvins,
      double seasonKelvins,
      Length season,
      boolean matters,
      Length warm,
      Length cold) {}
}
