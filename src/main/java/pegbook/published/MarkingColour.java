package pegbook.published;

import java.util.List;

/**
 * A colour with which lines under ground are marked.
 *
 * @param colour its name in lower case
 * @param use name of what it marks, in the text bundle
 */
public record MarkingColour(String colour, String use) {
  /** The code that they belong to. */
  public static final Citation SOURCE = new Citation("marking-colours", "");

  private static final List<MarkingColour> ALL =
      Table.read("marking_colours").rows().stream()
          .map(row -> new MarkingColour(row.text("colour"), row.text("use")))
          .toList();

  /** All, those that kill first. */
  public static List<MarkingColour> all() {
    return ALL;
  }
}
