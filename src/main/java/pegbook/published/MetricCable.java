package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Area;
import pegbook.measure.Length;
import pegbook.measure.Resistivity;

/**
 * A cable by the area of its conductors.
 *
 * @param area of one conductor
 * @param copper what current it may carry, of copper
 * @param aluminium the same of aluminium, where it is made
 * @param outside diameter of the cable
 */
public record MetricCable(
    Area area, Optional<Carried> copper, Optional<Carried> aluminium, Length outside) {
  public static final Citation AMPACITIES = new Citation("iec-memory", "Table B.52.2");
  public static final Citation DROP = new Citation("iec-60364-5-52", "Annex G");

  /** Copper at its temperature in service: 1.25 times its value at 20 °C. */
  public static final Resistivity COPPER = Resistivity.ofOhmSquareMillimetresPerMetre(0.0225);

  public static final Resistivity ALUMINIUM = Resistivity.ofOhmSquareMillimetresPerMetre(0.036);

  /** Reactance of conductors by their length, ohms to the metre: recalled. */
  public static final double REACTANCE = 0.08e-3;

  /** Amperes in a duct in the ground, and laid in the ground itself where there is a value. */
  public record Carried(double inDuct, Optional<Double> inGround) {}

  private static final List<MetricCable> ALL =
      Table.read("metric_cables").rows().stream().map(MetricCable::of).toList();

  /** Every size, the smallest first. */
  public static List<MetricCable> all() {
    return ALL;
  }

  private static MetricCable of(Table.Row row) {
    return new MetricCable(
        Area.ofSquareMillimetres(row.number("size_mm2")),
        carried(row, "copper"),
        carried(row, "aluminium"),
        Length.ofMillimetres(row.number("cable_mm")));
  }

  private static Optional<Carried> carried(Table.Row row, String metal) {
    return row.isEmpty(metal + "_duct")
        ? Optional.empty()
        : Optional.of(
            new Carried(
                row.number(metal + "_duct"),
                row.isEmpty(metal + "_ground")
                    ? Optional.empty()
                    : Optional.of(row.number(metal + "_ground"))));
  }
}
