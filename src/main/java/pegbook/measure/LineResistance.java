package pegbook.measure;

/**
 * Resistance or reactance of a conductor by its length.
 *
 * @param ohmsPerMetre value in ohms to the metre
 */
public record LineResistance(double ohmsPerMetre) implements Comparable<LineResistance>, Quantity {
  public LineResistance {
    if (!Double.isFinite(ohmsPerMetre)) {
      throw new IllegalArgumentException("LineResistance of " + ohmsPerMetre);
    }
  }

  /** From ohms to a thousand feet. */
  public static LineResistance ofOhmsPerThousandFeet(double ohms) {
    return new LineResistance(ohms / 304.8);
  }

  @Override
  public double si() {
    return ohmsPerMetre;
  }

  @Override
  public int compareTo(LineResistance other) {
    return Double.compare(ohmsPerMetre, other.ohmsPerMetre);
  }
}
