package pegbook.jobfile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.job.Design;
import pegbook.job.Design.DesignWind;
import pegbook.job.Design.Occupancy;
import pegbook.job.Design.Said;
import pegbook.job.Design.Seismic;
import pegbook.measure.Notation;
import pegbook.measure.Speed;

/** What the structure is designed for, each with whose word it is. */
final class DesignKeys {
  static final Key<String> FROM =
      Key.required("from", Values.NAME, "\"county building office, by phone 2027-03-02\"");

  static final Key<Said> CODE =
      said("code", "edition", "\"residential code, edition of 2021, as the state adopted it\"");
  static final Key<Said> SALT = said("salt", "found", "\"none in the soil, no salt strewn\"");
  static final Key<Said> LATERAL = said("lateral", "path", "\"braces between posts, both ways\"");

  static final Key<String> GROUP =
      Key.required("group", Values.NAME, "\"beside a dwelling of one family\"");
  static final Key<String> RISK =
      Key.free("category", words("I", "II", "III", "IV", "CC1", "CC2", "CC3"));
  static final Key<Occupancy> OCCUPANCY =
      Key.free(
          "occupancy",
          new SectionValue<>(
              List.of(GROUP, RISK, FROM),
              fields -> new Occupancy(fields.get(GROUP), fields.find(RISK), fields.get(FROM))));

  static final Key<Speed> SPEED =
      Key.required(
          "speed",
          new QuantityValue<>(
              Notation.WIND_SPEEDS, new Range("30 mph", "300 mph", "10 m/s", "140 m/s")),
          "\"110 mph\"");
  static final Key<String> EXPOSURE =
      Key.required("exposure", words("B", "C", "D", "0", "I", "II", "III", "IV"), "\"C\"");
  static final Key<DesignWind> WIND =
      Key.free(
          "wind",
          new SectionValue<>(
              List.of(SPEED, EXPOSURE, FROM),
              fields -> new DesignWind(fields.get(SPEED), fields.get(EXPOSURE), fields.get(FROM))));

  static final Key<String> CATEGORY =
      Key.required(
          "category",
          words("A", "B", "C", "D", "D0", "D1", "D2", "E", "F", "very low", "low"),
          "\"A\"");
  static final Key<Seismic> SEISMIC =
      Key.free(
          "seismic",
          new SectionValue<>(
              List.of(CATEGORY, FROM),
              fields -> new Seismic(fields.get(CATEGORY), fields.get(FROM))));

  static final Key<Design> DESIGN =
      Key.part(
          "design",
          new SectionValue<>(
              List.of(CODE, OCCUPANCY, WIND, SEISMIC, SALT, LATERAL),
              fields ->
                  new Design(
                      fields.find(CODE),
                      fields.find(OCCUPANCY),
                      fields.find(WIND),
                      fields.find(SEISMIC),
                      fields.find(SALT),
                      fields.find(LATERAL))));

  private DesignKeys() {}

  private static Key<Said> said(String name, String what, String example) {
    Key<String> words = Key.required(what, Values.NAME, example);
    return Key.free(
        name,
        new SectionValue<>(
            List.of(words, FROM), fields -> new Said(fields.get(words), fields.get(FROM))));
  }

  private static ChoiceValue<String> words(String... words) {
    Map<String, String> byWord = new LinkedHashMap<>();
    for (String word : words) {
      byWord.put(word, word);
    }
    return new ChoiceValue<>(byWord);
  }
}
