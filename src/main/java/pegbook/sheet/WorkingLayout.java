package pegbook.sheet;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import pegbook.sheet.WorkingsSheet.Row;

/**
 * How the numbers of a formula stand on the page.
 *
 * @param share percent of the page's width that the numbers take beside their formula; 100: they
 *     stand below it
 * @param twice true when two rows stand beside each other
 * @param type class of the table's type: small where the numbers are long
 */
record WorkingLayout(int share, boolean twice, String type) {
  /** The most that numbers may take beside words; there heads may break. */
  private static final int WIDEST = 58;

  /**
   * Shares in percent, the narrowest first: what the numbers do not need, the formula's words take,
   * and need fewer lines. Each has a class in the style sheet, as has what it leaves.
   */
  private static final List<Integer> SHARES = List.of(34, 42, 50, WIDEST);

  private static final int ROWS_BESIDE = 12;

  private static final double NORMAL_SIZE = 10;

  private static final double SMALL_SIZE = 8.1;

  /** Room left and right of a number in its cell, and a little air. */
  private static final double ROOM_MM = 4;

  /** The same where long numbers stand in small type, two rows beside each other. */
  private static final double SMALL_ROOM_MM = 2.8;

  /** Room left and right of words in their cell. */
  private static final double WORD_ROOM_MM = 2.6;

  /**
   * Lays out rows of numbers.
   *
   * @param heads of all columns but the first
   * @param rows all with as many numbers
   */
  static WorkingLayout of(List<String> heads, List<Row> rows, Writing writing) {
    OptionalInt beside =
        rows.size() > ROWS_BESIDE
            ? OptionalInt.empty()
            : SHARES.stream()
                .mapToInt(Integer::intValue)
                .filter(share -> fits(rows, share, NORMAL_SIZE, ROOM_MM, writing))
                .filter(share -> share == WIDEST || wordsFit(heads, rows, share, writing))
                .findFirst();
    if (beside.isPresent()) {
      return new WorkingLayout(beside.getAsInt(), false, "");
    }
    boolean twice = rows.size() > ROWS_BESIDE && fits(rows, 50, SMALL_SIZE, SMALL_ROOM_MM, writing);
    boolean normal = fits(rows, twice ? 50 : 100, NORMAL_SIZE, ROOM_MM, writing);
    return new WorkingLayout(100, twice, normal ? "" : "small");
  }

  boolean isBeside() {
    return share < 100;
  }

  /** True when every number fits its column; columns are as wide as one another. */
  private static boolean fits(
      List<Row> rows, int share, double size, double roomMm, Writing writing) {
    double columnMm = columnMm(rows, share, writing);
    return rows.stream()
        .flatMap(row -> Stream.concat(row.numbers().stream(), Stream.of(row.result())))
        .allMatch(number -> writing.lettering().widthMm(number, size, true) + roomMm <= columnMm);
  }

  /** True when heads, and what the rows are for, stand on one line of their columns. */
  private static boolean wordsFit(List<String> heads, List<Row> rows, int share, Writing writing) {
    double columnMm = columnMm(rows, share, writing);
    return Stream.concat(heads.stream(), rows.stream().map(Row::subject))
        .allMatch(
            words ->
                writing.lettering().widthMm(words, NORMAL_SIZE, true) + WORD_ROOM_MM <= columnMm);
  }

  private static double columnMm(List<Row> rows, int share, Writing writing) {
    return (writing.page().widthMm() * share / 100 - ROOM_MM) / (rows.get(0).numbers().size() + 2);
  }
}
