package pegbook.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pegbook.figures.Argument;
import pegbook.job.Job;
import pegbook.measure.Angle;
import pegbook.measure.AngleNotation;
import pegbook.measure.Area;
import pegbook.measure.Current;
import pegbook.measure.Density;
import pegbook.measure.Duration;
import pegbook.measure.Force;
import pegbook.measure.FreezingIndex;
import pegbook.measure.Length;
import pegbook.measure.LengthNotation;
import pegbook.measure.Mass;
import pegbook.measure.Money;
import pegbook.measure.NumberNotation;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.measure.Speed;
import pegbook.measure.TapeDivision;
import pegbook.measure.Temperature;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Voltage;
import pegbook.measure.Volume;

/**
 * Quantities as the packet prints them, in its units.
 *
 * @param units the packet's units
 * @param division the tape's division, to which readings are printed
 * @param texts words for dates and entries
 */
public record Formats(UnitSystem units, TapeDivision division, Texts texts) {
  private static final DateTimeFormatter ISO = DateTimeFormatter.ISO_LOCAL_DATE;

  /** For a job. */
  public static Formats of(Job job, Texts texts) {
    UnitSystem units = job.heading().units();
    TapeDivision fine =
        units == UnitSystem.IMPERIAL ? TapeDivision.SIXTEENTH_INCH : TapeDivision.MILLIMETRE;
    return new Formats(
        units, TapeDivision.ofStep(job.layout().tape().division()).orElse(fine), texts);
  }

  private boolean imperial() {
    return units == UnitSystem.IMPERIAL;
  }

  /** A length to the sixteenth of an inch, or the millimetre; feet from two feet up. */
  public String length(Length length) {
    return imperial()
        ? LengthNotation.write(length, TapeDivision.SIXTEENTH_INCH, Length.ofFeet(2))
        : LengthNotation.write(length, TapeDivision.MILLIMETRE);
  }

  /** A size that shops and drawings give in the small unit alone: a hole, a tube, a bar's cover. */
  public String size(Length length) {
    return imperial()
        ? LengthNotation.write(length, TapeDivision.SIXTEENTH_INCH, Length.ofFeet(10))
        : LengthNotation.write(length, TapeDivision.MILLIMETRE);
  }

  /** A reading of the job's tape, on its division. */
  public String tape(Length length) {
    return LengthNotation.write(length, division);
  }

  /** A distance on the site: to the inch, or the hundredth of a metre. */
  public String distance(Length length) {
    return imperial()
        ? LengthNotation.write(length, TapeDivision.INCH)
        : LengthNotation.metres(length, 2);
  }

  public String area(Area area) {
    return NumberNotation.write(area, imperial() ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE, 1);
  }

  /** A volume of soil, gravel or concrete: cubic feet, or litres below a cubic metre. */
  public String volume(Volume volume) {
    if (imperial()) {
      return NumberNotation.write(Unit.CUBIC_FOOT.in(volume), 1)
          + '\u00a0'
          + texts.say("unit.cubic-foot");
    }
    return volume.cubicMetres() < 1
        ? NumberNotation.write(volume, Unit.LITRE, 0)
        : NumberNotation.write(volume, Unit.CUBIC_METRE, 2);
  }

  /** A volume as trucks bring it: cubic yards or cubic metres. */
  public String truckVolume(Volume volume) {
    return NumberNotation.write(volume, imperial() ? Unit.CUBIC_YARD : Unit.CUBIC_METRE, 2);
  }

  public String mass(Mass mass) {
    return NumberNotation.write(mass, imperial() ? Unit.POUND : Unit.KILOGRAM, 0);
  }

  public String force(Force force) {
    return NumberNotation.write(force, imperial() ? Unit.POUND_FORCE : Unit.KILONEWTON);
  }

  /** A pressure on the ground or a floor. */
  public String pressure(Pressure pressure) {
    return NumberNotation.write(pressure, imperial() ? Unit.PSF : Unit.KILOPASCAL);
  }

  /** A strength of material. */
  public String strength(Pressure strength) {
    return NumberNotation.write(strength, imperial() ? Unit.PSI : Unit.MEGAPASCAL);
  }

  public String density(Density density) {
    return NumberNotation.write(
        density, imperial() ? Unit.POUND_PER_CUBIC_FOOT : Unit.KILOGRAM_PER_CUBIC_METRE);
  }

  /** A speed of wind. */
  public String windSpeed(Speed speed) {
    return NumberNotation.write(speed, imperial() ? Unit.MILE_PER_HOUR : Unit.METRE_PER_SECOND);
  }

  /** A temperature of the air to the whole degree; a threshold met in between is set down. */
  public String temperature(Temperature temperature) {
    double degrees = imperial() ? temperature.fahrenheit() : temperature.celsius();
    return NumberNotation.write(Math.floor(degrees + 1e-6), 0) + (imperial() ? " °F" : " °C");
  }

