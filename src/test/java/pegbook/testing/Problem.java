package pegbook.testing;

/**
 * Something wrong on a page.
 *
 * @param page number of the page
 * @param kind what is wrong
 * @param detail which texts or things, and where
 */
public record Problem(int page, Kind kind, String detail) {

  /** What can be wrong. */
  public enum Kind {
    TEXT_OVER_TEXT,
    TEXT_CROWDED,
    TEXT_CUT,
    TEXT_ON_LINE,
    TEXT_STRUCK,
    TEXT_COVERED,
    SMALL_TYPE,
    LONE_HEADING,
    LONE_TABLE_HEAD,
    TABLE_WITHOUT_HEAD,
    SPLIT_ROW,
    NEARLY_EMPTY,
    MISSING_LETTER,
    UNREADABLE_TEXT,
    OUTSIDE_MARGIN,
    DRAWINGS_OVERLAP,
    DRAWING_CUT,
    TEXT_ON_DRAWING,
    FIELD_OVERLAP
  }

  @Override
  public String toString() {
    return "page "
        + page
        + ": "
        + kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')
        + ": "
        + detail;
  }
}
