package pegbook.calc.depthtargets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.testing.FootingJob;

class WideningFindingsTest {
  private static DepthTargets targets(FootingJob of) {
    Job job = of.job();
    return DepthTargetsCalculator.calculate(job, FootingJob.placement(job));
  }

  private static FootingJob with(String more) {
    FootingJob of = new FootingJob();
    of.supports = "{ \"hole\": \"14 in\", \"depth\": \"48 in\", \"top\": \"18 in\", " + more + " }";
    return of;
  }

  private static FootingJob bell(String diameter, String height) {
    return with(
        "\"bell\": { \"diameter\": \"%s\", \"height\": \"%s\" }".formatted(diameter, height));
  }

  private static List<String> ids(FootingJob of) {
    return targets(of).findings().stream().map(Finding::id).toList();
  }

  private static Finding finding(FootingJob of, String id) {
    return targets(of).findings().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** By hand: 5 in out over 9 in up stands at arctan 1.8 = 60.945°; over 8 in at 57.995°. */
  @Test
  void aBellStandsAtSixtyDegreesOrSteeper() {
    assertThat(ids(bell("24 in", "9 in"))).contains("bell-undercut").doesNotContain("bell-flat");
    Working slope =
        targets(bell("24 in", "9 in")).workings().stream()
            .filter(one -> one.formula().id().equals("depth-targets.bell-slope"))
            .findFirst()
            .orElseThrow();
    assertThat(slope.result()).isEqualTo(60.945, offset(5e-4));
    Finding flat = finding(bell("24 in", "8 in"), "bell-flat");
    assertThat(flat.kind()).isEqualTo(Kind.ASK);
    assertThat(flat.place()).isEqualTo("supports.bell.height");
    assertThat(flat.arguments().get("least")).isEqualTo(Argument.of(Length.ofInches(9)));
  }

  @ParameterizedTest
  @CsvSource({
    "sand, STOP", "gravel, STOP", "fill, STOP", "peat, STOP", "silty sand, STOP",
    "clayey sand, ASK", "loam, ASK", "silt, ASK", "clay, ''", "sandy clay, ''"
  })
  void soilThatCavesHoldsTheBell(String soil, String kind) {
    FootingJob of = bell("24 in", "9 in");
    of.ground = "\"soil\": \"" + soil + "\"";
    List<String> kinds =
        targets(of).findings().stream()
            .filter(one -> List.of("bell-caves", "bell-may-cave").contains(one.id()))
            .map(one -> one.kind().name())
            .toList();
    assertThat(kinds).isEqualTo(kind.isEmpty() ? List.of() : List.of(kind));
  }

  @Test
  void aBellBelowTheWaterStops() {
    FootingJob of = bell("24 in", "9 in");
    of.ground = "\"soil\": \"clay\", \"water\": \"50 in\"";
    assertThat(finding(of, "bell-in-water").kind()).isEqualTo(Kind.STOP);
    of.ground = "\"soil\": \"clay\", \"water\": \"60 in\"";
    assertThat(ids(of)).doesNotContain("bell-in-water");
  }

  /** The pad of a 24 in hole under a 12 in tube stands out 6 in: R403.1.1 wants as much. */
  @ParameterizedTest
  @CsvSource({"20, 12, 6, false", "24, 12, 5, true", "24, 12, 6, false", "30, 12, 8, true"})
  void aPadIsAsThickAsItStandsOut(double hole, double tube, double thick, boolean thin) {
    FootingJob of = new FootingJob();
    of.supports =
        ("{ \"hole\": \"%s in\", \"depth\": \"48 in\", \"tube\": { \"inside\": \"%s in\", \"from\":"
                + " \"bottom\" }, \"pad\": { \"thickness\": \"%s in\" } }")
            .formatted(hole, tube, thick);
    assertThat(ids(of).contains("pad-thin")).isEqualTo(thin);
  }

  @Test
  void aCapHangsClearOfTheGroundAndIsThickEnough() {
    assertThat(ids(with("\"cap\": { \"side\": \"24 in\", \"thickness\": \"8 in\" }")))
        .doesNotContain("cap-near-ground", "cap-thin");
    FootingJob low = with("\"cap\": { \"side\": \"30 in\", \"thickness\": \"13 in\" }");
    assertThat(finding(low, "cap-near-ground").arguments().get("clear"))
        .isEqualTo(Argument.of(Length.ofInches(18).minus(Length.ofInches(13))));
    assertThat(ids(with("\"cap\": { \"side\": \"30 in\", \"thickness\": \"6 in\" }")))
        .contains("cap-thin");
  }

  @Test
  void frostThatReachesTheBellIsTold() {
    FootingJob of = bell("24 in", "9 in");
    of.ground = "\"soil\": \"clay\", \"frost\": { \"depth\": \"35 in\", \"from\": \"x\" }";
    assertThat(ids(of)).doesNotContain("wide-bottom-freezes");
    of.ground = "\"soil\": \"clay\", \"frost\": { \"depth\": \"36 in\", \"from\": \"x\" }";
    assertThat(ids(of)).contains("wide-bottom-freezes");
  }

  /** Supports 24 in apart: bells of 24 in touch, of 25 in overlap by 1 in. */
  @Test
  void bellsMeetUnderTheGround() {
    FootingJob of = bell("24 in", "9 in");
    of.outline = FootingJob.rectangle("8 ft", "4 ft", 4, 2);
    assertThat(ids(of)).doesNotContain("bells-meet");
    FootingJob wider = bell("25 in", "10 in");
    wider.outline = of.outline;
    Finding meet = finding(wider, "bells-meet");
    assertThat(meet.kind()).isEqualTo(Kind.STOP);
    assertThat(meet.arguments().get("overlap").toString()).contains("0.0254");
  }

  /** A pier beside the supports, far deeper: its bell lies below all that they dig. */
  @Test
  void aBellFarBelowItsNeighbourDoesNotMeetIt() {
    FootingJob of = new FootingJob();
    of.supports = "{ \"hole\": \"14 in\", \"depth\": \"24 in\" }";
    of.outline = FootingJob.rectangle("8 ft", "6 ft", 2, 2);
    of.piers =
        "[{ \"id\": \"P1\", \"at\": \"36 in, 9 in\", \"hole\": \"14 in\", \"depth\": \"72 in\","
            + " \"bell\": { \"diameter\": \"34 in\", \"height\": \"18 in\" } }]";
    assertThat(ids(of)).doesNotContain("bells-meet");
    of.supports = "{ \"hole\": \"14 in\", \"depth\": \"60 in\" }";
    assertThat(ids(of)).contains("bells-meet");
  }

  @Test
  void capsThatMeetAreAskedAbout() {
    FootingJob of = with("\"cap\": { \"diameter\": \"26 in\", \"thickness\": \"8 in\" }");
    of.outline = FootingJob.rectangle("8 ft", "4 ft", 4, 2);
    assertThat(finding(of, "caps-meet").kind()).isEqualTo(Kind.ASK);
  }
}
