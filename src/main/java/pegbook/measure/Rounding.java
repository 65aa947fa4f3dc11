package pegbook.measure;

/** Directions in which a value is set to a whole number of steps. */
public enum Rounding {
  /** The nearest step; halfway goes up (away from zero for negative values). */
  NEAREST,
  /** The next step up, towards plus infinity: orders, depths, loads. */
  UP,
  /** The next step down, towards minus infinity: spans, capacities. */
  DOWN;

  /** How close to a step, in steps, counts as on it. */
  public static final double TIE = 1e-6;

  /**
   * Whole number of steps in a value.
   *
   * @param value the value, in any unit
   * @param step the step, positive, in the same unit
   * @return the number of steps
   * @throws IllegalArgumentException when the step is not positive or the count is not a sensible
   *     number
   */
  public long steps(double value, double step) {
    if (!(step > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException("value " + value + " in steps of " + step);
    }
    double exact = value / step;
    if (Math.abs(exact) > 1e15) {
      throw new IllegalArgumentException("value " + value + " in steps of " + step);
    }
    return switch (this) {
      case NEAREST -> (long) (Math.signum(exact) * Math.floor(Math.abs(exact) + 0.5 + TIE));
      case UP -> (long) Math.ceil(exact - TIE);
      case DOWN -> (long) Math.floor(exact + TIE);
    };
  }
}
