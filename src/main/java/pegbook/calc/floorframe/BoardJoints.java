package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where a stretch of boards is joined: over joists, in as few pieces as the longest board allows;
 * then with few pieces that lie over less than three joists, then with few joints over the joist
 * that the row beside is joined on, then with pieces as unlike as can be, as long ones serve the
 * floor best and short ones come out of what is left. Common practice.
 */
final class BoardJoints {
  private static final double TIE = 1e-9;

  /** Sums of squares are told apart in square millimetres. */
  private static final double FINE = 1e6;

  private BoardJoints() {}

  /**
   * A joist that crosses a row.
   *
   * @param at along the row, metres
   * @param line which line of joists
   */
  record Crossing(double at, int line) {}

  /** How good a way up to a place is; less is better, the first figure first. */
  private record Cost(double tooLong, int pieces, int shortOnes, int aligned, double alike)
      implements Comparable<Cost> {
    private static final Comparator<Cost> ORDER =
        Comparator.comparingDouble(Cost::tooLong)
            .thenComparingInt(Cost::pieces)
            .thenComparingInt(Cost::shortOnes)
            .thenComparingInt(Cost::aligned)
            .thenComparingDouble(Cost::alike);

    Cost plus(Cost more) {
      return new Cost(
          tooLong + more.tooLong,
          pieces + more.pieces,
          shortOnes + more.shortOnes,
          aligned + more.aligned,
          alike + more.alike);
    }

    @Override
    public int compareTo(Cost other) {
      return ORDER.compare(this, other);
    }
  }

  /**
   * The joists to join on, in order; none where one board is enough. A step from joist to joist
   * that no board reaches is left as it is: its piece is too long.
   *
   * @param stretch of the row
   * @param over joists between its ends, in order
   * @param longest board, metres
   * @param beside lines that the row before is joined on
   */
  static List<Crossing> of(
      BoardRows.Stretch stretch, List<Crossing> over, double longest, Set<Integer> beside) {
    if (stretch.length() <= longest + TIE) {
      return List.of();
    }
    int end = over.size() + 1;
    List<Cost> best = new ArrayList<>(List.of(new Cost(0, 0, 0, 0, 0)));
    int[] before = new int[end + 1];
    for (int to = 1; to <= end; to++) {
      Optional<Cost> least = Optional.empty();
      for (int from = 0; from < to; from++) {
        double length = place(stretch, over, to) - place(stretch, over, from);
        boolean aligned = to < end && beside.contains(over.get(to - 1).line());
        Cost piece =
            new Cost(
                length <= longest + TIE ? 0 : length,
                1,
                to - from < 2 ? 1 : 0,
                aligned ? 1 : 0,
                -Math.rint(length * length * FINE));
        Cost cost = best.get(from).plus(piece);
        if (least.map(other -> cost.compareTo(other) < 0).orElse(true)) {
          least = Optional.of(cost);
          before[to] = from;
        }
      }
      best.add(least.orElseThrow());
    }
    List<Crossing> joints = new ArrayList<>();
    for (int at = before[end]; at > 0; at = before[at]) {
      joints.add(0, over.get(at - 1));
    }
    return joints;
  }

  private static double place(BoardRows.Stretch stretch, List<Crossing> over, int index) {
    return index == 0
        ? stretch.low()
        : index > over.size() ? stretch.high() : over.get(index - 1).at();
  }
}
