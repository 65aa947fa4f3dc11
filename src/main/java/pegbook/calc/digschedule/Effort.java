package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Hole;
import pegbook.figures.ToolStep;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Side;
import pegbook.measure.Volume;

/**
 * What one of several holes that are alike takes: its soil and its tools.
 *
 * @param tools which tool for which stretch
 * @param workings bank volume, loose volume, cart loads, mass; then what is kept, where it is
 * @param kept soil that goes back round a tube, where any does
 */
record Effort(List<ToolStep> tools, List<Working> workings, Optional<Working> kept) {
  static Effort of(Job job, DugSoil soil, AlikeHoles alike) {
    Hole hole = alike.first();
    String subject = alike.subject();
    List<ToolStep> tools = ToolPlan.of(job, hole);
    DigScheduleFormulas formulas = DigScheduleFormulas.in(job.heading().units());
    List<Working> workings = new ArrayList<>();
    Working bank = bank(formulas, hole, subject);
    Working loose =
        Working.of(
            formulas.looseVolume(soil.swellSource()), subject, bank.asVolume(), soil.swell());
    workings.add(bank);
    workings.add(loose);
    workings.add(Working.of(formulas.cartLoads(), subject, loose.asVolume(), soil.cart()));
    workings.add(
        Working.of(
            formulas.spoilMass(soil.weight().citation()), subject, bank.asVolume(), soil.bank()));
    Optional<Working> kept =
        hole.tubeFromBottom()
            .filter(tube -> tube.inside().isLessThan(hole.diameter()))
            .filter(tube -> !isInGravel(job, hole))
            .map(
                tube ->
                    Working.of(
                        formulas.keptVolume(soil.swellSource()),
                        subject,
                        hole.diameter(),
                        tube.inside(),
                        hole.shaftDepth(),
                        soil.swell()));
    kept.ifPresent(workings::add);
    return new Effort(tools, workings, kept);
  }

  private static Working bank(DigScheduleFormulas formulas, Hole hole, String subject) {
    return hole.widenings()
        .bell()
        .map(
            bell ->
                Working.of(
                    formulas.belledVolume(),
                    subject,
                    hole.diameter(),
                    hole.dug(),
                    bell.diameter(),
                    bell.flare(),
                    bell.toe().plus(hole.gravel())))
        .orElseGet(() -> Working.of(formulas.bankVolume(), subject, hole.diameter(), hole.dug()));
  }

  private static boolean isInGravel(Job job, Hole hole) {
    return job.side(hole.mark()).equals(Optional.of(Side.GRANULAR_BACKFILL));
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
        kept.map(Working::asVolume).orElse(Volume.ZERO),
        tools);
  }
}
