package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Tool;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Volume;
import pegbook.published.HandDigRate;
import pegbook.published.WorkRange;

/**
 * What one of several holes that are alike takes: its soil, its tools, its time.
 *
 * @param tools which tool for which stretch
 * @param range how far its time may lie from the published rate
 * @param workings bank volume, loose volume, cart loads, mass, least and most time
 */
record Effort(List<ToolStep> tools, WorkRange range, List<Working> workings) {
  /** A narrower hole has no room to swing a spade in: common practice, no source. */
  static final Length NARROW_BELOW = Length.ofMillimetres(600);

  static Effort of(Job job, DugSoil soil, AlikeHoles alike) {
    Hole hole = alike.first();
    String subject = alike.subject();
    List<ToolStep> tools = ToolPlan.of(job, hole);
    DigScheduleFormulas formulas = DigScheduleFormulas.in(job.heading().units());
    List<Working> workings = new ArrayList<>();
    Working bank = Working.of(formulas.bankVolume(), subject, hole.diameter(), hole.dug());
    Working loose =
        Working.of(
            formulas.looseVolume(soil.swellSource()), subject, bank.asVolume(), soil.swell());
    workings.add(bank);
    workings.add(loose);
    workings.add(Working.of(formulas.cartLoads(), subject, loose.asVolume(), soil.cart()));
    workings.add(
        Working.of(
            formulas.spoilMass(soil.weight().citation()), subject, bank.asVolume(), soil.bank()));
    WorkRange range = range(hole, tools);
    workings.add(
        time(formulas.leastTime(soil.rate().citation()), alike, bank, soil, range.least()));
    workings.add(time(formulas.mostTime(soil.rate().citation()), alike, bank, soil, range.most()));
    return new Effort(tools, range, workings);
  }

  private static Working time(
      Formula formula, AlikeHoles alike, Working bank, DugSoil soil, double factor) {
    Volume volume = bank.asVolume();
    return Working.of(
        formula,
        alike.subject(),
        volume,
        alike.first().dug(),
        HandDigRate.BAND,
        soil.rate().upper(),
        soil.rate().lower(),
        new Count(factor));
  }

  /** Which range of time holds for a hole. */
  private static WorkRange range(Hole hole, List<ToolStep> tools) {
    double bored =
        tools.stream()
            .filter(step -> step.tool().kind() == Tool.Kind.POWER_AUGER)
            .filter(step -> step.use() == ToolStep.Use.BORE)
            .mapToDouble(step -> step.to().minus(step.from()).metres())
            .sum();
    if (bored > hole.dug().metres() / 2) {
      return WorkRange.find("power-auger");
    }
    return WorkRange.find(hole.diameter().isLessThan(NARROW_BELOW) ? "narrow" : "open");
  }

  /** The row of one of the holes, its order still open. */
  Row row(Hole hole) {
    return new Row(
        0,
        hole,
        workings.get(0).asVolume(),
        workings.get(1).asVolume(),
        Math.round(workings.get(2).result()),
        workings.get(3).asMass(),
        tools,
        workings.get(4).asDuration(),
        workings.get(5).asDuration(),
        range);
  }
}
