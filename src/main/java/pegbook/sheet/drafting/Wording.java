package pegbook.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import pegbook.lettering.Lettering;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;

/**
 * One or more lines of text that stand together.
 *
 * @param lines none blank
 * @param size height of type in points
 * @param bold true for the bold face
 */
public record Wording(List<String> lines, double size, boolean bold) {
  /** From one base line to the next, as a share of the type's height. */
  private static final double LEADING = 1.15;

  public Wording {
    lines = List.copyOf(lines);
  }

  public static Wording of(String line, double size) {
    return new Wording(List.of(line), size, false);
  }

  public static Wording bold(String line, double size) {
    return new Wording(List.of(line), size, true);
  }

  /** A text broken between words into lines no wider than a width; a longer word stays whole. */
  public static Wording wrapped(String text, double size, double widthMm, Lettering lettering) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty() || lettering.widthMm(longer, size, false) <= widthMm) {
        line = longer;
      } else {
        lines.add(line);
        line = word;
      }
    }
    lines.add(line);
    return new Wording(lines, size, false);
  }

  public double widthMm(Lettering lettering) {
    return lines.stream().mapToDouble(line -> lettering.widthMm(line, size, bold)).max().orElse(0);
  }

  public double heightMm() {
    return sizeMm() * (Lettering.ASCENT + Lettering.DESCENT + LEADING * (lines.size() - 1));
  }

  private double sizeMm() {
    return size / Lettering.POINTS_PER_MM;
  }

  /** The labels, upright, round a middle; lines are centred on one another. */
  List<Element.Label> centredOn(Spot middle) {
    List<Element.Label> labels = new ArrayList<>();
    double top = middle.y() + heightMm() / 2 - Lettering.ASCENT * sizeMm();
    for (int i = 0; i < lines.size(); i++) {
      Spot at = new Spot(middle.x(), top - i * LEADING * sizeMm());
      labels.add(new Element.Label(at, lines.get(i), size, Element.Anchor.CENTRE, 0, bold, true));
    }
    return labels;
  }
}
