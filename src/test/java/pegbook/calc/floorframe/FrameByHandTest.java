package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.floorframe.FloorFrame.Built;
import pegbook.figures.CutPiece;
import pegbook.figures.Need;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Task;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Job;
import pegbook.testing.FootingJob;

/** Boards, counts, hours and the fall from the edge, worked by hand. */
class FrameByHandTest {
  private static final double FOOT = 0.3048;

  private static Polygon figure(double... places) {
    List<Point> corners = new java.util.ArrayList<>();
    for (int i = 0; i < places.length; i += 2) {
      corners.add(new Point(places[i], places[i + 1]));
    }
    return new Polygon(corners);
  }

  /** 2 m wide, 5 m long: 14 rows of 145 mm. */
  @Test
  void rowsCoverTheWidth() {
    List<BoardRows.Row> rows = BoardRows.over(figure(0, 0, 2, 0, 2, 5, 0, 5), 0.145, 0.005);
    assertThat(rows).hasSize(14);
    assertThat(laid(rows)).isEqualTo(14 * 5.0, offset(1e-9));
  }

  /** Rows of a right triangle of 1.45 m by 2.9 m: 0.29 m less with every row of ten. */
  @Test
  void rowsAreAsLongAsTheFloorUnderThem() {
    List<BoardRows.Row> rows = BoardRows.over(figure(0, 0, 1.45, 0, 0, 2.9), 0.145, 0.005);
    assertThat(rows).hasSize(10);
    double sum = 0;
    for (int i = 0; i < 10; i++) {
      sum += 2.9 - 0.29 * i;
    }
    assertThat(laid(rows)).isEqualTo(sum, offset(1e-9));
  }

  private static double laid(List<BoardRows.Row> rows) {
    return rows.stream().mapToDouble(BoardRows.Row::length).sum();
  }

  @ParameterizedTest
  @CsvSource({
    "1, 0, 1, 0, true",
    "1, 0, -1, 0, true",
    "1, 0, 0, 1, false",
    "0.6, 0.8, 0.6, -0.8, false",
    "0.6, 0.8, -0.6, -0.8, true"
  })
  void joistsLieAlikeWhicheverEndComesFirst(
      double east, double north, double otherEast, double otherNorth, boolean like) {
    assertThat(new Axes(east, north).isLike(new Axes(otherEast, otherNorth))).isEqualTo(like);
  }

  @Test
  void axesTurnThereAndBack() {
    Axes axes = Axes.along(new Point(1, 1), new Point(4, 5));
    assertThat(axes.east()).isEqualTo(0.6, offset(1e-12));
    assertThat(axes.north()).isEqualTo(0.8, offset(1e-12));
    Point local = axes.local(new Point(3, 4));
    assertThat(local.east()).isEqualTo(5, offset(1e-12));
    assertThat(local.north()).isEqualTo(0, offset(1e-12));
    Point back = axes.ground(local);
    assertThat(back.east()).isEqualTo(3, offset(1e-12));
    assertThat(back.north()).isEqualTo(4, offset(1e-12));
    assertThat(axes.square().local(new Point(-0.8, 0.6)).east()).isEqualTo(1, offset(1e-12));
  }

  @Test
  void aBeamIsNamedByItsPostsAndLiesAlongOrAcross() {
    Post one = new Post("S1", new Point(0, 0));
    Bay along = new Bay(one, new Post("S2", new Point(3, 0)), false);
    Bay across = new Bay(one, new Post("S3", new Point(0, 3)), false);
    Bay low = new Bay(new Post("S4", new Point(0, -3)), new Post("S5", new Point(3, 3)), false);
    assertThat(along.name()).isEqualTo("S1–S2");
    assertThat(along.isAlong()).isTrue();
    assertThat(across.isAlong()).isFalse();
    assertThat(low.isAlong()).isFalse();
    assertThat(along.length()).isEqualTo(3, offset(1e-12));
  }

  private static FootingJob deck(String ground) {
    FootingJob parts = new FootingJob();
    parts.outline = FootingJob.rectangle("24 ft", "12 ft", 5, 2);
    parts.inset = "8 in";
    parts.ground = "\"soil\": \"clay\"" + ground;
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"top\": \"40 in\","
            + " \"frame\": { \"species\": \"southern pine\" } }";
    return parts;
  }

  private static FloorFrame frame(Job job) {
    return FloorFrameCalculator.calculate(job, FootingJob.placement(job), FootingJob.holes(job));
  }

  private static double order(FloorFrame frame, String id) {
    return frame.needs().stream()
        .filter(need -> need.id().equals(id))
        .mapToDouble(Need::order)
        .sum();
  }

  private static Task task(FloorFrame frame, Task.Kind kind) {
    return frame.tasks().stream().filter(task -> task.kind() == kind).findFirst().orElseThrow();
  }

