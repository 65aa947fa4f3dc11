package pegbook.calc.pierstiffness;

/**
 * The first root of the frequency equation of a cantilever of even mass with a mass at its tip.
 *
 * <p>Bernoulli-Euler beam; with r the tip's mass over the beam's, the smallest positive root λ of
 *
 * <pre>1 + cos λ · cosh λ + r · λ · (cos λ · sinh λ − sin λ · cosh λ) = 0</pre>
 *
 * gives the circular frequency (λ/L)² √(E I / m). The inertia of the tip mass against turning and
 * shear in the beam are left out.
 */
final class TipMassRoot {
  /** The root without a tip mass is 1.8751; with one it is smaller, and never nothing. */
  private static final double HIGHEST = 1.8752;

  private static final int HALVINGS = 80;

  private TipMassRoot() {}

  /**
   * The root.
   *
   * @param massRatio mass at the tip over that of the beam, not negative
   */
  static double of(double massRatio) {
    double low = 0;
    double high = HIGHEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (left(middle, massRatio) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** The left side of the equation: 2 at nothing, and negative past the first root. */
  private static double left(double root, double massRatio) {
    double cosine = StrictMath.cos(root);
    double sine = StrictMath.sin(root);
    double hyperbolicCosine = StrictMath.cosh(root);
    double hyperbolicSine = StrictMath.sinh(root);
    return 1
        + cosine * hyperbolicCosine
        + massRatio * root * (cosine * hyperbolicSine - sine * hyperbolicCosine);
  }
}
