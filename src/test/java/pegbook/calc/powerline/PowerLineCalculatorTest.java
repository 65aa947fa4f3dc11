package pegbook.calc.powerline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pegbook.calc.powerline.PowerLine.PipeRun;
import pegbook.calc.powerline.PowerLine.Rule;
import pegbook.calc.powerline.PowerLine.Stretch;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.testing.PowerJob;

/** Depth, trench, ground and what is bought; depths from NEC Table 300.5. */
class PowerLineCalculatorTest {
  private static PowerJob residential() {
    return PowerJob.imperial()
        .power("circuit", "\"residential branch\"")
        .power("groundFault", "\"yes\"");
  }

  private static double cover(PowerJob job) {
    return job.line().trench().main().cover().inches();
  }

  private static List<String> ids(PowerJob job, Finding.Kind kind) {
    return job.plan().findings().stream()
        .filter(finding -> finding.kind() == kind)
        .map(Finding::id)
        .toList();
  }

  @Test
  void coverByTheMethod() {
    assertThat(cover(PowerJob.imperial())).isCloseTo(18, within(1e-9));
    assertThat(cover(PowerJob.imperial().power("method", "\"metal conduit\"")))
        .isCloseTo(6, within(1e-9));
    assertThat(cover(PowerJob.imperial().power("method", "\"direct burial\"")))
        .isCloseTo(24, within(1e-9));
  }

  /** The 12 in column needs all four conditions: each missing one brings the method's back. */
  @Test
  void allFourConditions() {
    assertThat(cover(residential())).isCloseTo(12, within(1e-9));
    assertThat(cover(residential().power("method", "\"direct burial\"")))
        .isCloseTo(12, within(1e-9));
    assertThat(cover(residential().power("voltage", "\"240 V\""))).isCloseTo(18, within(1e-9));
    assertThat(cover(residential().power("groundFault", "\"no\""))).isCloseTo(18, within(1e-9));
    assertThat(cover(residential().power("breaker", "\"25 A\""))).isCloseTo(18, within(1e-9));
    assertThat(cover(residential().power("circuit", "\"other branch\"")))
        .isCloseTo(18, within(1e-9));
    // A method that may lie shallower keeps its own.
    assertThat(cover(residential().power("method", "\"metal conduit\"")))
        .isCloseTo(6, within(1e-9));
  }

  @Test
  void lowVoltageIsForLightingAndWatering() {
    PowerJob job = PowerJob.imperial().power("voltage", "\"24 V\"").power("running", "\"1 A\"");
    assertThat(cover(job)).isCloseTo(18, within(1e-9));
    assertThat(cover(job.power("circuit", "\"landscape lighting\""))).isCloseTo(6, within(1e-9));
    assertThat(cover(job.power("voltage", "\"48 V\""))).isCloseTo(18, within(1e-9));
  }

