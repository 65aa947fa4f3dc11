package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.job.AirFreezingIndex;
import pegbook.job.AirFreezingIndex.Season;
import pegbook.job.AirFreezingIndex.Surface;
import pegbook.job.AirFreezingIndex.Winter;
import pegbook.measure.Density;
import pegbook.measure.FreezingIndex;
import pegbook.measure.Notation;
import pegbook.measure.Ratio;
import pegbook.measure.Temperature;

/** The index of frost in the air, and what an estimate of the depth of frost needs beside it. */
final class FreezingKeys {
  static final Key<FreezingIndex> VALUE =
      Key.required(
          "value",
          new QuantityValue<>(
              Notation.FREEZING_INDICES,
              new Range("10 F-days", "12000 F-days", "5 C-days", "6500 C-days")),
          "\"1800 F-days\"");
  static final Key<Winter> RETURN =
      Key.required("return", new ChoiceValue<>(winters()), "\"100 years\"");
  static final Key<String> FROM = Key.free("from", Values.NAME);
  static final Key<Surface> SURFACE =
      Key.orElse("surface", ChoiceValue.of(Surface.class), "\"shaded\"", COMMON_PRACTICE);
  static final Key<Ratio> MOISTURE = Key.free("moisture", Values.ratio("1 %", "60 %"));
  static final Key<Density> DRY_DENSITY =
      Key.free(
          "dryDensity",
          new QuantityValue<>(
              Notation.DENSITIES, new Range("60 pcf", "145 pcf", "960 kg/m3", "2320 kg/m3")));
  static final Key<Integer> DAYS = Key.free("days", new WholeNumber(10, 300));
  static final Key<Temperature> MEAN_YEAR =
      Key.free(
          "meanYear",
          new QuantityValue<>(Notation.TEMPERATURES, new Range("33 °F", "70 °F", "1 °C", "21 °C")));

  static final Key<AirFreezingIndex> INDEX =
      Key.free(
          "airFreezingIndex",
          new SectionValue<>(
              List.of(VALUE, RETURN, FROM, SURFACE, MOISTURE, DRY_DENSITY, DAYS, MEAN_YEAR),
              (fields, report) -> isWholeSeason(fields),
              FreezingKeys::index));

  private FreezingKeys() {}

  private static Map<String, Winter> winters() {
    Map<String, Winter> words = new LinkedHashMap<>();
    words.put("mean", Winter.MEAN);
    words.put("10 years", Winter.TEN_YEARS);
    words.put("30 years", Winter.THIRTY_YEARS);
    words.put("100 years", Winter.HUNDRED_YEARS);
    return words;
  }

  /** The season's length and the year's mean are of use only together. */
  private static boolean isWholeSeason(Fields fields) {
    if (fields.has(DAYS) == fields.has(MEAN_YEAR)) {
      return true;
    }
    fields.complain(fields.has(DAYS) ? DAYS : MEAN_YEAR, Complaint.SEASON_HALF);
    return false;
  }

  private static AirFreezingIndex index(Fields fields) {
    return new AirFreezingIndex(
        fields.get(VALUE),
        fields.get(RETURN),
        fields.find(FROM),
        fields.get(SURFACE),
        fields.find(MOISTURE),
        fields.find(DRY_DENSITY),
        fields
            .find(DAYS)
            .flatMap(days -> fields.find(MEAN_YEAR).map(mean -> new Season(days, mean))));
  }
}
