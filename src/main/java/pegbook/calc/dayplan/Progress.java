package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pegbook.calc.dayplan.WorkList.Step;
import pegbook.figures.Task;

/** On which days the steps of a list were begun and done; -1: not yet. */
final class Progress {
  private final WorkList list;
  private final int[] begun;
  private final int[] done;

  /** The steps of a kind at a hole, by their places. */
  private final Map<Task.Kind, Map<String, List<Integer>>> atHoles = new EnumMap<>(Task.Kind.class);

  Progress(WorkList list) {
    this.list = list;
    int count = list.steps().size();
    this.begun = new int[count];
    this.done = new int[count];
    Arrays.fill(begun, -1);
    Arrays.fill(done, -1);
    for (int i = 0; i < count; i++) {
      int place = i;
      Task task = list.steps().get(i).task();
      task.mark()
          .ifPresent(
              mark ->
                  atHoles
                      .computeIfAbsent(task.kind(), kind -> new LinkedHashMap<>())
                      .computeIfAbsent(mark, hole -> new ArrayList<>())
                      .add(place));
    }
  }

  boolean isBegun(int i) {
    return begun[i] >= 0;
  }

  boolean isDone(int i) {
    return done[i] >= 0;
  }

  void begin(int i, int day) {
    begun[i] = isBegun(i) ? begun[i] : day;
  }

  void finish(int i, int day) {
    done[i] = day;
  }

  boolean isAllDone() {
    return Arrays.stream(done).allMatch(day -> day >= 0);
  }

  /** Whether a lot has nothing left of some kinds. */
  boolean isPast(int lot, Set<Task.Kind> kinds) {
    for (int i = 0; i < done.length; i++) {
      Step step = list.steps().get(i);
      if (done[i] < 0 && step.lot() == lot && kinds.contains(step.task().kind())) {
        return false;
      }
    }
    return true;
  }

  /** Whether a kind of work is done at a hole at all. */
  boolean has(Task.Kind kind, String mark) {
    return atHoles.getOrDefault(kind, Map.of()).containsKey(mark);
  }

  /** The day on which the first, or last, step of a kind is done, for some holes; -1: none. */
  int day(Task.Kind kind, List<String> marks, boolean last) {
    Map<String, List<Integer>> steps = atHoles.getOrDefault(kind, Map.of());
    int found = -1;
    for (String mark : marks) {
      for (int i : steps.getOrDefault(mark, List.of())) {
        int day = last ? done[i] : begun[i];
        boolean better = found < 0 || (last ? day > found : day < found);
        found = better ? day : found;
      }
    }
    return found;
  }

  /** The day on which the last step of a kind that is at no hole is done; -1: none. */
  int day(Task.Kind kind) {
    int found = -1;
    for (int i = 0; i < done.length; i++) {
      found = list.steps().get(i).task().kind() == kind ? Math.max(found, done[i]) : found;
    }
    return found;
  }
}
