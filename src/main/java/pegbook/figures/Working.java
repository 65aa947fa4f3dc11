package pegbook.figures;

import java.util.ArrayList;
import java.util.List;
import pegbook.measure.Angle;
import pegbook.measure.Area;
import pegbook.measure.Duration;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.measure.Unit;
import pegbook.measure.Volume;

/**
 * One printed step of a calculation: a formula with the numbers put in. Calculators take their
 * results from it, so that what is printed is what was used.
 *
 * @param formula the formula
 * @param subject the mark, hole or part it is for; empty: the whole job
 * @param inputs numbers put in, in the units of the formula's inputs
 */
public record Working(Formula formula, String subject, List<Double> inputs) {
  public Working {
    inputs = List.copyOf(inputs);
    if (inputs.size() != formula.inputs().size()) {
      throw new IllegalArgumentException(
          formula.id() + " takes " + formula.inputs().size() + " values, not " + inputs.size());
    }
  }

  /** A formula worked for a subject with quantities, each turned into its symbol's unit. */
  public static Working of(Formula formula, String subject, Quantity... quantities) {
    List<Double> numbers = new ArrayList<>();
    for (int i = 0; i < quantities.length; i++) {
      Unit unit = formula.inputs().get(Math.min(i, formula.inputs().size() - 1)).unit();
      numbers.add(unit.in(quantities[i]));
    }
    return new Working(formula, subject, numbers);
  }

  /** The number it gives, in the unit of the formula's result. */
  public double result() {
    double[] numbers = inputs.stream().mapToDouble(Double::doubleValue).toArray();
    return formula.function().applyAsDouble(numbers);
  }

  /** The result's SI value. */
  public double si() {
    return formula.result().unit().toSi(result());
  }

  public Length asLength() {
    return new Length(si());
  }

  public Area asArea() {
    return new Area(si());
  }

  public Volume asVolume() {
    return new Volume(si());
  }

  public Mass asMass() {
    return new Mass(si());
  }

  public Force asForce() {
    return new Force(si());
  }

  public Pressure asPressure() {
    return new Pressure(si());
  }

  public Angle asAngle() {
    return new Angle(si());
  }

  public Duration asDuration() {
    return new Duration(si() / 3600);
  }
}
