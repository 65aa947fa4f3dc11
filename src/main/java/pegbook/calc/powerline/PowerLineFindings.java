package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Line;
import pegbook.calc.powerline.PowerLine.Rule;
import pegbook.calc.powerline.PowerLine.Supplied;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.job.Power;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.published.Citation;
import pegbook.published.ExcavationRule;
import pegbook.published.SafetyLimit;

/** What the reader must know of conductors, depth and trench. */
record PowerLineFindings(
    Job job, Power power, Line line, ConductorPlan.Planned planned, boolean pipeFits) {
  /** A load that runs for hours takes no more than this of its breaker. */
  private static final Ratio LONG_LOAD = Ratio.ofPercent(80);

  private static final Citation CONTINUOUS = new Citation("nec-memory", "210.20(A)");
  private static final Length TOLERANCE = Length.ofMillimetres(1);

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    trenchDepth().ifPresent(findings::add);
    findings.add(
        Finding.of(
                Kind.ASK,
                "power-licensed",
                "power",
                Decider.ELECTRICAL_AUTHORITY,
                CoverRule.source(job))
            .with("voltage", Argument.of(power.supply().voltage()))
            .with("breaker", Argument.of(power.supply().breaker())));
    noConductor().ifPresent(findings::add);
    if (!pipeFits) {
      findings.add(ask("power-pipe-full", "power.method", CoverRule.source(job)));
    }
    fullBreaker().ifPresent(findings::add);
    cover().ifPresent(findings::add);
    sleeve().ifPresent(findings::add);
    return findings;
  }

  private static Finding ask(String id, String place, Citation source) {
    return Finding.of(Kind.ASK, id, place, Decider.ELECTRICAL_AUTHORITY, source);
  }

  /** A ladder from 4 ft, a protective system from 5 ft, as the rules for trenches have it. */
  private Optional<Finding> trenchDepth() {
    Length depth = line.trench().deepest().plus(TOLERANCE);
    ExcavationRule unshored = ExcavationRule.find("unshored-depth");
    SafetyLimit wayOut = SafetyLimit.find("way-out");
    if (!depth.isLessThan(unshored.threshold())) {
      return Optional.of(
          deep(Kind.STOP, "power-trench-unshored", unshored.citation())
              .with("limit", Argument.of(unshored.threshold())));
    }
    return depth.isLessThan(wayOut.length())
        ? Optional.empty()
        : Optional.of(
            deep(Kind.ASK, "power-trench-ladder", wayOut.source())
                .with("limit", Argument.of(wayOut.length()))
                .with("travel", Argument.of(SafetyLimit.find("way-out-travel").length())));
  }

  private Finding deep(Kind kind, String id, Citation source) {
    return Finding.of(
            kind,
            id,
            "power.depth",
            Decider.WORK_SAFETY_AUTHORITY,
            job.place().isUnitedStates() ? source : Citation.COMMON_PRACTICE)
        .with("depth", Argument.of(line.trench().deepest()));
  }

  /** What would do, where no size that the job allows does. */
  private Optional<Finding> noConductor() {
    if (line.conductors().chosen().isPresent()) {
      return Optional.empty();
    }
    boolean bears =
        line.conductors().sizes().stream()
            .filter(PowerLine.Size::allowed)
            .flatMap(size -> size.of(power.wiring().metal()).stream())
            .anyMatch(PowerLine.Metal::bears);
    String none = "power-line.none";
    Finding finding =
        ask(
                bears ? "power-no-conductor" : "power-no-conductor-bears",
                "power",
                CoverRule.source(job))
            .with("running", Argument.of(power.supply().running()))
            .with("breaker", Argument.of(power.supply().breaker()))
            .with("length", Argument.of(line.route().oneWay()))
            .with("drop", Argument.of(power.supply().drop()))
            .with(
                "larger",
                planned.larger().map(Argument::words).orElseGet(() -> Argument.entry(none)))
            .with(
                "voltage",
                line.conductors().supplies().stream()
                    .filter(supplied -> supplied.smallest().isPresent())
                    .map(Supplied::voltage)
                    .findFirst()
                    .map(Argument::of)
                    .orElseGet(() -> Argument.entry(none)));
    return Optional.of(
        finding.with(
            "longest", planned.longest().map(Argument::of).orElseGet(() -> Argument.entry(none))));
  }

  private Optional<Finding> fullBreaker() {
    double share = power.supply().running().amperes() / power.supply().breaker().amperes();
    return share <= LONG_LOAD.fraction() + 1e-9
        ? Optional.empty()
        : Optional.of(
            ask(
                    "power-breaker-full",
                    "power.running",
                    job.place().isUnitedStates() ? CONTINUOUS : Citation.COMMON_PRACTICE)
                .with("running", Argument.of(power.supply().running()))
                .with("breaker", Argument.of(power.supply().breaker()))
                .with("share", Argument.of(new Ratio(share)))
                .with("most", Argument.of(LONG_LOAD)));
  }

  /** A depth by habit alone, or one of the authority that the table does not bear out. */
  private Optional<Finding> cover() {
    CoverRule rule = CoverRule.of(job, power, line.trench().main().under());
    if (rule.rule() == Rule.HABIT) {
      return Optional.of(
          ask("power-depth-by-habit", "power.depth", Citation.COMMON_PRACTICE)
              .with("cover", Argument.of(rule.cover())));
    }
    Optional<Power.Depth> given = power.depth();
    return given.isPresent() && given.get().cover().plus(TOLERANCE).isLessThan(rule.listed())
        ? Optional.of(
            ask("power-depth-shallow", "power.depth", CoverRule.source(job))
                .with("given", Argument.of(given.get().cover()))
                .with("listed", Argument.of(rule.listed()))
                .with("from", Argument.words(given.get().from())))
        : Optional.empty();
  }

  /** The pier to which the line goes has no sleeve for it. */
  private Optional<Finding> sleeve() {
    return job.piers().stream()
        .filter(pier -> power.pier().filter(pier.id()::equals).isPresent())
        .filter(pier -> pier.sleeve().isEmpty())
        .map(Pier::id)
        .findFirst()
        .map(
            id ->
                Finding.of(
                        Kind.ASK,
                        "power-pier-without-sleeve",
                        "piers.sleeve",
                        Decider.OWNER,
                        Citation.COMMON_PRACTICE)
                    .about(List.of(id))
                    .with("pier", Argument.words(id)));
  }
}
