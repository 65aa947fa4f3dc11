package pegbook.calc.startconditions;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.job.DaySpan;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.job.UtilityMarking;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.LocalRules;
import pegbook.published.SafetyLimit;

/**
 * Finds what stands in the way of the whole job, whatever its figures: utilities, authority,
 * permit, use, what nobody has checked yet.
 */
public final class StartConditionsCalculator {
  private static final Citation UTILITIES_FIRST = new Citation("cfr-1926", "1926.651(b)");
  private static final Citation PRESCRIPTIVE_SCOPE = new Citation("irc", "R101.2");

  private StartConditionsCalculator() {}

  /**
   * Looks through a job.
   *
   * @param job the job
   * @param holes its holes with their depths
   */
  public static StartConditions calculate(Job job, List<Hole> holes) {
    List<Finding> findings = new ArrayList<>();
    utilities(job, holes).ifPresent(findings::add);
    use(job.floor()).ifPresent(findings::add);
    authority(job).ifPresent(findings::add);
    permit(job).ifPresent(findings::add);
    if (!job.place().isUnitedStates()) {
      findings.add(otherCountry(job.place().country()));
    }
    crew(job).ifPresent(findings::add);
    issueDate(job).ifPresent(findings::add);
    return new StartConditions(findings);
  }

  private static Optional<Finding> utilities(Job job, List<Hole> holes) {
    Optional<UtilityMarking> marking = job.place().utilities();
    Optional<LocalDate> start = job.crew().start();
    if (marking.isEmpty()) {
      return Optional.of(
          utilityFinding(job, Kind.STOP, "utilities-not-confirmed")
              .with("holes", Argument.of(holes.size()))
              .with("deepest", Argument.of(deepest(holes))));
    }
    LocalDate confirmed = marking.get().confirmed();
    if (start.isEmpty()) {
      return Optional.empty();
    }
    if (confirmed.isAfter(start.get())) {
      return Optional.of(
          utilityFinding(job, Kind.STOP, "utilities-after-start")
              .with("confirmed", Argument.of(confirmed))
              .with("start", Argument.of(start.get())));
    }
    SafetyLimit age = SafetyLimit.find("marks-age");
    Optional<DaySpan> stated = job.plan().utility().valid();
    DaySpan valid = stated.orElseGet(() -> new DaySpan((int) age.value(), false));
    LocalDate until = valid.after(confirmed);
    if (!until.isBefore(start.get())) {
      return Optional.empty();
    }
    Finding old =
        utilityFinding(job, Kind.ASK, "utility-marks-old")
            .with("days", Argument.of(ChronoUnit.DAYS.between(confirmed, start.get())))
            .with("limit", Argument.of(ChronoUnit.DAYS.between(confirmed, until)))
            .with("start", Argument.of(start.get()));
    return Optional.of(stated.isPresent() ? old : old.citing(age.source()));
  }

  private static Finding utilityFinding(Job job, Kind kind, String id) {
    List<Citation> sources =
        job.place().isUnitedStates()
            ? List.of(UTILITIES_FIRST)
            : LocalRules.of(job.place().country(), LocalRules.Topic.UTILITIES);
    return new Finding(
        kind,
        id,
        List.of(),
        "place.utilities",
        Map.of(),
        Decider.UTILITY_SERVICE,
        sources.isEmpty() ? List.of(Citation.COMMON_PRACTICE) : sources);
  }

  private static Optional<Finding> use(Optional<Floor> floor) {
    if (floor.isEmpty()) {
      return Optional.of(
          Finding.of(Kind.ASK, "use-not-given", "floor.use", Decider.OWNER, PRESCRIPTIVE_SCOPE));
    }
    return switch (floor.get().use()) {
      case PUBLIC -> Optional.of(needsDesigner("use.public"));
      case ASSEMBLY -> Optional.of(needsDesigner("use.assembly"));
      case SCHOOL -> Optional.of(needsDesigner("use.school"));
      case HUT, PRIVATE_DECK, PRIVATE_PLATFORM -> Optional.empty();
    };
  }

  private static Finding needsDesigner(String use) {
    return Finding.of(
            Kind.STOP, "use-needs-designer", "floor.use", Decider.ENGINEER, PRESCRIPTIVE_SCOPE)
        .with("use", Argument.entry(use));
  }

  private static Optional<Finding> authority(Job job) {
    return job.place().authority().isPresent()
        ? Optional.empty()
        : Optional.of(
            Finding.of(
                Kind.ASK,
                "authority-not-named",
                "place.authority",
                Decider.OWNER,
                Citation.COMMON_PRACTICE));
  }

  private static Optional<Finding> permit(Job job) {
    return job.place().permit().isPresent()
        ? Optional.empty()
        : Optional.of(
            Finding.of(
                Kind.ASK,
                "permit-not-known",
                "place.permit",
                Decider.BUILDING_AUTHORITY,
                new Citation("irc", "R105.1")));
  }

  private static Finding otherCountry(String country) {
    return Finding.of(
            Kind.ASK,
            "rules-of-another-country",
            "place.country",
            Decider.BUILDING_AUTHORITY,
            new Citation("irc", ""))
        .with("country", Argument.words(country));
  }

  private static Optional<Finding> crew(Job job) {
    return job.crew().people() > 1
        ? Optional.empty()
        : Optional.of(
            Finding.of(
                Kind.ASK, "crew-of-one", "crew.people", Decider.OWNER, Citation.COMMON_PRACTICE));
  }

  private static Optional<Finding> issueDate(Job job) {
    return job.heading().issued().isPresent()
        ? Optional.empty()
        : Optional.of(
            Finding.of(
                Kind.NOTE,
                "issue-date-missing",
                "issued",
                Decider.OWNER,
                Citation.COMMON_PRACTICE));
  }

  private static Length deepest(List<Hole> holes) {
    return holes.stream().map(Hole::dug).max(Length::compareTo).orElse(Length.ZERO);
  }
}
