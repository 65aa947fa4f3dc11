package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.dayplan.WorkList.Step;
import pegbook.figures.Task;

/** Which steps of a list must be done before which others. */
final class TaskOrder {
  private TaskOrder() {}

  /** For each step the places of those that must be done before it. */
  static List<List<Integer>> needs(List<Step> steps) {
    List<List<Integer>> needs = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      needs.add(before(steps, i));
    }
    return needs;
  }

  private static List<Integer> before(List<Step> steps, int i) {
    List<Integer> before = new ArrayList<>();
    for (int j = 0; j < steps.size(); j++) {
      if (j != i && isBefore(j, i, steps.get(j), steps.get(i))) {
        before.add(j);
      }
    }
    return before;
  }

  /** Marking out in its order, then the kinds at a hole in theirs; pours of a lot one by one. */
  private static boolean isBefore(int j, int i, Step other, Step step) {
    Task.Kind first = other.task().kind();
    Task.Kind kind = step.task().kind();
    if (first.compareTo(Task.Kind.SET_PEGS) <= 0) {
      return kind.compareTo(Task.Kind.SET_PEGS) > 0 || j < i;
    }
    boolean atHole =
        other.task().mark().equals(step.task().mark())
            && first.isTrenching() == kind.isTrenching()
            && first.compareTo(kind) < 0
            && first != Task.Kind.CARRY_SPOIL;
    // The floor comes after all that is done at the holes; the trench beside it is its own.
    boolean floor =
        kind == Task.Kind.FRAME && first != Task.Kind.BOARDS && !first.isTrenching() && j != i;
    boolean pours =
        Task.POURS.contains(first) && kind == first && other.lot() == step.lot() && j < i;
    return atHole || pours || floor;
  }
}
