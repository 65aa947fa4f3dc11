package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.measure.Ratio;
import pegbook.measure.Temperature;
import pegbook.measure.UnitSystem;
import pegbook.published.SafetyLimit;

/**
 * The heat index by temperature and humidity, to be read on site.
 *
 * @param humidities heads of the columns
 * @param rows by temperature
 */
public record HeatTable(List<Ratio> humidities, List<Row> rows) {
  private static final List<Integer> PERCENT = List.of(40, 50, 60, 70, 80, 90);
  private static final int ROWS = 6;

  /** The chart prints nothing hotter. */
  private static final double HOTTEST = 137;

  public HeatTable {
    humidities = List.copyOf(humidities);
    rows = List.copyOf(rows);
  }

  /** Temperature of the air and what it feels like at each humidity; nothing beyond the chart. */
  public record Row(Temperature air, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * What it feels like.
   *
   * @param index set up to the whole degree; absent beyond the chart
   * @param danger true where heat stroke is likely
   */
  public record Cell(Optional<Temperature> index, boolean danger) {}

  static HeatTable of(UnitSystem units) {
    List<Row> rows = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      Temperature air =
          units == UnitSystem.IMPERIAL
              ? Temperature.ofFahrenheit(80 + 4.0 * row)
              : Temperature.ofCelsius(27 + 2.0 * row);
      rows.add(
          new Row(
              air,
              PERCENT.stream()
                  .map(percent -> cell(HeatIndex.of(air.fahrenheit(), percent), units))
                  .toList()));
    }
    return new HeatTable(PERCENT.stream().map(percent -> Ratio.ofPercent(percent)).toList(), rows);
  }

  private static Cell cell(HeatIndex index, UnitSystem units) {
    boolean danger = index.fahrenheit() >= SafetyLimit.find("heat-danger").value() - 1e-6;
    return new Cell(
        index.fahrenheit() > HOTTEST ? Optional.empty() : Optional.of(index.rounded(units)),
        danger);
  }
}
