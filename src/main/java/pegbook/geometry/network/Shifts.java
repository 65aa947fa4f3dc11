package pegbook.geometry.network;

import java.util.Optional;

/** What the distances say about a point that was expected somewhere. */
final class Shifts {
  /** A direction in which less than this share of the expected variance is checked is not seen. */
  private static final double UNSEEN = 1e-6;

  private Shifts() {}

  /** The weights that belong to a spread: its inverse. */
  static Spread inverse(Spread spread) {
    double determinant = spread.determinant();
    return new Spread(
        spread.northNorth() / determinant,
        -spread.eastNorth() / determinant,
        spread.eastEast() / determinant);
  }

  /**
   * The supposed shift of one point.
   *
   * <p>With weights P of the expected place, cofactors Q after the adjustment and the change v that
   * the adjustment made, the sum of squares falls by u M⁻¹ u with u = P v and M = P − P Q P; the
   * shift is M⁻¹ u with spread M⁻¹. It is the test of a group of two observations.
   */
  static Shift of(Spread expected, Spread adjusted, double changeEast, double changeNorth) {
    Spread weight = inverse(expected);
    double pullEast = weight.eastEast() * changeEast + weight.eastNorth() * changeNorth;
    double pullNorth = weight.eastNorth() * changeEast + weight.northNorth() * changeNorth;
    Spread seen = sandwiched(weight, expected.plus(adjusted.times(-1)));
    double large = square(seen.longHalfAxis().metres());
    double small = square(seen.shortHalfAxis().metres());
    double least = UNSEEN * square(weight.shortHalfAxis().metres());
    if (large <= least) {
      return new Shift(0, 0, 0, Optional.empty(), 0);
    }
    if (small <= least) {
      double east = StrictMath.sin(seen.longAxisAzimuth().radians());
      double north = StrictMath.cos(seen.longAxisAzimuth().radians());
      double pull = pullEast * east + pullNorth * north;
      double along = pull / large;
      return new Shift(along * east, along * north, 1, Optional.empty(), pull * along);
    }
    Spread spread = inverse(seen);
    double east = spread.eastEast() * pullEast + spread.eastNorth() * pullNorth;
    double north = spread.eastNorth() * pullEast + spread.northNorth() * pullNorth;
    return new Shift(east, north, 2, Optional.of(spread), east * pullEast + north * pullNorth);
  }

  /** Weights times a spread times weights. */
  private static Spread sandwiched(Spread weight, Spread middle) {
    double ee = weight.eastEast() * middle.eastEast() + weight.eastNorth() * middle.eastNorth();
    double en = weight.eastEast() * middle.eastNorth() + weight.eastNorth() * middle.northNorth();
    double ne = weight.eastNorth() * middle.eastEast() + weight.northNorth() * middle.eastNorth();
    double nn = weight.eastNorth() * middle.eastNorth() + weight.northNorth() * middle.northNorth();
    return new Spread(
        ee * weight.eastEast() + en * weight.eastNorth(),
        ee * weight.eastNorth() + en * weight.northNorth(),
        ne * weight.eastNorth() + nn * weight.northNorth());
  }

  private static double square(double value) {
    return value * value;
  }
}