  /**
   * A base and a cap for each of ten posts. Of n pieces and ten posts 0.12 n + 3 h at least and 0.3
   * n + 8 h at most; boards take a quarter to 0.6 of an hour for each square metre.
   */
  @Test
  void postsAndHours() {
    FloorFrame frame = frame(deck("").job());
    Built built = frame.built().orElseThrow();
    assertThat(built.posts()).hasSize(10);
    assertThat(order(frame, "post-bases")).isEqualTo(10);
    assertThat(order(frame, "post-caps")).isEqualTo(10);
    assertThat(order(frame, "joist-hangers")).isZero();
    int pieces = built.pieces().stream().mapToInt(CutPiece::count).sum();
    Task framing = task(frame, Task.Kind.FRAME);
    double counted = (framing.least().hours() - 3) / 0.12;
    assertThat(counted).isEqualTo(Math.rint(counted), offset(1e-9)).isBetween(1.0, pieces + 0.5);
    assertThat(framing.most().hours()).isEqualTo(0.3 * counted + 8, offset(1e-9));
    double square = built.boards().covered().squareMetres();
    assertThat(square).isEqualTo(24 * 12 * FOOT * FOOT, offset(0.03 * square));
    assertThat(task(frame, Task.Kind.BOARDS).least().hours())
        .isEqualTo(0.25 * square, offset(1e-9));
    assertThat(task(frame, Task.Kind.BOARDS).most().hours()).isEqualTo(0.6 * square, offset(1e-9));
  }

  /** A tenth more than are driven, in boxes of a hundred. */
  @Test
  void nailsAndScrewsComeInBoxes() {
    FloorFrame frame = frame(deck("").job());
    for (String id : List.of("frame-nails", "board-screws")) {
      Need need =
          frame.needs().stream().filter(some -> some.id().equals(id)).findFirst().orElseThrow();
      assertThat(need.order() % 100).isZero();
      assertThat(need.amount()).isGreaterThan(100);
      assertThat(need.order()).isBetween(1.1 * need.amount() - 1e-6, 1.1 * need.amount() + 100);
    }
    // Every row of boards is screwed twice to each joist and to the rim at both ends.
    Built built = frame.built().orElseThrow();
    double rows = built.boards().rows();
    Need screws =
        frame.needs().stream()
            .filter(some -> some.id().equals("board-screws"))
            .findFirst()
            .orElseThrow();
    double joists = 24 * 12 / 16.0;
    assertThat(screws.amount()).isBetween(2 * rows * (joists - 1), 2 * rows * (joists + 5));
  }

  /**
   * Ground that is a plane is found again, 36 in straight down the slope from its lowest corner.
   */
  @ParameterizedTest
  @CsvSource({"0.05, 0", "0, 0.05", "-0.04, 0.03", "0.02, 0.06"})
  void theFallIsToThePlaneBesideTheEdge(double perEast, double perNorth) {
    Placement bare = FootingJob.placement(deck("").job());
    ToDoubleFunction<Point> height = at -> perEast * at.east() + perNorth * at.north();
    StringBuilder levels = new StringBuilder(", \"levels\": {");
    for (PlacedMark mark : bare.marks()) {
      levels
          .append(levels.charAt(levels.length() - 1) == '{' ? "" : ",")
          .append(
              String.format(
                  Locale.ROOT,
                  "\"%s\": \"%.4f mm\"",
                  mark.id(),
                  1000 * height.applyAsDouble(mark.at())));
    }
    Job job = deck(levels + "}").job();
    Placement placement = FootingJob.placement(job);
    double highest =
        placement.marks().stream()
            .mapToDouble(mark -> height.applyAsDouble(mark.at()))
            .max()
            .orElseThrow();
    double lowest =
        placement.outline().corners().stream().mapToDouble(height).min().orElseThrow()
            - 36 * 0.0254 * Math.hypot(perEast, perNorth);
    EdgeFall fall = EdgeFall.of(job, placement).orElseThrow();
    assertThat(fall.height().metres()).isEqualTo(40 * 0.0254 + highest - lowest, offset(1e-5));
    assertThat(frame(job).workings()).contains(fall.working());
  }

  /** Ground known at two marks makes no plane: the lower of them counts. */
  @Test
  void twoLevelsMakeNoPlane() {
    Job job = deck(", \"levels\": { \"S1\": \"0 in\", \"S2\": \"-10 in\" }").job();
    assertThat(EdgeFall.of(job, FootingJob.placement(job)).map(fall -> fall.height().inches()))
        .hasValueSatisfying(height -> assertThat(height).isEqualTo(50, offset(1e-6)));
    assertThat(EdgeFall.of(deck("").job(), FootingJob.placement(deck("").job())))
        .isEqualTo(Optional.empty());
  }
}
