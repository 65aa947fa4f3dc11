package pegbook.calc.ownmix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.OwnMix;
import pegbook.measure.Density;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.testing.FillJob;

/** The strength that is aimed at, between the rows of the tables, and what is bought. */
class AimAndNeedsTest {
  /** ACI 318-11, Table 5.3.2.2, from memory, in both its editions' units; at its steps. */
  @ParameterizedTest
  @CsvSource({
    "IMPERIAL, 2500, 3500",
    "IMPERIAL, 2999, 3999",
    "IMPERIAL, 3000, 4200",
    "IMPERIAL, 5000, 6200",
    "IMPERIAL, 5100, 6310",
    "IMPERIAL, 6000, 7300",
    "METRIC, 18, 25",
    "METRIC, 20.9, 27.9",
    "METRIC, 21, 29.3",
    "METRIC, 35, 43.3",
    "METRIC, 36, 44.6",
    "METRIC, 40, 49"
  })
  void aMeanIsAimedAtSoFarAbove(UnitSystem units, double specified, double aim) {
    assertThat(new Working(new OwnMixFormulas(units).aim(), "", List.of(specified)).result())
        .isEqualTo(aim, offset(1e-9));
  }

  private static OwnMixPlan plan(FillJob job, OwnMix.Sand sand) {
    job.ownMix =
        Optional.of(
            new OwnMix(
                Length.ofInches(0.75),
                Density.ofPoundsPerCubicFoot(100),
                sand,
                Length.ofInches(3),
                Ratio.ofPercent(4),
                Ratio.ofPercent(1),
                Mass.ofPounds(94)));
    return OwnMixCalculator.calculate(
        job.job(), Volume.ofCubicFeet(54), Volume.ofCubicFeet(2), Optional.empty());
  }

  private static double ratio(double psi, Optional<Ratio> air) {
    FillJob job = new FillJob();
    job.strength = Pressure.ofPsi(psi);
    job.air = air;
    return plan(job, OwnMix.Sand.MEDIUM).mix().orElseThrow().waterCement();
  }

  /**
   * ACI 211.1: 0.82, 0.68, 0.57, 0.48 and 0.41 at 2000 to 6000 psi; with air 0.74, 0.59, 0.48 and
   * 0.40 at 2000 to 5000. 1800 psi aims at 2800: 0.708; 4400 at 5600: 0.438; 2800 with air at 3800:
   * 0.502. What aims below the table takes its first row.
   */
  @Test
  void theRatioLiesBetweenTheRowsAroundIt() {
    assertThat(ratio(1800, Optional.empty())).isEqualTo(0.708, offset(1e-9));
    assertThat(ratio(2000, Optional.empty())).isEqualTo(0.68, offset(1e-9));
    assertThat(ratio(4400, Optional.empty())).isEqualTo(0.438, offset(1e-9));
    assertThat(ratio(2800, Optional.of(Ratio.ofPercent(6)))).isEqualTo(0.502, offset(1e-9));
    assertThat(ratio(900, Optional.empty())).isEqualTo(0.82, offset(1e-9));
    // No air at all is not air-entrained.
    assertThat(ratio(1800, Optional.of(Ratio.ZERO))).isEqualTo(0.708, offset(1e-9));
  }

  /** Sand in hundreds of pounds, in steps of 50 kg, never less than is used. */
  @Test
  void sandAndStoneAreOrderedInWholeSteps() {
    for (boolean imperial : new boolean[] {true, false}) {
      FillJob job = imperial ? new FillJob() : new FillJob().metric();
      job.strength = imperial ? Pressure.ofPsi(3000) : Pressure.ofMegapascals(20);
      OwnMixPlan plan = plan(job, OwnMix.Sand.MEDIUM);
      for (Need need : plan.needs().subList(1, 3)) {
        double step = imperial ? 100 : 50;
        assertThat(need.unit()).isEqualTo(imperial ? Unit.POUND : Unit.KILOGRAM);
        assertThat(need.order() % step).isZero();
        assertThat(need.order()).isBetween(need.amount(), need.amount() + step);
      }
      double sand = plan.mix().orElseThrow().all().sand().kilograms();
      assertThat(plan.needs().get(1).amount())
          .isEqualTo(imperial ? sand / 0.45359237 : sand, offset(1e-6));
    }
  }

  /** Damp sand and damp stone are weighed under their own names, with their own water. */
  @Test
  void dampSandAndStoneAreToldApart() {
    OwnMixPlan plan = plan(new FillJob(), OwnMix.Sand.MEDIUM);
    for (String id : List.of("sand", "stone")) {
      Working damp =
          plan.workings().stream()
              .filter(each -> each.formula().id().equals("own-mix.damp-" + id))
              .findFirst()
              .orElseThrow();
      assertThat(damp.formula().inputs().get(0).id()).isEqualTo("mix-" + id);
      assertThat(damp.result() / damp.inputs().get(0))
          .isEqualTo(id.equals("sand") ? 1.04 : 1.01, offset(1e-9));
    }
    assertThat(plan.workings())
        .extracting(each -> each.formula().id())
        .contains(
            "own-mix.cement-total",
            "own-mix.sand-total",
            "own-mix.stone-total",
            "own-mix.water-total");
  }

  /** Finer sand leaves room for more stone. */
  @Test
  void theFinerTheSandTheMoreStone() {
    double least = Double.MAX_VALUE;
    for (OwnMix.Sand sand : OwnMix.Sand.values()) {
      OwnMixPlan plan = plan(new FillJob(), sand);
      Working share =
          plan.workings().stream()
              .filter(each -> each.formula().id().equals("own-mix.stone-share"))
              .findFirst()
              .orElseThrow();
      double column = share.inputs().get(1);
      assertThat(sand.fineness()).isBetween(column - 1e-9, column + 0.2 + 1e-9);
      assertThat(share.inputs().get(2)).isGreaterThan(share.inputs().get(3));
      least = Math.min(least, share.result());
    }
    assertThat(least).isBetween(0.5, 0.7);
  }
}
