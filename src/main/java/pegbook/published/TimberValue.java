package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Pressure;

/**
 * Reference design values of sawn timber: stresses allowed for ten years of load, dry.
 *
 * @param species lower case with hyphens
 * @param grade lower case with hyphens
 * @param depth the only depth it is for; absent: for all, with a size factor on top
 * @param bending on its narrow side
 * @param shear along the grain
 * @param bearing across the grain
 * @param compression along the grain
 * @param stiffness modulus of elasticity
 * @param stiffnessLeast modulus that columns count with
 * @param citation where it stands
 */
public record TimberValue(
    String species,
    String grade,
    Optional<Length> depth,
    Pressure bending,
    Pressure shear,
    Pressure bearing,
    Pressure compression,
    Pressure stiffness,
    Pressure stiffnessLeast,
    Citation citation) {
  private static final List<TimberValue> ALL =
      Table.read("timber_values").rows().stream().map(TimberValue::of).toList();

  private static final double SAME_METRES = 1e-6;

  /** Every row, in the table's order. */
  public static List<TimberValue> all() {
    return ALL;
  }

  /** The row for a species, grade and depth, where the table has one. */
  public static Optional<TimberValue> find(String species, String grade, Length depth) {
    return ALL.stream()
        .filter(row -> row.species.equals(species) && row.grade.equals(grade))
        .filter(row -> row.depth.map(own -> isSame(own, depth)).orElse(true))
        .findFirst();
  }

  static boolean isSame(Length one, Length other) {
    return Math.abs(one.metres() - other.metres()) < SAME_METRES;
  }

  private static TimberValue of(Table.Row row) {
    return new TimberValue(
        row.text("species"),
        row.text("grade"),
        row.isEmpty("depth_inches")
            ? Optional.empty()
            : Optional.of(Length.ofInches(row.number("depth_inches"))),
        Pressure.ofPsi(row.number("bending")),
        Pressure.ofPsi(row.number("shear")),
        Pressure.ofPsi(row.number("bearing")),
        Pressure.ofPsi(row.number("compression")),
        Pressure.ofPsi(row.number("stiffness")),
        Pressure.ofPsi(row.number("stiffness_least")),
        row.citation());
  }
}
