package pegbook.geometry.network;

import java.util.Optional;
import java.util.OptionalDouble;
import pegbook.measure.Length;

/**
 * A distance after the adjustment.
 *
 * @param taped what was measured
 * @param adjusted the distance between the adjusted places
 * @param redundancy redundancy number: how much of an error in this one measurement shows in its
 *     own residual, from 0 (not at all: nothing checks it) to 1 (all of it)
 */
public record AdjustedDistance(TapedDistance taped, Length adjusted, double redundancy) {
  /** Below this a measurement counts as not checked by the others. */
  public static final double UNCHECKED = 1e-6;

  /** Adjusted less measured. */
  public Length residual() {
    return adjusted.minus(taped.length());
  }

  /** True when other measurements check this one. */
  public boolean isChecked() {
    return redundancy > UNCHECKED;
  }

  /**
   * Residual over its own standard deviation (a priori); normal with deviation 1 when nothing is
   * wrong. Empty when nothing checks the measurement.
   */
  public OptionalDouble standardised() {
    return isChecked()
        ? OptionalDouble.of(residual().dividedBy(taped.deviation()) / Math.sqrt(redundancy))
        : OptionalDouble.empty();
  }

  /**
   * By how much the measurement is too long if it alone is wrong: minus the residual over the
   * redundancy number. Empty when nothing checks it.
   */
  public Optional<Length> estimatedError() {
    return isChecked() ? Optional.of(residual().times(-1 / redundancy)) : Optional.empty();
  }

  /** Standard deviation of {@link #estimatedError}; empty when nothing checks the measurement. */
  public Optional<Length> estimatedErrorDeviation() {
    return isChecked()
        ? Optional.of(taped.deviation().times(1 / Math.sqrt(redundancy)))
        : Optional.empty();
  }

  /**
   * The smallest error of this one measurement that a test shows (minimal detectable error).
   *
   * @param shift how many of its deviations a standardised residual must be moved for that; see
   *     {@link Chances#detectableShift}
   * @return empty when nothing checks the measurement
   */
  public Optional<Length> detectable(double shift) {
    return estimatedErrorDeviation().map(deviation -> deviation.times(shift));
  }

  /** By how much the weighted sum of squares falls when this measurement is taken to be wrong. */
  public double fall() {
    double standardised = standardised().orElse(0);
    return standardised * standardised;
  }
}
