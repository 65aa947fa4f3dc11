package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.List;
import pegbook.job.Lift;
import pegbook.measure.Length;

/** How bags are lifted. */
final class LiftKeys {
  /** What the equation takes: no hand above 70 in, none nearer than 10 in or farther than 25 in. */
  private static final QuantityValue<Length> HEIGHT =
      Values.length("0 in", "70 in", "0 mm", "1750 mm");

  static final Key<String> NAME =
      Key.required("name", new TextValue(60), "\"bag from the tailgate into the mixer\"");
  static final Key<Length> FROM = Key.required("from", HEIGHT, "\"32 in\"");
  static final Key<Length> TO = Key.required("to", HEIGHT, "\"44 in\"");
  static final Key<Length> REACH =
      Key.orElse(
          "reach",
          Values.length("10 in", "25 in", "250 mm", "630 mm"),
          "\"12 in\"",
          "\"300 mm\"",
          COMMON_PRACTICE);
  static final Key<Integer> PER_MINUTE =
      Key.orElse("perMinute", new WholeNumber(1, 12), "1", COMMON_PRACTICE);
  static final Key<List<Lift>> LIFTS =
      Key.free(
          "lifts",
          new ListValue<>(
              new SectionValue<>(
                  List.of(NAME, FROM, TO, REACH, PER_MINUTE),
                  fields ->
                      new Lift(
                          fields.get(NAME),
                          fields.get(FROM),
                          fields.get(TO),
                          fields.get(REACH),
                          fields.get(PER_MINUTE))),
              1,
              6));

  private LiftKeys() {}
}
