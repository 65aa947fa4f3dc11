package pegbook.calc.dayplan;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.published.Citation;

/** The formulas of the subject. */
final class DayPlanFormulas {
  private DayPlanFormulas() {}

  /** Person-hours of a crew's day: people, hours of each. */
  static Formula crewHours() {
    return new Formula(
        "day-plan.crew-hours",
        "H = p · h",
        List.of(
            new Symbol("p", "people-in-crew", Unit.NONE),
            new Symbol("h", "hours-of-each", Unit.HOUR)),
        new Symbol("H", "crew-hours", Unit.HOUR),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * x[1]);
  }

  /** Person-hours that a task is planned with: all going well, all going badly. */
  static Formula planned() {
    return new Formula(
        "day-plan.planned",
        "T = (a + z) / 2",
        List.of(
            new Symbol("a", "hours-going-well", Unit.HOUR),
            new Symbol("z", "hours-going-badly", Unit.HOUR)),
        new Symbol("T", "hours-planned", Unit.HOUR),
        Citation.COMMON_PRACTICE,
        "",
        x -> (x[0] + x[1]) / 2);
  }
}
