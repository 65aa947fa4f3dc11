package pegbook.calc.steelplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.steelplan.SteelPlan.BarLine;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.calc.steelplan.SteelPlan.SizeTotal;
import pegbook.figures.Argument;
import pegbook.figures.BarPiece;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.published.Bar;
import pegbook.published.Bars;
import pegbook.published.CoverRule;
import pegbook.published.CoverRule.Exposure;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

class SteelPlanCalculatorTest {
  private static final SteelPlanFormulas INCH = new SteelPlanFormulas(UnitSystem.IMPERIAL);
  private static final SteelPlanFormulas MILLIMETRE = new SteelPlanFormulas(UnitSystem.METRIC);

  private static SteelPlan plan(FillJob of) {
    return SteelPlanCalculator.calculate(of.job(), of.holes, of.holes);
  }

  private static Optional<Finding> finding(SteelPlan plan, String id) {
    return plan.findings().stream().filter(found -> found.id().equals(id)).findFirst();
  }

  /** A pier of 16 in on a hole of 22 in, 58 in deep, 36 in high: six #5, #3 ties at 10 in. */
  private static FillJob pier(double cover) {
    FillJob of = new FillJob();
    Hole hole = of.tube(of.hole("P1", 22, 58, 4, 36), 16, Tube.From.GROUND);
    return of.with(of.steel(hole, 6, "#5", cover, of.ties("#3", 10)));
  }

  /** A hole of 18 in without a tube, with so many bars. */
  private static FillJob support(int bars, String size, double cover) {
    FillJob of = new FillJob();
    return of.with(of.steel(of.hole("S1", 18, 48, 4, 0), bars, size, cover, of.ties("#3", 8)));
  }

  /** Found 6 in deeper and filled with concrete: bars 6 in longer, and a word about cut ones. */
  @Test
  void barsFollowTheDepthThatWasFound() {
    FillJob of = new FillJob();
    of.with(of.steel(of.hole("S1", 18, 48, 0, 6), 4, "#4", 3, of.ties("#3", 10)));
    of.with(of.steel(of.hole("S2", 18, 48, 0, 6), 4, "#4", 3, of.ties("#3", 10)));
    SteelPlan before = plan(of);
    Hole hole = of.holes.get(1);
    List<Hole> found =
        List.of(
            of.holes.get(0),
            hole.asDug(hole.centre(), hole.diameter(), Length.ofInches(54), hole.gravel()));
    SteelPlan plan = SteelPlanCalculator.calculate(of.job(), of.holes, found);
    Length cut = before.cages().get(0).cut();
    assertThat(plan.cages()).extracting(Cage::marks).containsExactly(List.of("S1"), List.of("S2"));
    assertThat(plan.cages().get(0).cut()).isEqualTo(cut);
    assertThat(plan.cages().get(1).cut().inches()).isEqualTo(cut.inches() + 6, offset(1e-6));
    Finding longer = finding(plan, "dug-bars-longer").orElseThrow();
    assertThat(longer.subjects()).containsExactly("S2");
    assertThat(longer.arguments()).containsEntry("planned", Argument.of(cut));
    assertThat(finding(before, "dug-bars-longer")).isEmpty();
    SteelPlan same = SteelPlanCalculator.calculate(of.job(), of.holes, of.holes);
    assertThat(same.barList()).isEqualTo(before.barList());
    assertThat(same.findings()).isEqualTo(before.findings());
  }

  /** A column: 14 in wide, 48 in deep, 52 in free. */
  private static FillJob column(int bars, String size, double spacing) {
    FillJob of = new FillJob();
    Hole hole = of.tube(of.hole("P1", 20, 48, 0, 52), 14, Tube.From.GROUND);
    return of.with(of.steel(hole, bars, size, 3, of.ties("#3", spacing)));
  }

  // Published

