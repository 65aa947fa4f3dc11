package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import pegbook.figures.Working;
import pegbook.testing.PrintedFormula;
import pegbook.testing.TrialPacket;

/**
 * Formulas that are solved, not worked: the printed equation must hold between the values a little
 * below and a little above the result. The error function is Hipparchus's.
 */
class SolvedFormulasTest {
  private static List<Working> workings(String id) {
    List<Working> found = new ArrayList<>();
    Stream.concat(TrialPacket.examples(), TrialPacket.made(50))
        .flatMap(trial -> trial.packet().workings().groups().stream())
        .flatMap(group -> group.entries().stream())
        .filter(entry -> entry.formula().id().equals(id))
        .forEach(entry -> found.addAll(entry.workings()));
    assertThat(found).isNotEmpty();
    return found;
  }

  private static void changesSign(DoubleUnaryOperator left, Working working) {
    double low = left.applyAsDouble(working.result() * (1 - 1e-6));
    double high = left.applyAsDouble(working.result() * (1 + 1e-6));
    assertThat(low * high)
        .as("%s %s", working.formula().expression(), working.inputs())
        .isNegative();
  }

  @Test
  void theRootOfTheColumn() {
    for (Working working : workings("pier-stiffness.column-root")) {
      changesSign(
          root ->
              PrintedFormula.left(
                  working.formula().expression(),
                  Map.of("M", working.inputs().get(0), "Mc", working.inputs().get(1), "λ", root)),
          working);
      // The first root of a bare column is 1.8751 (handbooks of vibration, from memory).
      assertThat(working.result()).isBetween(0.05, 1.8752);
    }
  }

  /** Of e^(−c²) / erf c − α · e^(−c²) / erfc c = √π · c / μ, with λ = c · √(2 / μ). */
  @Test
  void theCoefficientOfFrost() {
    for (Working working : workings("frost-depth.coefficient")) {
      double warmth = working.inputs().get(0);
      double stored = working.inputs().get(1);
      changesSign(
          lambda -> {
            double c = lambda / Math.sqrt(2 / stored);
            double share = Math.exp(-c * c);
            return share / Erf.erf(c)
                - warmth * share / Erf.erfc(c)
                - Math.sqrt(Math.PI) * c / stored;
          },
          working);
    }
  }

  /** The share outside a circle, along a ring of directions: 5 in 100. */
  @Test
  void theRadiusThatHoldsNineteenOfTwenty() {
    for (Working working : workings("mark-accuracy.radius")) {
      double major = working.inputs().get(0);
      double minor = working.inputs().get(1);
      changesSign(
          radius ->
              new SimpsonIntegrator(1e-10, 1e-12, 5, 30)
                          .integrate(
                              100_000,
                              angle ->
                                  Math.exp(
                                      -radius
                                          * radius
                                          / 2
                                          / (Math.pow(major * Math.cos(angle), 2)
                                              + Math.pow(minor * Math.sin(angle), 2))),
                              0,
                              Math.PI)
                      / Math.PI
                  - 0.05,
          working);
    }
  }

  /** "r = f + 1000 below 3000; f + 1200 up to 5000; 1.1 · f + 700 above", in psi. */
  @Test
  void theStrengthAimedAt() {
    for (Working working : workings("own-mix.aim")) {
      double asked = working.inputs().get(0);
      double aim = asked < 3000 ? asked + 1000 : asked <= 5000 ? asked + 1200 : 1.1 * asked + 700;
      if (working.formula().result().unit() == pegbook.measure.Unit.PSI) {
        assertThat(working.result()).isEqualTo(aim);
      }
    }
  }
}
