package pegbook.jobfile;

import static pegbook.job.Default.Basis.DERIVED;

import java.time.LocalDate;
import java.util.List;
import pegbook.job.Declination;
import pegbook.job.ExpectedHeat;
import pegbook.job.Place;
import pegbook.job.UtilityMarking;
import pegbook.measure.Angle;
import pegbook.measure.Notation;
import pegbook.measure.Ratio;
import pegbook.measure.Temperature;

/** Where the structure stands and who decides there. */
final class PlaceKeys {
  static final Key<LocalDate> CONFIRMED = Key.required("confirmed", Values.DATE, "\"2027-05-06\"");
  static final Key<String> TICKET = Key.free("ticket", Values.NAME);
  static final SectionValue<UtilityMarking> MARKING =
      new SectionValue<>(
          List.of(CONFIRMED, TICKET),
          fields -> new UtilityMarking(fields.get(CONFIRMED), fields.find(TICKET)));

  static final Key<Angle> DECLINATION_VALUE =
      Key.required("value", Values.angle("-180 deg", "180 deg"), "\"-1.2 deg\"");
  static final Key<String> DECLINATION_FROM =
      Key.required("from", Values.NAME, "\"geological survey, its page for this place\"");
  static final Key<LocalDate> DECLINATION_DATE =
      Key.required("date", Values.DATE, "\"2027-03-01\"");
  static final SectionValue<Declination> DECLINATION_PART =
      new SectionValue<>(
          List.of(DECLINATION_VALUE, DECLINATION_FROM, DECLINATION_DATE),
          fields ->
              new Declination(
                  fields.get(DECLINATION_VALUE),
                  fields.get(DECLINATION_FROM),
                  fields.get(DECLINATION_DATE)));

  static final Key<String> COUNTRY =
      Key.orElse(
          "country", Values.COUNTRY, "\"US\"", "\"" + Values.UNKNOWN_COUNTRY + "\"", DERIVED);
  static final Key<Angle> LATITUDE = Key.free("latitude", Values.angle("-90 deg", "90 deg"));
  static final Key<Angle> LONGITUDE = Key.free("longitude", Values.angle("-180 deg", "180 deg"));
  static final Key<String> TIME_ZONE = Key.free("timeZone", Values.TIME_ZONE);
  static final Key<Declination> DECLINATION = Key.free("declination", DECLINATION_PART);
  static final Key<String> AUTHORITY = Key.free("authority", Values.NAME);
  static final Key<String> PARCEL = Key.free("parcel", Values.NAME);
  static final Key<String> PERMIT = Key.free("permit", Values.NAME);
  static final Key<UtilityMarking> UTILITIES = Key.free("utilities", MARKING);

  static final Key<Temperature> SHADE =
      Key.required(
          "temperature",
          new QuantityValue<>(
              Notation.TEMPERATURES, new Range("50 °F", "112 °F", "10 °C", "44 °C")),
          "\"92 °F\"");
  static final Key<Ratio> HUMIDITY =
      Key.required("humidity", Values.ratio("1 %", "100 %"), "\"60 %\"");
  static final Key<ExpectedHeat> HEAT =
      Key.free(
          "heat",
          new SectionValue<>(
              List.of(SHADE, HUMIDITY),
              fields -> new ExpectedHeat(fields.get(SHADE), fields.get(HUMIDITY))));

  static final SectionValue<Place> PLACE =
      new SectionValue<>(
          List.of(
              COUNTRY,
              LATITUDE,
              LONGITUDE,
              TIME_ZONE,
              DECLINATION,
              AUTHORITY,
              PARCEL,
              PERMIT,
              UTILITIES,
              CallKeys.CALLS,
              HEAT),
          fields -> place(fields));

  private PlaceKeys() {}

  private static Place place(Fields fields) {
    return new Place(
        fields.get(COUNTRY),
        fields.find(LATITUDE),
        fields.find(LONGITUDE),
        fields.find(TIME_ZONE),
        fields.find(DECLINATION),
        fields.find(AUTHORITY),
        fields.find(PARCEL),
        fields.find(PERMIT),
        fields.find(UTILITIES),
        fields.find(HEAT),
        fields.find(CallKeys.CALLS).orElse(List.of()));
  }
}