  /** ASTM A615: weight from the exact diameter, not from the two-digit area. */
  @ParameterizedTest
  @CsvFileSource(resources = "bars.csv", useHeadersInDisplayName = true)
  void barsWeighWhatIsPublished(double diameter, double area, double mass, String name) {
    Bar bar = Bars.get(name);
    boolean inch = bar.system() == UnitSystem.IMPERIAL;
    assertThat(inch ? bar.diameter().inches() : bar.diameter().millimetres())
        .isEqualTo(diameter, offset(1e-9));
    Working working = Working.of((inch ? INCH : MILLIMETRE).massPerLength(), name, bar.diameter());
    assertThat(working.result()).isEqualTo(mass, offset(0.0005));
    assertThat(Math.PI / 4 * diameter * diameter).isEqualTo(area, offset(inch ? 0.005 : 0.05));
  }

  @Test
  void everyBarOfTheTableIsHeldToAPublishedOne() {
    assertThat(Bars.all())
        .extracting(Bar::name)
        .containsExactly(
            "#3", "#4", "#5", "#6", "#7", "#8", "8 mm", "10 mm", "12 mm", "16 mm", "20 mm",
            "25 mm");
    assertThatThrownBy(() -> Bars.get("#99")).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "tie-hooks.csv", useHeadersInDisplayName = true)
  void hooksOfTiesTakeWhatTheRuleGives(double bend, double extension, double length, String name) {
    Length bar = Bars.get(name).diameter();
    assertThat(new SteelRules(UnitSystem.IMPERIAL).insideBend(bar).inches())
        .isEqualTo(bend, offset(1e-9));
    Working end = Working.of(INCH.hookExtension(), "", bar);
    assertThat(end.result()).isEqualTo(extension, offset(1e-9));
    Working hook = Working.of(INCH.hook(), "", Length.ofInches(bend), bar, end.asLength());
    assertThat(hook.result()).isEqualTo(length, offset(0.005));
  }

  /**
   * A worked schedule of a round column: 500 mm, cover 25 mm to ties of 8 mm, height 3000 mm. Ties
   * at 150 mm: 21, on a circle of 442 mm, cut 1500.58 mm (its hooks: 20 bars less 6 for the bends),
   * 31.5 m in all, 12.43 kg. Main bars: eight of 20 mm, 3280 mm each, 26.24 m, 64.69 kg.
   */
  @Test
  void aPublishedScheduleOfARoundColumnComesOut() {
    Length eight = Bars.get("8 mm").diameter();
    Working circle =
        Working.of(MILLIMETRE.ringCentreline(), "", new Length(0.5), new Length(0.025), eight);
    assertThat(circle.result()).isEqualTo(442, offset(0.5));
    Working count =
        Working.of(MILLIMETRE.rings(), "", new Length(3), Length.ZERO, new Length(0.15));
    assertThat(Rounding.UP.steps(count.result(), 1)).isEqualTo(21);
    Working cut =
        Working.of(
            MILLIMETRE.ringCut(), "", circle.asLength(), Length.ZERO, eight.times((20 - 6) / 2.0));
    assertThat(cut.result()).isEqualTo(1500.58, offset(0.005));
    assertThat(21 * cut.asLength().metres()).isEqualTo(31.5, offset(0.05));
    assertThat(mass("8 mm", 21 * cut.asLength().metres())).isEqualTo(12.43, offset(0.015));
    // The schedule weighs with d²/162.25, a rounding of pi/4 · 7850/10⁶; so 0.03 kg of 64.69.
    assertThat(8 * 3.280).isEqualTo(26.24, offset(0.005));
    assertThat(mass("20 mm", 26.24)).isEqualTo(64.69, offset(0.03));
  }

  private static double mass(String size, double metres) {
    Working each = Working.of(MILLIMETRE.massPerLength(), "", Bars.get(size).diameter());
    return Working.of(MILLIMETRE.pieceMass(), "", each::si, new Length(metres)).result();
  }

