package pegbook.jobfile;

import java.util.List;
import pegbook.job.Side;
import pegbook.job.Wind;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.measure.Notation;
import pegbook.measure.Pressure;

/** What lifts footings, and what keeps the frost off their sides. */
final class WindKeys {
  static final Key<Pressure> UPLIFT =
      Key.required(
          "uplift", Values.pressure("0.5 psf", "200 psf", "0.02 kPa", "10 kPa"), "\"15 psf\"");
  static final Key<Area> AREA =
      Key.free(
          "area",
          new QuantityValue<>(
              Notation.AREAS, new Range("1 ft2", "10000 ft2", "0.1 m2", "1000 m2")));
  static final Key<String> FROM =
      Key.required("from", Values.NAME, "\"designer of the roof, sheet 3\"");

  static final Key<Wind> WIND =
      Key.free(
          "wind",
          new SectionValue<>(
              List.of(UPLIFT, AREA, FROM),
              fields -> new Wind(fields.get(UPLIFT), fields.find(AREA), fields.get(FROM))));

  static final Key<Force> PIER_UPLIFT =
      Key.free(
          "uplift",
          new QuantityValue<>(Notation.FORCES, new Range("1 lbf", "20000 lbf", "5 N", "90 kN")));

  static final Key<Side> SIDE = Key.free("side", ChoiceValue.of(Side.class));

  private WindKeys() {}
}
