package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.testing.PrintedDocument;
import pegbook.testing.PrintedJob;
import pegbook.testing.PrintedPage;
import pegbook.testing.PrintedTable;
import pegbook.testing.PrintedValue;
import pegbook.testing.TextRun;

/**
 * The cut plan, printed and read back: every piece of the bar list is on one bar, in words and in
 * the picture, and a bar is as long as its pieces, its cuts and what is left.
 */
class CutPlanSheetTest {
  private static final String LENGTH = "([\\d¹²³⁴⁵⁶⁷⁸⁹][^A-Za-z#.,;]*?(?:mm|″))";
  private static final Pattern BAR =
      Pattern.compile(
          "(?:#\\d|\\d+ mm) / \\d+: (?:(\\d+) )?(?:one bar|bars|the offcut|offcuts) of " + LENGTH);
  private static final Pattern RUN = Pattern.compile("(\\d+) × ([A-Z]+) " + LENGTH);
  private static final Pattern LEFT = Pattern.compile("(?:keep|left over) " + LENGTH);
  private static final Pattern LETTER = Pattern.compile("([A-Z]+)(?:\\s.*)?");
  private static final Pattern KERF = Pattern.compile("A cut takes " + LENGTH);

  /** A bar as it is told, with the words up to the next. */
  private record Told(int times, double length, String cuts) {}

  /** The sheet's last bars may share a page with the next sheet. */
  private static List<PrintedPage> pages(PrintedJob job) {
    PrintedDocument binder = job.document("binder");
    return binder.pages().stream()
        .filter(page -> page.lines().stream().anyMatch(line -> BAR.matcher(line).find()))
        .toList();
  }

  private static String words(PrintedJob job) {
    return pages(job).stream()
        .flatMap(page -> page.body().stream())
        .filter(run -> !run.isInDrawing())
        .map(TextRun::text)
        .collect(Collectors.joining(" "))
        .replaceAll("[\\s\u00a0]+", " ");
  }

  private static List<Told> bars(String words) {
    Matcher bar = BAR.matcher(words);
    List<Told> bars = new ArrayList<>();
    while (bar.find()) {
      int end = words.indexOf(" / ", bar.end());
      int times = bar.group(1) == null ? 1 : Integer.parseInt(bar.group(1));
      bars.add(
          new Told(
              times,
              PrintedValue.length(bar.group(2)).metres(),
              words.substring(bar.end(), end < 0 ? words.length() : end)));
    }
    return bars;
  }

  private static Map<String, Integer> inWords(String words) {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    for (Told bar : bars(words)) {
      Matcher run = RUN.matcher(bar.cuts());
      while (run.find()) {
        pieces.merge(run.group(2), bar.times() * Integer.parseInt(run.group(1)), Integer::sum);
      }
    }
    return pieces;
  }

  private static Map<String, Integer> barList(PrintedJob job) {
    PrintedTable list = PrintedTable.headed(job.tables("Steel"), "Mark");
    Map<String, Integer> pieces = new LinkedHashMap<>();
    list.names()
        .forEach(mark -> pieces.put(mark, (int) PrintedValue.number(list.cell(mark, "Pieces"))));
    return pieces;
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck"})
  void everyPieceOfTheBarListIsOnOneBar(String example) {
    PrintedJob job = PrintedJob.example(example);
    assertThat(inWords(words(job))).containsExactlyInAnyOrderEntriesOf(barList(job));
  }

  /** Pieces, a cut for each, and what is left make the bar; the last cut may fall away. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck"})
  void piecesCutsAndWhatIsLeftMakeTheBar(String example) {
    String words = words(PrintedJob.example(example));
    Matcher saw = KERF.matcher(words);
    assertThat(saw.find()).isTrue();
    double kerf = PrintedValue.length(saw.group(1)).metres();
    List<Told> bars = bars(words);
    assertThat(bars).isNotEmpty();
    for (Told bar : bars) {
      double used = 0;
      Matcher run = RUN.matcher(bar.cuts());
      while (run.find()) {
        used +=
            Integer.parseInt(run.group(1)) * (PrintedValue.length(run.group(3)).metres() + kerf);
      }
      Matcher left = LEFT.matcher(bar.cuts());
      if (left.find()) {
        used += PrintedValue.length(left.group(1)).metres();
        assertThat(used).as(bar.cuts()).isCloseTo(bar.length(), within(0.001));
      } else {
        assertThat(used - kerf).as(bar.cuts()).isLessThanOrEqualTo(bar.length() + 0.001);
      }
    }
  }

  /** Each picture has a letter for each piece of its bar that is long enough to hold one. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck"})
  void thePicturesHoldThePiecesOfTheirBars(String example) {
    PrintedJob job = PrintedJob.example(example);
    Map<String, Integer> drawn = new LinkedHashMap<>();
    for (PrintedPage page : pages(job)) {
      for (int drawing = 0; drawing < page.drawings().size(); drawing++) {
        for (TextRun run : page.runsOf(drawing)) {
          Matcher piece = LETTER.matcher(run.text().strip());
          if (piece.matches()) {
            drawn.merge(piece.group(1), 1, Integer::sum);
          }
        }
      }
    }
    Map<String, Integer> told = new LinkedHashMap<>();
    for (Told bar : bars(words(job))) {
      Matcher run = RUN.matcher(bar.cuts());
      while (run.find()) {
        told.merge(run.group(2), Integer.parseInt(run.group(1)), Integer::sum);
      }
    }
    assertThat(drawn).containsExactlyInAnyOrderEntriesOf(told);
  }
}