  /** ACI 318-19, Table 20.5.1.3.1; the metric figures from memory. */
  @ParameterizedTest
  @CsvSource({
    "CAST_AGAINST_GROUND, #3, 3, 75",
    "CAST_AGAINST_GROUND, #8, 3, 75",
    "FORMED_IN_GROUND_OR_WEATHER, #5, 1.5, 40",
    "FORMED_IN_GROUND_OR_WEATHER, 16 mm, 1.5, 40",
    "FORMED_IN_GROUND_OR_WEATHER, #6, 2, 50",
    "FORMED_IN_GROUND_OR_WEATHER, 20 mm, 2, 50"
  })
  void coverIsTheTables(Exposure exposure, String bar, double inches, double millimetres) {
    Length diameter = Bars.get(bar).diameter();
    assertThat(CoverRule.least(exposure, diameter, UnitSystem.IMPERIAL).inches())
        .isEqualTo(inches, offset(1e-9));
    assertThat(CoverRule.least(exposure, diameter, UnitSystem.METRIC).millimetres())
        .isEqualTo(millimetres, offset(1e-9));
  }

  // Cutting

  @Test
  void verticalBarsEndShortOfTopAndBottomByTheCover() {
    Cage cage = plan(pier(1.5)).cages().get(0);
    assertThat(cage.bottomCover().inches()).as("against the ground").isEqualTo(3, offset(1e-9));
    assertThat(cage.cut().inches()).isEqualTo(58 + 36 - 3 - 1.5, offset(1e-9));
    assertThat(cage.height().inches()).isEqualTo(94, offset(1e-9));
    assertThat(cage.concrete().inches()).as("the tube").isEqualTo(16, offset(1e-9));
    assertThat(cage.outside().inches()).isEqualTo(13, offset(1e-9));
    assertThat(cage.barCircle().inches()).isEqualTo(13 - 0.75 - 0.625, offset(1e-9));
  }

  @Test
  void ringsAreSpacedEvenlyAndNoWiderThanAsked() {
    Cage cage = plan(pier(1.5)).cages().get(0);
    Rings rings = cage.rings().orElseThrow();
    double between = cage.cut().inches() - 4;
    assertThat(rings.count()).isEqualTo((int) Math.ceil(between / 10) + 1);
    assertThat(rings.spacing().inches())
        .isEqualTo(between / (rings.count() - 1), offset(1e-9))
        .isLessThanOrEqualTo(10);
    double exact = Math.PI * (13 - 0.375) + 6 + 2 * (0.75 * Math.PI * (1.5 + 0.375) / 2 + 3);
    assertThat(rings.cut().inches())
        .as("up to a quarter inch")
        .isEqualTo(Math.ceil(exact * 4) / 4, offset(1e-9));
  }

  @Test
  void verticalBarsAreCutDownToTheStep() {
    FillJob of = new FillJob();
    Hole hole = of.hole("S1", 18, 48.2, 4, 0);
    Cage cage = plan(of.with(of.steel(hole, 4, "#4", 3, of.ties("#3", 8)))).cages().get(0);
    assertThat(cage.cut().inches()).isEqualTo(42, offset(1e-9));
  }

  @Test
  void aTubeOnlyNarrowsTheSteelWhereConcreteStandsInIt() {
    FillJob of = new FillJob();
    Hole flush = of.tube(of.hole("S1", 18, 48, 4, 0), 12, Tube.From.GROUND);
    assertThat(CageDesign.narrowest(flush).inches()).isEqualTo(18, offset(1e-9));
    Hole deep = of.tube(of.hole("S1", 18, 48, 4, 0), 12, Tube.From.BOTTOM);
    assertThat(CageDesign.narrowest(deep).inches()).isEqualTo(12, offset(1e-9));
  }

