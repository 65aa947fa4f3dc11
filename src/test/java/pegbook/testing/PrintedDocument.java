package pegbook.testing;

import java.util.List;

/**
 * A PDF as it was printed.
 *
 * @param pages its pages in order
 * @param bookmarks its bookmarks in order
 */
public record PrintedDocument(List<PrintedPage> pages, List<Bookmark> bookmarks) {

  /**
   * A bookmark.
   *
   * @param title what it says
   * @param level 1 for the outermost
   * @param page page it leads to, 1 for the first; 0 when it leads nowhere
   */
  public record Bookmark(String title, int level, int page) {}

  /** All lines of text of all pages. */
  public List<String> lines() {
    return pages.stream().flatMap(page -> page.lines().stream()).toList();
  }

  /** All text, a line break after each line. */
  public String text() {
    return String.join("\n", lines());
  }

  /** All form fields of all pages. */
  public List<PrintedPage.Field> fields() {
    return pages.stream().flatMap(page -> page.fields().stream()).toList();
  }
}
