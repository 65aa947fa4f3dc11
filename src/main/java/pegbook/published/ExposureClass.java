package pegbook.published;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.UnitSystem;

/**
 * What concrete that freezes and thaws must be, by its class.
 *
 * @param name F0 to F3
 * @param waterCement most water to cement, by weight; absent where nothing is asked
 * @param inchPound least strength in inch-pound editions
 * @param metric least strength in metric editions, a rounded figure of its own
 * @param airSmallStone air to aim at with stones up to 3/8 in (10 mm); absent where none is asked
 * @param airLargeStone air to aim at with stones up to 3/4 in (20 mm)
 */
public record ExposureClass(
    String name,
    Optional<Double> waterCement,
    Pressure inchPound,
    Pressure metric,
    Optional<Ratio> airSmallStone,
    Optional<Ratio> airLargeStone) {
  /** Where strength and water stand. */
  public static final Citation SOURCE = new Citation("aci-318-19-memory", "Table 19.3.2.1");

  /** Where the air stands. */
  public static final Citation AIR = new Citation("aci-318-19-memory", "Table 19.3.3.1");

  /** How far the air may be off its target. */
  public static final Ratio AIR_TOLERANCE = Ratio.ofPercent(1.5);

  private static final Map<String, ExposureClass> BY_NAME = read();

  /**
   * The class with a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static ExposureClass find(String name) {
    ExposureClass found = BY_NAME.get(name);
    if (found == null) {
      throw new IllegalArgumentException("no exposure class \"" + name + "\"");
    }
    return found;
  }

  /** Least strength, in the round figure of a unit system's edition. */
  public Pressure strength(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? inchPound : metric;
  }

  private static Map<String, ExposureClass> read() {
    Map<String, ExposureClass> byName = new LinkedHashMap<>();
    for (Table.Row row : Table.read("exposure_classes").rows()) {
      ExposureClass one =
          new ExposureClass(
              row.text("class"),
              number(row, "water_cement"),
              Pressure.ofPsi(row.number("psi")),
              Pressure.ofMegapascals(row.number("megapascals")),
              number(row, "air_small_stone").map(Ratio::ofPercent),
              number(row, "air_large_stone").map(Ratio::ofPercent));
      byName.put(one.name(), one);
    }
    return byName;
  }

  private static Optional<Double> number(Table.Row row, String column) {
    return row.isEmpty(column) ? Optional.empty() : Optional.of(row.number(column));
  }
}
