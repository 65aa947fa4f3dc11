package pegbook.published;

/**
 * A place in a publication.
 *
 * @param publication id in the catalogue
 * @param locator section, table or page; empty for the whole
 */
public record Citation(String publication, String locator) {
  /** Common practice, no source. */
  public static final Citation COMMON_PRACTICE = new Citation("common-practice", "");

  /** Exact mathematics: nothing to look up. */
  public static final Citation GEOMETRY = new Citation("geometry", "");

  public Citation {
    Publications.find(publication);
  }
}
