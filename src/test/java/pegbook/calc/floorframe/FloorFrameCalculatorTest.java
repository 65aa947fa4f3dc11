package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.calc.floorframe.FloorFrame.Built;
import pegbook.figures.Finding;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Area;
import pegbook.measure.UnitSystem;
import pegbook.testing.Chance;
import pegbook.testing.FootingJob;

class FloorFrameCalculatorTest {
  private static final String HEXAGON =
      "{ \"regular\": { \"sides\": 6, \"acrossFlats\": \"12 ft\" } }";
  private static final String PINE = "\"species\": \"southern pine\"";

  private static String pier(String at) {
    return """
    [{ "id": "P1", "at": "AT", "hole": "22 in", "depth": "58 in", "top": "36 in",
       "tube": { "inside": "16 in", "from": "ground" }, "gap": "1 in" }]
    """
        .replace("AT", at);
  }

  private static FootingJob parts(String outline, String frame) {
    FootingJob parts = new FootingJob();
    parts.outline = outline;
    parts.inset = "8 in";
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"frame\": { %s } }".replace("%s", frame);
    return parts;
  }

  private static FloorFrame frame(FootingJob parts) {
    Job job = parts.job();
    return FloorFrameCalculator.calculate(job, FootingJob.placement(job), FootingJob.holes(job));
  }

  private static Built built(FootingJob parts) {
    FloorFrame frame = frame(parts);
    assertThat(frame.built()).as(found(frame).toString()).isPresent();
    return frame.built().orElseThrow();
  }

  private static List<String> found(FloorFrame frame) {
    return frame.findings().stream().map(Finding::id).toList();
  }

  @Test
  void aHexagonWithAPierIsFramed() {
    FootingJob parts = parts(HEXAGON, PINE);
    parts.piers = pier("centre");
    Built built = built(parts);
    assertThat(built.joist().size())
        .as("the joist in the middle is cut; DCA 6 gives 11-10 for 2x8 at 16 in")
        .isEqualTo("2x8");
    assertThat(built.longestSpan().inches())
        .as("147.8 in from tip to tip, less the slope of both ends over 16 in")
        .isEqualTo(128 * 2 / Math.sqrt(3) - 2 * 16 / Math.sqrt(3), offset(0.01));
    assertThat(built.gaps()).hasSize(1);
    double carried = built.carried().values().stream().mapToDouble(Area::squareMetres).sum();
    assertThat(carried).isEqualTo(built.floor().squareMetres(), offset(1e-6));
  }

  /** Every block is in a strip that is no longer than 8 ft, with room for the cuts. */
  @Test
  void blocksComeInStrips() {
    FloorFrame frame = frame(parts(FootingJob.rectangle("24 ft", "12 ft", 5, 2), PINE));
    Built built = frame.built().orElseThrow();
    double blocks = length(built.pieces());
    assertThat(blocks).isPositive();
    assertThat(length(frame.pieces())).isBetween(blocks, blocks * 1.05);
    assertThat(frame.pieces())
        .filteredOn(piece -> piece.name().startsWith("N"))
        .allMatch(piece -> piece.length().inches() <= 96 + 1e-6);
  }

  private static double length(List<pegbook.figures.CutPiece> pieces) {
    return pieces.stream()
        .filter(piece -> piece.name().startsWith("N"))
        .mapToDouble(piece -> piece.count() * piece.length().metres())
        .sum();
  }

  @Test
  void noFrameIsSaidOnlyOfAFloor() {
    FootingJob parts = new FootingJob();
    assertThat(found(frame(parts))).containsExactly("frame-not-worked");
  }

  @Test
  void aBeamWithoutAPostBetweenIsStopped() {
    FootingJob parts = parts(FootingJob.rectangle("36 ft", "12 ft", 2, 2), PINE);
    FloorFrame frame = frame(parts);
    assertThat(frame.built()).isEmpty();
    assertThat(found(frame)).contains("frame-beam-too-long");
  }

  @Test
  void aJoistLongerThanAnySizeReachesIsStopped() {
    FootingJob parts = parts(FootingJob.rectangle("40 ft", "40 ft", 7, 2), PINE);
    assertThat(found(frame(parts))).contains("frame-joist-too-long");
  }

