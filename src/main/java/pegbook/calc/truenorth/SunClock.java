package pegbook.calc.truenorth;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import pegbook.calc.truenorth.TrueNorth.Light;
import pegbook.figures.Working;
import pegbook.measure.Unit;

/**
 * When the sun rises, stands highest and sets at a place, by the civil clock there.
 *
 * @param site the place
 * @param zone whose clock; its summer time is that of the Java that prints
 */
record SunClock(Sun.Site site, ZoneId zone) {
  /** Where the sun's middle is when its upper edge seems on the horizon, by convention. */
  static final double HORIZON_DEGREES = -0.8333;

  /** The sun's place changes so little in a day that a few rounds settle it to the millisecond. */
  private static final int ROUNDS = 6;

  /**
   * The moment nearest to civil noon at which the sun stands highest.
   *
   * @param at the moment
   * @param offset of the clock then
   * @param sun the sun then
   * @param clock how the clock's time follows, in hours
   */
  record Noon(Instant at, ZoneOffset offset, Sun sun, Working clock) {
    /** By the clock, to the nearest second. */
    LocalTime time() {
      return clockTime(at, offset);
    }
  }

  private static LocalTime clockTime(Instant at, ZoneOffset offset) {
    Instant rounded = at.plusMillis(500);
    return LocalTime.ofSecondOfDay(
        Math.floorMod(rounded.getEpochSecond() + offset.getTotalSeconds(), 86_400L));
  }

  Noon noon(LocalDate day) {
    Instant at = day.atTime(LocalTime.NOON).atZone(zone).toInstant();
    for (int i = 0; i < ROUNDS; i++) {
      double hourAngle = Sun.at(at).hourAngleDegrees(site.longitudeDegrees());
      at = at.plusMillis(Math.round(-hourAngle * 240_000));
    }
    ZoneOffset offset = zone.getRules().getOffset(at);
    Sun sun = Sun.at(at);
    Working clock =
        new Working(
            TrueNorthFormulas.noon(),
            day.toString(),
            List.of(
                offset.getTotalSeconds() / Unit.HOUR.toSi(1),
                site.longitudeDegrees(),
                sun.equationMinutes()));
    return new Noon(at, offset, sun, clock);
  }

  /**
   * Sunrise before a noon and sunset after it.
   *
   * @param rise by the clock; none where the sun does not rise or set
   */
  record Daylight(Light light, Optional<LocalTime> rise, Optional<LocalTime> set) {}

  Daylight daylight(Noon noon) {
    double cosine = horizonCosine(noon.sun());
    if (cosine > 1) {
      return new Daylight(Light.NEVER_RISES, Optional.empty(), Optional.empty());
    }
    if (cosine < -1) {
      return new Daylight(Light.NEVER_SETS, Optional.empty(), Optional.empty());
    }
    Optional<LocalTime> rise = horizon(noon, -1).map(at -> clock(at));
    Optional<LocalTime> set = horizon(noon, 1).map(at -> clock(at));
    return new Daylight(Light.RISES_AND_SETS, rise, set);
  }

  private LocalTime clock(Instant at) {
    return clockTime(at, zone.getRules().getOffset(at));
  }

  /** Cosine of the hour angle at which the sun is on the horizon; beyond 1 it never is. */
  private double horizonCosine(Sun sun) {
    double latitude = site.latitudeDegrees();
    double declination = sun.declinationDegrees();
    double bottom = SunFormulas.cos(latitude) * SunFormulas.cos(declination);
    double top =
        SunFormulas.sin(HORIZON_DEGREES) - SunFormulas.sin(latitude) * SunFormulas.sin(declination);
    return bottom < 1e-12 ? Math.signum(top) * 2 : top / bottom;
  }

  /** The moment on the horizon before (-1) or after (1) a noon. */
  private Optional<Instant> horizon(Noon noon, int side) {
    Instant at = noon.at();
    for (int i = 0; i < ROUNDS; i++) {
      Sun sun = Sun.at(at);
      double cosine = horizonCosine(sun);
      if (Math.abs(cosine) > 1) {
        return Optional.empty();
      }
      double wanted = side * StrictMath.toDegrees(StrictMath.acos(cosine));
      double gone = sun.hourAngleDegrees(site.longitudeDegrees());
      double step = SunFormulas.turn(wanted - gone + 180) - 180;
      at = at.plusMillis(Math.round(step * 240_000));
    }
    return Optional.of(at);
  }
}
