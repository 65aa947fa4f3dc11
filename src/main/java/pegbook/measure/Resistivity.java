package pegbook.measure;

/**
 * Resistance of a metal by length and area.
 *
 * @param ohmMetres value in ohm metres
 */
public record Resistivity(double ohmMetres) implements Comparable<Resistivity>, Quantity {
  public Resistivity {
    if (!Double.isFinite(ohmMetres)) {
      throw new IllegalArgumentException("Resistivity of " + ohmMetres);
    }
  }

  /** From ohms for a metre of one square millimetre. */
  public static Resistivity ofOhmSquareMillimetresPerMetre(double ohms) {
    return new Resistivity(ohms * 1e-6);
  }

  @Override
  public double si() {
    return ohmMetres;
  }

  @Override
  public int compareTo(Resistivity other) {
    return Double.compare(ohmMetres, other.ohmMetres);
  }
}