  @Test
  void theBarListGathersPiecesCutAlike() {
    FillJob of = pier(1.5);
    for (int i = 1; i <= 6; i++) {
      Hole hole = of.tube(of.hole("S" + i, 18, 48, 4, 6), 12, Tube.From.GROUND);
      of.with(of.steel(hole, 4, "#4", 1.5, of.ties("#3", 8)));
    }
    SteelPlan plan = plan(of);
    assertThat(plan.barList()).extracting(BarLine::barMark).containsExactly("A", "B", "C", "D");
    assertThat(plan.barList())
        .extracting(BarLine::shape)
        .containsExactly(
            BarPiece.Shape.STRAIGHT,
            BarPiece.Shape.RING,
            BarPiece.Shape.STRAIGHT,
            BarPiece.Shape.RING);
    BarLine verticals = plan.barList().get(2);
    assertThat(verticals.count()).isEqualTo(24);
    assertThat(verticals.marks()).hasSize(6);
    assertThat(plan.sizes()).extracting(SizeTotal::size).containsExactly("#5", "#3", "#4");
    for (SizeTotal size : plan.sizes()) {
      Mass mass =
          plan.barList().stream()
              .filter(line -> line.size().equals(size.size()))
              .map(BarLine::mass)
              .reduce(Mass.ZERO, Mass::plus);
      assertThat(size.mass().kilograms()).isEqualTo(mass.kilograms(), offset(1e-9));
      double feet =
          plan.pieces().stream()
              .filter(piece -> piece.size().equals(size.size()))
              .mapToDouble(piece -> piece.count() * piece.length().feet())
              .sum();
      assertThat(size.length().feet()).isEqualTo(feet, offset(1e-9));
    }
    assertThat(plan.cages().get(1).pieces())
        .extracting(BarPiece::barMark)
        .containsExactly("C", "D");
  }

  @Test
  void barMarksGoOnAfterZ() {
    assertThat(List.of(BarList.barMark(0), BarList.barMark(25), BarList.barMark(26)))
        .containsExactly("A", "Z", "AA");
    assertThat(BarList.barMark(52)).isEqualTo("BA");
  }

  @Test
  void theCageAsksForItsNeedsAndTime() {
    SteelPlan plan = plan(pier(1.5));
    assertThat(plan.needs())
        .extracting(Need::id)
        .containsExactly("bar-feet", "side-spacers", "bar-caps", "wire-ties");
    int rings = plan.cages().get(0).rings().orElseThrow().count();
    assertThat(plan.needs().get(3).order()).isEqualTo(6.0 * rings);
    assertThat(plan.tasks())
        .singleElement()
        .satisfies(
            task -> {
              assertThat(task.kind()).isEqualTo(Task.Kind.STEEL);
              assertThat(task.least().hours()).isLessThan(task.most().hours());
            });
  }

  // Findings

  @Test
  void steelThatKeepsTheRulesIsNoFinding() {
    FillJob of = new FillJob();
    Hole hole = of.tube(of.hole("P1", 22, 58, 4, 36), 16, Tube.From.GROUND);
    of.with(of.steel(hole, 6, "#5", 1.5, of.ties("#3", 10)));
    assertThat(plan(of).findings()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"2.75, true", "3, false"})
  void coverAgainstTheGroundIsThreeInches(double cover, boolean found) {
    Optional<Finding> finding = finding(plan(support(6, "#5", cover)), "cover-short");
    assertThat(finding.isPresent()).isEqualTo(found);
    finding.ifPresent(
        ask -> {
          assertThat(ask.kind()).isEqualTo(Kind.ASK);
          assertThat(ask.subjects()).containsExactly("S1");
          assertThat(ask.place()).isEqualTo("supports.steel.cover");
          assertThat(ask.arguments())
              .containsEntry("exposure", Argument.entry("steel-plan.exposure.cast-against-ground"));
          assertThat(
                  ((Length) ((Argument.Measured) ask.arguments().get("wanted")).quantity())
                      .inches())
              .isEqualTo(3, offset(1e-9));
        });
  }

