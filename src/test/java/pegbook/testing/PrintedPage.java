package pegbook.testing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One page as it was printed.
 *
 * @param number 1 for the first
 * @param paper its size, from the origin
 * @param runs texts in painting order
 * @param paths lines and areas in painting order
 * @param drawings drawings placed on it; their numbers are their places in this list
 * @param fields form fields on it
 */
public record PrintedPage(
    int number,
    Box paper,
    List<TextRun> runs,
    List<DrawnPath> paths,
    List<PlacedDrawing> drawings,
    List<Field> fields) {

  /**
   * A drawing placed on a page.
   *
   * @param box where
   * @param tags its place in the tag tree
   */
  public record PlacedDrawing(Box box, List<String> tags) {}

  /**
   * A form field.
   *
   * @param name full name
   * @param type "Btn", "Tx" and so on
   * @param box where
   */
  public record Field(String name, String type, Box box) {}

  /** Texts that are content and stand outside drawings. */
  public List<TextRun> body() {
    return runs.stream().filter(run -> !run.isArtifact() && !run.isInDrawing()).toList();
  }

  /** Texts of a drawing, by its number. */
  public List<TextRun> runsOf(int drawing) {
    return runs.stream().filter(run -> run.drawing().orElse(-1) == drawing).toList();
  }

  /** Lines and areas of a drawing, by its number. */
  public List<DrawnPath> pathsOf(int drawing) {
    return paths.stream().filter(path -> path.drawing().orElse(-1) == drawing).toList();
  }

  /** The level texts as lines from the top down, gaps of more than a thin space as spaces. */
  public List<String> lines() {
    List<TextRun> sorted =
        runs.stream()
            .sorted(
                Comparator.comparingLong((TextRun run) -> -Math.round(run.start().y() / 0.4))
                    .thenComparingDouble(run -> run.start().x()))
            .toList();
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < sorted.size(); i++) {
      TextRun run = sorted.get(i);
      if (i > 0 && !isSameLine(sorted.get(i - 1), run)) {
        lines.add(line.toString().strip());
        line.setLength(0);
      } else if (i > 0 && gap(sorted.get(i - 1), run) > 0.15 * emMm(run)) {
        line.append(' ');
      }
      line.append(run.text());
    }
    lines.add(line.toString().strip());
    return lines.stream().map(text -> text.replaceAll("\\s+", " ")).toList();
  }

  private static boolean isSameLine(TextRun one, TextRun two) {
    return Math.round(one.start().y() / 0.4) == Math.round(two.start().y() / 0.4);
  }

  private static double gap(TextRun one, TextRun two) {
    return two.start().x() - one.end().x();
  }

  private static double emMm(TextRun run) {
    return run.size() * 25.4 / 72;
  }
}
