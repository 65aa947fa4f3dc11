package pegbook.published;

import java.util.List;
import pegbook.measure.Length;

/**
 * The greatest error that a class of tapes is permitted; a limit, not a standard deviation.
 *
 * @param tapeClass name of the class, in Roman numerals
 * @param constant a: part that does not grow
 * @param millimetresPerMetre b: part for each metre, begun metres counted whole
 * @param fromEnd c: added where the distance begins at the tape's end surface, such as its hook
 * @param citation where it stands
 */
public record TapeLimit(
    String tapeClass,
    Length constant,
    double millimetresPerMetre,
    Length fromEnd,
    Citation citation) {
  /** A length within this part of a metre over a whole metre counts as that whole metre. */
  private static final double TIE_METRES = 1e-9;

  private static final List<TapeLimit> ALL =
      Table.read("tape_limits").rows().stream().map(TapeLimit::of).toList();

  /** Every row, in the table's order. */
  public static List<TapeLimit> all() {
    return ALL;
  }

  /**
   * The row of a class.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static TapeLimit find(String tapeClass) {
    return ALL.stream()
        .filter(row -> row.tapeClass.equals(tapeClass))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("tape_limits has no class " + tapeClass));
  }

  /** Greatest error, up or down, between two marks of the blade. */
  public Length betweenMarks(Length distance) {
    double begunMetres = Math.ceil(distance.metres() - TIE_METRES);
    return constant.plus(Length.ofMillimetres(millimetresPerMetre * begunMetres));
  }

  /** Greatest error, up or down, of a distance that begins at the tape's end surface. */
  public Length fromEndSurface(Length distance) {
    return betweenMarks(distance).plus(fromEnd);
  }

  private static TapeLimit of(Table.Row row) {
    return new TapeLimit(
        row.text("class"),
        Length.ofMillimetres(row.number("a_mm")),
        row.number("b_mm_per_m"),
        Length.ofMillimetres(row.number("c_mm")),
        row.citation());
  }
}
