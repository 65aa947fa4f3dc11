package pegbook.calc.safetynotes;

import java.util.List;
import java.util.stream.DoubleStream;
import pegbook.figures.Argument;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Ratio;

/**
 * A lift of a bag, and what one person should lift so.
 *
 * @param name the job's words, or an entry of the text bundle where the job names no lifts
 * @param from height of the hands at its start
 * @param to at its end
 * @param perMinute how often
 * @param limit the recommended weight limit, exact
 * @param byRoundedFactors the same with each factor rounded to two decimals, as the publication's
 *     examples do, to check with a pencil
 * @param index bag over limit: above one the bag is too heavy for one person
 */
public record Lifting(
    Argument name,
    Length from,
    Length to,
    int perMinute,
    Working limit,
    Mass byRoundedFactors,
    Ratio index) {

  /** The same with what a bag weighs against it. */
  Lifting with(Mass bag) {
    return new Lifting(
        name,
        from,
        to,
        perMinute,
        limit,
        byRoundedFactors,
        new Ratio(bag.dividedBy(limit.asMass())));
  }

  /** The publication's own way of working by hand: each factor to two decimals. */
  static double rounded(double constant, List<Double> factors) {
    double product =
        factors.stream()
            .flatMapToDouble(factor -> DoubleStream.of(Math.rint(factor * 100) / 100))
            .reduce(constant, (one, next) -> one * next);
    return Math.rint(product * 10) / 10;
  }
}
