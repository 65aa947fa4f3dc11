package pegbook.calc.asdug;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.figures.Argument;
import pegbook.figures.BearingPair;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.published.Citation;

/**
 * Holes beside shallower footings once some were dug, by the rule for planned ones. What fails as
 * planned already, and no worse, is told there.
 *
 * @param findings one for each hole that goes too deep
 * @param workings the pairs that fail
 */
record DugBearingLines(List<Finding> findings, List<Working> workings) {

  static DugBearingLines of(AsDug asDug, Formula formula) {
    Map<String, BearingPair> worst = new LinkedHashMap<>();
    List<Working> workings = new ArrayList<>();
    for (BearingPair pair : BearingPair.all(asDug.holes(), formula)) {
      if (pair.fails() && isNew(asDug, pair, formula)) {
        workings.add(pair.working());
        worst.merge(
            pair.deeper().mark(),
            pair,
            (one, other) ->
                Stream.of(one, other).min(Comparator.comparing(BearingPair::margin)).orElseThrow());
      }
    }
    return new DugBearingLines(
        worst.values().stream().map(DugBearingLines::finding).toList(), workings);
  }

  /** Whether the pair fails by what was found: as planned it does not, or less. */
  private static boolean isNew(AsDug asDug, BearingPair pair, Formula formula) {
    Hole one = asDug.planned(pair.shallower().mark());
    Hole other = asDug.planned(pair.deeper().mark());
    Optional<BearingPair> planned = BearingPair.of(one, other, formula);
    return planned
        .filter(BearingPair::fails)
        .map(before -> pair.margin().plus(AsDugCalculator.TOLERANCE).isLessThan(before.margin()))
        .orElse(true);
  }

  private static Finding finding(BearingPair pair) {
    return Finding.of(
            Kind.STOP,
            "dug-below-bearing-line",
            "field.dug",
            Decider.ENGINEER,
            Citation.COMMON_PRACTICE)
        .about(List.of(pair.deeper().mark(), pair.shallower().mark()))
        .with("deeper", Argument.words(pair.deeper().mark()))
        .with("shallower", Argument.words(pair.shallower().mark()))
        .with("below", Argument.of(pair.margin().negated()));
  }
}
