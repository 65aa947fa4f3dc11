package pegbook.published;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A published table: a CSV resource of this package.
 *
 * <p>Lines beginning with {@code #} before the first row are its header and must name the source;
 * the first line without is the names of the columns. A cell with a comma stands in double quotes.
 *
 * @param name of the resource, without ".csv"
 * @param header lines of the header, without the sign
 * @param rows the rows in order
 */
public record Table(String name, List<String> header, List<Row> rows) {
  public Table {
    header = List.copyOf(header);
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param table for messages
   * @param cells by name of column
   */
  public record Row(String table, Map<String, String> cells) {
    /** A cell's text; empty where nothing stands. */
    public String text(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalArgumentException("table " + table + " has no column " + column);
      }
      return cell;
    }

    /** A cell's number. */
    public double number(String column) {
      return Double.parseDouble(text(column));
    }

    /** Where the row is from: its columns "publication" and "locator". */
    public Citation citation() {
      return new Citation(text("publication"), text("locator"));
    }

    public boolean isEmpty(String column) {
      return text(column).isEmpty();
    }
  }

  /**
   * Reads a table.
   *
   * @throws IllegalArgumentException when there is none or it has no header
   */
  public static Table read(String name) {
    List<String> lines = lines(name);
    List<String> header = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    List<String> columns = List.of();
    for (String line : lines) {
      if (line.startsWith("#")) {
        header.add(line.substring(1).strip());
      } else if (columns.isEmpty()) {
        columns = cells(line);
      } else if (!line.isBlank()) {
        rows.add(row(name, columns, cells(line)));
      }
    }
    if (header.isEmpty()) {
      throw new IllegalArgumentException("table " + name + " does not name its source");
    }
    return new Table(name, header, rows);
  }

  private static List<String> lines(String name) {
    try (InputStream in = Table.class.getResourceAsStream(name + ".csv")) {
      if (in == null) {
        throw new IllegalArgumentException("no table " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(String name, List<String> columns, List<String> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException("table " + name + ": " + columns + " against " + cells);
    }
    Map<String, String> byColumn = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      byColumn.put(columns.get(i), cells.get(i));
    }
    return new Row(name, byColumn);
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString().strip());
    return cells;
  }
}
