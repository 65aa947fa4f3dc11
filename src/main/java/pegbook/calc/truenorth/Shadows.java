package pegbook.calc.truenorth;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.truenorth.SunClock.Daylight;
import pegbook.calc.truenorth.SunClock.Noon;
import pegbook.calc.truenorth.TrueNorth.EqualShadows;
import pegbook.calc.truenorth.TrueNorth.Height;
import pegbook.calc.truenorth.TrueNorth.NoonShadow;
import pegbook.calc.truenorth.TrueNorth.SunDay;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;

/**
 * What shadows a pole throws on a day, and how well they give north.
 *
 * @param units in which the packet prints
 * @param clock the place's
 * @param radius from the centre to the farthest mark
 */
record Shadows(UnitSystem units, SunClock clock, Length radius) {
  /** Nearer than this to overhead the sun turns a shadow too fast; common practice. */
  static final double LEAST_ZENITH = 10;

  /** Lower than this a shadow is too long and faint; common practice. */
  static final double LEAST_ALTITUDE = 10;

  /** Two shadows must stand at least so far apart; common practice. */
  private static final double LEAST_BETWEEN = 40;

  /** Equal shadows are tried so many hours before and after noon; the most exact are taken. */
  private static final double[] HOURS = {4, 3.5, 3, 2.5, 2, 1.5};

  /** Worse than this a shadow gives no more than a hand compass, degrees. */
  private static final double MOST_ERROR = 2;

  private static final double TOLERANCE = 1e-6;

  private boolean imperial() {
    return units == UnitSystem.IMPERIAL;
  }

  Length pole() {
    return imperial() ? TrueNorth.POLE_IMPERIAL : TrueNorth.POLE_METRIC;
  }

  private Length mark() {
    return imperial() ? TrueNorth.MARK_IMPERIAL : TrueNorth.MARK_METRIC;
  }

  private TrueNorthFormulas formulas() {
    return TrueNorthFormulas.in(units);
  }

  private static Height height(double altitude) {
    if (altitude < 0) {
      return Height.BELOW;
    }
    if (altitude < LEAST_ALTITUDE - TOLERANCE) {
      return Height.TOO_LOW;
    }
    return altitude > 90 - LEAST_ZENITH + TOLERANCE ? Height.TOO_HIGH : Height.SERVES;
  }

  SunDay day(LocalDate date) {
    Noon noon = clock.noon(date);
    double zenith = zenith(noon).result();
    Height height = height(90 - zenith);
    Daylight light = clock.daylight(noon);
    boolean serves = height == Height.SERVES;
    return new SunDay(
        date,
        noon.time(),
        noon.offset(),
        Angle.ofDegrees(90 - zenith),
        height,
        serves ? Optional.of(shadow(zenith).asLength()) : Optional.empty(),
        serves ? Optional.of(rate(noon, zenith).asAngle()) : Optional.empty(),
        light.light(),
        light.rise(),
        light.set());
  }

  private Working zenith(Noon noon) {
    return new Working(
        TrueNorthFormulas.zenith(),
        "",
        List.of(clock.site().latitudeDegrees(), noon.sun().declinationDegrees()));
  }

  private Working shadow(double zenith) {
    return new Working(formulas().shadow(), "", List.of(in(pole()), zenith));
  }

  private static Working rate(Noon noon, double zenith) {
    return new Working(
        TrueNorthFormulas.rate(), "", List.of(noon.sun().declinationDegrees(), zenith));
  }

  private double in(Length length) {
    return formulas().unit().in(length);
  }

  /** The shadow at noon of a day on which it serves. */
  NoonShadow noon(LocalDate date, List<Working> workings) {
    Noon noon = clock.noon(date);
    Working zenith = zenith(noon);
    Working shadow = shadow(zenith.result());
    Working rate = rate(noon, zenith.result());
    Working error =
        new Working(
            formulas().noonError(),
            "",
            List.of(
                rate.result(), TrueNorth.CLOCK_MINUTES, zenith.result(), in(mark()), in(pole())));
    Working off = new Working(formulas().noonOff(), "", List.of(in(radius), error.result()));
    workings.addAll(noon.sun().workings());
    workings.addAll(List.of(noon.clock(), zenith, shadow, rate, error, off));
    return new NoonShadow(
        date,
        noon.time(),
        clock.site().latitudeDegrees() > noon.sun().declinationDegrees(),
        shadow.asLength(),
        rate.asAngle(),
        error.asAngle(),
        off.asLength());
  }

