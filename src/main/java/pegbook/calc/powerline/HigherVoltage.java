package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.List;
import pegbook.measure.UnitSystem;
import pegbook.measure.Voltage;

/**
 * A supply of a higher voltage than the job's, as buildings have it: common practice.
 *
 * @param threePhase true for three conductors that are loaded alike
 */
record HigherVoltage(Voltage voltage, boolean threePhase) {
  private static final List<Double> IMPERIAL = List.of(24.0, 48.0, 120.0, 240.0);
  private static final List<Double> METRIC = List.of(24.0, 48.0, 230.0);
  private static final double THREE_PHASE = 400;

  /** From so many volts on a voltage is worth its own row. */
  private static final double WORTH = 1.5;

  /** At most two that are above a voltage. */
  static List<HigherVoltage> above(double volts, UnitSystem units) {
    boolean imperial = units == UnitSystem.IMPERIAL;
    List<HigherVoltage> higher = new ArrayList<>();
    for (double other : imperial ? IMPERIAL : METRIC) {
      if (other >= WORTH * volts && higher.size() < 2) {
        higher.add(new HigherVoltage(new Voltage(other), false));
      }
    }
    if (!imperial && higher.size() < 2 && volts < THREE_PHASE / WORTH && volts > 200) {
      higher.add(new HigherVoltage(new Voltage(THREE_PHASE), true));
    }
    return higher;
  }

  /** The voltage of which the drop is a share: between a conductor and the neutral. */
  double lostOf() {
    return threePhase ? voltage.volts() / Math.sqrt(3) : voltage.volts();
  }
}