  @Test
  void whatLiesOverIt() {
    PowerJob job =
        residential()
            .power(
                "under",
                "[{\"what\": \"dwelling driveway\", \"length\": \"10 ft\"},"
                    + "{\"what\": \"street\", \"length\": \"20 ft\"},"
                    + "{\"what\": \"exterior slab\", \"length\": \"5 ft\"},"
                    + "{\"what\": \"concrete cap\", \"length\": \"5 ft\"}]");
    assertThat(job.line().trench().stretches().stream().map(each -> each.cover().inches()))
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-9 ? 0 : 1)
        .containsExactly(12.0, 12.0, 24.0, 4.0, 6.0);
    assertThat(job.line().trench().main().length().feet()).isCloseTo(60, within(1e-9));
    assertThat(job.line().trench().deepest().inches()).isCloseTo(27, within(1e-9));
  }

  /** The deeper of the table's and the authority's; a shallower word is asked about. */
  @Test
  void theAuthority() {
    PowerJob job = residential().power("depth", "{\"cover\": \"24 in\", \"from\": \"office\"}");
    assertThat(cover(job)).isCloseTo(24, within(1e-9));
    assertThat(job.line().trench().main().rule()).isEqualTo(Rule.AUTHORITY);
    job.power("depth", "{\"cover\": \"8 in\", \"from\": \"office\"}");
    assertThat(cover(job)).isCloseTo(12, within(1e-9));
    assertThat(ids(job, Finding.Kind.ASK)).contains("power-depth-shallow");
  }

  @Test
  void elsewhereByHabitUntilSomebodySays() {
    PowerJob job = PowerJob.metric();
    assertThat(job.line().trench().main().cover().millimetres()).isCloseTo(600, within(1e-9));
    assertThat(job.line().trench().main().rule()).isEqualTo(Rule.HABIT);
    assertThat(ids(job, Finding.Kind.ASK)).contains("power-depth-by-habit");
    job.power("depth", "{\"cover\": \"700 mm\", \"from\": \"office\"}");
    assertThat(ids(job, Finding.Kind.ASK)).doesNotContain("power-depth-by-habit");
  }

  /** 18 + 0.84 + 2 in, set up to an inch; 100 ft · 12 in · 21 in / 144 = 175 ft³. */
  @Test
  void trenchToTheTopOfThePipe() {
    PowerLine.Trench trench = PowerJob.imperial().line().trench();
    Stretch main = trench.main();
    assertThat(main.depth().inches()).isCloseTo(21, within(1e-9));
    assertThat(trench.bank().cubicFeet()).isCloseTo(175, within(1e-6));
    // Loam: 1.25 (FM 5-434, from memory).
    assertThat(trench.loose().cubicFeet()).isCloseTo(218.75, within(1e-6));
    double sand = 100 * (12 * 4.84 - Math.PI / 4 * 0.84 * 0.84) / 144;
    assertThat(trench.sand().cubicFeet()).isCloseTo(sand, within(1e-6));
    assertThat(trench.over().cubicFeet()).isCloseTo(100 * 12 * 4.84 / 144 * 1.25, within(1e-6));
    assertThat(trench.tapeDepth().inches()).isCloseTo(9, within(1e-9));
  }

  /** Power 0.84 in and data 1.315 in, 12 in apart, 2 in to each wall: 18.2, set up to 19 in. */
  @Test
  void dataLiesApart() {
    PowerJob job = PowerJob.imperial().power("dataCable", "\"yes\"");
    assertThat(job.line().trench().width().inches()).isCloseTo(19, within(1e-9));
    job.power("width", "\"24 in\"");
    assertThat(job.line().trench().width().inches()).isCloseTo(24, within(1e-9));
  }

  /**
   * 4.955 m³ at 0.66 m³ an hour in loose loam with ordinary digging: firm, 0.57: 8.69 h, and 2.5
   * times that; filling 1 h for each m³, and twice that; pipe 30.48 m / 15 + 1 h to / 5 + 1 h.
   */
  @Test
  void hours() {
    List<Task> tasks = PowerJob.imperial().plan().tasks();
    assertThat(tasks.stream().map(Task::kind))
        .containsExactly(Task.Kind.TRENCH, Task.Kind.LAY_PIPE, Task.Kind.BACKFILL);
    assertThat(tasks.stream().map(task -> task.least().hours())).containsExactly(8.5, 3.0, 4.5);
    assertThat(tasks.stream().map(task -> task.most().hours())).containsExactly(22.0, 7.5, 10.0);
    List<Task> machine = PowerJob.imperial().power("dug", "\"trencher\"").plan().tasks();
    assertThat(machine.get(0).least().hours()).isEqualTo(2.0);
    assertThat(machine.get(0).most().hours()).isEqualTo(4.5);
  }

  @Test
  void whatIsBought() {
    List<Need> needs = PowerJob.imperial().plan().needs();
    assertThat(needs.stream().map(Need::id))
        .containsExactly(
            "power-bends",
            "power-couplings",
            "power-wire",
            "power-earth-wire",
            "power-warning-tape",
            "power-sand");
    assertThat(needs.stream().map(Need::order))
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-6 ? 0 : 1)
        // 2 · 109 ft and 5 % is 228.9, 114.45; 39.9 ft³ of sand is 1.48 yd³.
        .containsExactly(2.0, 13.0, 230.0, 115.0, 105.0, 1.5);
  }

  /** Length in whole inches and count of each piece, longest first. */
  private static Map<Long, Integer> pieces(PowerLine line) {
    Map<Long, Integer> pieces = new LinkedHashMap<>();
    for (CutPiece piece : line.pieces()) {
      assertThat(piece.size()).isEqualTo("PVC 1/2 in");
      pieces.merge(Math.round(piece.length().inches()), piece.count(), Integer::sum);
    }
    return pieces;
  }

  /**
   * By hand: 100 ft in ten whole lengths of 10 ft, and 18 in of cover with 18 in over the ground at
   * both ends. From end to end: riser, bend, ten pieces, bend, riser: fourteen parts, thirteen
   * joints.
   */
  @Test
  void aStraightRunInWholeLengthsWithARiserAtEachEnd() {
    PowerLine line = PowerJob.imperial().plan();
    assertThat(pieces(line)).containsExactly(entry(120L, 10), entry(36L, 2));
    PipeRun run = line.line().orElseThrow().pipes().get(0);
    assertThat(run.bends()).isEqualTo(2);
    assertThat(run.couplings()).isEqualTo(13);
    assertThat(run.ends()).containsExactly("R1", "R2");
  }

  /**
   * By hand: legs of 30 ft and 25 ft 4 in from lengths of 20 ft: 20 and 10; 20 and 5 ft 4 in. One
   * corner, so three bends; four pieces, two risers: nine parts, eight joints.
   */
  @Test
  void aLegLongerThanEveryLengthIsJoinedAndTheRestIsCut() {
    PowerLine line =
        PowerJob.imperial()
            .route("0 ft, 40 ft", "0 ft, 10 ft", "25 ft 4 in, 10 ft")
            .job("stock", "{\"conduit\": [{\"size\": \"PVC 1/2 in\", \"length\": \"20 ft\"}]}")
            .plan();
    assertThat(pieces(line))
        .containsExactly(entry(240L, 2), entry(120L, 1), entry(64L, 1), entry(36L, 2));
    PipeRun run = line.line().orElseThrow().pipes().get(0);
    assertThat(run.bends()).isEqualTo(3);
    assertThat(run.couplings()).isEqualTo(8);
  }

  /** Of two lengths the one that costs less to the foot is laid: 5.00 for 10 ft, 11.00 for 20. */
  @Test
  void theCheaperLengthIsLaid() {
    String stock =
        """
        {"conduit": [{"size": "PVC 1/2 in", "length": "20 ft", "price": "11.00 USD"},
                     {"size": "PVC 1/2 in", "length": "10 ft", "price": "5.00 USD"}]}
        """;
    PowerLine line = PowerJob.imperial().job("stock", stock).plan();
    assertThat(pieces(line)).containsExactly(entry(120L, 10), entry(36L, 2));
  }

  @Test
  void aRouteThroughAHoleOrTheFloorStops() {
    assertThat(ids(PowerJob.imperial(), Finding.Kind.STOP)).isEmpty();
    PowerJob under = PowerJob.imperial().route("0 ft, 110 ft", "1 ft, 0 ft");
    assertThat(ids(under, Finding.Kind.STOP)).contains("power-route-under-floor");
    PowerJob across = PowerJob.imperial().route("-30 ft, 1 ft", "30 ft, 1 ft");
    assertThat(ids(across, Finding.Kind.STOP)).contains("power-route-under-floor");
    // S1 stands 6 ft less its inset north of the centre.
    PowerJob hole = PowerJob.imperial().route("0 ft, 110 ft", "0 ft, 5 ft");
    assertThat(ids(hole, Finding.Kind.STOP)).contains("power-route-through-hole");
  }

  /** Under the floor only the last leg may run, to the edge of its pier's hole. */
  @Test
  void onToAPier() {
    PowerJob job =
        PowerJob.imperial()
            .route("60 ft, 60 ft", "9 ft, 16 ft")
            .job("piers", "[{\"id\": \"P1\", \"at\": \"centre\", \"hole\": \"20 in\"}]")
            .power("pier", "\"P1\"");
    PowerLine.Leg last = job.line().route().legs().get(1);
    assertThat(last.toPier()).isTrue();
    assertThat(last.length().feet()).isCloseTo(StrictMath.hypot(9, 16) - 10 / 12.0, within(1e-9));
    assertThat(ids(job, Finding.Kind.STOP)).isEmpty();
    assertThat(ids(job, Finding.Kind.ASK)).contains("power-pier-without-sleeve");
  }

  @Test
  void keepClearOfLines() {
    PowerJob job =
        PowerJob.imperial()
            .job(
                "site",
                "{\"features\": [{\"name\": \"gas\", \"kind\": \"buried line\", \"from\": \"-9 ft,"
                    + " 60 ft\", \"to\": \"-2 ft, 60 ft\", \"keepClear\": \"2 ft\"},"
                    + "{\"name\": \"wire\", \"kind\": \"overhead wire\", \"from\": \"-9 ft, 40"
                    + " ft\", \"to\": \"9 ft, 40 ft\"},"
                    + "{\"name\": \"oak\", \"at\": \"3 ft, 30 ft\", \"keepClear\": \"4 ft\"},"
                    + "{\"name\": \"shed\", \"corners\": [\"1 ft, 70 ft\", \"9 ft, 70 ft\","
                    + " \"9 ft, 80 ft\", \"1 ft, 80 ft\"]}]}");
    assertThat(ids(job, Finding.Kind.STOP)).containsExactly("power-route-buried-line");
    assertThat(ids(job, Finding.Kind.ASK))
        .contains("power-route-under-wire", "power-route-object", "power-beside-building");
  }

  /** 36 in of frost, a trench of 27 in: nothing; of 51 in beside a footing: below its line. */
  @Test
  void belowAFootingsBearingLine() {
    PowerJob job = PowerJob.imperial().route("20 ft, 7 ft 4 in", "-20 ft, 7 ft 4 in");
    assertThat(ids(job, Finding.Kind.STOP)).isEmpty();
    job.power("depth", "{\"cover\": \"48 in\", \"from\": \"office\"}");
    assertThat(ids(job, Finding.Kind.STOP)).containsExactly("power-below-bearing-line");
    assertThat(ids(job, Finding.Kind.ASK)).contains("power-trench-ladder");
    job.power("depth", "{\"cover\": \"58 in\", \"from\": \"office\"}");
    assertThat(ids(job, Finding.Kind.STOP)).contains("power-trench-unshored");
  }

  /** A trench of 27 in ends at a pier of 40 in: above its underside; one of 51 in does not. */
  @Test
  void belowTheFootingOfItsOwnPier() {
    PowerJob job =
        PowerJob.imperial()
            .route("60 ft, 60 ft", "9 ft, 16 ft")
            .job(
                "piers",
                "[{\"id\": \"P1\", \"at\": \"centre\", \"hole\": \"20 in\", \"depth\": \"40 in\"}]")
            .power("pier", "\"P1\"");
    assertThat(ids(job, Finding.Kind.STOP)).isEmpty();
    job.power("depth", "{\"cover\": \"48 in\", \"from\": \"office\"}");
    assertThat(ids(job, Finding.Kind.STOP)).contains("power-below-bearing-line");
  }

  @Test
  void offTheLot() {
    PowerJob job =
        PowerJob.imperial()
            .job(
                "site",
                "{\"boundary\": [\"-50 ft, -50 ft\", \"50 ft, -50 ft\", \"50 ft, 90 ft\", \"-50"
                    + " ft, 90 ft\"]}");
    assertThat(ids(job, Finding.Kind.ASK)).contains("power-route-off-lot");
  }

  @Test
  void theElectricianIsAlwaysNamed() {
    assertThat(ids(PowerJob.imperial(), Finding.Kind.ASK)).containsExactly("power-licensed");
    assertThat(ids(PowerJob.imperial().power("running", "\"17 A\""), Finding.Kind.ASK))
        .contains("power-breaker-full");
  }
}
