package pegbook.export;

/** A text as a cell of a spreadsheet's file (RFC 4180). */
final class CsvCell {
  private CsvCell() {}

  /** A leading sign that a spreadsheet would take for a formula is kept as text. */
  static String of(String text) {
    String plain = text.matches("[=+\\-@\\t\\r].*") ? "'" + text : text;
    return plain.matches(".*[\",\\r\\n].*") ? '"' + plain.replace("\"", "\"\"") + '"' : plain;
  }
}
