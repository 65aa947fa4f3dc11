package pegbook.calc.safetynotes;

import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.published.Citation;

/**
 * The heat index of the National Weather Service: what air in the shade feels like, in degrees
 * Fahrenheit.
 *
 * <p>Source: technical attachment SR 90-23 (1990), the regression of Rothfusz with its two
 * adjustments, and the simple form of Steadman that holds below 80. The regression is off by 1.3 °F
 * at most. The printed chart follows the plain regression.
 */
final class HeatFormulas {
  private static final Citation SOURCE = new Citation("nws-heat", "SR 90-23");

  static final Formula SIMPLE =
      formula(
          "heat-simple",
          "I = (T + 61 + 1.2 · (T − 68) + 0.094 · R) / 4 + T / 2",
          "I < 80 °F",
          x -> (x[0] + 61 + 1.2 * (x[0] - 68) + 0.094 * x[1]) / 4 + x[0] / 2);

  static final Formula REGRESSION =
      formula(
          "heat-index",
          "I = −42.379 + 2.04901523 · T + 10.14333127 · R − 0.22475541 · T · R"
              + " − 0.00683783 · T² − 0.05481717 · R² + 0.00122874 · T² · R"
              + " + 0.00085282 · T · R² − 0.00000199 · T² · R²",
          "80 °F ≤ I, T ≤ 112 °F",
          x -> regression(x[0], x[1]));

  static final Formula DRY =
      adjusted(
          "heat-dry",
          "I = J − (13 − R) / 4 · √((17 − |T − 95|) / 17)",
          "R < 13 %, 80 °F ≤ T ≤ 112 °F",
          x -> x[0] - (13 - x[2]) / 4 * StrictMath.sqrt((17 - Math.abs(x[1] - 95)) / 17));

  static final Formula HUMID =
      adjusted(
          "heat-humid",
          "I = J + (R − 85) / 10 · (87 − T) / 5",
          "R > 85 %, 80 °F ≤ T ≤ 87 °F",
          x -> x[0] + (x[2] - 85) / 10 * ((87 - x[1]) / 5));

  private HeatFormulas() {}

  private static double regression(double t, double r) {
    return -42.379
        + 2.04901523 * t
        + 10.14333127 * r
        - 0.22475541 * t * r
        - 0.00683783 * t * t
        - 0.05481717 * r * r
        + 0.00122874 * t * t * r
        + 0.00085282 * t * r * r
        - 0.00000199 * t * t * r * r;
  }

  private static Formula formula(
      String id, String expression, String valid, ToDoubleFunction<double[]> function) {
    return new Formula(
        "safety-notes." + id,
        expression,
        List.of(
            new Symbol("T", "air-temperature", Unit.FAHRENHEIT_STEP),
            new Symbol("R", "air-humidity", Unit.PERCENT)),
        new Symbol("I", "feels-like", Unit.FAHRENHEIT_STEP),
        SOURCE,
        valid,
        function);
  }

  private static Formula adjusted(
      String id, String expression, String valid, ToDoubleFunction<double[]> function) {
    return new Formula(
        "safety-notes." + id,
        expression,
        List.of(
            new Symbol("J", "feels-like-regression", Unit.FAHRENHEIT_STEP),
            new Symbol("T", "air-temperature", Unit.FAHRENHEIT_STEP),
            new Symbol("R", "air-humidity", Unit.PERCENT)),
        new Symbol("I", "feels-like", Unit.FAHRENHEIT_STEP),
        SOURCE,
        valid,
        function);
  }
}
