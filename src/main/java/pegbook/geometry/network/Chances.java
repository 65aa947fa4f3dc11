package pegbook.geometry.network;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Probabilities that tests of an adjustment rest on. */
public final class Chances {
  private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

  private Chances() {}

  /**
   * What a chi-squared number stays under with a probability.
   *
   * @param probability over 0 and under 1, such as 0.95
   * @param degreesOfFreedom at least 1
   */
  public static double chiSquaredQuantile(double probability, int degreesOfFreedom) {
    return new ChiSquaredDistribution(degreesOfFreedom).inverseCumulativeProbability(probability);
  }

  /**
   * The probability that a chi-squared number is larger than a value.
   *
   * @param value 0 or more
   * @param degreesOfFreedom at least 1
   */
  public static double chiSquaredTail(double value, int degreesOfFreedom) {
    return 1 - new ChiSquaredDistribution(degreesOfFreedom).cumulativeProbability(value);
  }

  /** What a normal number with mean 0 and deviation 1 stays under with a probability. */
  public static double normalQuantile(double probability) {
    return NORMAL.inverseCumulativeProbability(probability);
  }

  /**
   * How many standard deviations a normal number stays within, on both sides, with a probability.
   */
  public static double normalWithin(double probability) {
    return normalQuantile((1 + probability) / 2);
  }

  /** The chance that a normal number is more than so many deviations off, on either side. */
  public static double normalBeyond(double deviations) {
    return 2 * NORMAL.cumulativeProbability(-Math.abs(deviations));
  }

  /**
   * By how many deviations a standardised residual must be moved for a two-sided test to show it.
   *
   * @param level chance of a false alarm, such as 0.05
   * @param power chance that the test shows it, such as 0.8
   */
  public static double detectableShift(double level, double power) {
    return normalQuantile(1 - level / 2) + normalQuantile(power);
  }

  /** How many standard deviations the radius of an ellipse is that holds a share of places. */
  public static double ellipseScale(double probability) {
    return Math.sqrt(-2 * StrictMath.log1p(-probability));
  }
}
