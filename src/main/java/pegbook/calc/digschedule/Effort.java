package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Hole;
import pegbook.figures.ToolStep;
import pegbook.figures.Working;
import pegbook.job.Job;

/**
 * What one of several holes that are alike takes: its soil and its tools.
 *
 * @param tools which tool for which stretch
 * @param workings bank volume, loose volume, cart loads, mass
 */
record Effort(List<ToolStep> tools, List<Working> workings) {
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
    return new Effort(tools, workings);
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
        tools);
  }
}