  /** The two moments, and where the sun stands. */
  private record Pair(Sun before, Sun after, Sun.Stand first, Sun.Stand second, double hours) {
    double between() {
      return Math.abs(
          SunFormulas.turn(second.azimuthDegrees() - first.azimuthDegrees() + 180) - 180);
    }

    double lowest() {
      return Math.min(first.altitudeDegrees(), second.altitudeDegrees());
    }
  }

  private Pair pair(Noon noon, double hours) {
    Duration lead = Duration.ofSeconds(Math.round(hours * Unit.HOUR.toSi(1)));
    Sun before = Sun.at(noon.at().minus(lead));
    Sun after = Sun.at(noon.at().plus(lead));
    return new Pair(before, after, before.over(clock.site()), after.over(clock.site()), hours);
  }

  /** True where the shadows are neither too long nor too near each other. */
  private static boolean serves(Pair pair) {
    return pair.lowest() >= LEAST_ALTITUDE - TOLERANCE
        && pair.between() >= LEAST_BETWEEN - TOLERANCE
        && pair.first().altitudeDegrees() <= 90 - LEAST_ZENITH + TOLERANCE;
  }

  /** Two equal shadows of a day; nothing where the sun stands too low or too near overhead. */
  Optional<EqualShadows> equal(LocalDate date, List<Working> workings) {
    Noon noon = clock.noon(date);
    Optional<Pair> best = Optional.empty();
    double least = MOST_ERROR;
    for (double hours : HOURS) {
      Pair pair = pair(noon, hours);
      double error = serves(pair) ? equalError(pair, drift(pair)).result() : least;
      if (error < least - TOLERANCE) {
        least = error;
        best = Optional.of(pair);
      }
    }
    return best.map(pair -> equal(date, pair, workings));
  }

  private Working drift(Pair pair) {
    return new Working(
        TrueNorthFormulas.drift(),
        "",
        List.of(
            pair.before().declinationDegrees(),
            pair.after().declinationDegrees(),
            clock.site().latitudeDegrees(),
            pair.hours() * 15));
  }

  private Working equalError(Pair pair, Working drift) {
    return new Working(
        formulas().equalError(),
        "",
        List.of(
            drift.result(),
            pair.first().altitudeDegrees(),
            turnPerHeight(pair),
            in(mark()),
            in(pole())));
  }

  private EqualShadows equal(LocalDate date, Pair pair, List<Working> workings) {
    Working drift = drift(pair);
    Working error = equalError(pair, drift);
    Working off = new Working(formulas().equalOff(), "", List.of(in(radius), error.result()));
    Length length = shadow(90 - pair.first().altitudeDegrees()).asLength();
    Working swing = new Working(formulas().swing(), "", List.of(in(length), pair.between()));
    workings.addAll(List.of(drift, error, off, swing));
    return new EqualShadows(
        date,
        time(pair.before().at()),
        time(pair.after().at()),
        length,
        Angle.ofDegrees(SunFormulas.turn(pair.first().azimuthDegrees() + 180)),
        Angle.ofDegrees(SunFormulas.turn(pair.second().azimuthDegrees() + 180)),
        swing.asLength(),
        drift.asAngle(),
        error.asAngle(),
        off.asLength());
  }

  /** By the clock, to the minute. */
  private LocalTime time(Instant at) {
    Instant minute = at.plusSeconds(30);
    return minute.atZone(clock.zone()).toLocalTime().withSecond(0).withNano(0);
  }

  /** How far the shadow turns while the sun climbs by a degree, at the first of a pair. */
  private double turnPerHeight(Pair pair) {
    Sun.Stand early = Sun.at(pair.before().at().minusSeconds(60)).over(clock.site());
    Sun.Stand late = Sun.at(pair.before().at().plusSeconds(60)).over(clock.site());
    double turned = SunFormulas.turn(late.azimuthDegrees() - early.azimuthDegrees() + 180) - 180;
    return Math.abs(turned / (late.altitudeDegrees() - early.altitudeDegrees()));
  }

  /** The shadows of a job, where its place and clock are known. */
  static Optional<Shadows> of(Job job, Length radius) {
    return SunPlace.of(job.place()).map(clock -> new Shadows(job.heading().units(), clock, radius));
  }

  /** The next days on which the crew works. */
  List<SunDay> days(List<LocalDate> dates) {
    List<SunDay> days = new ArrayList<>();
    dates.forEach(date -> days.add(day(date)));
    return days;
  }
}
