package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Pressure;

/**
 * Reference design values of sawn posts 5 in thick and more, which are graded by rules of their
 * own.
 *
 * @param species lower case with hyphens
 * @param grade lower case with hyphens
 * @param compression along the grain
 * @param stiffnessLeast modulus that columns count with
 * @param citation where it stands
 */
public record PostValue(
    String species,
    String grade,
    Pressure compression,
    Pressure stiffnessLeast,
    Citation citation) {
  private static final List<PostValue> ALL =
      Table.read("post_values").rows().stream().map(PostValue::of).toList();

  /** The row for a species and grade, where the table has one. */
  public static Optional<PostValue> find(String species, String grade) {
    return ALL.stream()
        .filter(row -> row.species.equals(species) && row.grade.equals(grade))
        .findFirst();
  }

  private static PostValue of(Table.Row row) {
    return new PostValue(
        row.text("species"),
        row.text("grade"),
        Pressure.ofPsi(row.number("compression")),
        Pressure.ofPsi(row.number("stiffness_least")),
        row.citation());
  }
}
