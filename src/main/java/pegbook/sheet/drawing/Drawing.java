package pegbook.sheet.drawing;

import java.util.List;

/**
 * A picture on paper.
 *
 * @param id name under which the templates place it; letters, digits and hyphens, unique in a
 *     document
 * @param widthMm width in millimetres, a whole multiple of 0.01
 * @param heightMm height in millimetres
 * @param description what the picture shows, in words, for readers who cannot see it
 * @param elements what is drawn, in painting order
 */
public record Drawing(
    String id, double widthMm, double heightMm, String description, List<Element> elements) {
  public Drawing {
    elements = List.copyOf(elements);
    if (!(widthMm > 0 && heightMm > 0)) {
      throw new IllegalArgumentException("drawing " + id + ": " + widthMm + " x " + heightMm);
    }
  }
}
