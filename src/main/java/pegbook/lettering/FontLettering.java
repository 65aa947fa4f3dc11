package pegbook.lettering;

import java.util.ArrayList;
import java.util.List;

/** Measures text with the widths of the fonts that the packet embeds. May be shared by threads. */
public final class FontLettering implements Lettering {
  private final Faces faces;

  public FontLettering(Faces faces) {
    this.faces = faces;
  }

  @Override
  public double widthMm(String text, double size, boolean bold) {
    long thousandths = 0;
    for (Faces.Run run : faces.runs(text, bold ? Face.BOLD : Face.REGULAR)) {
      thousandths +=
          run.text().codePoints().mapToLong(point -> faces.advance(point, run.face())).sum();
    }
    return thousandths / 1000.0 * size / POINTS_PER_MM;
  }

  /**
   * Whether every character of a line can be printed, upright, bold and italic. A line break or a
   * script written from right to left cannot.
   */
  public boolean isPrintable(String text) {
    return text.codePoints().allMatch(this::isPrintable);
  }

  /** Whether a character can be printed, upright, bold and italic. */
  public boolean isPrintable(int codePoint) {
    return faces.faceFor(codePoint, Face.REGULAR).isPresent()
        && faces.faceFor(codePoint, Face.BOLD).isPresent()
        && faces.faceFor(codePoint, Face.ITALIC).isPresent();
  }

  /**
   * Breaks a text into lines no wider than a width, between words where it can, else inside a word.
   *
   * @param widthMm greatest width of a line in millimetres; a single character may exceed it
   * @return the lines, none empty; no line for a blank text
   * @throws IllegalArgumentException when a character is in none of the packet's fonts
   */
  public List<String> wrap(String text, double size, boolean bold, double widthMm) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (widthMm(longer, size, bold) <= widthMm) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = breakWord(word, size, bold, widthMm, lines);
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }

  /** Adds full lines of a word too long for one; returns what remains for the next line. */
  private String breakWord(
      String word, double size, boolean bold, double widthMm, List<String> lines) {
    String rest = word;
    while (widthMm(rest, size, bold) > widthMm && rest.codePointCount(0, rest.length()) > 1) {
      int cut = rest.offsetByCodePoints(0, 1);
      while (widthMm(rest.substring(0, nextCut(rest, cut)), size, bold) <= widthMm) {
        cut = nextCut(rest, cut);
      }
      lines.add(rest.substring(0, cut));
      rest = rest.substring(cut);
    }
    return rest;
  }

  private static int nextCut(String word, int cut) {
    return word.offsetByCodePoints(cut, 1);
  }
}
