package pegbook.calc.dayplan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.WorkList.Step;
import pegbook.figures.Task;
import pegbook.job.Job;

/**
 * Tasks as they were dealt out over days.
 *
 * @param list that was dealt out
 * @param gates what had to be waited for
 * @param progress when each step was done
 * @param days what is done on each, by their numbers among the crew's work days
 * @param lastSteps the step that was last at work on each
 */
record Schedule(
    Job job,
    WorkList list,
    DayDates dates,
    Gates gates,
    Progress progress,
    Map<Integer, List<Portion>> days,
    Map<Integer, Step> lastSteps) {
  Schedule {
    days = new LinkedHashMap<>(days);
    lastSteps = new LinkedHashMap<>(lastSteps);
  }

  /** Days on which something is done, in order: their numbers among the crew's work days. */
  List<Integer> worked() {
    return List.copyOf(days.keySet());
  }

  List<Portion> portions(int day) {
    return List.copyOf(days.getOrDefault(day, List.of()));
  }

  /** The step that was last at work on a day. */
  Step last(int day) {
    return Optional.ofNullable(lastSteps.get(day)).orElseThrow();
  }

  /** The day on which the first, or last, step of a kind is done, for some holes; -1: none. */
  int day(Task.Kind kind, List<String> marks, boolean last) {
    return progress.day(kind, marks, last);
  }

  List<String> marks() {
    return list.marks();
  }

  /** The day of the last pour; -1 where nothing is poured. */
  int lastPour() {
    return day(Task.Kind.POUR, marks(), true);
  }

  /**
   * The day on which digging begins at a hole, the first one where it was dug before; -1 where it
   * is not dug.
   */
  int opened(String mark) {
    if (list.dug().contains(mark)) {
      return 0;
    }
    int bored = day(Task.Kind.BORE, List.of(mark), false);
    int dug = day(Task.Kind.DIG, List.of(mark), false);
    return bored < 0 ? dug : Math.min(bored, dug);
  }

  /**
   * Nights that holes stand open from their first soil, or the first day, to their concrete, summed
   * over the holes.
   */
  int holeNights() {
    long nights = 0;
    for (String mark : marks()) {
      int poured = day(Task.Kind.POUR, List.of(mark), true);
      int opened = opened(mark);
      if (poured >= 0 && opened >= 0) {
        nights += dates.moment(poured) - dates.moment(opened);
      }
    }
    return Math.toIntExact(nights);
  }

  /** Holes that are begun and not poured when the crew leaves. */
  List<String> open(int day) {
    return marks().stream()
        .filter(
            mark -> {
              int opened = opened(mark);
              return opened >= 0 && opened <= day;
            })
        .filter(
            mark -> {
              int poured = day(Task.Kind.POUR, List.of(mark), true);
              return poured < 0 || poured > day;
            })
        .toList();
  }

  /** Whether the trench is begun and not filled in when the crew leaves. */
  boolean isTrenchOpen(int day) {
    boolean begun =
        days.entrySet().stream()
            .filter(each -> each.getKey() <= day)
            .flatMap(each -> each.getValue().stream())
            .anyMatch(portion -> portion.kind() == Task.Kind.TRENCH);
    return begun && day < progress.day(Task.Kind.BACKFILL);
  }
}
