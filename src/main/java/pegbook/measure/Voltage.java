package pegbook.measure;

/**
 * An electric voltage, or a drop of one.
 *
 * @param volts value in volts
 */
public record Voltage(double volts) implements Comparable<Voltage>, Quantity {
  public Voltage {
    if (!Double.isFinite(volts)) {
      throw new IllegalArgumentException("Voltage of " + volts);
    }
  }

  @Override
  public double si() {
    return volts;
  }

  @Override
  public int compareTo(Voltage other) {
    return Double.compare(volts, other.volts);
  }
}
