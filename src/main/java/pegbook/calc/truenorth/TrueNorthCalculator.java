package pegbook.calc.truenorth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.truenorth.TrueNorth.CompassLine;
import pegbook.calc.truenorth.TrueNorth.EqualShadows;
import pegbook.calc.truenorth.TrueNorth.Height;
import pegbook.calc.truenorth.TrueNorth.NoonShadow;
import pegbook.calc.truenorth.TrueNorth.SunDay;
import pegbook.calc.truenorth.TrueNorth.Turn;
import pegbook.figures.Placement;
import pegbook.figures.WorkDates;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.measure.Length;

/**
 * Finds true north by the sun's shadow.
 *
 * <p>When the sun stands highest, a shadow lies on the meridian. How fast it turns then, and how
 * soft it is, say how well it gives north. Two shadows of equal length, before and after noon, have
 * north in their middle and need no clock. Where the sun stands nearly overhead or low, the noon
 * shadow is refused. A compass's declination is the job's; it is never computed.
 */
public final class TrueNorthCalculator {
  /** So many of the next work days are listed. */
  private static final int DAYS = 6;

  private TrueNorthCalculator() {}

  /** Finds north for a job's place and its next work days. */
  public static TrueNorth calculate(Job job, Placement placement) {
    Length radius =
        placement.marks().stream()
            .map(mark -> mark.at().distanceTo(Point.ORIGIN))
            .reduce(Length.ZERO, Length::max);
    List<Working> workings = new ArrayList<>();
    Optional<Shadows> shadows = Shadows.of(job, radius);
    List<LocalDate> dates = WorkDates.first(job.crew(), DAYS);
    List<SunDay> days = shadows.map(some -> some.days(dates)).orElse(List.of());
    Optional<NoonShadow> noon =
        days.stream()
            .filter(day -> day.height() == Height.SERVES)
            .findFirst()
            .flatMap(day -> shadows.map(some -> some.noon(day.date(), workings)));
    Optional<EqualShadows> equal = shadows.flatMap(some -> equal(some, days, workings));
    TurnToMark toMark = TurnToMark.of(job, placement);
    Turn turn = toMark.turn(workings);
    Optional<CompassLine> compass = toMark.compass(radius, workings);
    boolean printed = !days.isEmpty() || compass.isPresent();
    return new TrueNorth(
        days,
        noon,
        equal,
        turn,
        compass,
        radius,
        TrueNorthFindings.of(job, days, noon.isPresent() || equal.isPresent()),
        printed ? workings : List.of());
  }

  private static Optional<EqualShadows> equal(
      Shadows shadows, List<SunDay> days, List<Working> workings) {
    for (SunDay day : days) {
      Optional<EqualShadows> equal = shadows.equal(day.date(), workings);
      if (equal.isPresent()) {
        return equal;
      }
    }
    return Optional.empty();
  }
}
