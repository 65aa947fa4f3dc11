package pegbook.jobfile;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Notation;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.Volume;

/** The values that several tables of keys share. */
final class Values {
  /** Names, owners, offices: what the packet prints on one line or two. */
  static final TextValue NAME = new TextValue(200);

  static final PlaceValue PLACE = new PlaceValue();

  static final CheckedText<LocalDate> DATE = new CheckedText<>(Complaint.DATE, Values::date);
  static final CheckedText<String> TIME_ZONE =
      new CheckedText<>(Complaint.TIME_ZONE, Values::timeZone);
  static final CheckedText<String> COUNTRY = new CheckedText<>(Complaint.COUNTRY, Values::country);
  static final CheckedText<String> MARK = new CheckedText<>(Complaint.NAME_OF_MARK, Values::mark);

  /** Stands for a country that the job does not name; no country has these letters. */
  static final String UNKNOWN_COUNTRY = "ZZ";

  private Values() {}

  static QuantityValue<Length> length(
      String least, String most, String leastMetric, String mostMetric) {
    return new QuantityValue<>(Notation.LENGTHS, new Range(least, most, leastMetric, mostMetric));
  }

  static QuantityValue<Angle> angle(String least, String most) {
    return new QuantityValue<>(Notation.ANGLES, Range.same(least, most));
  }

  static QuantityValue<Pressure> pressure(
      String least, String most, String leastMetric, String mostMetric) {
    return new QuantityValue<>(Notation.PRESSURES, new Range(least, most, leastMetric, mostMetric));
  }

  static QuantityValue<Mass> mass(
      String least, String most, String leastMetric, String mostMetric) {
    return new QuantityValue<>(Notation.MASSES, new Range(least, most, leastMetric, mostMetric));
  }

  static QuantityValue<Volume> volume(
      String least, String most, String leastMetric, String mostMetric) {
    return new QuantityValue<>(Notation.VOLUMES, new Range(least, most, leastMetric, mostMetric));
  }

  static QuantityValue<Ratio> ratio(String least, String most) {
    return new QuantityValue<>(Notation.RATIOS, Range.same(least, most));
  }

  static ListValue<Point> places(int least, int most) {
    return new ListValue<>(PLACE, least, most);
  }

  private static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text))
          .filter(date -> date.getYear() >= 2000 && date.getYear() < 2200);
    } catch (DateTimeParseException no) {
      return Optional.empty();
    }
  }

  private static Optional<String> timeZone(String text) {
    return ZoneId.getAvailableZoneIds().contains(text) ? Optional.of(text) : Optional.empty();
  }

  private static Optional<String> country(String text) {
    List<String> known = Arrays.asList(Locale.getISOCountries());
    return known.contains(text) || text.equals(UNKNOWN_COUNTRY)
        ? Optional.of(text)
        : Optional.empty();
  }

  private static Optional<String> mark(String text) {
    return text.matches("[SP][1-9][0-9]{0,2}") ? Optional.of(text) : Optional.empty();
  }
}