  @Test
  void aPierThatCutsTheJoistsAtTheEdgeIsStopped() {
    FootingJob parts = parts(FootingJob.rectangle("16 ft", "12 ft", 3, 2), PINE);
    parts.azimuth = "0 deg";
    parts.inset = "24 in";
    parts.piers = pier("5 ft, 3.2 ft");
    FloorFrame frame = frame(parts);
    assertThat(frame.built()).isEmpty();
    assertThat(found(frame)).containsAnyOf("frame-pier-cuts-joists", "frame-pier-on-beam");
  }

  /**
   * Ground 20 ft down leaves a post of 21 ft, 30 ft one of 31 ft; 50 of its sides are 22 ft 11 in.
   */
  @Test
  void aPostTallerThanItMayStandAsks() {
    FootingJob parts = parts(FootingJob.rectangle("16 ft", "12 ft", 3, 2), PINE);
    parts.floor = parts.floor.replace("\"live\"", "\"top\": \"3 ft\", \"live\"");
    parts.ground = "\"soil\": \"clay\", \"levels\": { \"S1\": \"0 ft\", \"S2\": \"0 ft\"%s }";
    String steep = parts.ground;
    parts.ground = steep.replace("%s", ", \"S3\": \"-20 ft\"");
    assertThat(found(frame(parts))).doesNotContain("frame-post-too-tall");
    parts.ground = steep.replace("%s", ", \"S3\": \"-30 ft\"");
    Finding tall =
        frame(parts).findings().stream()
            .filter(finding -> finding.id().equals("frame-post-too-tall"))
            .findFirst()
            .orElseThrow();
    assertThat(tall.subjects()).containsExactly("S3");
  }

  @Test
  void givenValuesAskWhoseCodeDecides() {
    FootingJob parts =
        parts(
            FootingJob.rectangle("4.8 m", "3.6 m", 3, 3),
            """
            "values": { "class": "C24", "from": "designer", "bending": "7.5 MPa",
              "shear": "0.71 MPa", "bearing": "1.9 MPa", "compression": "7.9 MPa",
              "stiffness": "10800 MPa" }
            """);
    parts.units = "metric";
    parts.floor = parts.floor.replace("40 psf", "2 kPa").replace("10 psf", "0.5 kPa");
    FloorFrame frame = frame(parts);
    assertThat(found(frame)).contains("frame-timber-code");
    assertThat(frame.built().orElseThrow().joist().size()).startsWith("48x");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{ \"regular\": { \"sides\": 3, \"side\": \"12 ft\" } }",
        "{ \"regular\": { \"sides\": 5, \"acrossCorners\": \"14 ft\" } }",
        "{ \"regular\": { \"sides\": 12, \"acrossFlats\": \"14 ft\" } }",
        "{ \"chamferedRectangle\": { \"length\": \"18 ft\", \"width\": \"14 ft\", \"cut\": \"3 ft\" } }",
        "{ \"circle\": { \"diameter\": \"14 ft\", \"posts\": 7 } }",
        "{ \"points\": { \"corners\": [\"0 ft, 0 ft\", \"10 ft, 0 ft\", \"10 ft, 5 ft\", \"5 ft, 5 ft\", \"5 ft, 10 ft\", \"0 ft, 10 ft\"] } }"
      })
  void everyOutlineIsFramed(String outline) {
    Built built = built(parts(outline, PINE));
    assertThat(built.pieces()).isNotEmpty();
    assertThat(built.boards().covered().squareMetres())
        .isGreaterThanOrEqualTo(built.floor().squareMetres());
    assertThat(built.members()).hasSizeGreaterThan(10);
  }

  /** By hand: supports 8 in inside both sides of a square corner; at the inner corner no tail. */
  @Test
  void beamsRunOnToTheRimOnlyWhereItPointsOutwards() {
    Built built =
        built(
            parts(
                "{ \"points\": { \"corners\": [\"0 ft, 0 ft\", \"10 ft, 0 ft\", \"10 ft, 5 ft\","
                    + " \"5 ft, 5 ft\", \"5 ft, 10 ft\", \"0 ft, 10 ft\"] } }",
                PINE));
    List<Double> tails = built.bays().stream().map(bay -> bay.tail().inches()).toList();
    assertThat(tails).filteredOn(tail -> tail > 1e-6).hasSize(5);
    assertThat(tails)
        .allMatch(tail -> Math.abs(tail) < 1e-6 || Math.abs(tail - 8) < 1e-6, tails.toString());
  }

