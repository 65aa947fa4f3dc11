package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.figures.Working;
import pegbook.measure.Unit;
import pegbook.packet.NumberedWorkings;
import pegbook.published.Citation;
import pegbook.testing.PrintedFormula;
import pegbook.testing.TrialPacket;

/** Holds the workings to their promise: printed numbers put in give the printed result. */
class WorkingsSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50));
  }

  @ParameterizedTest
  @MethodSource("packets")
  void printedNumbersGiveThePrintedResult(TrialPacket trial) {
    Map<String, Formula> formulas = formulas(trial);
    WorkingsSheet sheet = WorkingsSheet.of(trial.packet(), trial.writing());
    List<String> wrong = new ArrayList<>();
    int rows = 0;
    for (WorkingsSheet.Group group : sheet.groups()) {
      for (WorkingsSheet.Entry entry : group.entries()) {
        Formula formula = formulas.get(entry.number());
        for (WorkingsSheet.Row row : entry.rows()) {
          rows++;
          double[] printed = inputs(formula, entry, row);
          double again = formula.function().applyAsDouble(printed);
          // Half a unit of the last printed digit, and the rounding of a value just on it.
          double halfDigit = 0.5 * StrictMath.pow(10, -decimals(row.result()));
          if (Math.abs(again - read(row.result())) > halfDigit * 1.00001) {
            wrong.add(formula.id() + " " + row + " gives " + again);
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(rows).isGreaterThan(10);
  }

  /** Formulas that are not worked but solved, or said in words; {@link SolvedFormulasTest}. */
  private static final Set<String> SOLVED =
      Set.of(
          "frost-depth.coefficient",
          "mark-accuracy.radius",
          "own-mix.aim",
          "pier-stiffness.column-root");

  /** What an engineer does with a pencil: nothing but the characters on the page. */
  @ParameterizedTest
  @MethodSource("packets")
  void printedNumbersInThePrintedFormulaGiveThePrintedResult(TrialPacket trial) {
    Map<String, Formula> formulas = formulas(trial);
    List<String> wrong = new ArrayList<>();
    int rows = 0;
    for (WorkingsSheet.Group group : WorkingsSheet.of(trial.packet(), trial.writing()).groups()) {
      for (WorkingsSheet.Entry entry : group.entries()) {
        Formula formula = formulas.get(entry.number());
        if (SOLVED.contains(formula.id())) {
          continue;
        }
        for (WorkingsSheet.Row row : entry.rows()) {
          rows++;
          double[] printed = inputs(formula, entry, row);
          Map<String, Double> letters = new HashMap<>();
          for (int i = 0; i < printed.length; i++) {
            letters.put(formula.inputs().get(i).letter(), printed[i]);
          }
          double foot = Unit.FOOT.toSi(1) / formula.result().unit().toSi(1);
          double again = PrintedFormula.work(formula.expression(), letters, foot);
          double halfDigit = 0.5 * StrictMath.pow(10, -decimals(row.result()));
          if (Math.abs(again - read(row.result())) > halfDigit * 1.00001) {
            wrong.add(formula.id() + " " + formula.expression() + " " + row + " gives " + again);
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(rows).isGreaterThan(10);
  }

  /**
   * The numbers put in as a reader gathers them: some from above the table, the others in order.
   */
  private static double[] inputs(
      Formula formula, WorkingsSheet.Entry entry, WorkingsSheet.Row row) {
    Map<String, String> fixed = new HashMap<>();
    entry.fixed().forEach(one -> fixed.put(one.letter(), one.number()));
    Iterator<String> others = row.numbers().iterator();
    double[] inputs =
        formula.inputs().stream()
            .map(
                symbol ->
                    fixed.containsKey(symbol.letter()) ? fixed.get(symbol.letter()) : others.next())
            .mapToDouble(WorkingsSheetTest::read)
            .toArray();
    assertThat(others).isExhausted();
    return inputs;
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyRowStandsOnceInOrderWhereTwoAreBesideEachOtherToo(TrialPacket trial) {
    for (WorkingsSheet.Group group : WorkingsSheet.of(trial.packet(), trial.writing()).groups()) {
      for (WorkingsSheet.Entry entry : group.entries()) {
        List<WorkingsSheet.Row> read = new ArrayList<>();
        for (int column = 0; column < (entry.twice() ? 2 : 1); column++) {
          for (List<WorkingsSheet.Row> line : entry.lines()) {
            read.add(line.get(column));
          }
        }
        read.removeIf(row -> row.subject().isEmpty());
        assertThat(read).as(entry.number()).isEqualTo(entry.rows());
      }
    }
  }

  private static Map<String, Formula> formulas(TrialPacket trial) {
    Map<String, Formula> byNumber = new HashMap<>();
    trial.packet().workings().groups().stream()
        .flatMap(group -> group.entries().stream())
        .forEach(entry -> byNumber.put(entry.number(), entry.formula()));
    return byNumber;
  }

  private static double read(String printed) {
    return Double.parseDouble(printed.replace("\u00a0", "").replace('\u2212', '-'));
  }

  private static int decimals(String printed) {
    int point = printed.indexOf('.');
    return point < 0 ? 0 : printed.length() - point - 1;
  }

  /** The reader must meet what was computed, not a coarse version of it. */
  @ParameterizedTest
  @MethodSource("packets")
  void printedResultsAreCloseToTheFigures(TrialPacket trial) {
    for (NumberedWorkings.Group group : trial.packet().workings().groups()) {
      for (NumberedWorkings.Entry entry : group.entries()) {
        WorkedNumbers numbers = WorkedNumbers.of(entry.formula(), entry.workings());
        double largest =
            entry.workings().stream().mapToDouble(one -> Math.abs(one.result())).max().orElse(0);
        for (Working working : entry.workings()) {
          assertThat(Math.abs(read(numbers.result(working)) - working.result()))
              .as("%s for %s", entry.formula().id(), working.subject())
              .isLessThanOrEqualTo(Math.max(0.00005, largest * 0.0005));
        }
      }
    }
  }

  @Test
  void numbersAreMergedWhereTheyAreTheSame() {
    TrialPacket trial = TrialPacket.examples().findFirst().orElseThrow();
    WorkingsSheet sheet = WorkingsSheet.of(trial.packet(), trial.writing());
    for (WorkingsSheet.Group group : sheet.groups()) {
      for (WorkingsSheet.Entry entry : group.entries()) {
        assertThat(entry.rows())
            .as(entry.number())
            .extracting(row -> List.of(row.numbers(), row.result()))
            .doesNotHaveDuplicates();
      }
    }
  }

  // The choice of decimals, on formulas made up for it.

  private static Formula ratio() {
    return new Formula(
        "trial.ratio",
        "q = a / b",
        List.of(new Symbol("a", "a", Unit.NONE), new Symbol("b", "b", Unit.NONE)),
        new Symbol("q", "q", Unit.NONE),
        Citation.GEOMETRY,
        "",
        x -> x[0] / x[1]);
  }

  @Test
  void exactNumbersArePrintedShort() {
    Working working = new Working(ratio(), "", List.of(10.0, 4.0));
    WorkedNumbers numbers = WorkedNumbers.of(ratio(), List.of(working));
    assertThat(numbers.inputs(working)).containsExactly("10", "4");
    assertThat(numbers.result(working)).isEqualTo("2.5");
  }

  @Test
  void inputsGetDigitsUntilTheResultIsMet() {
    // A small divisor makes the result ask for many digits.
    Working working = new Working(ratio(), "", List.of(1 / 3.0, 0.0123456789));
    WorkedNumbers numbers = WorkedNumbers.of(ratio(), List.of(working));
    double again = read(numbers.inputs(working).get(0)) / read(numbers.inputs(working).get(1));
    assertThat(again - read(numbers.result(working))).isBetween(-0.0005, 0.0005);
    assertThat(numbers.inputs(working).get(1).length()).isGreaterThan("0.0123".length());
  }

  @Test
  void aJumpIsNotStraddled() {
    Formula whole =
        new Formula(
            "trial.whole",
            "n = a, set up",
            List.of(new Symbol("a", "a", Unit.NONE)),
            new Symbol("n", "n", Unit.NONE),
            Citation.GEOMETRY,
            "",
            x -> Math.ceil(x[0] - 1e-9));
    Working working = new Working(whole, "", List.of(3.0000123456));
    WorkedNumbers numbers = WorkedNumbers.of(whole, List.of(working));
    assertThat(numbers.result(working)).isEqualTo("4");
    assertThat(read(numbers.inputs(working).get(0))).isGreaterThan(3);
  }
}
