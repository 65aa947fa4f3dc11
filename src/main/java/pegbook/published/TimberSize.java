package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * A size of sawn timber.
 *
 * @param size its name in the shop
 * @param units the packets it is for
 * @param width its thinner side
 * @param depth its other side
 * @param isPost a post, else a joist
 * @param citation where it stands
 */
public record TimberSize(
    String size, UnitSystem units, Length width, Length depth, boolean isPost, Citation citation) {
  private static final List<TimberSize> ALL =
      Table.read("timber_sizes").rows().stream().map(TimberSize::of).toList();

  /** Every row, in the table's order. */
  public static List<TimberSize> all() {
    return ALL;
  }

  /** The sizes of joists and beams, the lowest first. */
  public static List<TimberSize> joists(UnitSystem units) {
    return ALL.stream().filter(row -> row.units == units && !row.isPost).toList();
  }

  /** The sizes of posts, the thinnest first. */
  public static List<TimberSize> posts(UnitSystem units) {
    return ALL.stream().filter(row -> row.units == units && row.isPost).toList();
  }

  /** The size of a name, where the table has it. */
  public static Optional<TimberSize> find(String size) {
    return ALL.stream().filter(row -> row.size.equals(size)).findFirst();
  }

  private static TimberSize of(Table.Row row) {
    boolean inches = row.text("unit").equals("in");
    return new TimberSize(
        row.text("size"),
        inches ? UnitSystem.IMPERIAL : UnitSystem.METRIC,
        length(row.number("width"), inches),
        length(row.number("depth"), inches),
        row.text("use").equals("post"),
        row.citation());
  }

  private static Length length(double number, boolean inches) {
    return inches ? Length.ofInches(number) : Length.ofMillimetres(number);
  }
}
