package pegbook.job;

import java.util.Locale;
import pegbook.measure.Density;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Ratio;

/**
 * Concrete that the crew mixes from cement, sand and stone.
 *
 * @param stone largest stone
 * @param stoneDensity of the stone, dry and rodded into a measure
 * @param sand how fine the sand is
 * @param slump how far a cone of fresh concrete sinks
 * @param sandWater water on the sand, beyond what it has drunk, by its weight
 * @param stoneWater the same of the stone
 * @param cementBag mass of a bag of cement
 */
public record OwnMix(
    Length stone,
    Density stoneDensity,
    Sand sand,
    Length slump,
    Ratio sandWater,
    Ratio stoneWater,
    Mass cementBag) {

  /** How fine sand is; the numbers are usual fineness moduli, common practice. */
  public enum Sand {
    FINE(2.4),
    MEDIUM(2.7),
    COARSE(3.0);

    private final double fineness;

    Sand(double fineness) {
      this.fineness = fineness;
    }

    /** Fineness modulus. */
    public double fineness() {
      return fineness;
    }

    /** As words name it. */
    public String id() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
