package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pegbook.calc.floorframe.BoardJoints.Crossing;
import pegbook.calc.floorframe.BoardRows.Row;
import pegbook.calc.floorframe.BoardRows.Stretch;
import pegbook.calc.floorframe.FloorFrame.BoardPlan;
import pegbook.figures.CutPiece;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Job;
import pegbook.testing.Chance;
import pegbook.testing.FootingJob;

/** Rows, joints and pieces of the floor's boards. Lengths in feet where nothing else is said. */
class BoardLayingTest {
  private static final double GAP = 0.125 / 12;
  private static final double STEP = 5.625 / 12;

  private static Polygon figure(double... places) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < places.length; i += 2) {
      corners.add(new Point(places[i], places[i + 1]));
    }
    return new Polygon(corners);
  }

  /** By hand: across 12 ft lie 144 / 5.625 = 25.6 boards, so 26 rows, each 16 ft long. */
  @Test
  void rowsOfARectangle() {
    List<Row> rows = BoardRows.over(figure(0, 0, 12, 0, 12, 16, 0, 16), STEP, GAP);
    assertThat(rows).hasSize(26);
    assertThat(rows).allSatisfy(row -> assertThat(row.length()).isEqualTo(16, offset(1e-9)));
  }

  /**
   * Beside the inner corner of an L at x = 4 rows are 10 ft, then 3 ft; the U has two stretches.
   */
  @Test
  void rowsFollowArms() {
    List<Row> ell = BoardRows.over(figure(0, 0, 8, 0, 8, 3, 4, 3, 4, 10, 0, 10), 0.5, 0);
    assertThat(ell.subList(0, 8)).allSatisfy(row -> assertThat(row.length()).isEqualTo(10));
    assertThat(ell.subList(8, 16)).allSatisfy(row -> assertThat(row.length()).isEqualTo(3));
    List<Row> u = BoardRows.over(figure(0, 0, 8, 0, 8, 9, 0, 9, 0, 6, 5, 6, 5, 3, 0, 3), 1, 0);
    assertThat(u.get(0).stretches()).containsExactly(new Stretch(0, 3), new Stretch(6, 9));
    assertThat(u.get(7).stretches()).containsExactly(new Stretch(0, 9));
  }

  /** A triangle 6 wide and 6 high: a strip is as long as at its longer side. */
  @Test
  void aRowIsAsLongAsTheFloorIsAnywhereUnderIt() {
    List<Row> rows = BoardRows.over(figure(0, 0, 6, 0, 0, 6), 1, 0);
    assertThat(rows).extracting(Row::length).containsExactly(6.0, 5.0, 4.0, 3.0, 2.0, 1.0);
  }

  private static List<Crossing> joists(double spacing, double from, double to) {
    return IntStream.range(0, 1 + (int) ((to - from) / spacing + 1e-9))
        .mapToObj(i -> new Crossing(from + i * spacing, i))
        .toList();
  }

  private static List<Double> at(List<Crossing> joints) {
    return joints.stream().map(Crossing::at).toList();
  }

  /**
   * By hand: 16 ft, joists each 16 in from 16 in on, boards of 12 ft: joined over the third joist,
   * at 4 ft; in the row beside over the ninth, at 12 ft; boards of 5 ft are whole at every third
   * joist, four pieces; 6 ft reach from joist to joist at 5 ft 4 in, three pieces.
   */
  @Test
  void jointsLieOverJoistsAndAreStaggered() {
    List<Crossing> over = joists(4 / 3.0, 4 / 3.0, 15);
    Stretch row = new Stretch(0, 16);
    List<Crossing> first = BoardJoints.of(row, over, 12, Set.of());
    assertThat(at(first)).usingElementComparator(BoardLayingTest::near).containsExactly(4.0);
    List<Crossing> next = BoardJoints.of(row, over, 12, Set.of(first.get(0).line()));
    assertThat(at(next)).usingElementComparator(BoardLayingTest::near).containsExactly(12.0);
    assertThat(BoardJoints.of(row, over, 6, Set.of())).hasSize(2);
    assertThat(BoardJoints.of(row, over, 5, Set.of())).hasSize(3);
    assertThat(BoardJoints.of(row, over, 16, Set.of())).isEmpty();
  }

  private static int near(double one, double other) {
    return Math.abs(one - other) < 1e-9 ? 0 : Double.compare(one, other);
  }

  /** Where just one joist is in reach of both halves, rows beside each other are joined on it. */
  @Test
  void anExactHalfCannotBeStaggered() {
    List<Crossing> over = joists(2, 2, 14);
    List<Crossing> only = BoardJoints.of(new Stretch(0, 16), over, 8, Set.of(3));
    assertThat(at(only)).containsExactly(8.0);
  }

  @Property(tries = 200, seed = Chance.SEED)
  void noPieceIsLongerThanABoardAndNoneMissing(
      @ForAll @DoubleRange(min = 5, max = 60) double length,
      @ForAll @DoubleRange(min = 4, max = 24) double longest,
      @ForAll @DoubleRange(min = 0.7, max = 2) double spacing,
      @ForAll @IntRange(min = 0, max = 30) int beside) {
    List<Crossing> over = joists(spacing, spacing / 2, length - 0.01);
    List<Double> ends = new ArrayList<>(List.of(0.0));
    ends.addAll(at(BoardJoints.of(new Stretch(0, length), over, longest, Set.of(beside))));
    ends.add(length);
    for (int i = 0; i + 1 < ends.size(); i++) {
      assertThat(ends.get(i + 1) - ends.get(i)).isPositive().isLessThanOrEqualTo(longest + 1e-6);
    }
    int least = (int) Math.ceil(length / longest - 1e-9);
    int most = (int) Math.ceil(length / (longest - spacing) + 1e-9);
    assertThat(ends.size() - 1).isBetween(least, most);
  }

  private static BoardPlan plan(String stock, String boards) {
    FootingJob parts = new FootingJob();
    parts.outline =
        "{ \"rectangle\": { \"length\": \"20 ft\", \"width\": \"10 ft\", "
            + "\"columns\": 3, \"rows\": 2 } }";
    parts.inset = "8 in";
    parts.floor =
        String.format(
            Locale.ROOT,
            "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"frame\": "
                + "{ \"species\": \"southern pine\", \"boards\": { %s } } }",
            boards);
    parts.stock = stock;
    Job job = parts.job();
    return FloorFrameCalculator.calculate(job, FootingJob.placement(job), FootingJob.holes(job))
        .built()
        .orElseThrow()
        .boards();
  }

  private static double metres(BoardPlan plan) {
    return plan.pieces().stream()
        .mapToDouble(piece -> piece.length().metres() * piece.count())
        .sum();
  }

  /**
   * By hand: 20 ft by 10 ft. Joists go the short way, so boards lie along the 20 ft: 120 / 5.625 =
   * 21.3, so 22 rows. From boards of 12 ft each row has one joint, and no two neighbours on one
   * joist.
   */
  @Test
  void aLongFloorIsJoined() {
    BoardPlan plan = plan("", "\"length\": \"12 ft\"");
    assertThat(plan.rows()).isEqualTo(22);
    assertThat(plan.joints()).isEqualTo(22);
    assertThat(plan.aligned()).isZero();
    assertThat(plan.pieces().stream().mapToInt(CutPiece::count).sum()).isEqualTo(44);
    assertThat(plan.laid().feet()).isEqualTo(440, offset(1e-6));
    assertThat(metres(plan) / 0.3048)
        .as("each of 44 pieces is set up by less than an inch")
        .isBetween(440 - 1e-6, 440 + 44 / 12.0);
    assertThat(plan.pieces()).allSatisfy(p -> assertThat(p.length().feet()).isLessThan(12 + 1e-9));
  }

  /** Listed boards decide, not the length that the frame names; 20 ft need no joint. */
  @Test
  void theStockDecidesWhereRowsAreJoined() {
    String stock = "\"boards\": [{\"length\": \"20 ft\"}, {\"length\": \"8 ft\"}]";
    assertThat(plan(stock, "\"length\": \"12 ft\"").joints()).isZero();
    String few = "\"boards\": [{\"length\": \"20 ft\", \"count\": 3}, {\"length\": \"12 ft\"}]";
    assertThat(plan(few, "").joints()).as("three long ones are not enough").isEqualTo(22);
  }
}
