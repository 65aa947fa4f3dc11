package pegbook.calc.powerline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.calc.powerline.PowerLine.Rule;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.SafePeg;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.measure.Volume;
import pegbook.published.Citation;
import pegbook.testing.PowerJob;

/** The route among what stands beside it, just inside and just outside each limit. */
class PowerLineGroundTest {
  /** Due north 10 ft to 110 ft from the centre; the trench is 12 in wide, so its edge 6 in off. */
  private static final PowerJob JOB = PowerJob.imperial();

  private static List<String> ids(PowerLine plan) {
    return plan.findings().stream().map(Finding::id).toList();
  }

  private static Finding finding(PowerLine plan, String id) {
    return plan.findings().stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " is not among " + ids(plan)));
  }

  private static Point feet(double east, double north) {
    return new Point(Length.ofFeet(east).metres(), Length.ofFeet(north).metres());
  }

  private static SpoilHeap heap(String hole, double east, double radius) {
    return new SpoilHeap(
        List.of(hole), feet(east, 50), Length.ofFeet(radius), Length.ofFeet(1), Volume.ZERO);
  }

  /**
   * Heaps of 2 ft radius: 2.4 ft from the middle line one lies over the edge, 2.6 ft it does not.
   */
  @Test
  void aHeapOnTheTrenchIsNamed() {
    PowerLine plan =
        JOB.plan(List.of(heap("S1", 2.6, 2), heap("S2", 2.4, 2), heap("S3", -1, 2)), List.of());
    assertThat(finding(plan, "power-heap-on-route").arguments().get("heaps"))
        .isEqualTo(Argument.words("S2; S3"));
    assertThat(ids(JOB.plan(List.of(heap("S1", 2.6, 2)), List.of())))
        .doesNotContain("power-heap-on-route");
  }

  /** 300 mm from the edge, which is 152 mm off the middle: pegs at 440 and 460 mm. */
  @Test
  void aPegBesideTheTrenchIsNamed() {
    SafePeg near = new SafePeg("A", new Point(0.440, 10), true);
    SafePeg far = new SafePeg("B", new Point(0.460, 10), true);
    PowerLine plan = JOB.plan(List.of(), List.of(far, near));
    assertThat(finding(plan, "power-peg-on-route").subjects()).containsExactly("A");
    assertThat(ids(JOB.plan(List.of(), List.of(far)))).doesNotContain("power-peg-on-route");
  }

  private static PowerJob with(String feature) {
    return PowerJob.imperial().job("site", "{\"features\": [" + feature + "]}");
  }

  /** An oak to be kept clear by 4 ft: 4.4 ft from the middle it is 3.9 ft off, 4.6 ft it is 4.1. */
  @Test
  void aKeepClearDistanceIsMeasuredFromTheEdge() {
    String oak = "{\"name\": \"oak\", \"at\": \"%s ft, 30 ft\", \"keepClear\": \"4 ft\"}";
    Finding near = finding(with(oak.formatted("4.4")).plan(), "power-route-object");
    assertThat(near.subjects()).containsExactly("oak");
    Length distance = (Length) ((Argument.Measured) near.arguments().get("distance")).quantity();
    assertThat(distance.feet()).isCloseTo(3.9, within(0.02));
    assertThat(ids(with(oak.formatted("4.6")).plan())).doesNotContain("power-route-object");
  }

  /**
   * A shed beside a trench of 21 in: its footing is asked about as long as it is no farther than
   * the trench is deep. Its wall 1 ft and 3 ft east of the edge.
   */
  @Test
  void aBuildingIsAskedAboutWithinTheDepth() {
    String shed =
        "{\"name\": \"shed\", \"corners\": [\"%1$s ft, 30 ft\", \"12 ft, 30 ft\", \"12 ft, 40 ft\","
            + " \"%1$s ft, 40 ft\"]}";
    PowerLine near = with(shed.formatted("1.5")).plan();
    Finding beside = finding(near, "power-beside-building");
    Length distance = (Length) ((Argument.Measured) beside.arguments().get("distance")).quantity();
    assertThat(distance.feet()).isCloseTo(1, within(0.02));
    assertThat(ids(near)).doesNotContain("power-route-object");
    assertThat(ids(with(shed.formatted("3.5")).plan())).doesNotContain("power-beside-building");
    // Through it: in the way rather than beside it.
    assertThat(ids(with(shed.formatted("-2")).plan()))
        .contains("power-route-object")
        .doesNotContain("power-beside-building");
  }

  /** The house at whose wall the line begins is neither in the way nor beside it. */
  @Test
  void theHouseFromWhichItComesIsNotInTheWay() {
    String house =
        "{\"name\": \"house\", \"corners\": [\"-9 ft, 110 ft\", \"9 ft, 110 ft\", \"9 ft, 130 ft\","
            + " \"-9 ft, 130 ft\"]}";
    assertThat(ids(with(house).plan()))
        .doesNotContain("power-route-object", "power-beside-building");
  }

  /** Within the lot from end to end, or asked about; the last place alone may be outside. */
  @Test
  void withinTheLot() {
    String lot =
        "{\"boundary\": [\"-50 ft, -50 ft\", \"50 ft, -50 ft\", \"50 ft, %1$s ft\", \"-50 ft, %1$s"
            + " ft\"]}";
    assertThat(ids(PowerJob.imperial().job("site", lot.formatted("120")).plan()))
        .doesNotContain("power-route-off-lot");
    assertThat(ids(PowerJob.imperial().job("site", lot.formatted("100")).plan()))
        .contains("power-route-off-lot");
  }

  /** 16 A of 20 A are four fifths and pass; of 16.2 A it is asked, by the code where it holds. */
  @Test
  void aBreakerNearlyFull() {
    assertThat(ids(PowerJob.imperial().power("running", "\"16 A\"").plan()))
        .doesNotContain("power-breaker-full");
    Finding full =
        finding(PowerJob.imperial().power("running", "\"16.2 A\"").plan(), "power-breaker-full");
    assertThat(full.citations()).doesNotContain(Citation.COMMON_PRACTICE);
    Finding metric =
        finding(PowerJob.metric().power("running", "\"13 A\"").plan(), "power-breaker-full");
    assertThat(metric.citations()).containsExactly(Citation.COMMON_PRACTICE);
  }

  /** 48 in of cover dig 51 in: a ladder, from OSHA where it holds, elsewhere by habit. */
  @Test
  void whoAsksForALadder() {
    String depth = "{\"cover\": \"48 in\", \"from\": \"office\"}";
    assertThat(
            finding(PowerJob.imperial().power("depth", depth).plan(), "power-trench-ladder")
                .citations())
        .doesNotContain(Citation.COMMON_PRACTICE);
    PowerJob metric =
        PowerJob.metric().power("depth", "{\"cover\": \"1300 mm\", \"from\": \"office\"}");
    assertThat(finding(metric.plan(), "power-trench-ladder").citations())
        .containsExactly(Citation.COMMON_PRACTICE);
  }

  /** Of two piers the one to which the line goes is asked about, and only without a sleeve. */
  @Test
  void theSleeveOfTheRightPier() {
    String piers =
        """
        [{"id": "P1", "at": "-20 ft, 70 ft", "hole": "20 in"},
         {"id": "P2", "at": "20 ft, 60 ft", "hole": "20 in"%s}]
        """;
    PowerJob job =
        PowerJob.imperial()
            .route("60 ft, 60 ft", "40 ft, 60 ft")
            .job("piers", piers.formatted(""))
            .power("pier", "\"P2\"");
    assertThat(finding(job.plan(), "power-pier-without-sleeve").subjects()).containsExactly("P2");
    PowerLine.Leg last = job.line().route().legs().get(1);
    assertThat(last.to()).isEqualTo("P2");
    // 40 ft − 20 ft − 10 in
    assertThat(last.length().feet()).isCloseTo(20 - 10 / 12.0, within(1e-9));
    // It goes up at the supply only; the pier has its sleeve.
    assertThat(job.line().pipes().get(0).ends()).containsExactly("R1");
  }

  /** A hole's own depth decides; two footings at the same distance, of which one is shallow. */
  @Test
  void theFootingThatIsUnderminedIsNamed() {
    String piers =
        """
        [{"id": "P1", "at": "4 ft, 60 ft", "hole": "24 in", "depth": "48 in"},
         {"id": "P2", "at": "-4 ft, 60 ft", "hole": "24 in", "depth": "40 in"},
         {"id": "P3", "at": "30 ft, 60 ft", "hole": "24 in", "depth": "40 in"}]
        """;
    PowerJob job = PowerJob.imperial().job("piers", piers);
    // 4 ft − (24 + 12)/2 in + 40 in − 21 in is 49 in over the line: nothing.
    assertThat(ids(job.plan())).doesNotContain("power-below-bearing-line");
    // 72 in of cover dig 75 in: 30 + 48 − 75 is 3 in over, 30 + 40 − 75 is 5 in under.
    job.power("depth", "{\"cover\": \"72 in\", \"from\": \"office\"}");
    assertThat(finding(job.plan(), "power-below-bearing-line").subjects()).containsExactly("P2");
  }

  /** Where nothing is undermined the tightest is printed: the nearest of two equal footings. */
  @Test
  void theTightestFootingIsPrinted() {
    String piers =
        """
        [{"id": "P1", "at": "30 ft, 60 ft", "hole": "24 in", "depth": "40 in"},
         {"id": "P2", "at": "4 ft, 60 ft", "hole": "24 in", "depth": "40 in"},
         {"id": "P3", "at": "20 ft, 60 ft", "hole": "24 in", "depth": "40 in"}]
        """;
    assertThat(PowerJob.imperial().job("piers", piers).plan().workings())
        .filteredOn(each -> each.formula().id().equals("power-line.bearing-line"))
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.subject()).isEqualTo("P2");
              assertThat(each.asLength().inches()).isCloseTo(49, within(1e-6));
            });
  }

  /** Where no code is named: 600 mm, 800 mm under wheels (common practice). */
  @Test
  void coverElsewhere() {
    PowerJob job =
        PowerJob.metric()
            .power(
                "under",
                "[{\"what\": \"street\", \"length\": \"4 m\"}, {\"what\": \"exterior slab\","
                    + " \"length\": \"2 m\"}, {\"what\": \"dwelling driveway\", \"length\": \"3"
                    + " m\"}]");
    assertThat(job.line().trench().stretches())
        .extracting(each -> Math.rint(each.cover().millimetres()))
        .containsExactly(600.0, 800.0, 600.0, 800.0);
    assertThat(job.line().trench().stretches())
        .extracting(PowerLine.Stretch::label)
        .containsExactly("T1", "T2", "T3", "T4");
    assertThat(job.line().trench().stretches().get(2).under())
        .isEqualTo(Optional.of(pegbook.job.Power.Cover.EXTERIOR_SLAB));
  }

  /** An authority that says what the table says has decided; one that says less has not. */
  @Test
  void theAuthorityMayAgree() {
    String depth = "{\"cover\": \"%s in\", \"from\": \"office\"}";
    assertThat(rule(PowerJob.imperial())).isEqualTo(Rule.CODE);
    assertThat(rule(PowerJob.imperial().power("depth", depth.formatted("18"))))
        .isEqualTo(Rule.AUTHORITY);
    assertThat(rule(PowerJob.imperial().power("depth", depth.formatted("17"))))
        .isEqualTo(Rule.CODE);
  }

  private static Rule rule(PowerJob job) {
    return job.line().trench().main().rule();
  }

  /** NEC Table 300.5, slab outdoors: 6 in of cable, 4 in of pipe for lights at 30 V and less. */
  @Test
  void lightsAtLowVoltage() {
    PowerJob job =
        PowerJob.imperial()
            .power("circuit", "\"landscape lighting\"")
            .power("voltage", "\"30 V\"")
            .power("running", "\"1 A\"")
            .power("under", "[{\"what\": \"exterior slab\", \"length\": \"10 ft\"}]");
    assertThat(job.line().trench().stretches().get(1).cover().inches()).isCloseTo(4, within(1e-9));
    job.power("method", "\"direct burial\"");
    assertThat(job.line().trench().stretches().get(1).cover().inches()).isCloseTo(6, within(1e-9));
    job.power("voltage", "\"32 V\"");
    assertThat(job.line().trench().stretches().get(1).cover().inches()).isCloseTo(18, within(1e-9));
  }

  /** All of it under a driveway: no stretch of open ground is left over. */
  @Test
  void wholeUnderADriveway() {
    PowerJob job =
        PowerJob.imperial()
            .power("under", "[{\"what\": \"dwelling driveway\", \"length\": \"100 ft\"}]");
    assertThat(job.line().trench().stretches()).hasSize(1);
    assertThat(job.line().trench().main().label()).isEqualTo("T1");
    assertThat(job.line().trench().main().length().feet()).isCloseTo(100, within(1e-9));
  }

  /** Metric data pipe: 40 + 40 + 300 mm between and 50 mm to each wall (habit): 480 mm. */
  @Test
  void metricDataLiesApart() {
    PowerLine.Trench trench = PowerJob.metric().power("dataCable", "\"yes\"").line().trench();
    assertThat(trench.width().millimetres()).isGreaterThanOrEqualTo(480 - 1e-9).isLessThan(501);
    assertThat(trench.apart().millimetres()).isCloseTo(300, within(1e-9));
    assertThat(trench.data().orElseThrow().name()).isEqualTo("40\u00a0mm");
    // A tape 300 mm over the pipe, where 600 mm cover it.
    assertThat(trench.tapeDepth().millimetres()).isCloseTo(300, within(1e-9));
  }

  /** Loose earth by the job's own swell is nobody's table. */
  @Test
  void swellOfTheJobIsNotCitedFromATable() {
    PowerJob job = PowerJob.imperial();
    assertThat(loose(job)).isNotEqualTo(Citation.COMMON_PRACTICE);
    job.job("spoil", "{\"swell\": \"40 %\"}");
    assertThat(loose(job)).isEqualTo(Citation.COMMON_PRACTICE);
    assertThat(job.line().trench().loose().cubicFeet()).isCloseTo(175 * 1.4, within(1e-6));
  }

  private static Citation loose(PowerJob job) {
    return job.plan().workings().stream()
        .filter(each -> each.formula().id().equals("power-line.trench-loose"))
        .map(each -> each.formula().source())
        .findFirst()
        .orElseThrow();
  }
}
