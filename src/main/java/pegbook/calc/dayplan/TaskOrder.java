package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pegbook.figures.Task;

/**
 * Puts tasks into the order of the work: marking out and proving; then hole by hole digging and
 * carting; then hole by hole gravel and steel; then the inspection; then the pours. Within a step
 * the tasks keep the order in which they were handed over.
 */
final class TaskOrder {
  private static final List<List<Task.Kind>> STEPS =
      List.of(
          List.of(Task.Kind.MARK_OUT, Task.Kind.PROVE, Task.Kind.SET_PEGS),
          List.of(Task.Kind.DIG, Task.Kind.CARRY_SPOIL),
          List.of(Task.Kind.GRAVEL, Task.Kind.STEEL),
          List.of(Task.Kind.INSPECTION),
          List.of(Task.Kind.POUR));

  private TaskOrder() {}

  static List<Task> of(List<Task> tasks) {
    List<Task> ordered = new ArrayList<>();
    for (List<Task.Kind> step : STEPS) {
      List<Task> here = tasks.stream().filter(task -> step.contains(task.kind())).toList();
      Set<String> done = new TreeSet<>();
      for (Task first : here) {
        if (done.add(first.mark().orElse(""))) {
          ordered.addAll(atHole(here, first.mark(), step));
        }
      }
    }
    return ordered;
  }

  private static List<Task> atHole(List<Task> tasks, Optional<String> mark, List<Task.Kind> step) {
    return step.stream()
        .flatMap(
            kind -> tasks.stream().filter(task -> task.kind() == kind && task.mark().equals(mark)))
        .toList();
  }
}
