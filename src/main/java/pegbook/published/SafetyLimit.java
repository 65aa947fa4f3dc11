package pegbook.published;

import java.util.LinkedHashMap;
import java.util.Map;
import pegbook.measure.Count;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Quantity;
import pegbook.measure.Temperature;
import pegbook.measure.Unit;

/**
 * A threshold of the safety rules.
 *
 * @param id its name in safety_limits.csv
 * @param value the number, in the unit
 * @param unit name of the unit
 * @param source where it stands
 * @param condition without which the number misleads; empty: none
 */
public record SafetyLimit(String id, double value, String unit, Citation source, String condition) {
  private static final Map<String, SafetyLimit> BY_ID = read();

  /**
   * The threshold with a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static SafetyLimit find(String id) {
    SafetyLimit limit = BY_ID.get(id);
    if (limit == null) {
      throw new IllegalArgumentException("no safety limit \"" + id + "\"");
    }
    return limit;
  }

  /** As a quantity; days and micrograms as plain numbers. */
  public Quantity quantity() {
    return switch (unit) {
      case "FOOT", "INCH" -> new Length(Unit.valueOf(unit).toSi(value));
      case "POUND", "KILOGRAM" -> new Mass(Unit.valueOf(unit).toSi(value));
      case "HOUR" -> new Duration(value);
      case "MINUTE" -> Duration.ofMinutes(value);
      case "FAHRENHEIT" -> Temperature.ofFahrenheit(value);
      default -> new Count(value);
    };
  }

  /**
   * As a length.
   *
   * @throws IllegalArgumentException when it is something else
   */
  public Length length() {
    if (quantity() instanceof Length length) {
      return length;
    }
    throw new IllegalArgumentException(id + " is no length");
  }

  private static Map<String, SafetyLimit> read() {
    Map<String, SafetyLimit> byId = new LinkedHashMap<>();
    for (Table.Row row : Table.read("safety_limits").rows()) {
      SafetyLimit limit =
          new SafetyLimit(
              row.text("id"),
              row.number("value"),
              row.text("unit"),
              new Citation(row.text("publication"), row.text("locator")),
              row.text("condition"));
      byId.put(limit.id(), limit);
    }
    return byId;
  }
}
