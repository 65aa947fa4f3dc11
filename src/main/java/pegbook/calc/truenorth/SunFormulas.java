package pegbook.calc.truenorth;

import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.published.Citation;

/**
 * Where the sun stands: the low-precision method, good to 0.01° between 1900 and 2100 by its
 * author's word, to 0.02° against a full algorithm. Angles in degrees. Time is taken as universal
 * time; the minute or so by which ephemeris time is ahead of it moves the sun by under 0.001°.
 */
final class SunFormulas {
  private static final Citation SUN = new Citation("astronomical-algorithms", "chapter 25");
  private static final Citation EQUATION = new Citation("astronomical-algorithms", "chapter 28");

  private static final Symbol CENTURY = new Symbol("T", "sun-century", Unit.NONE);
  private static final Symbol LONGITUDE = degrees("L₀", "sun-mean-longitude");
  private static final Symbol ANOMALY = degrees("M", "sun-mean-anomaly");
  private static final Symbol CENTRE = degrees("C", "sun-centre");
  private static final Symbol APPARENT = degrees("λ", "sun-apparent-longitude");
  private static final Symbol OBLIQUITY = degrees("ε", "obliquity");
  static final Symbol DECLINATION = degrees("δ", "sun-declination");
  static final Symbol EQUATION_OF_TIME = new Symbol("E", "equation-of-time", Unit.MINUTE);

  private SunFormulas() {}

  /** Julian centuries since 2000, from days since 2000-01-01 12:00 universal time. */
  static Formula century() {
    return formula(
        "true-north.century",
        "T = d / 36525",
        List.of(new Symbol("d", "days-since-2000", Unit.NONE)),
        CENTURY,
        SUN,
        n -> n[0] / 36525);
  }

  static Formula meanLongitude() {
    return formula(
        "true-north.mean-longitude",
        "L₀ = 280.46646 + 36000.76983 · T + 0.0003032 · T², brought to 0–360",
        List.of(CENTURY),
        LONGITUDE,
        SUN,
        n -> turn(280.46646 + n[0] * (36000.76983 + n[0] * 0.0003032)));
  }

  static Formula meanAnomaly() {
    return formula(
        "true-north.mean-anomaly",
        "M = 357.52911 + 35999.05029 · T − 0.0001537 · T², brought to 0–360",
        List.of(CENTURY),
        ANOMALY,
        SUN,
        n -> turn(357.52911 + n[0] * (35999.05029 - n[0] * 0.0001537)));
  }

  static Formula equationOfCentre() {
    return formula(
        "true-north.centre",
        "C = (1.914602 − 0.004817 · T − 0.000014 · T²) · sin M"
            + " + (0.019993 − 0.000101 · T) · sin 2M + 0.000289 · sin 3M",
        List.of(CENTURY, ANOMALY),
        CENTRE,
        SUN,
        n ->
            (1.914602 - n[0] * (0.004817 + n[0] * 0.000014)) * sin(n[1])
                + (0.019993 - n[0] * 0.000101) * sin(2 * n[1])
                + 0.000289 * sin(3 * n[1]));
  }

  static Formula apparentLongitude() {
    return formula(
        "true-north.apparent-longitude",
        "λ = L₀ + C − 0.00569 − 0.00478 · sin(125.04 − 1934.136 · T)",
        List.of(LONGITUDE, CENTRE, CENTURY),
        APPARENT,
        SUN,
        n -> n[0] + n[1] - 0.00569 - 0.00478 * sin(125.04 - 1934.136 * n[2]));
  }

  static Formula obliquity() {
    return formula(
        "true-north.obliquity",
        "ε = 23.4392911 − 0.0130042 · T + 0.00256 · cos(125.04 − 1934.136 · T)",
        List.of(CENTURY),
        OBLIQUITY,
        SUN,
        n -> 23.4392911 - 0.0130042 * n[0] + 0.00256 * cos(125.04 - 1934.136 * n[0]));
  }

  static Formula declination() {
    return formula(
        "true-north.declination",
        "δ = arcsin(sin ε · sin λ)",
        List.of(OBLIQUITY, APPARENT),
        DECLINATION,
        SUN,
        n -> StrictMath.toDegrees(StrictMath.asin(sin(n[0]) * sin(n[1]))));
  }

  /** W. M. Smart's series. */
  static Formula equationOfTime() {
    return formula(
        "true-north.equation-of-time",
        "E = 4 · (180 / π) · (y · sin 2L₀ − 2e · sin M + 4e · y · sin M · cos 2L₀"
            + " − y² / 2 · sin 4L₀ − 5e² / 4 · sin 2M), y = tan²(ε / 2),"
            + " e = 0.016708634 − 0.000042037 · T",
        List.of(LONGITUDE, ANOMALY, OBLIQUITY, CENTURY),
        EQUATION_OF_TIME,
        EQUATION,
        SunFormulas::smart);
  }

  private static double smart(double[] n) {
    double tangent = StrictMath.tan(StrictMath.toRadians(n[2] / 2));
    double y = tangent * tangent;
    double e = 0.016708634 - 0.000042037 * n[3];
    double sum =
        y * sin(2 * n[0])
            - 2 * e * sin(n[1])
            + 4 * e * y * sin(n[1]) * cos(2 * n[0])
            - y * y / 2 * sin(4 * n[0])
            - 5 * e * e / 4 * sin(2 * n[1]);
    return 4 * StrictMath.toDegrees(sum);
  }

  /** Sine of an angle in degrees. */
  static double sin(double degrees) {
    return StrictMath.sin(StrictMath.toRadians(degrees));
  }

  /** Cosine of an angle in degrees. */
  static double cos(double degrees) {
    return StrictMath.cos(StrictMath.toRadians(degrees));
  }

  /** Brought between 0 and 360 degrees. */
  static double turn(double degrees) {
    double left = degrees % 360;
    return left < 0 ? left + 360 : left;
  }

  private static Symbol degrees(String letter, String id) {
    return new Symbol(letter, id, Unit.DEGREE);
  }

  private static Formula formula(
      String id,
      String expression,
      List<Symbol> inputs,
      Symbol result,
      Citation source,
      ToDoubleFunction<double[]> function) {
    return new Formula(id, expression, inputs, result, source, "1900 to 2100", function);
  }
}