  @ParameterizedTest
  @CsvSource({"1.25, true", "1.5, false"})
  void coverBehindATubeIsAnInchAndAHalf(double cover, boolean found) {
    assertThat(finding(plan(pier(cover)), "cover-short").isPresent()).isEqualTo(found);
  }

  /** #6 behind a #3 ring: 2 in less the ring's 3/8 in. */
  @ParameterizedTest
  @CsvSource({"1.5, true", "1.625, false"})
  void thickerBarsBehindTheRingWantMore(double cover, boolean found) {
    FillJob of = new FillJob();
    Hole hole = of.tube(of.hole("P1", 22, 58, 4, 36), 16, Tube.From.GROUND);
    of.with(of.steel(hole, 6, "#6", cover, of.ties("#3", 10)));
    assertThat(finding(plan(of), "cover-short").isPresent()).isEqualTo(found);
  }

  @Test
  void metricCoverIsHeldToTheMetricFigure() {
    FillJob of = new FillJob().metric();
    of.with(of.steel(of.hole("S1", 450, 1200, 100, 0), 6, "16 mm", 75, of.ties("8 mm", 200)));
    assertThat(finding(plan(of), "cover-short")).as("75 mm, not 76.2").isEmpty();
  }

  @Test
  void steelWiderThanItsConcreteStops() {
    SteelPlan plan = plan(support(4, "#4", 9));
    assertThat(finding(plan, "steel-does-not-fit").orElseThrow().kind()).isEqualTo(Kind.STOP);
    assertThat(plan.cages()).isEmpty();
    assertThat(plan.barList()).isEmpty();
    assertThat(plan.needs()).isEmpty();
  }

  @Test
  void barsTooNearOneAnotherAsk() {
    SteelPlan plan = plan(support(16, "#6", 3));
    Finding ask = finding(plan, "bars-too-close").orElseThrow();
    Cage cage = plan.cages().get(0);
    assertThat(cage.clear().inches())
        .isEqualTo((18 - 6 - 0.75 - 0.75) * Math.sin(Math.PI / 16) - 0.75, offset(1e-9));
    assertThat(cage.leastClear().inches()).isEqualTo(1.5, offset(1e-9));
    assertThat(ask.kind()).isEqualTo(Kind.ASK);
    assertThat(finding(plan(support(8, "#6", 3)), "bars-too-close")).isEmpty();
  }

  /** ACI 318-19, 25.7.2.1: 16 bars, 48 ties, least dimension. */
  @ParameterizedTest
  @CsvSource({"#4, #3, 12, 8", "#8, #3, 20, 16", "#8, #3, 12, 12", "#8, #4, 30, 16"})
  void ringsMayStandSoFarApart(String bar, String ring, double concrete, double inches) {
    Working greatest =
        Working.of(
            INCH.greatestSpacing(),
            "",
            Bars.get(bar).diameter(),
            Bars.get(ring).diameter(),
            Length.ofInches(concrete));
    assertThat(greatest.result()).isEqualTo(inches, offset(1e-9));
  }

  @Test
  void ringsTooFarApartAsk() {
    assertThat(finding(plan(column(6, "#4", 12)), "rings-too-far-apart")).isPresent();
    assertThat(finding(plan(column(6, "#5", 8)), "rings-too-far-apart")).isEmpty();
    // The rule of columns does not hold for a pedestal.
    FillJob of = new FillJob();
    of.with(of.steel(of.hole("S1", 18, 48, 4, 0), 6, "#4", 3, of.ties("#3", 12)));
    assertThat(finding(plan(of), "rings-too-far-apart")).isEmpty();
  }

