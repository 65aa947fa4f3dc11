package pegbook.calc.truenorth;

import java.util.List;
import java.util.Optional;
import pegbook.calc.truenorth.TrueNorth.CompassLine;
import pegbook.calc.truenorth.TrueNorth.Turn;
import pegbook.figures.Formula;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.geometry.Point;
import pegbook.job.Declination;
import pegbook.job.Job;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;

/**
 * The turn from the north line to the first mark.
 *
 * <p>Two tapes give it: one from the centre, one from a peg as far out on the north line. Of the
 * two ends of the line the nearer in direction is taken, so that the tapes cross at 45° to 90°; an
 * offset square to the line would need a right angle laid out first.
 */
final class TurnToMark {
  /** A mark that lies within this of the line lies on it. */
  private static final double ON_LINE_DEGREES = 1e-6;

  private final Job job;
  private final PlacedMark mark;

  private TurnToMark(Job job, PlacedMark mark) {
    this.job = job;
    this.mark = mark;
  }

  /** The first mark that does not stand on the centre, which has no direction. */
  static TurnToMark of(Job job, Placement placement) {
    return new TurnToMark(
        job,
        placement.marks().stream()
            .filter(mark -> mark.at().distanceTo(Point.ORIGIN).metres() > 1e-3)
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("every mark on the centre")));
  }

  private Angle azimuth() {
    return Point.ORIGIN.azimuthTo(mark.at());
  }

  Turn turn(List<Working> workings) {
    double azimuth = azimuth().degrees();
    boolean east = azimuth < 180;
    boolean north = SunFormulas.cos(azimuth) >= 0;
    double fromNorth = east ? azimuth : 360 - azimuth;
    double angle = north ? fromNorth : 180 - fromNorth;
    boolean onLine = angle < ON_LINE_DEGREES;
    TrueNorthFormulas formulas = TrueNorthFormulas.in(job.heading().units());
    Working chord = chord(formulas.chord(), angle);
    Working check = chord(formulas.chordCheck(), 180 - angle);
    if (!onLine) {
      workings.addAll(List.of(chord, check));
    }
    return new Turn(
        mark.id(),
        azimuth(),
        north ? Compass.NORTH : Compass.SOUTH,
        east ? Compass.EAST : Compass.WEST,
        onLine,
        along(),
        chord.asLength(),
        check.asLength(),
        mark.at().distanceTo(Point.ORIGIN).setTo(job.layout().tape().division(), Rounding.NEAREST));
  }

  /** As far out as the mark, at least 10 ft or 3 m and at most 30 ft or 10 m, in whole steps. */
  private Length along() {
    boolean imperial = job.heading().units() == UnitSystem.IMPERIAL;
    Length step = imperial ? Length.ofFeet(1) : new Length(0.5);
    Length least = imperial ? Length.ofFeet(10) : new Length(3);
    Length most = imperial ? Length.ofFeet(30) : new Length(10);
    return mark.at().distanceTo(Point.ORIGIN).setTo(step, Rounding.UP).max(least).min(most);
  }

  private Working chord(Formula formula, double degrees) {
    TrueNorthFormulas formulas = TrueNorthFormulas.in(job.heading().units());
    return new Working(
        formula,
        mark.id(),
        List.of(
            formulas.unit().in(along()),
            degrees,
            formulas.unit().in(job.layout().tape().division())));
  }

  /** What a compass shows, where the job gives its declination. */
  Optional<CompassLine> compass(Length radius, List<Working> workings) {
    return job.place().declination().map(given -> compass(given, radius, workings));
  }

  private CompassLine compass(Declination given, Length radius, List<Working> workings) {
    Working north = bearing("", 0, given);
    Working first = bearing(mark.id(), azimuth().degrees(), given);
    TrueNorthFormulas formulas = TrueNorthFormulas.in(job.heading().units());
    Working off =
        new Working(
            formulas.compassOff(),
            "",
            List.of(formulas.unit().in(radius), TrueNorth.COMPASS_READING.degrees()));
    workings.addAll(List.of(north, first, off));
    return new CompassLine(
        given.value(),
        given.from(),
        given.date(),
        north.asAngle(),
        first.asAngle(),
        off.asLength());
  }

  private static Working bearing(String subject, double azimuth, Declination given) {
    return new Working(
        TrueNorthFormulas.compass(), subject, List.of(azimuth, given.value().degrees()));
  }
}