  /** An index of frost in the air to the whole degree-day. */
  public String freezingIndex(FreezingIndex index) {
    return NumberNotation.write(index, imperial() ? Unit.FAHRENHEIT_DAY : Unit.CELSIUS_DAY, 0);
  }

  /** An azimuth or an angle: degrees and minutes. */
  public String angle(Angle angle) {
    return AngleNotation.write(angle);
  }

  /** An angle to the whole degree. */
  public String roundAngle(Angle angle) {
    return AngleNotation.write(angle, 0);
  }

  /** Hours of work, to the half hour below ten and the hour from there. */
  public String hours(Duration duration) {
    double half = Math.round(duration.hours() * 2) / 2.0;
    return duration.hours() < 9.75 && half != Math.rint(half)
        ? NumberNotation.write(half, 1)
        : NumberNotation.write(Math.rint(duration.hours()), 0);
  }

  /** Money with its currency. */
  public String money(Money money) {
    return money.currency() + "\u00a0" + amount(money);
  }

  /** Money without its currency: its own digits, more where the price has more. */
  public String amount(Money money) {
    int digits = Math.max(money.digits(), money.amount().stripTrailingZeros().scale());
    return NumberNotation.write(money.amount().doubleValue(), digits);
  }

  public String count(long count) {
    return NumberNotation.write((double) count, 0);
  }

  /** A number with so many decimals. */
  public String number(double number, int decimals) {
    return NumberNotation.write(number, decimals);
  }

  /** A quantity in a named unit with so many decimals. */
  public String in(Quantity quantity, Unit unit, int decimals) {
    return NumberNotation.write(quantity, unit, decimals);
  }

  /** A day as ISO 8601 writes it, which no country misreads. */
  public String date(LocalDate day) {
    return ISO.format(day);
  }

  /** Month and day alone, where the year is plain. */
  public String monthDay(LocalDate day) {
    return date(day).substring(5);
  }

  /** A day with its weekday. */
  public String weekday(LocalDate day) {
    return texts.say("weekday." + day.getDayOfWeek().name().toLowerCase(Locale.ROOT))
        + " "
        + date(day);
  }

  /** Names joined with commas; runs such as S1, S2, S3 become "S1 to S3". */
  public String names(List<String> names) {
    return NameList.join(names, texts.say("common.to"));
  }

  /** An argument of a finding as words. */
  public String argument(Argument argument) {
    if (argument instanceof Argument.Measured measured) {
      return quantity(measured.quantity());
    }
    if (argument instanceof Argument.Whole whole) {
      return count(whole.number());
    }
    if (argument instanceof Argument.Names names) {
      return names(names.names());
    }
    if (argument instanceof Argument.Words words) {
      return words.words();
    }
    if (argument instanceof Argument.Entry entry) {
      return texts.say(entry.key());
    }
    return date(((Argument.Day) argument).day());
  }

  /** All arguments of a finding as words. */
  public Map<String, String> arguments(Map<String, Argument> arguments) {
    Map<String, String> words = new LinkedHashMap<>();
    arguments.forEach((name, argument) -> words.put(name, argument(argument)));
    return words;
  }

  /** Any quantity, by its kind. */
  public String quantity(Quantity quantity) {
    if (quantity instanceof Length length) {
      return length(length);
    }
    if (quantity instanceof Area area) {
      return area(area);
    }
    if (quantity instanceof Volume volume) {
      return volume(volume);
    }
    if (quantity instanceof Mass mass) {
      return mass(mass);
    }
    if (quantity instanceof Angle angle) {
      return angle(angle);
    }
    if (quantity instanceof Pressure pressure) {
      return pressure.megapascals() >= 1 ? strength(pressure) : pressure(pressure);
    }
    if (quantity instanceof Force force) {
      return force(force);
    }
    if (quantity instanceof Density density) {
      return density(density);
    }
    if (quantity instanceof Speed speed) {
      return windSpeed(speed);
    }
    if (quantity instanceof Temperature temperature) {
      return temperature(temperature);
    }
    if (quantity instanceof FreezingIndex index) {
      return freezingIndex(index);
    }
    if (quantity instanceof Duration duration) {
      return hours(duration);
    }
    if (quantity instanceof Current current) {
      return NumberNotation.write(current, Unit.AMPERE);
    }
    if (quantity instanceof Voltage voltage) {
      return NumberNotation.write(voltage, Unit.VOLT);
    }
    if (quantity instanceof pegbook.measure.Ratio ratio) {
      return NumberNotation.write(ratio, Unit.PERCENT);
    }
    return NumberNotation.write(quantity, Unit.NONE);
  }
}