  @Test
  void threeBarsInRingsAsk() {
    assertThat(finding(plan(column(3, "#8", 8)), "few-bars-in-rings")).isPresent();
    assertThat(finding(plan(column(4, "#8", 8)), "few-bars-in-rings")).isEmpty();
    assertThat(finding(plan(support(3, "#8", 3)), "few-bars-in-rings")).isEmpty();
  }

  @Test
  void barsWithoutRingsAsk() {
    FillJob of = new FillJob();
    of.with(of.steel(of.hole("S1", 18, 48, 4, 0), 4, "#4", 3, Optional.<Steel.Ties>empty()));
    SteelPlan plan = plan(of);
    assertThat(finding(plan, "bars-without-rings")).isPresent();
    assertThat(plan.cages().get(0).rings()).isEmpty();
    assertThat(plan.cages().get(0).barCircle().inches()).isEqualTo(11.5, offset(1e-9));
  }

  @Test
  void littleSteelInAPadOrPedestalIsNoFinding() {
    SteelPlan plan = plan(support(4, "#4", 3));
    assertThat(plan.cages().get(0).ratio().percent()).isEqualTo(100 * 4 * 0.25 / 324, offset(1e-9));
    assertThat(plan.findings()).noneMatch(found -> found.id().contains("little-steel"));
    assertThat(finding(plan(pier(1.5)), "pier-little-steel")).isEmpty();
  }

  @Test
  void noSteelAsksTheAuthority() {
    FillJob of = new FillJob();
    of.with(of.hole("S1", 18, 48, 4, 0)).with(of.hole("S2", 18, 48, 4, 0));
    SteelPlan plan = plan(of);
    assertThat(plan.cages()).isEmpty();
    assertThat(plan.findings())
        .singleElement()
        .satisfies(
            ask -> {
              assertThat(ask.id()).isEqualTo("plain-concrete");
              assertThat(ask.subjects()).containsExactly("S1", "S2");
            });
  }

  @Test
  void hooksThatMeetInANarrowCoreAreNoted() {
    FillJob of = new FillJob();
    Hole hole = of.tube(of.hole("S1", 18, 48, 4, 6), 12, Tube.From.GROUND);
    of.with(of.steel(hole, 4, "#4", 3, of.ties("#3", 8)));
    assertThat(finding(plan(of), "hooks-crowd-core")).isPresent();
    assertThat(finding(plan(pier(1.5)), "hooks-crowd-core")).isEmpty();
  }

  // Properties

  @Property(tries = 100, seed = Chance.SEED)
  void moreBarsStandNearerAndWeighMore(@ForAll @IntRange(min = 4, max = 12) int bars) {
    Cage few = plan(support(bars, "#5", 3)).cages().get(0);
    Cage more = plan(support(bars + 1, "#5", 3)).cages().get(0);
    assertThat(more.clear()).isLessThan(few.clear());
    assertThat(more.ratio()).isGreaterThan(few.ratio());
    assertThat(more.pieces().get(0).each()).isEqualTo(few.pieces().get(0).each());
  }

  @Property(tries = 50, seed = Chance.SEED)
  void theListGrowsWithTheNumberOfFootings(@ForAll @IntRange(min = 1, max = 40) int count) {
    FillJob many = new FillJob();
    for (int i = 1; i <= count; i++) {
      many.with(many.steel(many.hole("S" + i, 18, 48, 4, 0), 4, "#4", 3, many.ties("#3", 8)));
    }
    SteelPlan one = plan(support(4, "#4", 3));
    SteelPlan plan = plan(many);
    for (int i = 0; i < plan.barList().size(); i++) {
      assertThat(plan.barList().get(i).count()).isEqualTo(count * one.barList().get(i).count());
    }
    assertThat(plan.cages()).hasSize(1);
    assertThat(plan.workings()).hasSameSizeAs(one.workings());
    assertThat(Working.of(INCH.ratio(), "", new Count(4), new Length(1), new Length(18)).result())
        .isEqualTo(100 * 4 / 324.0, offset(1e-9));
  }
}
