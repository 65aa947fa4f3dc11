package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.figures.Task;

/**
 * The tasks in the order in which a crew with a free hand takes them: marking out and proving; then
 * lot by lot digging and carting hole by hole, filling hole by hole, the pours, the forms off; last
 * the floor, once the last footing may be loaded. An earlier lot goes first whenever it does not
 * wait. The pours keep the order in which they were handed over.
 *
 * <p>Holes that were dug before come first, and are a lot of their own where there are several:
 * they stand open already.
 *
 * @param steps the tasks, each with its lot
 * @param lots the holes of each lot, in the order of digging
 * @param dug holes that were dug before the first day
 */
record WorkList(List<Step> steps, List<List<String>> lots, List<String> dug) {
  /** A task in a lot; the marking out belongs to the first. */
  record Step(Task task, int lot) {}

  private static final List<Task.Kind> FIRST =
      List.of(Task.Kind.MARK_OUT, Task.Kind.PROVE, Task.Kind.SET_PEGS);
  private static final List<Task.Kind> OPENING = List.of(Task.Kind.DIG, Task.Kind.CARRY_SPOIL);
  private static final List<Task.Kind> FILLING =
      List.of(Task.Kind.GRAVEL, Task.Kind.FORM, Task.Kind.STEEL);

  private static final List<Task.Kind> TRENCHING =
      List.of(Task.Kind.TRENCH, Task.Kind.LAY_PIPE, Task.Kind.BACKFILL);

  private static final List<Task.Kind> LAST = List.of(Task.Kind.FRAME, Task.Kind.BOARDS);

  /** In so many lots of about equal hours of digging. */
  static WorkList of(List<Task> tasks, List<String> dug, int count) {
    List<List<String>> lots = lots(tasks, dug, count);
    List<Step> steps = new ArrayList<>();
    FIRST.forEach(kind -> of(tasks, kind).forEach(task -> steps.add(new Step(task, 0))));
    // The machine is there once: it bores for every lot before anything else is dug.
    for (int lot = 0; lot < lots.size(); lot++) {
      add(steps, lot, of(at(tasks, lots.get(lot)), Task.Kind.BORE));
    }
    for (int lot = 0; lot < lots.size(); lot++) {
      List<String> marks = lots.get(lot);
      List<Task> here = at(tasks, marks);
      add(steps, lot, byHole(here, marks, OPENING));
      add(steps, lot, byHole(here, marks, FILLING));
      add(steps, lot, of(here, Task.Kind.FIRST_LIFT));
      add(steps, lot, of(here, Task.Kind.JOINT));
      add(steps, lot, of(here, Task.Kind.POUR));
      add(steps, lot, of(here, Task.Kind.STRIP));
    }
    // The trench fills the days on which the holes wait.
    TRENCHING.forEach(kind -> of(tasks, kind).forEach(task -> steps.add(new Step(task, 0))));
    for (Task.Kind kind : LAST) {
      add(steps, lots.size() - 1, of(tasks, kind));
    }
    return new WorkList(steps, lots, dug);
  }

  /** All holes, in the order of digging. */
  List<String> marks() {
    return lots.stream().flatMap(List::stream).toList();
  }

  private static void add(List<Step> steps, int lot, List<Task> tasks) {
    tasks.forEach(task -> steps.add(new Step(task, lot)));
  }

  private static List<Task> at(List<Task> tasks, List<String> marks) {
    return tasks.stream().filter(task -> task.mark().filter(marks::contains).isPresent()).toList();
  }

  private static List<Task> of(List<Task> tasks, Task.Kind kind) {
    return tasks.stream().filter(task -> task.kind() == kind).toList();
  }

  /** Hole by hole, in the order of digging. */
  private static List<Task> byHole(List<Task> tasks, List<String> marks, List<Task.Kind> kinds) {
    return marks.stream()
        .flatMap(
            mark ->
                kinds.stream()
                    .flatMap(kind -> of(tasks, kind).stream())
                    .filter(task -> task.mark().equals(Optional.of(mark))))
        .toList();
  }

  /** Holes in the order of digging, else of whatever is done at them. */
  private static List<String> marks(List<Task> tasks) {
    return Stream.concat(of(tasks, Task.Kind.DIG).stream(), tasks.stream())
        .flatMap(task -> task.mark().stream())
        .distinct()
        .toList();
  }

  private static List<List<String>> lots(List<Task> tasks, List<String> dug, int count) {
    List<String> open = marks(tasks).stream().filter(dug::contains).toList();
    List<String> left = marks(tasks).stream().filter(mark -> !dug.contains(mark)).toList();
    if (open.isEmpty() || left.isEmpty()) {
      return lotsOf(tasks, marks(tasks), count);
    }
    if (count == 1) {
      return List.of(Stream.concat(open.stream(), left.stream()).toList());
    }
    return Stream.concat(Stream.of(open), lotsOf(tasks, left, count - 1).stream()).toList();
  }

  private static List<List<String>> lotsOf(List<Task> tasks, List<String> marks, int count) {
    double all = marks.stream().mapToDouble(mark -> digging(tasks, mark)).sum();
    List<List<String>> lots = new ArrayList<>(List.of(new ArrayList<>()));
    double done = 0;
    for (String mark : marks) {
      double hours = digging(tasks, mark);
      boolean full = done + hours / 2 > all * lots.size() / count;
      if (full && lots.size() < count && !lots.get(lots.size() - 1).isEmpty()) {
        lots.add(new ArrayList<>());
      }
      lots.get(lots.size() - 1).add(mark);
      done += hours;
    }
    return lots;
  }

  private static double digging(List<Task> tasks, String mark) {
    return tasks.stream()
        .filter(task -> task.kind() == Task.Kind.DIG || task.kind() == Task.Kind.BORE)
        .filter(task -> task.mark().equals(Optional.of(mark)))
        .mapToDouble(Pace.PLANNED::hours)
        .sum();
  }
}
