package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Line;
import pegbook.figures.Formula;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.job.Digging;
import pegbook.job.Job;
import pegbook.job.Power;
import pegbook.job.Soil;
import pegbook.measure.Count;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.WorkRate;
import pegbook.published.HandDigRate;
import pegbook.published.TrenchRate;
import pegbook.published.WorkRange;

/**
 * Hours of the trench: dug by hand at published rates, or with a walked machine by its length; pipe
 * and conductors by length; filled in and tamped at a published rate.
 */
final class TrenchTasks {
  /**
   * Hours to a metre, and before the first: common practice, no source.
   *
   * @param before hours
   */
  private record Pace(double leastToMetre, double mostToMetre, double before) {}

  /** A walked machine: 10 m to 30 m an hour, an hour to fetch and start it. */
  private static final Pace TRENCHER = new Pace(1 / 30.0, 1 / 10.0, 1);

  /** Bed, lay, join, pull in, tape laid ready. */
  private static final Pace LAY = new Pace(1 / 15.0, 1 / 5.0, 1);

  private final Line line;
  private final PowerLineFormulas formulas;
  private final List<Working> workings = new ArrayList<>();
  private final List<Task> tasks = new ArrayList<>();

  private TrenchTasks(Job job, Line line) {
    this.line = line;
    this.formulas = PowerLineFormulas.in(job.heading().units());
  }

  /** Tasks in their order, with what they are worked from. */
  record Planned(List<Task> tasks, List<Working> workings) {}

  static Planned of(Job job, Power power, Line line) {
    TrenchTasks planner = new TrenchTasks(job, line);
    if (power.trench().dug() == Power.Dug.TRENCHER) {
      planner.byLength(Task.Kind.TRENCH, "trencher", TRENCHER);
    } else {
      TrenchRate rate = rate(job);
      boolean deep = line.trench().deepest().isMoreThan(HandDigRate.BAND);
      planner.byVolume(
          Task.Kind.TRENCH,
          "dig",
          deep ? rate.lower() : rate.upper(),
          rate,
          WorkRange.find("open"));
    }
    planner.byLength(Task.Kind.LAY_PIPE, "lay", LAY);
    TrenchRate fill = TrenchRate.find("backfill");
    planner.byVolume(Task.Kind.BACKFILL, "fill", fill.upper(), fill, WorkRange.find("fill"));
    return new Planned(planner.tasks, planner.workings);
  }

  private Duration work(Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, "", quantities);
    workings.add(working);
    return working.asDuration();
  }

  private void byVolume(
      Task.Kind kind, String id, WorkRate hourly, TrenchRate rate, WorkRange range) {
    Quantity bank = line.trench().bank();
    tasks.add(
        new Task(
            kind,
            Optional.empty(),
            work(
                formulas.byVolume(id, rate.citation(), false),
                bank,
                hourly,
                new Count(range.least())),
            work(
                formulas.byVolume(id, rate.citation(), true),
                bank,
                hourly,
                new Count(range.most()))));
  }

  private void byLength(Task.Kind kind, String id, Pace pace) {
    Length length = line.route().length();
    tasks.add(
        new Task(
            kind,
            Optional.empty(),
            work(
                formulas.byLength(id, false),
                length,
                new Count(pace.leastToMetre() * 3600),
                new Duration(pace.before())),
            work(
                formulas.byLength(id, true),
                length,
                new Count(pace.mostToMetre() * 3600),
                new Duration(pace.before()))));
  }

  /** The slower of what the soil's class allows and what the digging is like. */
  private static TrenchRate rate(Job job) {
    return byDigging(job.ground().digging()).slower(bySoil(job.ground().soil()));
  }

  private static TrenchRate byDigging(Digging digging) {
    return TrenchRate.find(
        switch (digging) {
          case EASY -> "loose";
          case ORDINARY -> "firm";
          case HEAVY -> "heavy";
          case STONY -> "boulder-clay";
        });
  }

  /** Gravel has no rate of its own for trenches; in pits it digs like heavy ground. */
  private static TrenchRate bySoil(Soil soil) {
    return TrenchRate.find(
        switch (soil) {
          case ROCK -> "rock";
          case GRAVEL, SANDY_GRAVEL, CLAY -> "heavy";
          case SANDY_CLAY -> "firm";
          case SAND, SILTY_SAND, CLAYEY_SAND, LOAM, SILT, PEAT, FILL -> "loose";
        });
  }
}
