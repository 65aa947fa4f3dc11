package pegbook.calc.truenorth;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.truenorth.TrueNorth.Height;
import pegbook.calc.truenorth.TrueNorth.SunDay;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Declination;
import pegbook.job.Job;
import pegbook.measure.Angle;
import pegbook.published.Citation;

/** What the reader must act on before trusting a shadow. */
final class TrueNorthFindings {
  /** No civil clock stands further from the sun than this; common knowledge. */
  private static final int MOST_SECONDS_FROM_NOON = (int) (3.5 * 3600);

  /** A declination older than this is worth asking again; common practice. */
  private static final int OLD_YEARS = 5;

  private TrueNorthFindings() {}

  static List<Finding> of(Job job, List<SunDay> days, boolean hasMethod) {
    List<Finding> findings = new ArrayList<>();
    List<String> missing = SunPlace.missing(job.place());
    if (!missing.isEmpty()) {
      findings.add(
          note("true-north-incomplete", "place." + missing.get(0))
              .with("missing", Argument.words(String.join(", ", missing))));
    } else if (SunPlace.of(job.place()).isPresent() && days.isEmpty()) {
      findings.add(note("true-north-no-date", "crew.start"));
    }
    days.stream().findFirst().flatMap(TrueNorthFindings::clock).ifPresent(findings::add);
    height(days, Height.TOO_HIGH, "true-north-too-high").ifPresent(findings::add);
    low(days).ifPresent(findings::add);
    if (!days.isEmpty() && !hasMethod) {
      findings.add(
          Finding.of(
              Kind.ASK,
              "true-north-no-method",
              "crew.start",
              Decider.SURVEYOR,
              Citation.COMMON_PRACTICE));
    }
    job.place().declination().flatMap(given -> old(job, given)).ifPresent(findings::add);
    return findings;
  }

  private static Finding note(String id, String place) {
    return Finding.of(Kind.NOTE, id, place, Decider.CREW, Citation.COMMON_PRACTICE);
  }

  /** A noon far from twelve: a sign or a zone is wrong. */
  private static Optional<Finding> clock(SunDay day) {
    int away = Math.abs(day.noon().toSecondOfDay() - LocalTime.NOON.toSecondOfDay());
    return away <= MOST_SECONDS_FROM_NOON
        ? Optional.empty()
        : Optional.of(
            Finding.of(
                    Kind.ASK,
                    "true-north-clock",
                    "place.longitude",
                    Decider.OWNER,
                    Citation.COMMON_PRACTICE)
                .with("noon", Argument.words(day.noon().withSecond(0).toString())));
  }

  private static Optional<Finding> height(List<SunDay> days, Height height, String id) {
    List<SunDay> such = days.stream().filter(day -> day.height() == height).toList();
    return such.isEmpty() ? Optional.empty() : Optional.of(about(such, note(id, "crew.start")));
  }

  private static Optional<Finding> low(List<SunDay> days) {
    List<SunDay> low =
        days.stream()
            .filter(day -> day.height() == Height.TOO_LOW || day.height() == Height.BELOW)
            .toList();
    return low.isEmpty()
        ? Optional.empty()
        : Optional.of(about(low, note("true-north-too-low", "crew.start")));
  }

  private static Finding about(List<SunDay> days, Finding finding) {
    return finding
        .with("from", Argument.of(days.get(0).date()))
        .with("to", Argument.of(days.get(days.size() - 1).date()))
        .with("altitude", Argument.of(days.get(0).altitude()))
        .with("least", Argument.of(Angle.ofDegrees(Shadows.LEAST_ALTITUDE)))
        .with("zenith", Argument.of(Angle.ofDegrees(Shadows.LEAST_ZENITH)));
  }

  private static Optional<Finding> old(Job job, Declination given) {
    Optional<LocalDate> used = job.crew().start().or(() -> job.heading().issued());
    return used.filter(day -> given.date().plusYears(OLD_YEARS).isBefore(day))
        .map(
            day ->
                note("true-north-old-declination", "place.declination")
                    .with("date", Argument.of(given.date()))
                    .with("day", Argument.of(day)));
  }
}
