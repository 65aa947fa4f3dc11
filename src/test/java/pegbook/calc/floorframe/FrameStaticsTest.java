package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.testing.FootingJob;

/**
 * A frame is in balance: along its joists every square foot of floor is carried by the lever, so
 * the posts' shares have the sum and the moment of the floor with its openings.
 */
class FrameStaticsTest {
  private static final double SPACING = 0.4064;
  private static final double PLY = 0.0381;

  private static FootingJob parts(String outline, String pier) {
    FootingJob parts = new FootingJob();
    parts.outline = outline;
    parts.inset = "8 in";
    if (pier != null) {
      parts.piers =
          """
          [{ "id": "P1", "at": "%s", "hole": "22 in", "depth": "58 in", "top": "36 in",
             "tube": { "inside": "16 in", "from": "ground" }, "gap": "1 in" }]
          """
              .formatted(pier);
    }
    return parts;
  }

  /** Sum of x · dA over a figure, in the axes of its corners. */
  private static double moment(Polygon figure) {
    double sum = 0;
    for (Segment side : figure.sides()) {
      double cross =
          side.from().east() * side.to().north() - side.to().east() * side.from().north();
      sum += cross * (side.from().east() + side.to().east()) / 6;
    }
    return sum;
  }

  private static double area(Polygon figure) {
    double sum = 0;
    for (Segment side : figure.sides()) {
      sum += side.from().east() * side.to().north() - side.to().east() * side.from().north();
    }
    return sum / 2;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"rectangle\": {\"length\": \"16 ft\", \"width\": \"12 ft\", \"columns\": 3, \"rows\": 3}} | ",
        "{\"rectangle\": {\"length\": \"16 ft\", \"width\": \"12 ft\", \"columns\": 3, \"rows\": 2}} | 1 ft, 0.7 ft",
        "{\"rectangle\": {\"length\": \"16 ft\", \"width\": \"12 ft\", \"columns\": 3, \"rows\": 2}} | -1.4 ft, -1 ft",
        "{\"regular\": {\"sides\": 6, \"acrossFlats\": \"12 ft\"}} | 1.5 ft, -1.3 ft",
        "{\"regular\": {\"sides\": 6, \"acrossFlats\": \"12 ft\"}} | -2 ft, 0.7 ft",
        "{\"regular\": {\"sides\": 5, \"acrossCorners\": \"14 ft\"}} | 0.6 ft, 0.4 ft",
        "{\"regular\": {\"sides\": 3, \"side\": \"12 ft\"}} | ",
        "{\"circle\": {\"diameter\": \"14 ft\", \"posts\": 7}} | ",
        "{\"chamferedRectangle\": {\"length\": \"18 ft\", \"width\": \"14 ft\", \"cut\": \"3 ft\"}} | 1 ft, 1 ft",
        "{\"points\": {\"corners\": [\"0 ft, 0 ft\", \"10 ft, 0 ft\", \"10 ft, 5 ft\", \"5 ft, 5 ft\", \"5 ft, 10 ft\", \"0 ft, 10 ft\"]}} | "
      })
  void postsBalanceTheFloorAlongTheJoists(String outline, String pier) {
    Job job = parts(outline, pier).job();
    FrameSite site = FrameSite.of(job, FootingJob.placement(job), FootingJob.holes(job));
    Axes axes = Axes.along(site.ring().get(0).at(), site.ring().get(1).at());
    JoistLayout layout = JoistLayout.of(site, axes, SPACING, PLY);
    LoadPath path = LoadPath.of(site, layout);
    assertThat(path.faults()).isEmpty();
    Polygon local = site.outline().map(axes::local);
    double sign = Math.signum(area(local));
    double whole = sign * area(local);
    double moment = sign * moment(local);
    for (FrameSite.PierGap gap : site.gaps()) {
      double radius = gap.opening().radius().metres();
      assertThat(radius / 0.0254).isCloseTo(9, within(1e-9));
      whole -= Math.PI * radius * radius;
      moment -= Math.PI * radius * radius * axes.local(gap.opening().centre()).east();
    }
    double carried = 0;
    double turned = 0;
    for (Post post : layout.posts()) {
      double share = path.carried().getOrDefault(post.id(), 0.0);
      carried += share;
      turned += share * post.at().east();
    }
    assertThat(carried).isCloseTo(whole, within(1e-6 * whole));
    assertThat(turned).isCloseTo(moment, within(1e-6 * whole));
    assertThat(path.trimmers()).hasSize(pier == null ? 0 : 2);
    assertThat(path.headers()).hasSize(pier == null ? 0 : 2);
    for (LoadPath.Header header : path.headers()) {
      assertThat(header.low()).isLessThan(header.high());
      assertThat(header.area()).isPositive();
    }
  }

  private static FloorFrame frame(FootingJob parts, String more) {
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"frame\": { \"species\": \"southern pine\""
            + more
            + " } }";
    Job job = parts.job();
    return FloorFrameCalculator.calculate(job, FootingJob.placement(job), FootingJob.holes(job));
  }

  private static String square() {
    return FootingJob.rectangle("12 ft", "12 ft", 3, 2);
  }

  /**
   * Joists of 12 ft square on three by two posts. Along S1–S6, over beams with a post in the
   * middle: nine joists of 8 ft² a side; 8 · (1 + 2 · (16 + 32 + 48) / 64) is 32 on S2, 20 on S1.
   * Along S1–S2 the middle posts bear their own joist alone.
   */
  @Test
  void theJobMaySayAlongWhatJoistsLie() {
    FloorFrame.Built built =
        frame(parts(square(), null), ", \"joistsAlong\": [\"S1\", \"S6\"]").built().orElseThrow();
    assertThat(built.carried().get("S2").squareFeet()).isCloseTo(32, within(1e-6));
    assertThat(built.carried().get("S1").squareFeet()).isCloseTo(20, within(1e-6));
    assertThat(built.carried().get("S5").squareFeet()).isCloseTo(32, within(1e-6));
    FloorFrame.Built other =
        frame(parts(square(), null), ", \"joistsAlong\": [\"S1\", \"S2\"]").built().orElseThrow();
    assertThat(other.carried().get("S2").squareFeet()).isLessThan(10);
    double all = other.carried().values().stream().mapToDouble(each -> each.squareFeet()).sum();
    assertThat(all).isCloseTo(144, within(1e-6));
  }

  /** Three by three: the middle post stands in a row that ends over the ring. */
  @Test
  void aRowAcrossIsABeamOfItsOwn() {
    Job job = parts(FootingJob.rectangle("16 ft", "12 ft", 3, 3), null).job();
    FrameSite site = FrameSite.of(job, FootingJob.placement(job), FootingJob.holes(job));
    assertThat(site.ring())
        .extracting(Post::id)
        .containsExactly("S1", "S2", "S3", "S4", "S5", "S6", "S7", "S8");
    assertThat(site.inner()).extracting(Post::id).containsExactly("S9");
    Axes axes = Axes.along(site.ring().get(0).at(), site.ring().get(1).at());
    JoistLayout layout = JoistLayout.of(site, axes, SPACING, PLY);
    assertThat(layout.idle()).isEmpty();
    assertThat(layout.posts()).hasSize(9);
    // Eight bays round by the ring, two across from S2 over S9 to S6.
    assertThat(layout.bays()).hasSize(10);
    assertThat(layout.bays().stream().filter(Bay::isInner).count()).isEqualTo(2);
    assertThat(site.post("S1").orElseThrow().id()).isEqualTo("S1");
    assertThat(site.post("S9").orElseThrow().id()).isEqualTo("S9");
    assertThat(site.post("S10")).isEmpty();
  }

  private static FootingJob levels(String levels, String pier) {
    FootingJob parts = parts(FootingJob.rectangle("24 ft", "12 ft", 5, 2), pier);
    // About east and west, as the corner lies 12 ft and 6 ft from the middle.
    parts.azimuth = "295.2 deg";
    parts.ground = "\"soil\": \"clay\", \"levels\": { " + levels + " }";
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"top\": \"40 in\","
            + " \"frame\": { \"species\": \"southern pine\" } }";
    return parts;
  }

  private static double fall(FootingJob parts) {
    Job job = parts.job();
    Optional<EdgeFall> fall = EdgeFall.of(job, FootingJob.placement(job));
    return fall.orElseThrow().height().inches();
  }

  /**
   * The floor lies 40 in over the highest support. A pier 2 ft outside the edge is no support of
   * it, but ground beside it; one 4 ft outside is too far off.
   */
  @Test
  void groundBesideTheEdgeCounts() {
    assertThat(fall(levels("\"S1\": \"0 in\", \"P1\": \"10 in\"", "3 ft, 8 ft")))
        .isCloseTo(40, within(1e-6));
    assertThat(fall(levels("\"S1\": \"0 in\", \"P1\": \"-10 in\"", "3 ft, 8 ft")))
        .isCloseTo(50, within(1e-6));
    assertThat(fall(levels("\"S1\": \"0 in\", \"P1\": \"-10 in\"", "3 ft, 10 ft")))
        .isCloseTo(40, within(1e-6));
    // A pier under the floor is ground under it.
    assertThat(fall(levels("\"S1\": \"0 in\", \"P1\": \"10 in\"", "0 ft, 0 ft")))
        .isCloseTo(50, within(1e-6));
  }

  /** Ground over the datum counts as well: 40 in over the highest, 5 in more to the lower mark. */
  @Test
  void groundOverTheDatum() {
    assertThat(fall(levels("\"S1\": \"10 in\", \"S2\": \"5 in\"", null)))
        .isCloseTo(45, within(1e-6));
    assertThat(fall(levels("\"S1\": \"10 in\", \"S2\": \"8 in\", \"S3\": \"6 in\"", null)))
        .isCloseTo(44, within(1e-6));
    // Three marks of one height make a level plane.
    assertThat(fall(levels("\"S1\": \"10 in\", \"S2\": \"10 in\", \"S7\": \"10 in\"", null)))
        .isCloseTo(40, within(1e-6));
  }

  /** Three marks in one row make no plane: their lowest counts. */
  @Test
  void aRowOfLevelsMakesNoPlane() {
    assertThat(fall(levels("\"S1\": \"0 in\", \"S2\": \"-2 in\", \"S3\": \"-4 in\"", null)))
        .isCloseTo(44, within(1e-6));
  }

  /**
   * 12 ft square with boards across its corners: 203.65 in of 5 5/8 in, 37 rows, joined where a row
   * is longer than 16 ft.
   */
  @Test
  void boardsAcrossTheCorners() {
    FloorFrame.BoardPlan boards =
        frame(
                parts(square(), null),
                ", \"joistSpacing\": \"12 in\", \"boards\": { \"laid\": \"diagonal\" }")
            .built()
            .orElseThrow()
            .boards();
    assertThat(boards.rows()).isEqualTo(37);
    double laid =
        boards.pieces().stream().mapToDouble(each -> each.count() * each.length().inches()).sum();
    // The floor and triangles at the ends of the rows: half a board's width each, both ends.
    assertThat(boards.covered().squareFeet()).isBetween(144.0, 144 + 37 * 5.625 * 5.625 / 144);
    assertThat(laid).isBetween(144 * 144 / 5.625, (144 * 144 / 5.625 + 37 * 5.625) + 45);
    assertThat(boards.pieces())
        .extracting(each -> each.length().inches())
        .allMatch(length -> length <= 192 + 1e-6);
    // Longest edges 0, 0.6 and 5.1 in beside the diagonal: 203.6, 202.5, 193.5; then 191.2 in.
    assertThat(boards.joints()).isEqualTo(3);
  }

  /**
   * Twelve feet square take 26 boards of 16 ft laid square, one a row. Laid across the corners they
   * take so many more that whole boards come out, and no fewer than their length; seen from there,
   * as much less.
   */
  @Test
  void whatTheOtherWayOfLayingTakes() {
    FloorFrame.BoardPlan square =
        frame(parts(square(), null), ", \"joistSpacing\": \"12 in\"")
            .built()
            .orElseThrow()
            .boards();
    FloorFrame.BoardPlan across =
        frame(
                parts(square(), null),
                ", \"joistSpacing\": \"12 in\", \"boards\": { \"laid\": \"diagonal\" }")
            .built()
            .orElseThrow()
            .boards();
    double boards = 26 * (1 + square.other().fraction());
    double length =
        across.pieces().stream().mapToDouble(each -> each.count() * each.length().inches()).sum();
    assertThat(boards).isCloseTo(Math.rint(boards), within(1e-9));
    assertThat(boards).isBetween(Math.ceil(length / 192), Math.ceil(length / 192) + 3);
    assertThat((1 + square.other().fraction()) * (1 + across.other().fraction()))
        .isCloseTo(1, within(1e-9));
  }
}
