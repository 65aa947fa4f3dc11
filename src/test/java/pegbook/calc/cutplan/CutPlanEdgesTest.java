package pegbook.calc.cutplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.cutplan.CutPlan.CutBar;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.job.Stock;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.measure.Pressure;
import pegbook.testing.FillJob;

/** The edges of what can be cut, and two sizes beside each other. */
class CutPlanEdgesTest {
  private static CutPlan plan(
      List<Stock.Bar> bars, List<Stock.Offcut> offcuts, CutPiece... pieces) {
    FillJob job = new FillJob();
    job.stock =
        new Stock(
            Length.ofFeet(20),
            bars,
            offcuts,
            Length.ofInches(0.125),
            Length.ofFeet(2),
            Pressure.ofPsi(60_000),
            Stock.Coating.NONE);
    return CutPlanCalculator.calculate(job.job(), List.of(pieces));
  }

  private static CutPiece piece(String size, double inches, int count) {
    return new CutPiece(size, "A", Length.ofInches(inches), count, List.of("S1"), true);
  }

  private static Stock.Bar bar(String size, double feet, String price) {
    return new Stock.Bar(
        size,
        Length.ofFeet(feet),
        Optional.of(new Money(new BigDecimal(price), "USD")),
        Optional.empty());
  }

  /** A piece as long as its bar needs no cut; one longer cannot come from it. */
  @ParameterizedTest
  @CsvSource({"239, true", "240, true", "240.25, false"})
  void aPieceAsLongAsItsBar(double inches, boolean cut) {
    CutPlan plan = plan(List.of(), List.of(), piece("#4", inches, 2));
    assertThat(plan.findings().isEmpty()).isEqualTo(cut);
    assertThat(plan.needs()).hasSize(cut ? 1 : 0);
    if (!cut) {
      assertThat(plan.findings())
          .singleElement()
          .extracting(Finding::kind)
          .isNotEqualTo(Finding.Kind.NOTE);
    }
  }

  /** Bars and timber are bought apart, each by its own name. */
  @Test
  void sizesAreOrderedApart() {
    CutPlan plan =
        plan(
            List.of(bar("2x8", 12, "14.00"), bar("#4", 20, "11.00")),
            List.of(),
            piece("#4", 100, 2),
            piece("#5", 110, 3),
            piece("2x8", 100, 5));
    assertThat(plan.needs()).extracting(Need::id).containsExactly("bars", "bars", "timber");
    assertThat(plan.orders("#4").get(0).bars()).isEqualTo(1);
    assertThat(plan.orders("#5").get(0).bars()).isEqualTo(2);
    assertThat(plan.orders("2x8").get(0).bars()).isEqualTo(5);
    assertThat(plan.orders("2x8").get(0).length()).isEqualTo(Length.ofFeet(12));
    assertThat(plan.orders("2x8").get(0).cost().orElseThrow().amount())
        .isEqualByComparingTo("70.00");
    assertThat(plan.workings()).isNotEmpty();
  }

  /** What lies in the shed is cut first, and is not bought. */
  @Test
  void theShedIsEmptiedFirst() {
    CutPlan plan =
        plan(
            List.of(),
            List.of(new Stock.Offcut("#4", Length.ofInches(101), 1)),
            piece("#4", 100, 3));
    List<CutBar> bars = plan.sizes().get(0).bars();
    assertThat(bars.get(0).isFromShed()).isTrue();
    assertThat(bars).filteredOn(CutBar::isFromShed).hasSize(1);
    assertThat(plan.orders("#4")).hasSize(1);
    assertThat(plan.orders("#4").get(0).bars()).isEqualTo(1);
  }
}
