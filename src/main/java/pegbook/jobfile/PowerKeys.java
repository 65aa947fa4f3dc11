package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;
import static pegbook.job.Default.Basis.PUBLISHED;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.geometry.Point;
import pegbook.job.Power;
import pegbook.job.Power.Stop;
import pegbook.job.Power.Under;
import pegbook.measure.Current;
import pegbook.measure.Length;
import pegbook.measure.Notation;
import pegbook.measure.Ratio;
import pegbook.measure.Unit;
import pegbook.measure.Voltage;
import pegbook.published.MetricCable;
import pegbook.published.Wire;

/** The buried power line. */
final class PowerKeys {
  private static final Length FARTHEST = new Length(1000);
  private static final int LONGEST_NAME = 60;

  private static final Value<Boolean> YES_OR_NO = yesOrNo();

  static final Key<List<Stop>> ROUTE =
      Key.required(
          "route",
          new ListValue<>(new CheckedText<>(Complaint.ROUTE_PLACE, PowerKeys::stop), 2, 40),
          "[\"house outlet: 60 ft, 80 ft\", \"10 ft, 6 ft\"]");
  static final Key<String> PIER = Key.free("pier", Values.MARK);
  static final Key<Voltage> VOLTAGE =
      Key.required(
          "voltage",
          new QuantityValue<>(Notation.VOLTAGES, Range.same("5 V", "600 V")),
          "\"120 V\"");
  static final Key<Current> RUNNING =
      Key.required(
          "running",
          new QuantityValue<>(Notation.CURRENTS, Range.same("10 mA", "200 A")),
          "\"12 A\"");
  static final Key<Current> BREAKER =
      Key.required(
          "breaker",
          new QuantityValue<>(Notation.CURRENTS, Range.same("1 A", "200 A")),
          "\"20 A\"");
  static final Key<Ratio> POWER_FACTOR =
      Key.orElse("powerFactor", Values.ratio("30 %", "100 %"), "\"100 %\"", "\"80 %\"", PUBLISHED);
  static final Key<Ratio> DROP =
      Key.orElse("drop", Values.ratio("0.5 %", "10 %"), "\"3 %\"", PUBLISHED);
  static final Key<Power.Circuit> CIRCUIT =
      Key.orElse(
          "circuit", ChoiceValue.of(Power.Circuit.class), "\"other branch\"", COMMON_PRACTICE);
  static final Key<Boolean> GROUND_FAULT =
      Key.orElse("groundFault", YES_OR_NO, "\"no\"", COMMON_PRACTICE);
  static final Key<Power.Method> METHOD =
      Key.orElse("method", ChoiceValue.of(Power.Method.class), "\"conduit\"", COMMON_PRACTICE);
  static final Key<Power.Metal> METAL =
      Key.orElse("metal", ChoiceValue.of(Power.Metal.class), "\"copper\"", COMMON_PRACTICE);
  static final Key<Power.Strands> STRANDS =
      Key.orElse("strands", ChoiceValue.of(Power.Strands.class), "\"stranded\"", COMMON_PRACTICE);
  static final Key<List<String>> SIZES = Key.free("sizes", new ListValue<>(sizes(), 1, 30));
  static final Key<Boolean> DATA_CABLE =
      Key.orElse("dataCable", YES_OR_NO, "\"no\"", COMMON_PRACTICE);
  static final Key<Length> SLACK =
      Key.orElse(
          "slack",
          Values.length("0 ft", "30 ft", "0 m", "10 m"),
          "\"3 ft\"",
          "\"1 m\"",
          COMMON_PRACTICE);
  static final Key<Length> WIDTH =
      Key.orElse(
          "width",
          Values.length("4 in", "36 in", "100 mm", "900 mm"),
          "\"12 in\"",
          "\"300 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> BEDDING =
      Key.orElse(
          "bedding",
          Values.length("0 in", "12 in", "0 mm", "300 mm"),
          "\"2 in\"",
          "\"50 mm\"",
          COMMON_PRACTICE);
  static final Key<Power.Dug> DUG =
      Key.orElse("dug", ChoiceValue.of(Power.Dug.class), "\"by hand\"", COMMON_PRACTICE);

  static final Key<Power.Cover> WHAT =
      Key.required("what", ChoiceValue.of(Power.Cover.class), "\"dwelling driveway\"");
  static final Key<Length> UNDER_LENGTH =
      Key.required("length", Values.length("1 ft", "1000 ft", "300 mm", "300 m"), "\"12 ft\"");
  static final Key<List<Under>> UNDER =
      Key.free(
          "under",
          new ListValue<>(
              new SectionValue<>(
                  List.of(WHAT, UNDER_LENGTH),
                  fields -> new Under(fields.get(WHAT), fields.get(UNDER_LENGTH))),
              0,
              20));

  static final Key<Length> COVER =
      Key.required("cover", Values.length("4 in", "72 in", "100 mm", "1.8 m"), "\"24 in\"");
  static final Key<String> FROM =
      Key.required("from", Values.NAME, "\"electrical inspector, by phone 2027-03-02\"");
  static final Key<Power.Depth> DEPTH =
      Key.free(
          "depth",
          new SectionValue<>(
              List.of(COVER, FROM),
              fields -> new Power.Depth(fields.get(COVER), fields.get(FROM))));

  static final Key<Power> POWER =
      Key.free(
          "power",
          new SectionValue<>(
              List.of(
                  ROUTE,
                  PIER,
                  VOLTAGE,
                  RUNNING,
                  BREAKER,
                  POWER_FACTOR,
                  DROP,
                  CIRCUIT,
                  GROUND_FAULT,
                  METHOD,
                  METAL,
                  STRANDS,
                  SIZES,
                  DATA_CABLE,
                  SLACK,
                  WIDTH,
                  BEDDING,
                  DUG,
                  UNDER,
                  DEPTH),
              PowerChecks::hold,
              PowerKeys::power));

  private PowerKeys() {}

  private static Power power(Fields fields) {
    return new Power(
        fields.get(ROUTE),
        fields.find(PIER),
        new Power.Supply(
            fields.get(VOLTAGE),
            fields.get(RUNNING),
            fields.get(BREAKER),
            fields.get(POWER_FACTOR),
            fields.get(DROP),
            fields.get(CIRCUIT),
            fields.get(GROUND_FAULT)),
        new Power.Wiring(
            fields.get(METHOD),
            fields.get(METAL),
            fields.get(STRANDS),
            fields.find(SIZES).orElse(List.of()),
            fields.get(DATA_CABLE),
            fields.get(SLACK)),
        new Power.Trench(
            fields.get(WIDTH),
            fields.get(BEDDING),
            fields.get(DUG),
            fields.find(UNDER).orElse(List.of())),
        fields.find(DEPTH));
  }

  private static Value<Boolean> yesOrNo() {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put("yes", true);
    words.put("no", false);
    return new ChoiceValue<>(words);
  }

  /** The American gauge, then square millimetres. */
  private static Value<String> sizes() {
    Map<String, String> words = new LinkedHashMap<>();
    Stream.concat(
            Wire.all().stream()
                .filter(wire -> wire.copper().isPresent())
                .map(wire -> wire.size() + " AWG"),
            MetricCable.all().stream().map(PowerKeys::name))
        .forEach(name -> words.put(name, name));
    return new ChoiceValue<>(words);
  }

  private static String name(MetricCable cable) {
    double area = Unit.SQUARE_MILLIMETRE.in(cable.area());
    String digits = area == Math.rint(area) ? Long.toString((long) area) : Double.toString(area);
    return digits + " mm2";
  }

  /** "house outlet: 60 ft, 80 ft", or a place alone. */
  private static Optional<Stop> stop(String text) {
    int colon = text.lastIndexOf(':');
    Optional<String> name =
        colon < 0 ? Optional.empty() : Optional.of(text.substring(0, colon).strip());
    String[] parts = text.substring(colon + 1).split(",", -1);
    boolean named = name.map(PowerKeys::isName).orElse(true);
    if (parts.length != 2 || !named) {
      return Optional.empty();
    }
    List<Length> axes = new ArrayList<>();
    for (String part : parts) {
      Notation.LENGTHS
          .read(part.strip())
          .taken()
          .filter(length -> !length.abs().isMoreThan(FARTHEST))
          .ifPresent(axes::add);
    }
    return axes.size() == 2
        ? Optional.of(new Stop(name, Point.of(axes.get(0), axes.get(1))))
        : Optional.empty();
  }

  private static boolean isName(String name) {
    return !name.isEmpty()
        && name.codePointCount(0, name.length()) <= LONGEST_NAME
        && name.codePoints().noneMatch(Shown::isInvisible);
  }
}
