package pegbook.calc.truenorth;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * How true north is found.
 *
 * @param days the next work days with the sun's times; empty without place, time zone and date
 * @param noon the shadow at noon, on the first day on which it serves
 * @param equal two shadows of equal length, on the first day on which they serve
 * @param turn from the north line to the first mark
 * @param compass what a compass shows, where the job gives the declination
 * @param radius from the centre to the farthest mark: where errors of direction show most
 */
public record TrueNorth(
    List<SunDay> days,
    Optional<NoonShadow> noon,
    Optional<EqualShadows> equal,
    Turn turn,
    Optional<CompassLine> compass,
    Length radius,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  /** How high the pole is whose shadow is used; common practice. */
  public static final Length POLE_IMPERIAL = Length.ofFeet(8);

  public static final Length POLE_METRIC = new Length(2.4);

  /** How far a clock and the mark made by it may be off, in minutes; common practice. */
  public static final double CLOCK_MINUTES = 0.25;

  /** How far plumb bob and mark may be off; common practice. */
  public static final Length MARK_IMPERIAL = Length.ofInches(0.125);

  public static final Length MARK_METRIC = Length.ofMillimetres(3);

  /** How well a hand compass is read, far from iron; common practice. */
  public static final Angle COMPASS_READING = Angle.ofDegrees(2);

  public TrueNorth {
    days = List.copyOf(days);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** Whether a noon shadow serves. */
  public enum Height {
    SERVES,
    /** So high that the shadow is short and turns fast. */
    TOO_HIGH,
    /** So low that the shadow is long and faint. */
    TOO_LOW,
    /** Below the horizon at its highest. */
    BELOW
  }

  /** What the sun does on a day. */
  public enum Light {
    RISES_AND_SETS,
    NEVER_RISES,
    NEVER_SETS
  }

  /**
   * A work day.
   *
   * @param date the day
   * @param noon by the clock, when the sun stands highest
   * @param offset of the clock from universal time
   * @param altitude of the sun then
   * @param height whether its shadow serves
   * @param shadow of the pole then, where it serves
   * @param turnPerMinute how far it then turns in a minute, where it serves
   * @param light whether the sun rises and sets
   * @param rise sunrise by the clock
   * @param set sunset by the clock
   */
  public record SunDay(
      LocalDate date,
      LocalTime noon,
      ZoneOffset offset,
      Angle altitude,
      Height height,
      Optional<Length> shadow,
      Optional<Angle> turnPerMinute,
      Light light,
      Optional<LocalTime> rise,
      Optional<LocalTime> set) {}

  /**
   * The shadow at noon.
   *
   * @param date the day
   * @param time by the clock
   * @param toNorth true where the shadow points north, false where it points south
   * @param shadow its length
   * @param turnPerMinute how far it turns in a minute
   * @param error of the direction
   * @param off what that moves the farthest mark
   */
  public record NoonShadow(
      LocalDate date,
      LocalTime time,
      boolean toNorth,
      Length shadow,
      Angle turnPerMinute,
      Angle error,
      Length off) {}

  /**
   * Two shadows of equal length, before and after noon.
   *
   * @param date the day
   * @param before by the clock, about when the first is marked
   * @param after about when the second is
   * @param shadow their length, about
   * @param firstShadow azimuth of the first shadow
   * @param secondShadow azimuth of the second
   * @param swing the same tape from both marks, whose crossings lie on the north line; about as
   *     long as the marks are apart
   * @param drift how far their middle misses north because the sun climbs or sinks meanwhile
   * @param error of the direction, drift included
   * @param off what that moves the farthest mark
   */
  public record EqualShadows(
      LocalDate date,
      LocalTime before,
      LocalTime after,
      Length shadow,
      Angle firstShadow,
      Angle secondShadow,
      Length swing,
      Angle drift,
      Angle error,
      Length off) {}

  /**
   * From the north line to the first mark: two tapes, from the centre and from a peg on the line.
   *
   * @param mark the first mark
   * @param azimuth from the centre to it
   * @param peg NORTH or SOUTH: at which end of the line the peg stands
   * @param side EAST or WEST of the line: where the mark lies
   * @param onLine true when the mark lies on the line itself
   * @param along from the centre to either peg, and to the place that the tapes give
   * @param chord from the peg to that place, set to the division
   * @param check from the other peg to it, set to the division
   * @param toMark from the centre to the mark, along the direction that is found
   */
  public record Turn(
      String mark,
      Angle azimuth,
      Compass peg,
      Compass side,
      boolean onLine,
      Length along,
      Length chord,
      Length check,
      Length toMark) {}

  /**
   * What a compass shows.
   *
   * @param declination how far its north is from true north, east positive
   * @param from whose word it is
   * @param date for which day that holds
   * @param north what it shows along true north
   * @param first what it shows from the centre to the first mark
   * @param off what its reading moves the farthest mark
   */
  public record CompassLine(
      Angle declination, String from, LocalDate date, Angle north, Angle first, Length off) {}
}
