package pegbook.calc.truenorth;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Working;

/**
 * The sun at a moment.
 *
 * @param at the moment
 * @param declinationDegrees height over the celestial equator, north positive
 * @param equationMinutes equation of time: how far a sundial is ahead of mean time
 * @param workings the steps
 */
record Sun(Instant at, double declinationDegrees, double equationMinutes, List<Working> workings) {
  /** The epoch from which days are counted: 2000-01-01 12:00 universal time. */
  static final Instant EPOCH = Instant.parse("2000-01-01T12:00:00Z");

  private static final double SECONDS_PER_DAY = 86_400;

  static Sun at(Instant moment) {
    Chain chain = new Chain();
    double days = Duration.between(EPOCH, moment).toMillis() / 1000.0 / SECONDS_PER_DAY;
    double century = chain.next(SunFormulas.century(), days);
    double longitude = chain.next(SunFormulas.meanLongitude(), century);
    double anomaly = chain.next(SunFormulas.meanAnomaly(), century);
    double centre = chain.next(SunFormulas.equationOfCentre(), century, anomaly);
    double apparent = chain.next(SunFormulas.apparentLongitude(), longitude, centre, century);
    double obliquity = chain.next(SunFormulas.obliquity(), century);
    double declination = chain.next(SunFormulas.declination(), obliquity, apparent);
    double equation =
        chain.next(SunFormulas.equationOfTime(), longitude, anomaly, obliquity, century);
    return new Sun(moment, declination, equation, List.copyOf(chain.workings));
  }

  /** Works one formula after another. */
  private static final class Chain {
    private final List<Working> workings = new ArrayList<>();

    double next(Formula formula, double... inputs) {
      List<Double> numbers = new ArrayList<>();
      for (double input : inputs) {
        numbers.add(input);
      }
      Working working = new Working(formula, "", numbers);
      workings.add(working);
      return working.result();
    }
  }

  /**
   * Local hour angle: how far past its highest stand the sun is, degrees from -180 to 180.
   *
   * @param longitudeDegrees east of Greenwich
   */
  double hourAngleDegrees(double longitudeDegrees) {
    double seconds = Math.floorMod(at.getEpochSecond(), 86_400L) + at.getNano() * 1e-9;
    double angle = seconds / 240 + longitudeDegrees + equationMinutes / 4 - 180;
    return SunFormulas.turn(angle + 180) - 180;
  }

  /** Where it stands over a place on the ground; see {@link Stand}. */
  Stand over(Site site) {
    return Stand.of(site, declinationDegrees, hourAngleDegrees(site.longitudeDegrees()));
  }

  /**
   * A place on the earth.
   *
   * @param latitudeDegrees north of the equator
   * @param longitudeDegrees east of Greenwich
   */
  record Site(double latitudeDegrees, double longitudeDegrees) {}

  /**
   * Where the sun stands, without the bending of light in the air.
   *
   * @param altitudeDegrees over the horizon
   * @param azimuthDegrees clockwise from true north
   */
  record Stand(double altitudeDegrees, double azimuthDegrees) {
    static Stand of(Site site, double declination, double hourAngle) {
      double latitude = site.latitudeDegrees();
      double sine =
          SunFormulas.sin(latitude) * SunFormulas.sin(declination)
              + SunFormulas.cos(latitude)
                  * SunFormulas.cos(declination)
                  * SunFormulas.cos(hourAngle);
      double altitude = StrictMath.toDegrees(StrictMath.asin(Math.max(-1, Math.min(1, sine))));
      double west = SunFormulas.sin(hourAngle) * SunFormulas.cos(declination);
      double south =
          SunFormulas.cos(hourAngle) * SunFormulas.sin(latitude) * SunFormulas.cos(declination)
              - SunFormulas.sin(declination) * SunFormulas.cos(latitude);
      double azimuth = StrictMath.toDegrees(StrictMath.atan2(west, south)) + 180;
      return new Stand(altitude, SunFormulas.turn(azimuth));
    }
  }
}
