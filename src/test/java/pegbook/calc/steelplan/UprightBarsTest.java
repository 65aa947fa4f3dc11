package pegbook.calc.steelplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import pegbook.calc.steelplan.SteelPlan.Embedment;
import pegbook.calc.steelplan.SteelPlan.Starters;
import pegbook.calc.steelplan.SteelPlan.Turn;
import pegbook.figures.Argument;
import pegbook.figures.BarPiece.Shape;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Steel.Foot;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.UnitSystem;
import pegbook.published.Bars;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

/** Starter bars, laps, hooks at the foot and how far bars reach; concrete of 4000 psi. */
class UprightBarsTest {
  private static final UprightFormulas INCH = new UprightFormulas(UnitSystem.IMPERIAL);

  private static SteelPlan plan(FillJob of) {
    return SteelPlanCalculator.calculate(of.job(), of.holes, of.holes);
  }

  private static List<String> ids(SteelPlan plan) {
    return plan.findings().stream().map(Finding::id).toList();
  }

  private static double inches(SteelPlan plan, String finding, String argument) {
    Finding found =
        plan.findings().stream().filter(one -> one.id().equals(finding)).findFirst().orElseThrow();
    return ((Length) ((Argument.Measured) found.arguments().get(argument)).quantity()).inches();
  }

  /** A pier of 16 in, 94 in high in all, 36 in of it above the ground, in a hole of 22 in. */
  private static FillJob pier(String size, Foot foot, double firstLift) {
    FillJob of = new FillJob();
    Hole hole = of.tube(of.hole("P1", 22, 58, 4, 36), 16, Tube.From.GROUND);
    hole = of.steel(hole, 6, size, 2, of.ties("#3", 8));
    Optional<Length> lift =
        firstLift == 0 ? Optional.empty() : Optional.of(Length.ofInches(firstLift));
    return of.with(of.starters(hole, foot, lift));
  }

  // Published: standard hooks of main bars

  /**
   * ACI 318-19, Table 25.3.1: bend of six bars, extension of twelve: the outside leg of every inch
   * bar is sixteen bars.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "main-hooks.csv", useHeadersInDisplayName = true)
  void legsOfHooksAreTheTables(double bend, double leg, String name) {
    Length bar = Bars.get(name).diameter();
    Length pin = new SteelRules(UnitSystem.IMPERIAL).mainBend(bar);
    assertThat(pin.inches()).isCloseTo(bend, within(1e-9));
    assertThat(Working.of(INCH.leg(), "", pin, bar).result()).isCloseTo(leg, within(1e-9));
  }

  /** The bar's middle goes round the arc: along two straights and a quarter of a circle. */
  @Test
  void aHookedBarIsAsLongAsItsMiddle() {
    Length bar = Bars.get("#8").diameter();
    double worked =
        Working.of(INCH.hooked(), "", Length.ofInches(60), Length.ofInches(6), bar).result();
    double straight = 60 - 3 - 1;
    double arc = 2 * Math.PI * 3.5 / 4;
    assertThat(worked).isCloseTo(straight + arc + 12, within(1e-9));
  }

  // Two lifts

  /**
   * By hand: straight, #5 reaches 60000 / (25 · 63.25) · 0.625 = 23.7 in; the joint at the ground
   * leaves 55 in. Lap 1.3 · 23.72 = 30.8, so 31 in.
   */
  @Test
  void startersStandInTheFirstLiftAndLapAboveIt() {
    SteelPlan plan = plan(pier("#5", Foot.STRAIGHT, 58));
    Cage cage = plan.cages().get(0);
    Starters starters = cage.uprights().starters().orElseThrow();
    assertThat(cage.cut().inches()).isCloseTo(94 - 58 - 2, within(1e-9));
    assertThat(cage.uprights().foot().inches()).isCloseTo(58, within(1e-9));
    assertThat(starters.lap().inches()).isCloseTo(31, within(1e-9));
    assertThat(starters.cut().inches()).isCloseTo(55 + 31, within(1e-9));
    assertThat(starters.hook()).isEmpty();
    Embedment embedment = cage.uprights().embedment().orElseThrow();
    assertThat(embedment.reach().inches()).isCloseTo(55, within(1e-9));
    assertThat(embedment.needed().inches()).isCloseTo(23.72, within(0.005));
    assertThat(plan.barList())
        .extracting(BarLine::shape)
        .containsExactly(Shape.STRAIGHT, Shape.RING, Shape.STRAIGHT);
    assertThat(plan.barList().get(2).count()).isEqualTo(6);
    assertThat(ids(plan)).containsExactly("two-lifts");
  }

