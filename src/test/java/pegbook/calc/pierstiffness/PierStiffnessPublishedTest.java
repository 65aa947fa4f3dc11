package pegbook.calc.pierstiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import pegbook.calc.pierstiffness.PierStiffness.Case;
import pegbook.figures.Formula;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;

/**
 * Piers, springs and roots held against values from outside the program. Status of each source:
 * READ in a copy, READ second-hand, DERIVED from the formula of the source, MEMORY.
 */
class PierStiffnessPublishedTest {
  private static final PierStiffnessFormulas METRIC = new PierStiffnessFormulas(UnitSystem.METRIC);
  private static final PierStiffnessFormulas INCH = new PierStiffnessFormulas(UnitSystem.IMPERIAL);
  private static final FrequencyFormulas FREQUENCY = new FrequencyFormulas(UnitSystem.METRIC);

  private static double value(Formula formula, double... numbers) {
    return formula.function().applyAsDouble(numbers);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "tip_mass_roots.csv", useHeadersInDisplayName = true)
  void rootsAreTheExactOnes(double massRatio, double root, double omega) {
    double found = TipMassRoot.of(massRatio);

    assertThat(found).isEqualTo(root, offset(5e-7));
    assertThat(found * found).isEqualTo(omega, offset(5e-7));
  }

  /** The same equation, solved by a general library on its own road. */
  @ParameterizedTest
  @CsvFileSource(resources = "tip_mass_roots.csv", useHeadersInDisplayName = true)
  void aGeneralSolverFindsTheSameRoots(double massRatio, double root, double omega) {
    double solved =
        new BracketingNthOrderBrentSolver(1e-13, 5)
            .solve(
                200,
                x ->
                    Math.cos(x) * Math.cosh(x)
                        + 1
                        + massRatio * x * (Math.cos(x) * Math.sinh(x) - Math.sin(x) * Math.cosh(x)),
                0.1,
                2);

    assertThat(TipMassRoot.of(massRatio)).isEqualTo(solved, offset(1e-11));
    assertThat(root * root).isCloseTo(omega, withinPercentage(1e-4));
  }

  /** The rule of 0.24 of the beam's mass, and 33/140: what they miss is known. */
  @Test
  void theRulesOfThumbMissByWhatIsKnown() {
    double exact = TipMassRoot.of(0);
    assertThat(Math.sqrt(3 / (33.0 / 140)) / (exact * exact) - 1).isEqualTo(0.01465, within(5e-6));
    assertThat(Math.sqrt(3 / 0.24) / (exact * exact) - 1).isEqualTo(0.00555, within(5e-6));
  }

  /** Column of 0.30 m, 1.2 m high, 25 GPa, 60 kg, 100 N. DERIVED. */
  @Test
  void concreteColumnWithAnInstrument() {
    double stiffness = value(METRIC.columnStiffness(), 25000, 300, 1200);
    double mass = value(FREQUENCY.massOfColumn(), 300, 1200);
    double bending = value(METRIC.bendingSway(), 100, stiffness);

    assertThat(stiffness).isEqualTo(17.25728, offset(5e-6));
    assertThat(bending).isEqualTo(5.794655, offset(5e-7));
    assertThat(1.5 * bending / 1200 * 1000).isEqualTo(7.243318, offset(5e-7));
    assertThat(frequency(60, stiffness, mass)).isEqualTo(63.4407, offset(5e-5));
    assertThat(frequency(0, stiffness, mass)).isEqualTo(94.0663, offset(5e-5));
    assertThat(Math.sqrt(stiffness * 1e6 / (60 + 0.24 * mass)) / (2 * Math.PI))
        .isEqualTo(63.3689, offset(5e-5));
  }

  /** Column of 12 in, 1.5 m high, of 3000 psi, 50 kg, 100 N. DERIVED. */
  @Test
  void columnOfInches() {
    double modulusPsi = value(INCH.concreteModulus(), 3000);
    double modulus = Unit.PSI.toSi(modulusPsi) / 1e6;
    double stiffness = value(METRIC.columnStiffness(), modulus, 304.8, 1500);
    double mass = value(FREQUENCY.massOfColumn(), 304.8, 1500);

    assertThat(modulus / 1000).isEqualTo(21.5256, offset(5e-5));
    assertThat(stiffness).isEqualTo(8.106468, offset(5e-7));
    assertThat(100 / stiffness).isEqualTo(12.33583, offset(5e-6));
    assertThat(frequency(50, stiffness, mass)).isEqualTo(42.6423, offset(5e-5));
    assertThat(frequency(0, stiffness, mass)).isEqualTo(56.7564, offset(5e-5));
    double inches =
        value(
            INCH.columnStiffness(), modulusPsi, 12, Unit.INCH.in(new pegbook.measure.Length(1.5)));
    assertThat(Unit.KIP_PER_INCH.toSi(inches) / 1e6).isEqualTo(8.106468, offset(5e-7));
  }

