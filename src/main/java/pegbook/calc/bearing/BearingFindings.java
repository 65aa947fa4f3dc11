package pegbook.calc.bearing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.bearing.Bearing.Check;
import pegbook.calc.bearing.Bearing.Footing;
import pegbook.calc.bearing.Bearing.Remedy;
import pegbook.calc.bearing.Bearing.Verdict;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.MarkKind;
import pegbook.job.Job;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.published.Citation;
import pegbook.published.SoilBearing;

/**
 * What the reader must act on.
 *
 * @param job the job
 * @param allowable what the ground may carry
 * @param footings every footing
 */
record BearingFindings(Job job, Optional<Allowable> allowable, List<Footing> footings) {
  private static final Citation TESTS = new Citation("irc", "R401.4");

  /**
   * The middle support under a beam that runs on over two equal spans carries 5/4 of what lies
   * nearest to it; where the joists run on over it as well, 5/4 of that again. Exact for an even
   * load.
   */
  private static final double BEAM_RUNS_ON = 1.25;

  /**
   * All of them.
   *
   * @param byBeam the loads are those of a frame's beams
   */
  List<Finding> of(List<Remedy> remedies, boolean byBeam) {
    List<Finding> findings = new ArrayList<>();
    remedies.forEach(remedy -> findings.add(exceeded(remedy)));
    ownWeight().ifPresent(findings::add);
    ground().ifPresent(findings::add);
    narrow().ifPresent(findings::add);
    if (!byBeam) {
      continuous().ifPresent(findings::add);
    }
    return findings;
  }

  private Finding exceeded(Remedy remedy) {
    Footing worst =
        footings.stream()
            .filter(footing -> remedy.marks().contains(footing.mark()))
            .max(Comparator.comparing(Footing::pressure))
            .orElseThrow();
    return finding(Kind.STOP, "bearing-exceeded", remedy.kind(), BearingFormulas.NET_WAY)
        .about(remedy.marks())
        .with("pressure", Argument.of(worst.pressure()))
        .with("allowed", Argument.of(allowed()))
        .with("standing", Argument.of(worst.standing()))
        .with("diameter", Argument.of(remedy.diameter()))
        .with("side", Argument.of(remedy.side()))
        .with("thickness", Argument.of(remedy.thickness()));
  }

  private Finding finding(Kind kind, String id, MarkKind of, Citation source) {
    String place = of == MarkKind.SUPPORT ? "supports.hole" : "piers";
    return Finding.of(kind, id, place, Decider.ENGINEER, source);
  }

  private Pressure allowed() {
    return allowable.map(Allowable::value).orElse(Pressure.ZERO);
  }

  /** Footings that press too hard by their own weight alone. */
  private Optional<Finding> ownWeight() {
    List<Footing> some = having(Verdict.NO_WIDTH);
    return some.stream()
        .max(Comparator.comparing(Footing::pressure))
        .map(
            worst ->
                Finding.of(
                        Kind.STOP,
                        "bearing-own-weight",
                        "ground.allowablePressure",
                        Decider.ENGINEER,
                        BearingFormulas.NET_WAY)
                    .about(marks(some))
                    .with("pressure", Argument.of(worst.pressure()))
                    .with("allowed", Argument.of(allowed())));
  }

  /** How far the ground's own figure may be leaned on. */
  private Optional<Finding> ground() {
    Optional<SoilBearing> published = Allowable.published(job.ground());
    if (allowable.isEmpty()) {
      return Optional.of(
          Finding.of(
                  Kind.STOP,
                  "bearing-soil-without-value",
                  "ground.allowablePressure",
                  Decider.ENGINEER,
                  TESTS)
              .with("soil", soil()));
    }
    if (published.isEmpty()) {
      return Optional.of(
          ask("bearing-soil-outside-table").with("allowed", value()).with("soil", soil()));
    }
    if (allowable.get().assumed()) {
      return Optional.of(
          ask("bearing-assumed")
              .citing(published.get().citation())
              .citing(Allowable.IRC_TABLE)
              .with("allowed", value())
              .with("soil", soil()));
    }
    return allowed().isMoreThan(published.get().pressure().times(1 + 1e-6))
        ? Optional.of(
            ask("bearing-above-table")
                .citing(published.get().citation())
                .with("allowed", value())
                .with("from", Argument.words(allowable.get().from().orElse("")))
                .with("soil", soil())
                .with("table", Argument.of(published.get().pressure())))
        : Optional.empty();
  }

  private Finding ask(String id) {
    return Finding.of(Kind.ASK, id, "ground.allowablePressure", Decider.ENGINEER, TESTS);
  }

  private Argument value() {
    return Argument.of(allowed());
  }

  private Argument soil() {
    return Argument.entry("soil." + job.ground().soil().id());
  }

  private Optional<Finding> narrow() {
    List<Footing> some = having(Verdict.NARROW);
    return some.stream()
        .max(Comparator.comparing(BearingFindings::wanted))
        .map(
            worst ->
                finding(Kind.NOTE, "bearing-narrow", worst.kind(), BearingFormulas.NET_WAY)
                    .citing(BearingFormulas.GROSS_WAY)
                    .about(marks(some))
                    .with("standing", Argument.of(worst.standing()))
                    .with("diameter", Argument.of(wanted(worst))));
  }

  private static Length wanted(Footing footing) {
    return footing
        .check()
        .flatMap(Check::needed)
        .map(Bearing.Needed::decided)
        .orElse(footing.standing());
  }

  /** Supports carry more than the floor nearest to them where beams run on over them. */
  private Optional<Finding> continuous() {
    List<Footing> supports =
        footings.stream().filter(footing -> footing.kind() == MarkKind.SUPPORT).toList();
    if (supports.isEmpty()) {
      return Optional.empty();
    }
    List<String> over =
        marks(
            supports.stream()
                .filter(footing -> footing.check().filter(this::isWithin).isPresent())
                .filter(footing -> isOver(footing, BEAM_RUNS_ON))
                .toList());
    Finding asked =
        Finding.of(
                Kind.ASK,
                over.isEmpty() ? "beams-not-known" : "beams-may-overload",
                "floor",
                Decider.ENGINEER,
                Citation.GEOMETRY)
            .with("one", Argument.of(Ratio.ofPercent(100 * (BEAM_RUNS_ON - 1))))
            .with("both", Argument.of(Ratio.ofPercent(100 * (BEAM_RUNS_ON * BEAM_RUNS_ON - 1))));
    return Optional.of(over.isEmpty() ? asked.about(marks(supports)) : asked.about(over));
  }

  private boolean isWithin(Check check) {
    return check.verdict() == Verdict.WITHIN || check.verdict() == Verdict.NARROW;
  }

  private static boolean isOver(Footing footing, double factor) {
    Force more = footing.carried().times(factor);
    return footing
        .check()
        .filter(check -> more.isMoreThan(check.mayCarry().times(1 + 1e-6)))
        .isPresent();
  }

  private List<Footing> having(Verdict verdict) {
    return footings.stream()
        .filter(footing -> footing.check().filter(one -> one.verdict() == verdict).isPresent())
        .toList();
  }

  private static List<String> marks(List<Footing> some) {
    return some.stream().map(Footing::mark).toList();
  }
}
