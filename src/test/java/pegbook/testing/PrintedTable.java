package pegbook.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A table as it was printed, put together again from the tags of its cells, over pages.
 *
 * @param heads the words over its columns
 * @param rows its cells by row; an empty cell is an empty text
 */
public record PrintedTable(List<String> heads, List<List<String>> rows) {

  /** Every table of a document, in order. */
  public static List<PrintedTable> of(PrintedDocument document) {
    return of(document.pages());
  }

  /** The tables of a sheet, by its title in the bookmarks. */
  public static List<PrintedTable> of(PrintedDocument document, String sheet) {
    List<PrintedDocument.Bookmark> sheets =
        document.bookmarks().stream().filter(bookmark -> bookmark.level() == 1).toList();
    for (int i = 0; i < sheets.size(); i++) {
      if (sheets.get(i).title().equals(sheet)) {
        int end = i + 1 < sheets.size() ? sheets.get(i + 1).page() - 1 : document.pages().size();
        return of(document.pages().subList(sheets.get(i).page() - 1, end));
      }
    }
    throw new AssertionError("no sheet " + sheet + " among " + sheets);
  }

  private static List<PrintedTable> of(List<PrintedPage> pages) {
    Map<Integer, Map<Integer, TreeMap<Integer, String>>> heads = new LinkedHashMap<>();
    Map<Integer, Map<Integer, TreeMap<Integer, String>>> rows = new LinkedHashMap<>();
    for (PrintedPage page : pages) {
      for (TextRun run : page.runs()) {
        if (run.element("Table").isPresent() && run.element("TR").isPresent()) {
          put(run.isUnder("THead") ? heads : rows, run, page.number());
        }
      }
    }
    return rows.entrySet().stream()
        .map(table -> table(heads.getOrDefault(table.getKey(), Map.of()), table.getValue()))
        .toList();
  }

  /** Heads come again on every page: a row of them is known by its page as well. */
  private static void put(
      Map<Integer, Map<Integer, TreeMap<Integer, String>>> tables, TextRun run, int page) {
    int table = run.element("Table").orElseThrow();
    int row = run.isUnder("THead") ? page : run.element("TR").orElseThrow();
    String text = run.text().replaceAll("[\\s\\h]+", " ");
    cell(run)
        .ifPresent(
            place ->
                tables
                    .computeIfAbsent(table, any -> new LinkedHashMap<>())
                    .computeIfAbsent(row, any -> new TreeMap<>())
                    .merge(place, text, (one, two) -> (one + " " + two).replaceAll(" +", " ")));
  }

  private static Optional<Integer> cell(TextRun run) {
    return run.path().stream()
        .filter(tag -> tag.name().equals("TH") || tag.name().equals("TD"))
        .map(Tag::place)
        .reduce((outer, inner) -> inner);
  }

  private static PrintedTable table(
      Map<Integer, TreeMap<Integer, String>> heads, Map<Integer, TreeMap<Integer, String>> rows) {
    List<List<String>> filled = new ArrayList<>();
    rows.values().forEach(row -> filled.add(texts(row)));
    return new PrintedTable(
        heads.values().stream().findFirst().map(PrintedTable::texts).orElse(List.of()), filled);
  }

  private static List<String> texts(TreeMap<Integer, String> cells) {
    List<String> texts = new ArrayList<>();
    for (int place = 0; place <= cells.lastKey(); place++) {
      texts.add(cells.getOrDefault(place, "").strip());
    }
    return texts;
  }

  /** The one of some tables whose head begins with a word. */
  public static PrintedTable headed(List<PrintedTable> tables, String first) {
    return tables.stream()
        .filter(table -> table.heads().stream().findFirst().orElse("").equals(first))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no table begins with " + first + " in " + tables));
  }

  /** The names at the heads of rows; where two rows stand side by side, of both. */
  public List<String> names() {
    String head = heads.get(0);
    List<String> names = new ArrayList<>();
    for (int column = 0; column < heads.size(); column++) {
      int place = column;
      if (heads.get(column).equals(head)) {
        rows.stream()
            .map(row -> at(row, place))
            .filter(name -> !name.isEmpty())
            .forEach(names::add);
      }
    }
    return names;
  }

  /** What stands under a head in the row of a name, or of several names, the one among them. */
  public String cell(String name, String head) {
    for (List<String> row : rows) {
      for (int start = 0; start < row.size(); start++) {
        if (start < heads.size() && PrintedValue.marks(row.get(start)).contains(name)) {
          int column = start + heads.subList(start, heads.size()).indexOf(head);
          if (column >= start) {
            return at(row, column);
          }
        }
      }
    }
    throw new AssertionError("no " + name + " under " + head + " in " + this);
  }

  /** What stands under a head, row by row. */
  public List<String> column(String head) {
    int column = heads.indexOf(head);
    if (column < 0) {
      throw new AssertionError("no " + head + " among " + heads);
    }
    return rows.stream().map(row -> at(row, column)).toList();
  }

  private static String at(List<String> row, int column) {
    return column < row.size() ? row.get(column) : "";
  }
}
