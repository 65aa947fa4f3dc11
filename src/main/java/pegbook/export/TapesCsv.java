package pegbook.export;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import pegbook.calc.tapetable.TapeTable;
import pegbook.measure.Quantity;
import pegbook.packet.Packet;

/**
 * The tape table for a spreadsheet: {@code tapes.csv} (RFC 4180, UTF-8), distances in metres and
 * angles in degrees, an empty cell where there is no value.
 */
public final class TapesCsv {
  private static final List<String> HEAD =
      List.of(
          "order",
          "mark",
          "stand",
          "tapeFromMark",
          "tapeFromMetres",
          "secondTapeFromMark",
          "secondTapeFromMetres",
          "crossingDegrees",
          "checkToMark",
          "checkMetres");

  private TapesCsv() {}

  /** The table, a line for each mark but the baseline's own two, in the order of taping. */
  public static byte[] of(Packet packet) {
    TapeTable table = packet.tapeTable();
    StringBuilder lines = new StringBuilder(String.join(",", HEAD)).append("\r\n");
    for (TapeTable.Row row : table.rows()) {
      lines.append(line(table.baseline(), row)).append("\r\n");
    }
    return lines.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String line(TapeTable.Baseline baseline, TapeTable.Row row) {
    StringJoiner cells = new StringJoiner(",");
    cells.add(Integer.toString(row.order()));
    cells.add(CsvCell.of(row.mark()));
    cells.add(row.stand().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    cells.add(CsvCell.of(baseline.first()));
    cells.add(number(Optional.of(row.fromFirst())));
    cells.add(CsvCell.of(baseline.second()));
    cells.add(number(Optional.of(row.fromSecond())));
    cells.add(row.crossing().map(angle -> Digits.of(angle.degrees()).toPlainString()).orElse(""));
    cells.add(row.check().map(check -> CsvCell.of(check.to())).orElse(""));
    cells.add(number(row.check().map(TapeTable.Check::tape)));
    return cells.toString();
  }

  private static String number(Optional<? extends Quantity> value) {
    return value.map(present -> Digits.of(present.si()).toPlainString()).orElse("");
  }
}
