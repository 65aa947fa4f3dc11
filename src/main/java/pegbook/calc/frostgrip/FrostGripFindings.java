package pegbook.calc.frostgrip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.frostgrip.FrostGrip.Footing;
import pegbook.calc.frostgrip.FrostGrip.Grip;
import pegbook.calc.frostgrip.FrostGrip.Verdict;
import pegbook.calc.frostgrip.FrostGrip.Water;
import pegbook.calc.frostgrip.FrostGrip.WindLift;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Job;
import pegbook.measure.Force;
import pegbook.measure.UnitSystem;

/**
 * What the reader must act on: one finding a cause.
 *
 * @param job the job
 * @param footings every footing
 * @param water how near ground water is
 * @param lifts what wind lifts
 */
record FrostGripFindings(Job job, List<Footing> footings, Water water, List<WindLift> lifts) {
  /** A lift of less than this is none. */
  private static final Force TOLERANCE = new Force(1);

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    grip().ifPresent(findings::add);
    wind().ifPresent(findings::add);
    return findings;
  }

  /** Piers must not move at all, and water that nobody knows may be near: both are asked about. */
  private Optional<Finding> grip() {
    List<Footing> lifted =
        footings.stream()
            .filter(
                footing ->
                    footing.verdict() == Verdict.LIFTS || footing.verdict() == Verdict.MAY_LIFT)
            .toList();
    boolean piers = lifted.stream().anyMatch(footing -> footing.mark().startsWith("P"));
    Kind kind = piers || water != Water.DEEP ? Kind.ASK : Kind.NOTE;
    return lifted.stream()
        .max(Comparator.comparing(FrostGripFindings::unheld))
        .map(
            worst ->
                Finding.of(
                        kind, "frost-grip", "ground.soil", Decider.ENGINEER, FrostGripFormulas.GRIP)
                    .about(lifted.stream().map(Footing::mark).toList())
                    .with("soil", Argument.entry("soil." + job.ground().soil().id()))
                    .with("water", Argument.entry("frost-grip.water." + name(water)))
                    .with("worst", Argument.words(worst.mark()))
                    .with("typical", Argument.of(round(grip(worst).typical())))
                    .with("high", Argument.of(round(grip(worst).high())))
                    .with("hold", Argument.of(round(worst.hold().plus(grip(worst).anchorage())))));
  }

  private static String name(Water water) {
    return switch (water) {
      case NEAR -> "near";
      case DEEP -> "deep";
      case UNKNOWN -> "unknown";
    };
  }

  private static Grip grip(Footing footing) {
    return footing.grip().orElseThrow();
  }

  private static Force unheld(Footing footing) {
    return grip(footing).typical().minus(footing.hold()).minus(grip(footing).anchorage());
  }

  /** An estimate is told in round figures. */
  private Force round(Force force) {
    Force step =
        job.heading().units() == UnitSystem.IMPERIAL
            ? Force.ofPoundsForce(100)
            : Force.ofKilonewtons(0.5);
    return force.setTo(step, pegbook.measure.Rounding.NEAREST);
  }

  private Optional<Finding> wind() {
    List<WindLift> lifted =
        lifts.stream().filter(lift -> lift.net().isMoreThan(TOLERANCE)).toList();
    return lifted.stream()
        .max(Comparator.comparing(WindLift::net))
        .map(
            worst ->
                Finding.of(
                        Kind.ASK,
                        "wind-lifts-footing",
                        "wind",
                        Decider.ENGINEER,
                        FrostGripFormulas.UPLIFT)
                    .about(lifted.stream().map(WindLift::mark).toList())
                    .with("up", Argument.of(roundUp(worst.up())))
                    .with("hold", Argument.of(round(worst.hold())))
                    .with("net", Argument.of(roundUp(worst.net()))));
  }

  private Force roundUp(Force force) {
    Force step =
        job.heading().units() == UnitSystem.IMPERIAL
            ? Force.ofPoundsForce(10)
            : Force.ofKilonewtons(0.05);
    return force.setTo(step, pegbook.measure.Rounding.UP);
  }
}
