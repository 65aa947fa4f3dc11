package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Pressure;

/**
 * A factor on the reference design values of sawn timber.
 *
 * @param factor its name in the table
 * @param depth the only depth it is for; absent: for all
 * @param value what the value is multiplied by
 * @param below where the value times its size factor is no more than this, the factor is one
 * @param citation where it stands
 */
public record TimberFactor(
    String factor,
    Optional<Length> depth,
    double value,
    Optional<Pressure> below,
    Citation citation) {
  private static final List<TimberFactor> ALL =
      Table.read("timber_factors").rows().stream().map(TimberFactor::of).toList();

  /** Every row, in the table's order. */
  public static List<TimberFactor> all() {
    return ALL;
  }

  /**
   * The factor of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static TimberFactor find(String factor) {
    return ALL.stream()
        .filter(row -> row.factor.equals(factor))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("timber_factors has no " + factor));
  }

  /**
   * The size factor of a depth.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static TimberFactor size(Length depth) {
    return ALL.stream()
        .filter(row -> row.factor.equals("size"))
        .filter(row -> row.depth.filter(own -> TimberValue.isSame(own, depth)).isPresent())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no size factor for " + depth));
  }

  /** What it is for a value that already has its size factor. */
  public double on(Pressure sized) {
    return below.filter(limit -> !sized.isMoreThan(limit.times(1 + 1e-9))).isPresent() ? 1 : value;
  }

  private static TimberFactor of(Table.Row row) {
    return new TimberFactor(
        row.text("factor"),
        row.isEmpty("depth_inches")
            ? Optional.empty()
            : Optional.of(Length.ofInches(row.number("depth_inches"))),
        row.number("value"),
        row.isEmpty("below") ? Optional.empty() : Optional.of(Pressure.ofPsi(row.number("below"))),
        row.citation());
  }
}
