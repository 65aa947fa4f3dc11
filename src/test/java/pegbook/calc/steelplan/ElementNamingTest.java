package pegbook.calc.steelplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.steelplan.Element.Kind;
import pegbook.calc.steelplan.Element.Verdict;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

/** Each footing is named first; then only its own rule holds. */
class ElementNamingTest {

  private static SteelPlan plan(FillJob of) {
    return SteelPlanCalculator.calculate(of.job(), of.holes, of.holes);
  }

  private static Element element(FillJob of) {
    return plan(of).elements().get(0);
  }

  private static Optional<Finding> finding(FillJob of, String id) {
    return plan(of).findings().stream().filter(found -> found.id().equals(id)).findFirst();
  }

  /** Concrete as wide as its hole: width, depth, height above the ground. */
  private static FillJob bare(double width, double depth, double top) {
    FillJob of = new FillJob();
    return of.with(of.hole("S1", width, depth, 0, top));
  }

  private static FillJob reinforced(double width, double depth, double top, int bars, String size) {
    FillJob of = new FillJob();
    Hole hole = of.hole("S1", width, depth, 0, top);
    return of.with(of.steel(hole, bars, size, 2, of.ties("#3", 6)));
  }

  /**
   * ACI 318-19, 2.3 (from memory): a pedestal is no more than three times as high as its least
   * width. ACI 318-05, 22.8, as quoted by engineers: plain up to three, of the height that nothing
   * holds.
   */
  @ParameterizedTest
  @CsvSource({
    "24, 12, 0, FOOTING",
    "24, 18, 6, FOOTING",
    "24, 20, 6, PEDESTAL",
    "18, 48, 6, PEDESTAL",
    "18, 48.1, 6, PIER",
    "18, 96, 54, PIER",
    "18, 96, 54.1, COLUMN",
    "12, 24, 40, COLUMN",
    "14, 48, 52, COLUMN"
  })
  void heightToWidthNamesTheElement(double width, double depth, double top, Kind kind) {
    assertThat(element(bare(width, depth, top)).kind()).isEqualTo(kind);
  }

  /**
   * A worked bar schedule of a round column, 500 mm wide and 3000 mm high, 8 bars of 20 mm: 8 · 20²
   * / 500² is 1.28 % of its area, within 1 to 8 %.
   */
  @Test
  void thePublishedRoundColumnIsAColumnWithinItsRule() {
    FillJob of = new FillJob().metric();
    Hole hole = of.hole("P1", 500, 150, 0, 3000);
    of.with(of.steel(hole, 8, "20 mm", 25, of.ties("10 mm", 150)));
    Element column = element(of);
    assertThat(column.kind()).isEqualTo(Kind.COLUMN);
    assertThat(column.given().orElseThrow().percent()).isEqualTo(1.28, within(0.005));
    assertThat(column.verdict()).isEqualTo(Verdict.WITHIN);
  }

  @Test
  void noRuleOfAColumnTouchesAFooting() {
    for (FillJob of :
        new FillJob[] {reinforced(24, 18, 6, 3, "#4"), reinforced(18, 40, 6, 3, "#4")}) {
      Element element = element(of);
      assertThat(element.given().orElseThrow().percent()).isLessThan(0.5);
      assertThat(element.asked()).isEmpty();
      assertThat(element.verdict()).isEqualTo(Verdict.NOT_ASKED);
      assertThat(plan(of).findings())
          .extracting(Finding::id)
          .doesNotContain(
              "column-little-steel",
              "pier-little-steel",
              "few-bars-in-rings",
              "rings-too-far-apart");
    }
  }

  /** 14 in: 1 % of 153.94 in² is 1.54 in²; #4 bars of 0.196 in² by their diameter: 7.84, so 8. */
  @Test
  void aColumnWithTooLittleSteelIsToldHowManyBars() {
    FillJob of = reinforced(14, 48, 52, 4, "#4");
    Element column = element(of);
    assertThat(column.verdict()).isEqualTo(Verdict.LESS);
    assertThat(column.barsWanted()).contains(8);
    Finding ask = finding(of, "column-little-steel").orElseThrow();
    assertThat(ask.kind()).isEqualTo(Finding.Kind.ASK);
    assertThat(ask.decides()).isEqualTo(Finding.Decider.ENGINEER);
    FillJob more = reinforced(14, 48, 52, 8, "#4");
    assertThat(element(more).verdict()).isEqualTo(Verdict.WITHIN);
    assertThat(finding(more, "column-little-steel")).isEmpty();
  }

  @Test
  void aColumnWithTooMuchSteelAsks() {
    FillJob of = reinforced(12, 48, 52, 12, "#8");
    assertThat(element(of).given().orElseThrow().percent()).isGreaterThan(8);
    assertThat(finding(of, "column-much-steel")).isPresent();
  }

  @Test
  void aPlainColumnAsksTheEngineerAndIsNoPlainFooting() {
    FillJob of = bare(12, 48, 40);
    of.with(of.hole("S2", 24, 18, 0, 6));
    assertThat(finding(of, "column-without-steel").orElseThrow().subjects()).containsExactly("S1");
    assertThat(finding(of, "plain-concrete").orElseThrow().subjects()).containsExactly("S2");
  }

  /** IBC 2018, 1810.3.9.4.2, quoted: four bars and 0.005 in categories D, E and F. */
  @ParameterizedTest
  @CsvSource({"4, #4, ENGINEER, 7", "8, #4, WITHIN, 0", "3, #8, ENGINEER, 4", "4, #6, WITHIN, 0"})
  void aShaftInTheGroundIsAQuestionBelowHalfAPercent(
      int bars, String size, Verdict verdict, int wanted) {
    FillJob of = reinforced(18, 60, 6, bars, size);
    Element pier = element(of);
    assertThat(pier.kind()).isEqualTo(Kind.PIER);
    assertThat(pier.verdict()).isEqualTo(verdict);
    assertThat(pier.barsWanted().orElse(0)).isEqualTo(wanted);
    assertThat(finding(of, "pier-little-steel").isPresent()).isEqualTo(verdict == Verdict.ENGINEER);
  }

  @Property(tries = 300, seed = Chance.SEED)
  void theNameDoesNotDependOnTheScale(
      @ForAll @DoubleRange(min = 8, max = 30) double width,
      @ForAll @DoubleRange(min = 8, max = 90) double depth,
      @ForAll @DoubleRange(min = 0, max = 90) double top,
      @ForAll @DoubleRange(min = 1.05, max = 2) double scale) {
    Element small = element(bare(width, depth, top));
    Element large = element(bare(width * scale, depth * scale, top * scale));
    assertThat(large.slenderness()).isEqualTo(small.slenderness(), within(1e-9));
    assertThat(large.kind()).isEqualTo(small.kind());
  }
}
