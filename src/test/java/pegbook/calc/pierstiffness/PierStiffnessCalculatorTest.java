package pegbook.calc.pierstiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.pierstiffness.PierStiffness.AlikePiers;
import pegbook.calc.pierstiffness.PierStiffness.Case;
import pegbook.calc.pierstiffness.PierStiffness.Hold;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Working;
import pegbook.measure.Unit;
import pegbook.published.SoilStiffness;
import pegbook.testing.Chance;

class PierStiffnessCalculatorTest {
  private static Case first(PierJob job) {
    return job.stiffness().piers().get(0).softest();
  }

  private static Finding finding(PierJob job, String id) {
    return job.stiffness().findings().stream()
        .filter(found -> found.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " not in " + job.findings()));
  }

  // Properties

  @Property(tries = 40, seed = Chance.SEED)
  void frequencyFallsWithHeightAndMass(
      @ForAll @DoubleRange(min = 350, max = 700) double hole,
      @ForAll @DoubleRange(min = 300, max = 1200) double top,
      @ForAll @DoubleRange(min = 5, max = 200) double mass) {
    PierJob job = new PierJob().of(hole, 1200, top, 20, mass);
    List<Case> cases = job.stiffness().piers().get(0).cases();
    List<Case> taller =
        new PierJob().of(hole, 1200, top + 100, 20, mass).stiffness().piers().get(0).cases();
    List<Case> heavier =
        new PierJob().of(hole, 1200, top, 20, mass + 20).stiffness().piers().get(0).cases();

    assertThat(cases).hasSize(6);
    for (int i = 0; i < cases.size(); i++) {
      assertThat(taller.get(i).hertz()).isLessThan(cases.get(i).hertz());
      assertThat(heavier.get(i).hertz()).isLessThan(cases.get(i).hertz());
    }
  }

  @Property(tries = 40, seed = Chance.SEED)
  void aWiderBaseSwingsFasterAndSwaysLess(
      @ForAll @DoubleRange(min = 350, max = 700) double hole,
      @ForAll @DoubleRange(min = 300, max = 1200) double top,
      @ForAll @DoubleRange(min = 5, max = 200) double mass) {
    Case narrow = first(new PierJob().of(hole, 1200, top, 20, mass));
    Case wide = first(new PierJob().of(hole + 50, 1200, top, 20, mass));

    assertThat(wide.hertz()).isGreaterThan(narrow.hertz());
    assertThat(wide.sway()).isLessThan(narrow.sway());
  }

  @Property(tries = 40, seed = Chance.SEED)
  void stifferGroundSwaysLessAndEveryCaseFollowsInOrder(
      @ForAll @DoubleRange(min = 400, max = 800) double hole,
      @ForAll @DoubleRange(min = 2, max = 100) double modulus) {
    List<Case> soft =
        new PierJob().of(hole, 1500, 900, modulus, 40).stiffness().piers().get(0).cases();
    List<Case> stiff =
        new PierJob().of(hole, 1500, 900, modulus * 1.5, 40).stiffness().piers().get(0).cases();

    for (int i = 0; i < soft.size(); i++) {
      assertThat(stiff.get(i).sway()).isLessThan(soft.get(i).sway());
      assertThat(stiff.get(i).tilt()).isLessThan(soft.get(i).tilt());
      assertThat(stiff.get(i).hertz()).isGreaterThan(soft.get(i).hertz());
    }
    assertThat(soft.get(2).sway()).isLessThan(soft.get(0).sway());
    assertThat(soft.get(4).sway()).isLessThan(soft.get(2).sway());
  }

  @Property(tries = 30, seed = Chance.SEED)
  void swayIsInProportionToThePush(@ForAll @DoubleRange(min = 5, max = 500) double newtons) {
    PierJob job = new PierJob().of(500, 1400, 900, 20, 40);
    PierJob other = new PierJob().of(500, 1400, 900, 20, 40);
    other.push = String.format(java.util.Locale.ROOT, "%.4f N", newtons);
    double times = Double.parseDouble(other.push.replace(" N", "")) / 45;
    List<Case> cases = job.stiffness().piers().get(0).cases();
    List<Case> pushed = other.stiffness().piers().get(0).cases();

    for (int i = 0; i < cases.size(); i++) {
      assertThat(pushed.get(i).sway().metres())
          .isCloseTo(times * cases.get(i).sway().metres(), withinPercentage(1e-9));
      assertThat(pushed.get(i).tilt().radians())
          .isCloseTo(times * cases.get(i).tilt().radians(), withinPercentage(1e-9));
      assertThat(pushed.get(i).hertz()).isCloseTo(cases.get(i).hertz(), withinPercentage(1e-12));
    }
  }

  /** The wind is another push. */
  @Test
  void windMovesAsMuchAsAPushOfItsForce() {
    PierJob windy = new PierJob();
    windy.more = ", \"wind\": \"25 lbf\"";
    PierJob pushed = new PierJob();
    pushed.push = "25 lbf";
    Case wind = first(windy);
    Case push = first(pushed);

    assertThat(wind.wind().orElseThrow().sway().metres())
        .isCloseTo(push.sway().metres(), withinPercentage(1e-9));
    assertThat(wind.wind().orElseThrow().tilt().radians())
        .isCloseTo(push.tilt().radians(), withinPercentage(1e-9));
    assertThat(push.wind()).isEmpty();
  }

  @Property(tries = 20, seed = Chance.SEED)
  void inchesGiveWhatMillimetresGive(
      @ForAll @DoubleRange(min = 14, max = 30) double hole,
      @ForAll @DoubleRange(min = 12, max = 60) double top) {
    PierJob inches = new PierJob();
    inches.stiffness = "\"3000 psi\"";
    inches.pier =
        String.format(
            java.util.Locale.ROOT,
            "\"hole\": \"%.2f in\", \"depth\": \"58 in\", \"top\": \"%.2f in\"",
            hole,
            top);
    Job2 one = new Job2(inches);
    inches.units = "metric";
    Job2 other = new Job2(inches);

    // 57000 and 4700, 150 lb/ft³ and 2400 kg/m³, 386.09 in/s² are round numbers of their systems.
    assertThat(one.softest().rocking().metres())
        .isCloseTo(other.softest().rocking().metres(), withinPercentage(0.3));
    assertThat(one.softest().hertz()).isCloseTo(other.softest().hertz(), withinPercentage(0.5));
    assertThat(one.stiffest().sway().metres())
        .isCloseTo(other.stiffest().sway().metres(), withinPercentage(0.5));
    assertThat(one.stiffest().hertz()).isCloseTo(other.stiffest().hertz(), withinPercentage(0.5));
  }

  private record Job2(AlikePiers piers) {
    Job2(PierJob job) {
      this(job.stiffness().piers().get(0));
    }

    Case softest() {
      return piers.softest();
    }

    Case stiffest() {
      return piers.stiffest();
    }
  }

  // A second road

  /**
   * A row of masses on a bar that bends and stands on springs: the largest eigenvalue of mass times
   * flexibility is the exact frequency of that row. Dunkerley's rule must not be above it, nor far
   * below.
   */
  @ParameterizedTest
  @CsvSource({
    "500, 1400, 900, 5, 40",
    "500, 1400, 900, 60, 40",
    "350, 1200, 1500, 200, 10",
    "800, 1000, 400, 10, 200",
    "400, 2000, 1000, 30, 0"
  })
  void dunkerleyLiesJustBelowTheRowOfMasses(
      double hole, double depth, double top, double modulus, double mass) {
    PierJob job = new PierJob().of(hole, depth, top, modulus, mass);
    AlikePiers piers = job.stiffness().piers().get(0);
    double d = hole / 1000;
    double bendingStiffness = piers.concrete().pascals() * Math.PI * Math.pow(d, 4) / 64;

    double sliding = 8 * modulus * 1e6 * d / 2 / 1.7;
    double rocking = 8 * modulus * 1e6 * Math.pow(d / 2, 3) / 2.1;
    double lever = (depth + top) / 1000;
    double alone =
        hertz(lever, d, mass, 0, (x, y) -> 1 / sliding + x * y / rocking, bendingStiffness);
    assertThat(piers.softest().hertz()).isBetween(alone * 0.9, alone * 1.0001);

    double eased = modulus * 1e6 * 1.225;
    double ratio = piers.concrete().pascals() / eased;
    double slender = 2 * depth / hole;
    double yield =
        1.25
            * Math.max(0.4 * Math.pow(slender, -1 / 3.0), 0.5 * Math.pow(ratio, -1 / 7.0))
            / (eased * d);
    double turn =
        1.25
            * Math.max(0.3 * Math.pow(slender, -7 / 8.0), 1.08 * Math.pow(ratio, -3 / 7.0))
            / (eased * d * d);
    double byMoment =
        1.25
            * Math.max(0.8 * Math.pow(slender, -5 / 3.0), 6.4 * Math.pow(ratio, -5 / 7.0))
            / (eased * d * d * d);
    double below = 2400 * Math.PI * d * d / 4 * depth / 1000;
    if (piers.cases().size() == 6) {
      double held =
          hertz(
              top / 1000,
              d,
              mass,
              below,
              (x, y) -> yield + turn * (x + y) + byMoment * x * y,
              bendingStiffness);
      assertThat(piers.stiffest().hertz()).isBetween(held * 0.85, held * 1.0001);
    }
  }

  private interface Flexibility {
    double at(double x, double y);
  }

  private static double hertz(
      double length,
      double diameter,
      double tip,
      double foot,
      Flexibility ground,
      double bendingStiffness) {
    int parts = 120;
    double part = 2400 * Math.PI * diameter * diameter / 4 * length / parts;
    double[] masses = new double[parts + 2];
    double[] heights = new double[parts + 2];
    masses[0] = foot;
    for (int i = 1; i <= parts; i++) {
      masses[i] = part;
      heights[i] = (i - 0.5) * length / parts;
    }
    masses[parts + 1] = tip;
    heights[parts + 1] = length;
    RealMatrix matrix = MatrixUtils.createRealMatrix(masses.length, masses.length);
    for (int i = 0; i < masses.length; i++) {
      for (int j = 0; j < masses.length; j++) {
        double low = Math.min(heights[i], heights[j]);
        double high = Math.max(heights[i], heights[j]);
        double bent = low * low * (3 * high - low) / (6 * bendingStiffness);
        matrix.setEntry(
            i, j, Math.sqrt(masses[i] * masses[j]) * (bent + ground.at(heights[i], heights[j])));
      }
    }
    double largest = new EigenDecompositionSymmetric(matrix).getEigenvalue(0);
    return 1 / (2 * Math.PI * Math.sqrt(largest));
  }

  /** Shares: at the top the base alone leans most; held ground does so much less. */
  @Test
  void everyPartIsInTheSum() {
    for (Case each : new PierJob().stiffness().piers().get(0).cases()) {
      assertThat(each.bending().plus(each.sliding()).plus(each.rocking()).metres())
          .isCloseTo(each.sway().metres(), withinPercentage(1e-9));
      assertThat(each.tilt().radians()).isPositive();
    }
  }

  @Test
  void aShallowWideFootingIsNoShaft() {
    PierJob job = new PierJob();
    job.pier = "\"hole\": \"60 in\", \"tube\": \"16 in\", \"depth\": \"48 in\", \"top\": \"30 in\"";
    AlikePiers piers = job.stiffness().piers().get(0);

    assertThat(piers.cases()).extracting(Case::hold).doesNotContain(Hold.ALL_DEPTH);
    assertThat(piers.stiffest().letter()).isEqualTo("d");
  }

  @Test
  void theFamilyHoldsThePierItself() {
    AlikePiers piers = new PierJob().stiffness().piers().get(0);

    assertThat(piers.byDiameter()).hasSize(7).filteredOn(other -> other.isThis()).hasSize(1);
    piers.byDiameter().stream()
        .filter(other -> other.isThis())
        .forEach(same -> assertThat(same.alone()).isEqualTo(piers.softest().tilt()));
    assertThat(piers.byDiameter())
        .extracting(other -> other.alone().radians())
        .isSortedAccordingTo((one, other) -> Double.compare(other, one));
    assertThat(piers.byDepth())
        .extracting(other -> other.held().orElseThrow().radians())
        .isSortedAccordingTo((one, other) -> Double.compare(other, one));
  }

  // Ground

  @Test
  void aRangeIsAssumedByTheSoilAndSaid() {
    PierJob job = new PierJob();
    job.soil = "sandy clay";
    PierStiffness stiffness = job.stiffness();

    // EM 1110-1-1904, Table D-3: 250 to 2000 tsf; a ton per square foot is 95.76 kPa.
    assertThat(stiffness.ground().low().megapascals())
        .isEqualTo(250 * 0.0957605 / 2.8, offset(1e-3));
    assertThat(stiffness.ground().high().megapascals())
        .isEqualTo(2000 * 0.0957605 / 2.8, offset(1e-2));
    assertThat(stiffness.ground().given()).isFalse();
    assertThat(finding(job, "pier-ground-assumed").kind()).isEqualTo(Kind.NOTE);
  }

  @Test
  void theJobsOwnStiffnessRules() {
    PierJob job = new PierJob();
    job.stiffness =
        "{\"low\": \"20 MPa\", \"high\": \"50 MPa\", \"from\": \"seismic line of May\"}";

    assertThat(job.stiffness().ground().high().megapascals()).isEqualTo(50, offset(1e-9));
    assertThat(job.stiffness().ground().from()).contains("seismic line of May");
    assertThat(job.findings()).doesNotContain("pier-ground-assumed");
  }

  @Test
  void peatAndFillAreAskedAbout() {
    PierJob job = new PierJob();
    job.soil = "fill";

    assertThat(finding(job, "pier-ground-questionable").kind()).isEqualTo(Kind.ASK);
    job.stiffness = "\"10 MPa\"";
    assertThat(job.findings()).doesNotContain("pier-ground-questionable");
  }

  @Test
  void everySoilHasAStiffness() {
    for (pegbook.job.Soil soil : pegbook.job.Soil.values()) {
      String name = soil.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      SoilStiffness row = SoilStiffness.find(name);
      assertThat(row.least().isLessThan(row.most())).as(name).isTrue();
      assertThat(row.poisson()).as(name).isBetween(0.2, 0.45);
    }
  }

  // Gap

  @ParameterizedTest
  @CsvSource({
    "0, ",
    "9.0, ",
    "9.24, ",
    "9.3, pier-gap-short",
    "9.4, pier-touches-floor",
    "9.98, pier-touches-floor",
    "10.62, pier-touches-floor",
    "10.7, pier-gap-short",
    "10.76, "
  })
  void theFloorsEdgeIsKeptClear(String north, String expected) {
    PierJob job = new PierJob();
    // The hexagon's side to the north lies 10 ft from the centre; the pier is 16 in wide.
    job.at = "0 ft, " + north + " ft";
    job.more = ", \"gap\": \"1 in\"";
    List<String> found =
        job.findings().stream()
            .filter(id -> id.equals("pier-touches-floor") || id.equals("pier-gap-short"))
            .toList();
    assertThat(found).isEqualTo(expected == null ? List.of() : List.of(expected));
  }

  @Test
  void aPierUnderTheFloorIsAskedAbout() {
    PierJob job = new PierJob();
    job.floor = "{\"use\": \"private deck\", \"top\": \"36 in\"}";
    assertThat(job.findings()).contains("pier-under-floor");
    job.floor = "{\"use\": \"private deck\", \"top\": \"35 in\"}";
    assertThat(job.findings()).doesNotContain("pier-under-floor");
  }

  // Limits of the method

  @Test
  void aSlenderPierGoesToAnEngineer() {
    PierJob job = new PierJob();
    job.pier = "\"hole\": \"12 in\", \"depth\": \"60 in\", \"top\": \"60 in\"";
    assertThat(job.findings()).doesNotContain("pier-slender");
    job.pier = "\"hole\": \"12 in\", \"depth\": \"60 in\", \"top\": \"61 in\"";
    assertThat(finding(job, "pier-slender").decides()).isEqualTo(Finding.Decider.ENGINEER);
  }

  @Test
  void aStrongWindTipsThePierOrCracksIt() {
    PierJob job = new PierJob();
    job.more = ", \"wind\": \"90 lbf\"";
    assertThat(job.findings()).doesNotContain("pier-may-tip").contains("pier-base-lifts");
    job.more = ", \"wind\": \"300 lbf\"";
    assertThat(job.findings()).contains("pier-may-tip").doesNotContain("pier-base-lifts");
    job.more = ", \"wind\": \"2000 lbf\"";
    assertThat(job.findings()).contains("pier-may-crack");
  }

  /** Weight times half the base over force times lever, by hand. */
  @Test
  void overturningByHand() {
    AlikePiers piers = new PierJob().stiffness().piers().get(0);
    double pounds = 150 * Math.PI / 4 * (16 * 16 * 36 + 22 * 22 * 58) / 1728 + 85;

    assertThat(piers.overturning()).isCloseTo(pounds * 11 / (10 * 94), withinPercentage(1e-9));
  }

  @Test
  void anUnknownInstrumentIsAskedFor() {
    PierJob job = new PierJob();
    job.instrument = "";
    assertThat(job.findings()).contains("pier-instrument-unknown");
  }

  @Test
  void boltsKeepFromTheEdgeTheSleeveAndTheBars() {
    PierJob job = new PierJob();
    job.more =
        ", \"anchors\": {\"count\": 4, \"size\": \"1/2 in\", \"circle\": \"8 in\"},"
            + " \"sleeve\": \"2 in\"";
    assertThat(job.findings())
        .doesNotContain("bolts-near-edge", "sleeve-meets-bolt", "bolts-meet-bars");
    job.more = ", \"anchors\": {\"count\": 4, \"size\": \"1/2 in\", \"circle\": \"10 1/4 in\"}";
    assertThat(job.findings()).contains("bolts-near-edge");
    job.more =
        ", \"anchors\": {\"count\": 4, \"size\": \"1/2 in\", \"circle\": \"8 in\"},"
            + " \"sleeve\": {\"outside\": \"2 in\", \"offset\": \"3 in\"}";
    assertThat(job.findings()).contains("sleeve-meets-bolt");
    job.more = ", \"sleeve\": {\"outside\": \"2 in\", \"depth\": \"57 in\"}";
    assertThat(job.findings()).contains("sleeve-too-deep");
  }

  @Test
  void withoutPiersThereIsNothing() {
    PierJob job = new PierJob();
    PierStiffness stiffness = job.stiffness();
    assertThat(stiffness.workings()).isNotEmpty();

    pegbook.testing.FillJob none = new pegbook.testing.FillJob();
    PierStiffness nothing =
        PierStiffnessCalculator.calculate(
            none.job(),
            pegbook.calc.placement.PlacementCalculator.calculate(none.job()),
            List.of());
    assertThat(nothing.piers()).isEmpty();
    assertThat(nothing.workings()).isEmpty();
    assertThat(nothing.findings()).isEmpty();
  }

  /** What is printed is what was used. */
  @Test
  void theCasesTakeTheirFiguresFromTheWorkings() {
    PierStiffness stiffness = new PierJob().stiffness();
    Case soft = stiffness.piers().get(0).softest();
    Working tilt =
        stiffness.workings().stream()
            .filter(working -> working.formula().id().equals("pier-stiffness.tilt"))
            .filter(working -> working.subject().equals("P1 a"))
            .findFirst()
            .orElseThrow();

    assertThat(tilt.result()).isCloseTo(Unit.ARC_SECOND.in(soft.tilt()), withinPercentage(1e-9));
  }
}
