package pegbook.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.measure.Area;
import pegbook.measure.LineResistance;

/**
 * A conductor by the American gauge, with what the tables say of it; a property is absent where its
 * table has no row, or no value, for it.
 *
 * @param size its gauge, such as "12" or "1/0"
 * @param circularMils its area
 * @param solid resistance of solid copper and aluminium at 75 °C
 * @param stranded the same of stranded
 * @param reactance in PVC conduit at 60 Hz
 * @param insulated area with its insulation, for filling a raceway
 * @param copper what current it may carry, of copper
 * @param aluminium the same of aluminium
 * @param breaker largest breakers over copper and aluminium of small sizes, amperes
 */
public record Wire(
    String size,
    double circularMils,
    Optional<Pair> solid,
    Optional<Pair> stranded,
    Optional<LineResistance> reactance,
    Optional<Area> insulated,
    Optional<Ampacity> copper,
    Optional<Ampacity> aluminium,
    Optional<SmallLimit> breaker) {
  public static final Citation RESISTANCES = new Citation("nec", "Chapter 9, Table 8");
  public static final Citation IMPEDANCES = new Citation("nec", "Chapter 9, Table 9");
  public static final Citation AMPACITIES = new Citation("nec", "Table 310.16");
  public static final Citation AREAS = new Citation("nec", "Chapter 9, Table 5");
  public static final Citation SMALL = new Citation("nec", "240.4(D)");
  public static final Citation GROUNDING = new Citation("nec-quoted", "Table 250.122");

  /** Resistances of copper and aluminium. */
  public record Pair(LineResistance copper, LineResistance aluminium) {}

  /** Amperes by the rating of the insulation: 60 °C, 75 °C, 90 °C. */
  public record Ampacity(double at60, double at75, double at90) {}

  /** Amperes of the largest breaker over copper; over aluminium, where it is used at all. */
  public record SmallLimit(double copper, Optional<Double> aluminium) {}

  private static final List<Wire> ALL = read();

  /** Every size, the smallest first. */
  public static List<Wire> all() {
    return ALL;
  }

  /**
   * The conductor of a size.
   *
   * @throws IllegalArgumentException when the tables have none
   */
  public static Wire find(String size) {
    return ALL.stream()
        .filter(wire -> wire.size.equals(size))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no conductor of size " + size));
  }

  /** Resistance by metal and strands, where the table has it. */
  public Optional<LineResistance> resistance(boolean ofAluminium, boolean isSolid) {
    return (isSolid ? solid : stranded).map(pair -> ofAluminium ? pair.aluminium() : pair.copper());
  }

  /**
   * Least conductor that grounds equipment behind a breaker.
   *
   * @return nothing for a larger breaker than the table's last row here
   */
  public static Optional<Wire> grounding(double breakerAmperes, boolean ofAluminium) {
    return Table.read("grounding_conductors").rows().stream()
        .filter(row -> breakerAmperes <= row.number("breaker") + 1e-9)
        .map(row -> find(row.text(ofAluminium ? "aluminium" : "copper")))
        .findFirst();
  }

  private static List<Wire> read() {
    List<Table.Row> resistances = Table.read("wire_resistances").rows();
    List<Wire> wires = new ArrayList<>();
    resistances.stream()
        .map(row -> row.text("size"))
        .distinct()
        .forEach(size -> wires.add(wire(size, rows(resistances, size))));
    return List.copyOf(wires);
  }

  private static Wire wire(String size, List<Table.Row> resistances) {
    Optional<Table.Row> ampacity = row("wire_ampacities", size);
    return new Wire(
        size,
        resistances.get(0).number("cmil"),
        pair(resistances, true),
        pair(resistances, false),
        row("wire_impedances", size)
            .map(row -> LineResistance.ofOhmsPerThousandFeet(row.number("reactance"))),
        row("wire_areas", size).map(row -> Area.ofSquareInches(row.number("area_in2"))),
        ampacity.flatMap(row -> ampacity(row, "copper")),
        ampacity.flatMap(row -> ampacity(row, "aluminium")),
        row("small_conductors", size)
            .map(
                row ->
                    new SmallLimit(
                        row.number("copper"),
                        row.isEmpty("aluminium")
                            ? Optional.empty()
                            : Optional.of(row.number("aluminium")))));
  }

  private static List<Table.Row> rows(List<Table.Row> rows, String size) {
    return rows.stream().filter(row -> row.text("size").equals(size)).toList();
  }

  private static Optional<Table.Row> row(String table, String size) {
    return rows(Table.read(table).rows(), size).stream().findFirst();
  }

  private static Optional<Pair> pair(List<Table.Row> rows, boolean isSolid) {
    return rows.stream()
        .filter(row -> row.text("strands").equals("1") == isSolid)
        .map(
            row ->
                new Pair(
                    LineResistance.ofOhmsPerThousandFeet(row.number("copper")),
                    LineResistance.ofOhmsPerThousandFeet(row.number("aluminium"))))
        .findFirst();
  }

  private static Optional<Ampacity> ampacity(Table.Row row, String metal) {
    return row.isEmpty(metal + "60")
        ? Optional.empty()
        : Optional.of(
            new Ampacity(
                row.number(metal + "60"), row.number(metal + "75"), row.number(metal + "90")));
  }
}
