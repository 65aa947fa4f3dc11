package pegbook.calc.supplies;

import java.util.Map;
import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;

/** Counts as a shop sells them: whole pieces, whole units of a measure, set up. */
final class ShopNeeds {
  private ShopNeeds() {}

  /** What a working gives, set up to whole pieces. */
  static Need whole(String id, Map<String, Argument> words, Working working) {
    return measured(id, words, working.result(), Unit.NONE);
  }

  /** What a working gives, set up to whole units of its result. */
  static Need measured(String id, Map<String, Argument> words, Working working) {
    return measured(id, words, working.result(), working.formula().result().unit());
  }

  /** An amount, set up to whole units. */
  static Need measured(String id, Map<String, Argument> words, double amount, Unit unit) {
    return new Need(
        id, words, amount, (double) Rounding.UP.steps(amount, 1), unit, Optional.empty());
  }

  /** As many as are needed. */
  static Need pieces(String id, Map<String, Argument> words, long count) {
    return measured(id, words, (double) count, Unit.NONE);
  }
}
