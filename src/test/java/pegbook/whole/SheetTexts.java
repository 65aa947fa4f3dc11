package pegbook.whole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pegbook.testing.PrintedDocument;
import pegbook.testing.PrintedPage;
import pegbook.testing.TextRun;

/** The texts of a document, by the title of the sheet they stand on. */
record SheetTexts(Map<String, List<TextRun>> bySheet) {

  /** Of a document read back; the title strips are left out. */
  static SheetTexts of(PrintedDocument document) {
    Map<String, List<TextRun>> sheets = new LinkedHashMap<>();
    String sheet = "";
    for (PrintedPage page : document.pages()) {
      List<TextRun> titles =
          page.body().stream()
              .filter(run -> run.isUnder("H1"))
              .sorted(Comparator.comparingDouble(run -> -run.start().y()))
              .toList();
      for (TextRun run : page.runs()) {
        if (!run.isArtifact()) {
          String of = sheetOf(run, titles, sheet);
          sheets.computeIfAbsent(of, any -> new ArrayList<>()).add(run);
        }
      }
      sheet = titles.isEmpty() ? sheet : titles.get(titles.size() - 1).text();
    }
    return new SheetTexts(sheets);
  }

  private static String sheetOf(TextRun run, List<TextRun> titles, String before) {
    return titles.stream()
        .filter(title -> title.start().y() >= run.box().centre().y())
        .reduce((higher, lower) -> lower)
        .map(TextRun::text)
        .orElse(before);
  }

  /** All words of a sheet in painting order. */
  String words(String sheet) {
    return joined(of(sheet).stream());
  }

  /** The words inside a sheet's drawings. */
  String drawn(String sheet) {
    return joined(of(sheet).stream().filter(TextRun::isInDrawing));
  }

  /** The first row of a table on a sheet that has a cell of its own for a text: "P1". */
  String row(String sheet, String head) {
    return rows(sheet, head)
        .findFirst()
        .orElseThrow(() -> new AssertionError(sheet + " has no row " + head));
  }

  /** All rows of tables on a sheet that have a cell of their own for a text. */
  Stream<String> rows(String sheet, String head) {
    return of(sheet).stream()
        .filter(run -> run.text().strip().equals(head) && run.element("TR").isPresent())
        .map(
            first ->
                joined(
                    of(sheet).stream()
                        .filter(run -> run.element("TR").equals(first.element("TR")))));
  }

  /** Words with plain spaces, whatever spaces are printed. */
  private static String joined(Stream<TextRun> runs) {
    return runs.map(TextRun::text).collect(Collectors.joining(" ")).replaceAll("[\\s\\h]+", " ");
  }

  private List<TextRun> of(String sheet) {
    return bySheet.getOrDefault(sheet, List.of());
  }
}
