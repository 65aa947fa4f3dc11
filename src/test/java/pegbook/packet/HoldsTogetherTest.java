package pegbook.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.figures.Finding;
import pegbook.figures.Formula;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Unit;
import pegbook.testing.JobMaker;
import pegbook.testing.PrintedFormula;
import pegbook.testing.TrialPacket;

/**
 * Holds all calculators together over a handful of small jobs in both systems of units, which work
 * most of the formulas. They are quick enough for a mutation run to be asked for (TESTS). The
 * sheets' own tests do the like with printed digits and many more jobs.
 */
class HoldsTogetherTest {
  /** Some constants are printed with four digits. */
  private static final double DIGITS = 5e-5;

  /** Solved or said in words; the sheets' tests put their results into the equations. */
  private static final Set<String> SOLVED =
      Set.of(
          "frost-depth.coefficient",
          "mark-accuracy.radius",
          "own-mix.aim",
          "pier-stiffness.column-root");

  @ParameterizedTest
  @ValueSource(strings = {"7", "12", "27", "sky-deck", "3", "0"})
  void aPacketHoldsTogether(String name) {
    Packet packet = packet(name);
    Set<Unit> foreign = UnitsOfSystems.foreignTo(packet.job().heading().units());
    for (Result result : packet.results()) {
      for (Working working : result.workings()) {
        speaksOneSystem(working.formula(), foreign);
        givesItsResultAgain(working);
      }
      result.needs().forEach(HoldsTogetherTest::ordersEnough);
      assertThat(result.sources()).doesNotContainNull();
      for (Finding finding : result.findings()) {
        assertThat(finding.subjects()).as(finding.id()).doesNotContain("");
      }
    }
    assertThat(packet.findings()).extracting(Finding::kind).isSorted();
  }

  private static Packet packet(String name) {
    return Character.isDigit(name.charAt(0))
        ? TrialPacket.text(name, JobMaker.text(Integer.parseInt(name))).packet()
        : TrialPacket.example(Path.of("input", name + ".json")).packet();
  }

  private static void speaksOneSystem(Formula formula, Set<Unit> foreign) {
    assertThat(Stream.concat(formula.inputs().stream(), Stream.of(formula.result())))
        .as(formula.id())
        .allSatisfy(symbol -> assertThat(foreign).doesNotContain(symbol.unit()));
  }

  /** From nothing but the characters of the formula, read as a person would. */
  private static void givesItsResultAgain(Working working) {
    Formula formula = working.formula();
    double result = working.result();
    assertThat(result).as(formula.id()).isFinite();
    if (SOLVED.contains(formula.id())) {
      return;
    }
    Map<String, Double> letters = new HashMap<>();
    for (int i = 0; i < working.inputs().size(); i++) {
      letters.put(formula.inputs().get(i).letter(), working.inputs().get(i));
    }
    double foot = Unit.FOOT.toSi(1) / formula.result().unit().toSi(1);
    double again = PrintedFormula.work(formula.expression(), letters, foot);
    assertThat(Math.abs(again - result))
        .as("%s: %s with %s", formula.id(), formula.expression(), working.inputs())
        .isLessThanOrEqualTo(DIGITS * Math.abs(result) + 1e-9);
  }

  private static void ordersEnough(Need need) {
    assertThat(need.amount()).as(need.id()).isFinite().isNotNegative();
    assertThat(need.order()).as(need.id()).isFinite().isGreaterThanOrEqualTo(need.amount() - 1e-6);
  }
}
