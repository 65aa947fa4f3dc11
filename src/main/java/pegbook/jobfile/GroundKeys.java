package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.geometry.Point;
import pegbook.job.AllowablePressure;
import pegbook.job.Benchmark;
import pegbook.job.Digging;
import pegbook.job.Frost;
import pegbook.job.Ground;
import pegbook.job.Soil;
import pegbook.job.UnitWeight;
import pegbook.job.Water;
import pegbook.measure.Density;
import pegbook.measure.Length;
import pegbook.measure.Notation;
import pegbook.measure.Pressure;

/** The ground: soil, digging, bearing, frost, levels. */
final class GroundKeys {
  static final Key<Pressure> VALUE =
      Key.required(
          "value", Values.pressure("200 psf", "100 ksf", "10 kPa", "5 MPa"), "\"1500 psf\"");
  static final Key<Boolean> KIND =
      Key.orElse("kind", new ChoiceValue<>(grossOrNet()), "\"gross\"", COMMON_PRACTICE);
  static final Key<String> PRESSURE_FROM =
      Key.required("from", Values.NAME, "\"presumptive table\"");
  static final SectionValue<AllowablePressure> PRESSURE =
      new SectionValue<>(
          List.of(VALUE, KIND, PRESSURE_FROM),
          fields ->
              new AllowablePressure(
                  fields.get(VALUE), fields.get(KIND), fields.get(PRESSURE_FROM)));

  static final Key<String> WHO = Key.required("who", Values.NAME, "\"county building office\"");
  static final Key<LocalDate> WHEN = Key.required("when", Values.DATE, "\"2027-03-02\"");
  static final Key<Frost.Covers> COVERS =
      Key.required("covers", ChoiceValue.of(Frost.Covers.class), "\"supports\"");
  static final SectionValue<Frost.Exemption> EXEMPTION_PART =
      new SectionValue<>(
          List.of(WHO, WHEN, COVERS),
          fields -> new Frost.Exemption(fields.get(WHO), fields.get(WHEN), fields.get(COVERS)));

  static final Key<Length> FROST_DEPTH =
      Key.required("depth", Values.length("0 in", "12 ft", "0 mm", "4 m"), "\"42 in\"");
  static final Key<String> FROST_FROM =
      Key.required("from", Values.NAME, "\"county building office, by phone 2027-03-02\"");
  static final Key<Frost.Exemption> EXEMPTION = Key.free("exemption", EXEMPTION_PART);
  static final SectionValue<Frost> FROST_PART =
      new SectionValue<>(
          List.of(FROST_DEPTH, FROST_FROM, EXEMPTION),
          fields ->
              new Frost(fields.get(FROST_DEPTH), fields.get(FROST_FROM), fields.find(EXEMPTION)));

  static final Key<Point> BENCHMARK_AT = Key.required("at", Values.PLACE, "\"30 ft, 5 ft\"");
  static final Key<String> ON = Key.required("on", Values.NAME, "\"nail in the oak root\"");
  static final SectionValue<Benchmark> BENCHMARK_PART =
      new SectionValue<>(
          List.of(BENCHMARK_AT, ON),
          fields -> new Benchmark(fields.get(BENCHMARK_AT), fields.get(ON)));

  static final Key<Soil> SOIL = Key.required("soil", ChoiceValue.of(Soil.class), "\"sandy clay\"");
  static final Key<Digging> DIGGING =
      Key.orElse("digging", ChoiceValue.of(Digging.class), "\"ordinary\"", COMMON_PRACTICE);
  static final Key<Length> WATER_DEPTH =
      Key.required("depth", Values.length("0 ft", "200 ft", "0 m", "60 m"), "\"9 ft\"");
  static final Key<String> WATER_FROM = Key.free("from", Values.NAME);
  static final Key<Water> WATER =
      Key.free(
          "water",
          new ShortForm<>(
              WATER_DEPTH,
              new SectionValue<>(
                  List.of(WATER_DEPTH, WATER_FROM),
                  fields -> new Water(fields.get(WATER_DEPTH), fields.find(WATER_FROM)))));
  static final Key<Density> WEIGHT =
      Key.required(
          "value",
          new QuantityValue<>(
              Notation.DENSITIES, new Range("60 pcf", "175 pcf", "960 kg/m3", "2800 kg/m3")),
          "\"115 pcf\"");
  static final Key<String> WEIGHT_FROM =
      Key.required("from", Values.NAME, "\"report on the soil, page 3\"");
  static final Key<UnitWeight> UNIT_WEIGHT =
      Key.free(
          "unitWeight",
          new SectionValue<>(
              List.of(WEIGHT, WEIGHT_FROM),
              fields -> new UnitWeight(fields.get(WEIGHT), fields.get(WEIGHT_FROM))));
  static final Key<AllowablePressure> ALLOWABLE_PRESSURE = Key.free("allowablePressure", PRESSURE);
  static final Key<Frost> FROST = Key.free("frost", FROST_PART);
  static final Key<Benchmark> BENCHMARK = Key.free("benchmark", BENCHMARK_PART);
  static final Key<Map<String, Length>> LEVELS =
      Key.free("levels", new LevelsValue(Values.length("-100 ft", "100 ft", "-30 m", "30 m")));
  static final SectionValue<Ground> GROUND =
      new SectionValue<>(
          List.of(
              SOIL,
              DIGGING,
              WATER,
              UNIT_WEIGHT,
              ALLOWABLE_PRESSURE,
              FROST,
              FreezingKeys.INDEX,
              BENCHMARK,
              LEVELS,
              StiffnessKeys.MODULUS,
              StiffnessKeys.VELOCITY),
          StiffnessKeys::isNotTwice,
          GroundKeys::ground);

  private GroundKeys() {}

  private static Map<String, Boolean> grossOrNet() {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put("gross", true);
    words.put("net", false);
    return words;
  }

  private static Ground ground(Fields fields) {
    return new Ground(
        fields.get(SOIL),
        fields.get(DIGGING),
        fields.find(WATER),
        fields.find(UNIT_WEIGHT),
        fields.find(ALLOWABLE_PRESSURE),
        fields.find(FROST),
        fields.find(FreezingKeys.INDEX),
        fields.find(BENCHMARK),
        fields.find(LEVELS).orElse(Map.of()),
        StiffnessKeys.stiffness(fields));
  }
}
