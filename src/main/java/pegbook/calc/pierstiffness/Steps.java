package pegbook.calc.pierstiffness;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Working;

/**
 * Works formulas and keeps the workings. Numbers are in the units of the formulas' symbols: those
 * that the packet prints.
 */
final class Steps {
  private final List<Working> workings = new ArrayList<>();

  List<Working> workings() {
    return List.copyOf(workings);
  }

  /** Works a formula for a subject, and keeps the step. */
  Working work(Formula formula, String subject, double... numbers) {
    List<Double> inputs = new ArrayList<>();
    for (double number : numbers) {
      inputs.add(number);
    }
    Working working = new Working(formula, subject, inputs);
    workings.add(working);
    return working;
  }
}