  /** A first lift of 14 in leaves 11 in: too little straight (14.2 closely), enough hooked. */
  @Test
  void shortStartersAreHooked() {
    SteelPlan plan = plan(pier("#5", Foot.STRAIGHT, 14));
    Starters starters = plan.cages().get(0).uprights().starters().orElseThrow();
    assertThat(starters.hook().orElseThrow().leg().inches()).isCloseTo(10, within(1e-9));
    assertThat(starters.hook().orElseThrow().turn()).isEqualTo(Turn.INWARD);
    double cut = 11 + 31 + 13.498 * 0.625;
    assertThat(starters.cut().inches()).isBetween(cut, cut + 0.25);
    assertThat(plan.barList().get(2).shape()).isEqualTo(Shape.HOOKED_ONE_END);
    assertThat(ids(plan)).containsExactly("two-lifts");
  }

  /** #8 in 6 in of concrete over the cover: a hook wants 14.95 in, times 1.6 and 1.25. */
  @Test
  void hooksThatAreTooShortSayByHowMuch() {
    SteelPlan plan = plan(pier("#8", Foot.STRAIGHT, 9));
    assertThat(ids(plan)).contains("hook-embedment-short");
    double needed = 60_000 * 0.867 / (55 * Math.sqrt(4000)) * 1.6 * 1.25;
    assertThat(inches(plan, "hook-embedment-short", "needed")).isCloseTo(needed, within(0.01));
    assertThat(inches(plan, "hook-embedment-short", "more")).isCloseTo(needed - 6, within(0.01));
    Finding found =
        plan.findings().stream().filter(f -> f.id().startsWith("hook-")).toList().get(0);
    assertThat(found.subjects()).containsExactly("P1");
    assertThat(found.arguments()).containsEntry("bar", Argument.words("C"));
    assertThat(found.place()).isEqualTo("piers.P1.steel.firstLift");
  }

  /** 10 in of upright bar stand above a joint 82 in up; the lap of #5 wants 31 in. */
  @Test
  void aLapThatFindsNoRoomAsks() {
    SteelPlan plan = plan(pier("#5", Foot.STRAIGHT, 82));
    Starters starters = plan.cages().get(0).uprights().starters().orElseThrow();
    assertThat(starters.lap().inches()).isCloseTo(10, within(1e-9));
    assertThat(ids(plan)).contains("lap-short");
    assertThat(inches(plan, "lap-short", "needed")).isCloseTo(31, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"3", "91.8", "91.99", "92", "200"})
  void aJointOutsideTheSteelAsksAndCutsInOnePiece(double joint) {
    SteelPlan plan = plan(pier("#5", Foot.STRAIGHT, joint));
    assertThat(ids(plan)).containsExactly("joint-outside-steel");
    assertThat(plan.cages().get(0).cut().inches()).isCloseTo(89, within(1e-9));
  }

  @Test
  void lappedPairsNeedRoomBetweenThem() {
    FillJob of = new FillJob();
    Hole hole = of.tube(of.hole("P1", 22, 58, 4, 36), 16, Tube.From.GROUND);
    hole = of.steel(hole, 12, "#6", 2, of.ties("#3", 8));
    Hole whole = of.starters(hole, Foot.STRAIGHT, Optional.empty());
    assertThat(ids(plan(of.with(whole)))).doesNotContain("bars-too-close", "laps-too-close");
    of.holes.clear();
    SteelPlan plan =
        plan(of.with(of.starters(hole, Foot.STRAIGHT, Optional.of(Length.ofInches(58)))));
    assertThat(ids(plan)).contains("laps-too-close").doesNotContain("bars-too-close");
  }

  // One lift

