package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.measure.NumberNotation;
import pegbook.measure.Rounding;

/**
 * How many decimals the numbers of a formula's workings are printed with, so that whoever puts the
 * printed numbers into the printed formula gets the printed result.
 *
 * @param inputDecimals one for each input
 * @param resultDecimals of the result
 */
record WorkedNumbers(List<Integer> inputDecimals, int resultDecimals) {
  /** Figures that the largest result shows. */
  private static final int FIGURES = 5;

  private static final int MOST_RESULT_DECIMALS = 4;
  private static final int MOST_EXACT_DECIMALS = 5;
  private static final int MOST_DECIMALS = 12;

  /**
   * Chooses the decimals for all workings of one formula.
   *
   * @throws IllegalArgumentException when no number of decimals gives the result: the formula jumps
   *     where the inputs lie
   */
  static WorkedNumbers of(Formula formula, List<Working> workings) {
    int wanted = figures(workings.stream().map(Working::result).toList());
    for (int result = wanted; result >= 0; result--) {
      for (int more = 0; more <= MOST_DECIMALS; more++) {
        WorkedNumbers numbers = new WorkedNumbers(inputs(formula, workings, more), result);
        if (workings.stream().allMatch(numbers::gives)) {
          return numbers.trimmed(workings);
        }
      }
    }
    throw new IllegalArgumentException(formula.id() + " cannot be worked from printed numbers");
  }

  /** The inputs of a working as printed. */
  List<String> inputs(Working working) {
    List<String> printed = new ArrayList<>();
    for (int i = 0; i < inputDecimals.size(); i++) {
      printed.add(NumberNotation.write(working.inputs().get(i), inputDecimals.get(i)));
    }
    return List.copyOf(printed);
  }

  /** The result of a working as printed. */
  String result(Working working) {
    return NumberNotation.write(working.result(), resultDecimals);
  }

  private boolean gives(Working working) {
    double[] printed = new double[inputDecimals.size()];
    for (int i = 0; i < printed.length; i++) {
      printed[i] = set(working.inputs().get(i), inputDecimals.get(i));
    }
    double again = working.formula().function().applyAsDouble(printed);
    return NumberNotation.write(again, resultDecimals).equals(result(working));
  }

  /** Without decimals of the result that are nothing but zeros in every row. */
  private WorkedNumbers trimmed(List<Working> workings) {
    int decimals = resultDecimals;
    while (decimals > 0 && isExact(workings.stream().map(Working::result).toList(), decimals - 1)) {
      decimals--;
    }
    return new WorkedNumbers(inputDecimals, decimals);
  }

  private static List<Integer> inputs(Formula formula, List<Working> workings, int more) {
    List<Integer> decimals = new ArrayList<>();
    for (int i = 0; i < formula.inputs().size(); i++) {
      int at = i;
      decimals.add(
          decimals(workings.stream().map(working -> working.inputs().get(at)).toList(), more));
    }
    return List.copyOf(decimals);
  }

  /**
   * As many as show every number exactly, if that is few; otherwise some figures and more. The
   * bound is narrow: a number of many digits must not pass for one of five by chance.
   */
  private static int decimals(List<Double> numbers, int more) {
    for (int decimals = 0; decimals <= MOST_EXACT_DECIMALS; decimals++) {
      if (isExact(numbers, decimals)) {
        return decimals;
      }
    }
    return Math.min(MOST_DECIMALS, figures(numbers) + more);
  }

  private static boolean isExact(List<Double> numbers, int decimals) {
    return numbers.stream()
        .allMatch(
            number ->
                Math.abs(set(number, decimals) - number) <= 1e-12 * Math.max(1, Math.abs(number)));
  }

  private static int figures(List<Double> numbers) {
    double largest = numbers.stream().mapToDouble(Math::abs).max().orElse(0);
    int decimals = MOST_RESULT_DECIMALS;
    for (double bound = 10; largest >= bound && decimals > 0; bound *= 10) {
      decimals--;
    }
    return Math.min(decimals, FIGURES - 1);
  }

  private static double set(double number, int decimals) {
    double scale = 1;
    for (int i = 0; i < decimals; i++) {
      scale *= 10;
    }
    return Rounding.NEAREST.steps(number, 1 / scale) / scale;
  }
}
