package pegbook.calc.asmarked;

import pegbook.geometry.network.Chances;

/** The chances that the judgement accepts. */
final class TestLevels {
  /** Chance of an alarm when nothing is wrong, all tests together. */
  static final double ALARM = 0.05;

  /** Half of it goes to the sum of squares, half to the suppositions, shared out among them. */
  static final double HALF = ALARM / 2;

  /** Chance that a good reading lies beyond its limit. */
  static final double READING = 0.01;

  /** How many times as likely the culprit must make the readings as the next suspect does. */
  static final double ODDS = 50;

  /** What each quantity costs that a supposition may choose (Akaike's information criterion). */
  static final double COST = 2;

  /** Chance that what the true culprit leaves is taken for a second mistake. */
  static final double ENOUGH = 0.01;

  private TestLevels() {}

  /** By how much the culprit must be ahead of the next suspect. */
  static double lead() {
    return 2 * StrictMath.log(ODDS);
  }

  /** How many deviations a reading may differ. */
  static double readingFactor() {
    return Chances.normalWithin(1 - READING);
  }

  /** What the sum of squares stays under when nothing is wrong. */
  static double sumLimit(int degreesOfFreedom) {
    return Chances.chiSquaredQuantile(1 - HALF, degreesOfFreedom);
  }

  /** What may be left when the culprit is the only one; nothing when no distance is left over. */
  static double leftLimit(int degreesOfFreedom) {
    return degreesOfFreedom < 1 ? 0 : Chances.chiSquaredQuantile(1 - ENOUGH, degreesOfFreedom);
  }
}
