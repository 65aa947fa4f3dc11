package pegbook.calc.frostdepth;

/**
 * Neumann's solution of freezing into even ground whose heat moves alike frozen and unfrozen: how
 * much less deep frost goes than by the heat of its water alone.
 */
final class Neumann {
  private static final int HALVINGS = 80;

  private Neumann() {}

  /**
   * The coefficient λ of the modified Berggren formula: γ·√(2/μ) with the γ that solves e^(−γ²)/erf
   * γ − α·e^(−γ²)/erfc γ = √π·γ/μ.
   *
   * @param alpha the ground's warmth over the frost at its surface, 0 and more
   * @param mu heat the soil stores over heat its water sets free, more than 0 and up to 5
   */
  static double lambda(double alpha, double mu) {
    double low = 0;
    // Frost never goes deeper than without the ground's own heat, where λ is 1.
    double high = Math.sqrt(mu / 2);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (balance(middle, alpha, mu) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2 * Math.sqrt(2 / mu);
  }

  private static double balance(double gamma, double alpha, double mu) {
    double falls = StrictMath.exp(-gamma * gamma);
    double erf = erf(gamma);
    return falls / erf - alpha * falls / (1 - erf) - Math.sqrt(Math.PI) * gamma / mu;
  }

  /** The error function by its series, which settles quickly below 2. */
  static double erf(double x) {
    double term = x;
    double sum = x;
    for (int n = 1; n < 100; n++) {
      term *= -x * x / n;
      sum += term / (2 * n + 1);
    }
    return 2 / Math.sqrt(Math.PI) * sum;
  }
}
