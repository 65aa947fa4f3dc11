package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.Working;
import pegbook.measure.Rounding;
import pegbook.measure.Temperature;
import pegbook.measure.UnitSystem;
import pegbook.published.SafetyLimit;

/**
 * What air in the shade feels like.
 *
 * @param fahrenheit the index, degrees Fahrenheit
 * @param workings its steps
 */
record HeatIndex(double fahrenheit, List<Working> workings) {
  /** Below this the simple form holds. */
  private static final double REGRESSION_FROM = 80;

  /** Levels of the index, named by the words that stand for them. */
  enum Level {
    NONE("heat-begin", "begin"),
    BEGIN("heat-begin", "begin"),
    CAUTION("heat-caution", "caution"),
    DANGER("heat-danger", "danger"),
    EXTREME("heat-extreme", "extreme");

    private final String limit;
    private final String word;

    Level(String limit, String word) {
      this.limit = limit;
      this.word = word;
    }

    /** Its name in the text bundle. */
    String word() {
      return word;
    }

    private double from() {
      return SafetyLimit.find(limit).value();
    }
  }

  HeatIndex {
    workings = List.copyOf(workings);
  }

  /**
   * The index.
   *
   * @param t temperature in the shade, degrees Fahrenheit, not above 112
   * @param r relative humidity, percent
   */
  static HeatIndex of(double t, double r) {
    List<Working> workings = new ArrayList<>();
    double simple = step(workings, new Working(HeatFormulas.SIMPLE, "", List.of(t, r)));
    if (simple < REGRESSION_FROM) {
      return new HeatIndex(simple, workings);
    }
    workings.clear();
    double index = step(workings, new Working(HeatFormulas.REGRESSION, "", List.of(t, r)));
    if (r < 13 && t >= 80 && t <= 112) {
      index = step(workings, new Working(HeatFormulas.DRY, "", List.of(index, t, r)));
    } else if (r > 85 && t >= 80 && t <= 87) {
      index = step(workings, new Working(HeatFormulas.HUMID, "", List.of(index, t, r)));
    }
    return new HeatIndex(index, workings);
  }

  private static double step(List<Working> workings, Working working) {
    workings.add(working);
    return working.result();
  }

  /** The level that it reaches; a level begins at its limit. */
  Level level() {
    Level worst = Level.NONE;
    for (Level each : Level.values()) {
      if (each != Level.NONE && fahrenheit >= each.from() - 1e-6) {
        worst = each;
      }
    }
    return worst;
  }

  /** The index set up to a whole degree of the packet's scale. */
  Temperature rounded(UnitSystem units) {
    return units == UnitSystem.IMPERIAL
        ? Temperature.ofFahrenheit((double) Rounding.UP.steps(fahrenheit, 1))
        : Temperature.ofCelsius(
            (double) Rounding.UP.steps(Temperature.ofFahrenheit(fahrenheit).celsius(), 1));
  }
}