  /** Steel column of a printed exercise: data READ, its answer not printed, DERIVED. */
  @Test
  void steelColumnOfAnExercise() {
    double stiffness = 3 * 2e11 * 4.7e-6 / 1e6;
    double mass = 7800 * 2.6e-3;

    assertThat(frequency(10, stiffness, mass)).isEqualTo(69.4128, offset(5e-5));
  }

  private static double frequency(double tip, double stiffness, double mass) {
    double root = value(FREQUENCY.columnRoot(), tip, mass);
    return value(FREQUENCY.columnFrequency(), root, stiffness, mass);
  }

  /**
   * Round footing of 0.50 m radius, 30 MPa, Poisson's ratio 0.30: rocking and the factors of Arya,
   * O'Neill and Pincus READ second-hand; sliding and the other authors MEMORY.
   */
  @Test
  void springsOfAFooting() {
    assertThat(value(METRIC.slidingSpring(), 1, 30, 500, 0.3)).isEqualTo(70.5882, offset(5e-5));
    assertThat(value(METRIC.rockingSpring(), 1, 30, 500, 0.3)).isEqualTo(14285.714, offset(5e-4));
    assertThat(value(METRIC.leastSlidingFactor(), 500, 500)).isEqualTo(1.6667, offset(5e-5));
    assertThat(value(METRIC.greatestSlidingFactor(), 500, 500)).isEqualTo(2.0, offset(5e-2));
    assertThat(value(METRIC.leastRockingFactor(), 500, 500, 0.3)).isEqualTo(2.18, offset(5e-3));
    assertThat(value(METRIC.greatestRockingFactor(), 500, 500)).isEqualTo(3.88, offset(5e-3));
  }

  /** No author gives less than the least or more than the greatest that are printed. */
  @Test
  void theFactorsOfTheOthersLieBetween() {
    for (int percent = 0; percent <= 100; percent += 5) {
      double share = percent / 100.0;
      for (double poisson : new double[] {0.25, 0.3, 0.35, 0.4, 0.45}) {
        double aryaSliding = 1 + 0.55 * (2 - poisson) * share;
        double elsabeeRocking = 1 + 2 * share;
        assertThat(aryaSliding)
            .isBetween(
                value(METRIC.leastSlidingFactor(), share, 1) - 1e-12,
                value(METRIC.greatestSlidingFactor(), share, 1) + 1e-12);
        assertThat(elsabeeRocking)
            .isBetween(
                value(METRIC.leastRockingFactor(), share, 1, poisson) - 1e-12,
                value(METRIC.greatestRockingFactor(), share, 1) + 1e-12);
      }
    }
  }

  /** Deeper than one radius no more is counted: the factors were not made for it. */
  @Test
  void moreThanOneRadiusDoesNotCount() {
    assertThat(value(METRIC.greatestRockingFactor(), 2000, 500))
        .isEqualTo(value(METRIC.greatestRockingFactor(), 500, 500));
    assertThat(value(METRIC.leastSlidingFactor(), 2000, 500))
        .isEqualTo(value(METRIC.leastSlidingFactor(), 500, 500));
  }

  /** Column of 0.3 m on a footing of 1 m, lever 1.5 m, 25 GPa, 30 MPa, 100 N. DERIVED. */
  @Test
  void aWholePierOnTheSurface() {
    PierJob job = new PierJob().metric();
    job.stiffness = "\"30 MPa\"";
    job.strength = "28.293345 MPa";
    job.pier = "\"hole\": \"1 m\", \"tube\": \"300 mm\", \"depth\": \"1 m\", \"top\": \"500 mm\"";
    job.push = "100 N";
    Case alone = job.stiffness().piers().get(0).softest();

    assertThat(alone.bending().metres()).isEqualTo(1.131768e-5, offset(5e-12));
    assertThat(alone.sliding().metres()).isEqualTo(1.416667e-6, offset(5e-13));
    assertThat(alone.rocking().metres()).isEqualTo(1.575e-5, offset(5e-9));
    assertThat(alone.sway().metres()).isEqualTo(2.848435e-5, offset(5e-12));
    assertThat(Unit.ARC_SECOND.in(alone.tilt())).isEqualTo(2.1658 + 2.3344, offset(1e-4));
  }

  /** A soil's modulus by its waves: ASCE 7 puts class D at 600 to 1200 ft/s (READ). */
  @Test
  void wavesGiveTheModulus() {
    Formula formula = INCH.modulusFromVelocity();
    double psi = value(formula, 120, 600);
    double metric = value(METRIC.modulusFromVelocity(), 120 * 16.01846337, 182.88);

    assertThat(Unit.PSI.toSi(psi) / 1e6).isCloseTo(metric, withinPercentage(1e-3));
    assertThat(metric).isCloseTo(1922.2156 * 182.88 * 182.88 / 1e6, withinPercentage(1e-4));
  }
}
