package pegbook.calc.cutplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.cutplan.CutPlan.CutBar;
import pegbook.calc.cutplan.CutPlan.Order;
import pegbook.calc.cutplan.CutPlan.Run;
import pegbook.calc.cutplan.CutPlan.SizePlan;
import pegbook.figures.Argument;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.job.Stock;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.measure.Pressure;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

class CutPlanCalculatorTest {
  private final List<Stock.Bar> bars = new ArrayList<>();
  private final List<Stock.Offcut> offcuts = new ArrayList<>();
  private final FillJob job = new FillJob();

  private CutPlan plan(CutPiece... pieces) {
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

  private static CutPiece piece(String name, double inches, int count) {
    return new CutPiece("#4", name, Length.ofInches(inches), count, List.of("S1"), true);
  }

  private static Stock.Bar bar(double feet, String price, Optional<Integer> count) {
    Money money = new Money(new BigDecimal(price), "USD");
    return new Stock.Bar("#4", Length.ofFeet(feet), Optional.of(money), count);
  }

  private static List<String> runs(CutBar bar) {
    return bar.runs().stream().map(run -> run.count() + " " + run.piece().name()).toList();
  }

  /** By hand: five pieces of 44 in and five cuts take 220 5/8 in of a bar of 240 in. */
  @Test
  void cutsByHandWorkedBars() {
    CutPlan plan = plan(piece("A", 44, 24));
    SizePlan size = plan.sizes().get(0);
    assertThat(size.bars()).extracting(CutBar::times).containsExactly(4, 1);
    assertThat(runs(size.bars().get(0))).containsExactly("5 A");
    assertThat(size.bars().get(0).left().inches()).isCloseTo(19.375, within(1e-9));
    assertThat(size.bars().get(0).isKept()).isFalse();
    assertThat(runs(size.bars().get(1))).containsExactly("4 A");
    assertThat(size.bars().get(1).left().inches()).isCloseTo(63.5, within(1e-9));
    assertThat(size.bars().get(1).isKept()).isTrue();
    assertThat(size.orders()).extracting(Order::bars).containsExactly(5);
    assertThat(size.proof().isBest()).isTrue();
    assertThat(plan.needs()).extracting(Need::order).containsExactly(5.0);
    assertThat(plan.needs().get(0).amount()).isCloseTo(24 * 44 / 240.0, within(1e-9));
    assertThat(plan.findings()).isEmpty();
  }

  /** Four pieces of 60 in do not come out of 240 in with a saw; a cut less and they would. */
  @Test
  void countsTheKerf() {
    assertThat(plan(piece("A", 60, 4)).orders("#4").get(0).bars()).isEqualTo(2);
    assertThat(plan(piece("A", 59.90625, 4)).orders("#4").get(0).bars()).isEqualTo(1);
  }

  @Test
  void takesOffcutsFirstAndTheCheaperLength() {
    bars.add(bar(20, "11.40", Optional.empty()));
    bars.add(bar(10, "5.00", Optional.empty()));
    offcuts.add(new Stock.Offcut("#4", Length.ofFeet(7), 1));
    offcuts.add(new Stock.Offcut("#5", Length.ofFeet(18), 1));
    SizePlan size = plan(piece("A", 40, 8), piece("B", 110, 1)).sizes().get(0);
    assertThat(size.bars().stream().filter(CutBar::isFromShed).toList())
        .singleElement()
        .satisfies(bar -> assertThat(runs(bar)).containsExactly("2 A"));
    assertThat(size.orders()).extracting(order -> order.length().feet()).containsExactly(10.0);
    // Six of 40 in at two or three a bar of 120 in, and the long one: 40.125 x 3 - 1/8 > 120.
    assertThat(size.orders()).extracting(Order::bars).containsExactly(4);
    assertThat(size.orders().get(0).cost().orElseThrow().amount()).isEqualByComparingTo("20.00");
  }

  @Test
  void piecesOfOneLengthKeepTheirNames() {
    SizePlan size = plan(piece("A", 70, 2), piece("B", 70, 4)).sizes().get(0);
    assertThat(size.bars().stream().map(CutPlanCalculatorTest::runs).toList())
        .containsExactly(List.of("2 A", "1 B"), List.of("3 B"));
  }

  /** ACI 318-19 by its own formula, 60 000 psi, bars well apart: derived table of class B laps. */
  @ParameterizedTest
  @CsvSource({
    "4000, '#4', 24.7",
    "4000, '#6', 37.0",
    "4000, '#8', 61.7",
    "3000, '#4', 28.5",
    "2500, '#3', 23.4"
  })
  void offersTheLapOfTheRule(double psi, String size, double inches) {
    job.strength = Pressure.ofPsi(psi);
    CutPlan plan =
        plan(new CutPiece(size, "A", Length.ofFeet(22), 4, List.of("P1"), true), piece("B", 30, 1));
    Finding finding = plan.findings().get(0);
    assertThat(finding.id()).isEqualTo("piece-longer-than-stock");
    assertThat(finding.subjects()).containsExactly("P1");
    assertThat(plan.workings().stream().filter(w -> w.formula().id().equals("anchorage.lap")))
        .singleElement()
        .satisfies(w -> assertThat(w.result()).isCloseTo(inches, within(0.051)));
    assertThat(plan.sizes().get(0).tooLong()).hasSize(1);
  }

  /** 50 ft from bars of 20 ft, each lapped 25 in (24.7 set up): (600 - 25) / (240 - 25) = 2.7. */
  @Test
  void saysInHowManyParts() {
    CutPlan plan = plan(new CutPiece("#4", "A", Length.ofFeet(50), 1, List.of("P1"), true));
    assertThat(plan.findings().get(0).arguments())
        .containsEntry("parts", Argument.of(3))
        .containsEntry("lap", Argument.of(Length.ofInches(25)));
  }

  /** Concrete and bars at their worst: a lap longer than any bar is no way out. */
  @Test
  void offersNoLapLongerThanABar() {
    job.strength = Pressure.ofPsi(2500);
    bars.add(new Stock.Bar("#8", Length.ofInches(78), Optional.empty(), Optional.empty()));
    CutPlan plan = plan(new CutPiece("#8", "A", Length.ofInches(100), 2, List.of("P1"), true));
    assertThat(plan.findings()).extracting(Finding::id).containsExactly("piece-longer-than-lap");
  }

  @Test
  void offersNoLapOfABentPiece() {
    CutPlan plan = plan(new CutPiece("#4", "A", Length.ofFeet(21), 2, List.of("P1"), false));
    assertThat(plan.findings())
        .extracting(Finding::id)
        .containsExactly("bent-piece-longer-than-stock");
  }

  @Test
  void saysHowManyBarsAreMissing() {
    bars.add(bar(20, "11.40", Optional.of(3)));
    CutPlan plan = plan(piece("A", 110, 10));
    assertThat(plan.findings()).extracting(Finding::id).containsExactly("stock-runs-short");
    assertThat(plan.orders("#4").get(0).bars()).isEqualTo(5);
    assertThat(plan.orders("#4").get(0).beyond()).isEqualTo(2);
  }

  @Test
  void cutsNothingFromNothing() {
    assertThat(plan().sizes()).isEmpty();
    assertThat(plan().needs()).isEmpty();
  }

  @Property(tries = 40, seed = Chance.SEED)
  void everyPieceIsOnOneBarAndNoBarIsOverfull(
      @ForAll @Size(min = 1, max = 9) List<@IntRange(min = 20, max = 900) Integer> quarters) {
    CutPiece[] pieces = new CutPiece[quarters.size()];
    for (int i = 0; i < pieces.length; i++) {
      pieces[i] = piece("N" + i, quarters.get(i) / 4.0, 1 + i % 4);
    }
    offcuts.clear();
    offcuts.add(new Stock.Offcut("#4", Length.ofInches(77.5), 2));
    SizePlan size = plan(pieces).sizes().get(0);
    for (CutPiece piece : pieces) {
      int given = 0;
      for (CutBar bar : size.bars()) {
        for (Run run : bar.runs()) {
          given += run.piece().equals(piece) ? bar.times() * run.count() : 0;
        }
      }
      assertThat(given).isEqualTo(piece.count());
    }
    for (CutBar bar : size.bars()) {
      double used = -0.125;
      for (Run run : bar.runs()) {
        used += run.count() * (run.piece().length().inches() + 0.125);
      }
      assertThat(used).isLessThanOrEqualTo(bar.length().inches() + 1e-6);
      assertThat(bar.left().inches())
          .isCloseTo(Math.max(0, bar.length().inches() - used - 0.125), within(1e-6));
    }
    assertThat(size.bars().stream().filter(CutBar::isFromShed).mapToInt(CutBar::times).sum())
        .isLessThanOrEqualTo(2);
  }
}
