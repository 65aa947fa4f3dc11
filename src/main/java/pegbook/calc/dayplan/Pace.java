package pegbook.calc.dayplan;

import pegbook.figures.Task;

/** How fast the work goes. */
enum Pace {
  /** All going well. */
  BEST,
  /** The middle of each range; a pour at its worst, as concrete does not wait for a morning. */
  PLANNED,
  /** All going badly. */
  WORST;

  /** Person-hours of a task. */
  double hours(Task task) {
    return switch (this) {
      case BEST -> task.least().hours();
      case PLANNED ->
          Task.POURS.contains(task.kind())
              ? task.most().hours()
              : (task.least().hours() + task.most().hours()) / 2;
      case WORST -> task.most().hours();
    };
  }
}