  @Test
  void barsThatReachTooLittleBelowTheGroundAsk() {
    FillJob of = new FillJob();
    Hole hole = of.tube(of.hole("P1", 22, 20, 4, 36), 16, Tube.From.GROUND);
    hole = of.steel(hole, 6, "#8", 2, of.ties("#3", 8));
    SteelPlan plan = plan(of.with(hole));
    assertThat(ids(plan)).containsExactly("embedment-short");
    // cb: half of 4.88 between bars, 2.44 bars: 3/40 · 60000 / 63.25 / 2.44.
    double apart = (16 - 4 - 0.75 - 1) * Math.sin(Math.PI / 6);
    double needed = 3.0 / 40 * 60_000 / Math.sqrt(4000) / Math.min(2.5, apart / 2);
    assertThat(inches(plan, "embedment-short", "needed")).isCloseTo(needed, within(1e-6));
    assertThat(inches(plan, "embedment-short", "reach")).isCloseTo(17, within(1e-9));
  }

  @Test
  void nothingIsAskedOfBarsThatEndAtTheGround() {
    FillJob of = new FillJob();
    Hole hole = of.steel(of.hole("S1", 22, 14, 4, 0), 4, "#8", 3, of.ties("#3", 8));
    SteelPlan plan = plan(of.with(hole));
    assertThat(plan.cages().get(0).uprights().embedment()).isEmpty();
    assertThat(ids(plan)).doesNotContain("embedment-short");
  }

  /** Wide enough, the leg lies outward; in a narrow shaft inward; else it says so. */
  @ParameterizedTest
  @CsvSource({"40, #5, OUTWARD", "22, #5, INWARD", "16, #8, NO_ROOM"})
  void hooksTurnWhereThereIsRoom(double hole, String size, Turn turn) {
    FillJob of = new FillJob();
    Hole round = of.tube(of.hole("P1", hole, 58, 4, 36), 16, Tube.From.GROUND);
    round =
        of.starters(of.steel(round, 6, size, 2, of.ties("#3", 8)), Foot.HOOKED, Optional.empty());
    SteelPlan plan = plan(of.with(round));
    assertThat(plan.cages().get(0).uprights().hook().orElseThrow().turn()).isEqualTo(turn);
    assertThat(ids(plan).contains("hook-has-no-room")).isEqualTo(turn == Turn.NO_ROOM);
    assertThat(plan.barList().get(0).piece().isStraight()).isFalse();
  }

  /** Steel that needs more for the same strength, in the units of a metric packet: by hand. */
  @Test
  void strongerSteelLapsLongerInMillimetresToo() {
    FillJob of = new FillJob().metric();
    of.strength = Pressure.ofMegapascals(25);
    Hole hole = of.tube(of.hole("P1", 550, 1500, 100, 900), 400, Tube.From.GROUND);
    hole = of.steel(hole, 6, "16 mm", 50, of.ties("8 mm", 200));
    of.with(of.starters(hole, Foot.STRAIGHT, Optional.of(Length.ofMillimetres(1500))));
    Starters starters = plan(of).cages().get(0).uprights().starters().orElseThrow();
    // 60 000 psi is 413.7 MPa: 1.3 · 413.7 / (2.1 · 5) · 16 = 819.5, set up to 820.
    assertThat(starters.lap().millimetres()).isCloseTo(820, within(1e-6));
  }

  // Properties

  @Property(tries = 60, seed = Chance.SEED)
  void startersAndUprightsTogetherAreOneBarAndItsLap(
      @ForAll @IntRange(min = 30, max = 60) int joint,
      @ForAll @IntRange(min = 4, max = 6) int bar) {
    SteelPlan one = plan(pier("#" + bar, Foot.STRAIGHT, 0));
    SteelPlan two = plan(pier("#" + bar, Foot.STRAIGHT, joint));
    Starters starters = two.cages().get(0).uprights().starters().orElseThrow();
    double together = two.cages().get(0).cut().inches() + starters.rise().inches();
    assertThat(together - starters.lap().inches())
        .isCloseTo(one.cages().get(0).cut().inches(), within(0.5));
    assertThat(two.sizes().get(0).mass()).isGreaterThan(one.sizes().get(0).mass());
  }
}
