package pegbook.published;

import java.util.LinkedHashMap;
import java.util.Map;
import pegbook.measure.Count;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.measure.Temperature;
import pegbook.measure.UnitSystem;

/**
 * A limit of weather or age for fresh concrete.
 *
 * @param id its name in concrete_limits.csv
 * @param kind what it is
 * @param imperial in °F, psi or days
 * @param metric in °C, MPa or days, a rounded figure of its own
 * @param source where it stands
 */
public record ConcreteLimit(String id, Kind kind, double imperial, double metric, Citation source) {
  private static final Map<String, ConcreteLimit> BY_ID = read();

  /** What is limited. */
  public enum Kind {
    /** How warm: degrees. */
    TEMPERATURE,
    /** By how much it may cool: steps of a degree. */
    COOLING,
    /** How strong. */
    STRENGTH,
    /** How old. */
    DAYS,
    /** A part of the volume. */
    PERCENT
  }

  /**
   * The limit with a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static ConcreteLimit find(String id) {
    ConcreteLimit limit = BY_ID.get(id);
    if (limit == null) {
      throw new IllegalArgumentException("no concrete limit \"" + id + "\"");
    }
    return limit;
  }

  /** The number in a unit system. */
  public double in(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? imperial : metric;
  }

  /** As a quantity; days and steps of cooling as plain numbers. */
  public Quantity quantity(UnitSystem units) {
    boolean inchPound = units == UnitSystem.IMPERIAL;
    return switch (kind) {
      case TEMPERATURE ->
          inchPound ? Temperature.ofFahrenheit(imperial) : Temperature.ofCelsius(metric);
      case STRENGTH -> strength(units);
      case PERCENT -> Ratio.ofPercent(imperial);
      case COOLING, DAYS -> new Count(in(units));
    };
  }

  /**
   * As a strength.
   *
   * @throws IllegalStateException when it is something else
   */
  public Pressure strength(UnitSystem units) {
    if (kind != Kind.STRENGTH) {
      throw new IllegalStateException(id + " is no strength");
    }
    return units == UnitSystem.IMPERIAL ? Pressure.ofPsi(imperial) : Pressure.ofMegapascals(metric);
  }

  private static Map<String, ConcreteLimit> read() {
    Map<String, ConcreteLimit> byId = new LinkedHashMap<>();
    for (Table.Row row : Table.read("concrete_limits").rows()) {
      ConcreteLimit limit =
          new ConcreteLimit(
              row.text("id"),
              Kind.valueOf(row.text("kind")),
              row.number("imperial"),
              row.number("metric"),
              row.citation());
      byId.put(limit.id(), limit);
    }
    return byId;
  }
}