  /** Nothing of the frame comes nearer to a pier than its gap: 9 in from the middle here. */
  @ParameterizedTest
  @ValueSource(strings = {"centre", "0 ft, 2.2 ft", "1.5 ft, -1.3 ft", "-2 ft, 0.7 ft"})
  void nothingTouchesThePier(String at) {
    FootingJob parts = parts(HEXAGON, PINE);
    parts.piers = pier(at);
    Built built = built(parts);
    FloorFrame.Gap gap = built.gaps().get(0);
    for (FloorFrame.Member member : built.members()) {
      double half = half(member.kind(), built.beam().plies());
      assertThat(member.at().distanceTo(gap.centre()).inches() - half)
          .as(member.toString())
          .isGreaterThanOrEqualTo(gap.radius().inches() - 1e-6);
    }
    assertThat(gap.radius().inches()).isEqualTo(9, offset(1e-9));
  }

  /** Half of a member's width, inches; the second joist of a pair lies away from the pier. */
  private static double half(FloorFrame.MemberKind kind, int plies) {
    return switch (kind) {
      case BEAM -> plies * 0.75;
      case HEADER -> 1.5;
      default -> 0.75;
    };
  }

  @Property(tries = 40, seed = Chance.SEED)
  void turningChangesNoLengthAndNoSize(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @DoubleRange(min = -180, max = 180) double azimuth) {
    String outline =
        String.format(
            Locale.ROOT, "{ \"regular\": { \"sides\": %d, \"acrossCorners\": \"14 ft\" } }", sides);
    FootingJob still = parts(outline, PINE);
    still.azimuth = "0 deg";
    FootingJob turned = parts(outline, PINE);
    turned.azimuth = String.format(Locale.ROOT, "%.3f deg", azimuth);
    Built one = built(still);
    Built other = built(turned);
    assertThat(other.pieces()).isEqualTo(one.pieces());
    assertThat(other.beam().name()).isEqualTo(one.beam().name());
    assertThat(other.boards().pieces()).isEqualTo(one.boards().pieces());
  }

  @Property(tries = 100, seed = Chance.SEED)
  void spansFallWithLoadAndSpacingAndRiseWithDepth(
      @ForAll @DoubleRange(min = 20, max = 150) double load,
      @ForAll @DoubleRange(min = 8, max = 24) double spacing,
      @ForAll @DoubleRange(min = 5, max = 12) double depth) {
    double span = bendingSpan(load, spacing, depth);
    assertThat(bendingSpan(load * 1.1, spacing, depth)).isLessThan(span);
    assertThat(bendingSpan(load, spacing * 1.1, depth)).isLessThan(span);
    assertThat(bendingSpan(load, spacing, depth * 1.1)).isGreaterThan(span);
  }

  private static double bendingSpan(double load, double spacing, double depth) {
    FloorFrameFormulas formulas = new FloorFrameFormulas(UnitSystem.IMPERIAL);
    return new Working(formulas.bendingSpan(), "", List.of(1000.0, 1.0, 1.5, depth, load, spacing))
        .result();
  }

  /** By hand: 3.5 ft of beam under 400 lb in its middle, and the worst of two loads. */
  @Test
  void bendingIsWorstUnderALoad() {
    BeamSizes.Worst middle =
        BeamSizes.Worst.of(new LoadPath.BayLoad(0, 2, List.of(new LoadPath.At(1, 4)), 0));
    assertThat(middle.moment()).isEqualTo(2, offset(1e-12));
    BeamSizes.Worst third =
        BeamSizes.Worst.of(
            new LoadPath.BayLoad(0, 3, List.of(new LoadPath.At(1, 3), new LoadPath.At(2, 3)), 0));
    assertThat(third.moment()).isEqualTo(3, offset(1e-12));
  }
}
