package pegbook.calc.powerline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pegbook.figures.Argument;
import pegbook.figures.CutPiece;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.measure.Area;
import pegbook.measure.Unit;
import pegbook.published.Citation;
import pegbook.published.DropLimit;
import pegbook.published.MetricCable;
import pegbook.published.Wire;
import pegbook.testing.PowerJob;

/** What is bought, in both systems of units, and what is printed of how it was worked. */
class PowerLineBuyingTest {
  private static Need need(PowerJob job, String id) {
    return job.plan().needs().stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Area area(Need need, String name) {
    return (Area) ((Argument.Measured) need.arguments().get(name)).quantity();
  }

  private static List<Working> workings(PowerJob job, String id) {
    return job.plan().workings().stream().filter(each -> each.formula().id().equals(id)).toList();
  }

  /** 10 AWG: 10380 circular mils of π/4 · 10⁻⁶ in²; 0.0211 in² with its cover (Table 5). */
  @Test
  void aWireCarriesItsAreasForItsMass() {
    for (String id : List.of("power-wire", "power-earth-wire")) {
      Need wire = need(PowerJob.imperial(), id);
      assertThat(Unit.SQUARE_INCH.in(area(wire, "conducting"))).isCloseTo(0.0081525, within(1e-7));
      assertThat(Unit.SQUARE_INCH.in(area(wire, "whole"))).isCloseTo(0.0211, within(1e-9));
      assertThat(wire.arguments().get("metal"))
          .isEqualTo(Argument.entry("power-line.metal.copper"));
    }
    // Two conductors of 109 ft and one that grounds.
    assertThat(need(PowerJob.imperial(), "power-wire").amount()).isCloseTo(218, within(1e-9));
    assertThat(need(PowerJob.imperial(), "power-earth-wire").amount()).isCloseTo(109, within(1e-9));
  }

  /** 2.5 mm² in three cores, 13 mm outside: 7.5 mm² of metal in 132.73 mm²; 33.2 m and 5 %. */
  @Test
  void aMetricCableHasThreeCores() {
    Need cable = need(PowerJob.metric(), "power-cable");
    assertThat(cable.arguments().get("cores")).isEqualTo(Argument.of(3L));
    assertThat(Unit.SQUARE_MILLIMETRE.in(area(cable, "conducting"))).isCloseTo(7.5, within(1e-9));
    assertThat(Unit.SQUARE_MILLIMETRE.in(area(cable, "whole"))).isCloseTo(132.732, within(5e-4));
    assertThat(cable.unit()).isEqualTo(Unit.METRE);
    assertThat(cable.amount()).isCloseTo(33.2, within(1e-9));
    assertThat(cable.order()).isCloseTo(35, within(1e-9));
    assertThat(PowerJob.metric().plan().needs())
        .extracting(Need::id)
        .doesNotContain("power-wire", "power-earth-wire");
  }

  /** A cable of the American gauge has no areas of its own in the tables. */
  @Test
  void aCableInTheGroundHasNoPipe() {
    PowerJob job = PowerJob.imperial().power("method", "\"direct burial\"");
    Need cable = need(job, "power-cable");
    assertThat(cable.arguments()).containsEntry("cores", Argument.of(3L));
    assertThat(cable.arguments()).doesNotContainKeys("conducting", "whole");
    assertThat(job.line().pipes()).isEmpty();
    // 109 ft and half a foot more of cover at both ends: 24 in instead of 18.
    assertThat(cable.amount()).isCloseTo(110, within(1e-9));
    assertThat(job.plan().needs())
        .extracting(Need::id)
        .containsExactly("power-cable", "power-warning-tape", "power-sand");
  }

  /** The data cable has a pipe of its own, 1 in, with pieces D, and its own roll. */
  @Test
  void aDataCableIsBoughtWithItsPipe() {
    PowerJob job = PowerJob.imperial().power("dataCable", "\"yes\"");
    List<PowerLine.PipeRun> pipes = job.line().pipes();
    assertThat(pipes).extracting(PowerLine.PipeRun::size).containsExactly("PVC 1/2 in", "PVC 1 in");
    assertThat(pipes.get(0).pieces()).extracting(CutPiece::name).containsExactly("C1", "C2");
    assertThat(pipes.get(1).pieces()).extracting(CutPiece::name).containsExactly("D1", "D2");
    // Ten whole lengths and two risers.
    assertThat(pipes.get(1).count()).isEqualTo(12);
    assertThat(need(job, "power-data-cable").amount()).isCloseTo(109, within(1e-9));
    assertThat(need(job, "power-data-cable").unit()).isEqualTo(Unit.FOOT);
    assertThat(need(job, "power-data-cable").order()).isCloseTo(115, within(1e-9));
  }

  /** A line shorter than a length of pipe is one piece; a metric end comes up 450 mm (habit). */
  @Test
  void aShortRunIsOnePiece() {
    PowerJob job = PowerJob.metric().route("0 m, 5 m", "0 m, 3 m");
    PowerLine.PipeRun run = job.line().pipes().get(0);
    assertThat(run.over().millimetres()).isCloseTo(450, within(1e-9));
    assertThat(run.riser().millimetres()).isCloseTo(1050, within(1e-9));
    assertThat(run.pieces()).extracting(CutPiece::count).containsExactly(1, 2);
    assertThat(run.pieces().get(0).length().metres()).isCloseTo(2, within(1e-9));
    // Riser, bend, piece, bend, riser.
    assertThat(run.couplings()).isEqualTo(4);
  }

  /** A pile of three lengths that are there does not decide the length that is laid. */
  @Test
  void whatCanBeBoughtWithoutEndDecidesTheLength() {
    String stock =
        """
        {"conduit": [{"size": "PVC 1/2 in", "length": "20 ft", "count": 3, "price": "1.00 USD"},
                     {"size": "PVC 1/2 in", "length": "10 ft", "price": "5.00 USD"}]}
        """;
    assertThat(PowerJob.imperial().job("stock", stock).line().pipes().get(0).lay().feet())
        .isCloseTo(10, within(1e-9));
    String dear =
        """
        {"conduit": [{"size": "PVC 1/2 in", "length": "20 ft", "price": "9.00 USD"},
                     {"size": "PVC 1/2 in", "length": "10 ft", "price": "5.00 USD"}]}
        """;
    // 0.45 to the foot against 0.50: dearer by the piece, cheaper by the foot.
    assertThat(PowerJob.imperial().job("stock", dear).line().pipes().get(0).lay().feet())
        .isCloseTo(20, within(1e-9));
  }

  @Test
  void theStepsAreKept() {
    PowerJob metric = PowerJob.metric();
    assertThat(workings(metric, "power-line.three-phase-current")).hasSize(1);
    assertThat(workings(metric, "power-line.other-current")).isEmpty();
    assertThat(workings(PowerJob.imperial(), "power-line.other-current")).hasSize(1);
    // The size below the chosen one is worked too, to show why it does not do.
    assertThat(workings(PowerJob.imperial(), "power-line.drop"))
        .extracting(Working::subject)
        .containsExactly("12 AWG", "10 AWG", "10 AWG", "10 AWG");
    for (String id :
        List.of(
            "trench-most", "trench-least", "lay-most", "lay-least", "fill-most", "fill-least")) {
      String whole = "power-line." + id.replace("trench", "dig");
      assertThat(workings(PowerJob.imperial(), whole)).as(whole).hasSize(1);
    }
    assertThat(workings(PowerJob.imperial(), "power-line.bearing-line")).hasSize(1);
  }

  /** Only the pipe that is too full and the one that is taken are printed: 1 1/4 and 1 1/2 in. */
  @Test
  void twoPipesAreShown() {
    // 100 A at 240 V to a further panel: three of 1 AWG (0.1562 in²) and 8 AWG (0.0366 in²):
    // 0.5052 in² of 1.453 in² is 34.8 %, of 0.832 in² 60.7 %; four may fill 40 %.
    PowerJob job =
        PowerJob.imperial()
            .route("0 ft, 20 ft", "0 ft, 10 ft")
            .power("voltage", "\"240 V\"")
            .power("breaker", "\"100 A\"")
            .power("circuit", "\"feeder\"");
    assertThat(job.line().conductors().chosen().orElseThrow().loaded()).isEqualTo(3);
    List<Working> fills = workings(job, "power-line.fill");
    assertThat(fills).extracting(Working::subject).containsExactly("1 in", "1 1/4 in");
    assertThat(fills.get(0).result()).isCloseTo(60.72, within(0.005));
    assertThat(fills.get(1).result()).isCloseTo(34.77, within(0.005));
    assertThat(job.line().trench().pipe().name()).isEqualTo("1 1/4 in");
    assertThat(job.line().trench().pipe().mayFill().fraction()).isCloseTo(0.4, within(1e-9));
  }

  /** Three of 4/0 and 4 AWG are 1.0535 in², 32 % of 2 in: the largest wire has room. */
  @Test
  void theLargestWireHasRoom() {
    PowerJob job =
        PowerJob.imperial()
            .route("0 ft, 20 ft", "0 ft, 10 ft")
            .power("voltage", "\"240 V\"")
            .power("breaker", "\"200 A\"")
            .power("sizes", "[\"4/0 AWG\"]")
            .power("circuit", "\"feeder\"");
    assertThat(job.line().trench().pipe().filled().orElseThrow().fraction())
        .isCloseTo((3 * 0.3237 + 0.0824) / 3.291, within(1e-9));
    assertThat(job.plan().findings())
        .extracting(each -> each.id())
        .doesNotContain("power-pipe-full");
  }

  /** The same lengths in metres and in feet: how far the largest size would reach. */
  @Test
  void theReachIsPrintedInTheJobsUnits() {
    PowerJob imperial = PowerJob.imperial().power("sizes", "[\"14 AWG\", \"12 AWG\"]");
    assertThat(workings(imperial, "power-line.reach").get(0).result())
        .isCloseTo(75.76, within(0.005));
    // 33.2 m · 3 % / 3.479 %, see ConductorPlanTest for the drop in 1.5 mm².
    PowerJob metric = PowerJob.metric().power("sizes", "[\"1.5 mm2\"]");
    assertThat(workings(metric, "power-line.reach").get(0).result()).isCloseTo(28.63, within(0.01));
    assertThat(workings(PowerJob.imperial(), "power-line.reach")).isEmpty();
  }

  @Test
  void theSourcesAreThoseOfTheTablesThatWereRead() {
    assertThat(PowerJob.imperial().plan().sources())
        .contains(Wire.RESISTANCES, Wire.AMPACITIES, DropLimit.find("us-branch").citation())
        .doesNotContain(MetricCable.DROP, Citation.COMMON_PRACTICE);
    assertThat(PowerJob.metric().plan().sources())
        .containsExactly(
            Citation.COMMON_PRACTICE,
            MetricCable.DROP,
            MetricCable.AMPACITIES,
            DropLimit.find("public-lighting").citation());
  }

  /**
   * IEC 60364-5-52, Table B.52.2 as recalled: 16 A in the ground or a duct takes 1.5 mm² (22 A); 38
   * A in 4 mm² of copper is carried in the ground only, a duct has 37 A.
   */
  @Test
  void aCableInTheGroundCarriesMoreThanInADuct() {
    PowerJob job =
        PowerJob.metric()
            .route("0 m, 6 m", "0 m, 3 m")
            .power("running", "\"20 A\"")
            .power("breaker", "\"38 A\"");
    assertThat(job.line().conductors().chosen().orElseThrow().size()).isEqualTo("6\u00a0mm²");
    job.power("method", "\"direct burial\"");
    assertThat(job.line().conductors().chosen().orElseThrow().size()).isEqualTo("4\u00a0mm²");
    assertThat(job.line().trench().pipe().outside().millimetres()).isCloseTo(15, within(1e-9));
  }

  /** Aluminium behind 20 A: 10 AWG grounds (Table 250.122); copper 12 AWG. */
  @Test
  void theGroundingConductorIsOfTheMetal() {
    PowerJob job = PowerJob.imperial().route("0 ft, 20 ft", "0 ft, 10 ft");
    assertThat(job.line().conductors().chosen().orElseThrow().earth()).isEqualTo("12 AWG");
    job.power("metal", "\"aluminium\"");
    assertThat(job.line().conductors().chosen().orElseThrow().earth()).isEqualTo("10 AWG");
    assertThat(need(job, "power-wire").arguments().get("metal"))
        .isEqualTo(Argument.entry("power-line.metal.aluminium"));
  }

  /**
   * 16 A behind 20 A at 120 V becomes 8 A behind 10 A at 240 V, where 14 AWG (15 A) does on a short
   * way; 240 V behind 50 A becomes nothing, as nothing higher is asked.
   */
  @Test
  void theBreakerFallsWithTheCurrent() {
    PowerJob job =
        PowerJob.imperial()
            .route("0 ft, 20 ft", "0 ft, 10 ft")
            .power("running", "\"16 A\"")
            .power("breaker", "\"40 A\"");
    assertThat(job.line().conductors().chosen().orElseThrow().size()).isEqualTo("8 AWG");
    PowerLine.Supplied higher = job.line().conductors().supplies().get(0);
    // 40 A · 8 / 16 is 20 A: 12 AWG, not 14.
    assertThat(higher.smallest()).hasValue("12 AWG");
    assertThat(higher.current().amperes()).isCloseTo(8, within(1e-9));
  }
}
