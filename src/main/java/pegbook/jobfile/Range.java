package pegbook.jobfile;

import pegbook.measure.QuantityNotation;
import pegbook.measure.UnitSystem;

/**
 * Sensible limits of a quantity, stated in each system's round numbers; the wider of both hold.
 *
 * @param least smallest, imperial
 * @param most largest, imperial
 * @param leastMetric smallest, metric
 * @param mostMetric largest, metric
 */
record Range(String least, String most, String leastMetric, String mostMetric) {
  /** Limits that are the same in both systems. */
  static Range same(String least, String most) {
    return new Range(least, most, least, most);
  }

  String least(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? least : leastMetric;
  }

  String most(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? most : mostMetric;
  }

  <Q extends Comparable<Q>> boolean contains(Q value, QuantityNotation<Q> notation) {
    return (isUpTo(limit(least, notation), value) || isUpTo(limit(leastMetric, notation), value))
        && (isUpTo(value, limit(most, notation)) || isUpTo(value, limit(mostMetric, notation)));
  }

  private static <Q extends Comparable<Q>> boolean isUpTo(Q smaller, Q larger) {
    return smaller.compareTo(larger) <= 0;
  }

  private static <Q> Q limit(String text, QuantityNotation<Q> notation) {
    return notation.read(text).taken().orElseThrow(() -> new IllegalStateException(text));
  }
}
