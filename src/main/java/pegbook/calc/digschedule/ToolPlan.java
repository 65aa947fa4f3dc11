package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Hole;
import pegbook.figures.ToolStep;
import pegbook.figures.ToolStep.Use;
import pegbook.job.Digging;
import pegbook.job.Job;
import pegbook.job.Tool;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * Chooses tools for a hole from the job's list. All of it is common practice, no source.
 *
 * <p>A tool digs as far down as it reaches; the one with the shortest reach comes first, as it is
 * the quickest to swing; in a narrow hole a clamshell rather than a spade. A power auger that fits
 * takes over once the hole is started by hand. An auger that is narrower than the hole cuts a pilot
 * hole, which is opened by hand. A digging bar loosens stones and lifts nothing.
 */
final class ToolPlan {
  /** A bit may be so much wider than the hole and still fits it. */
  private static final Length FITS = Length.ofMillimetres(3);

  /** A bit may be so much narrower than the hole and still cuts it in full. */
  private static final Length FULL_WIDTH = Length.ofMillimetres(25);

  static final Length TOLERANCE = Length.ofMillimetres(1);

  private final Job job;
  private final Hole hole;
  private final List<ToolStep> steps = new ArrayList<>();
  private Length done = Length.ZERO;

  private ToolPlan(Job job, Hole hole) {
    this.job = job;
    this.hole = hole;
  }

  /** The steps from the top down; a bar, where stones want one, comes last. */
  static List<ToolStep> of(Job job, Hole hole) {
    ToolPlan plan = new ToolPlan(job, hole);
    plan.startForAuger();
    plan.powerAuger().ifPresent(plan::dig);
    plan.byReach().forEach(plan::dig);
    plan.bar();
    return List.copyOf(plan.steps);
  }

  /** How deep the steps come. */
  static Length reached(List<ToolStep> steps) {
    return steps.stream()
        .filter(step -> step.use() != Use.BAR)
        .map(ToolStep::to)
        .max(Length::compareTo)
        .orElse(Length.ZERO);
  }

  /** An auger wanders unless the first 6 in or 150 mm are opened by hand. */
  private void startForAuger() {
    boolean augerFirst =
        powerAuger().isPresent() || byReach().stream().findFirst().filter(this::bores).isPresent();
    Length start =
        job.heading().units() == UnitSystem.IMPERIAL
            ? Length.ofInches(6)
            : Length.ofMillimetres(150);
    if (augerFirst) {
      hands().findFirst().ifPresent(tool -> step(tool, Use.START, start.min(tool.reach())));
    }
  }

  private java.util.stream.Stream<Tool> hands() {
    return job.tools().stream().filter(ToolPlan::isHand).sorted(quickestFirst());
  }

  private static boolean isHand(Tool tool) {
    return tool.kind() == Tool.Kind.SPADE || tool.kind() == Tool.Kind.CLAMSHELL;
  }

  private boolean bores(Tool tool) {
    return tool.kind() == Tool.Kind.HAND_AUGER || tool.kind() == Tool.Kind.POWER_AUGER;
  }

  private boolean fits(Tool tool) {
    return tool.diameter()
        .map(diameter -> !diameter.isMoreThan(hole.diameter().plus(FITS)))
        .orElse(true);
  }

  private boolean cutsFullWidth(Tool tool) {
    return tool.diameter()
        .map(diameter -> !diameter.plus(FULL_WIDTH).isLessThan(hole.diameter()))
        .orElse(true);
  }

  private Optional<Tool> powerAuger() {
    return job.tools().stream()
        .filter(tool -> tool.kind() == Tool.Kind.POWER_AUGER)
        .filter(this::fits)
        .max(Comparator.comparing(Tool::reach));
  }

  /** Spades, clamshells and hand augers that fit, the shortest reach first. */
  private List<Tool> byReach() {
    return job.tools().stream()
        .filter(tool -> isHand(tool) || (tool.kind() == Tool.Kind.HAND_AUGER && fits(tool)))
        .sorted(quickestFirst())
        .toList();
  }

  /** The shortest reach first; of equal ones the clamshell where a spade has no room. */
  private Comparator<Tool> quickestFirst() {
    boolean narrow = hole.isNarrow();
    return Comparator.comparing(Tool::reach)
        .thenComparing(tool -> narrow && tool.kind() == Tool.Kind.SPADE)
        .thenComparing(Tool::kind);
  }

  private void dig(Tool tool) {
    Use use = bores(tool) ? (cutsFullWidth(tool) ? Use.BORE : Use.PILOT) : Use.DIG;
    step(tool, use, tool.reach());
  }

  private void step(Tool tool, Use use, Length reach) {
    Length to = reach.min(hole.dug());
    if (to.isMoreThan(done.plus(TOLERANCE))) {
      steps.add(new ToolStep(tool, use, done, to));
      done = to;
    }
  }

  private void bar() {
    if (job.ground().digging() == Digging.STONY) {
      job.tools().stream()
          .filter(tool -> tool.kind() == Tool.Kind.DIGGING_BAR)
          .max(Comparator.comparing(Tool::reach))
          .ifPresent(
              tool ->
                  steps.add(
                      new ToolStep(tool, Use.BAR, Length.ZERO, tool.reach().min(hole.dug()))));
    }
  }
}
