package pegbook.render;

import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;

/**
 * Sheets that would end on a nearly empty page. Such a sheet is set tighter; if it still spills
 * over a little, the sheet after it goes on below instead of beginning a page. Where a sheet ends
 * is known only when it is laid out, so the document is laid out again after each change.
 */
final class SheetEnds {
  /** Laying out again stops after this many times, whatever is left. */
  static final int MOST_TIMES = 8;

  /** A page filled to less than this part is nearly empty. */
  private static final double LEAST = 0.18;

  private static final String TIGHT = "tight";
  private static final String FOLLOWS = "follows";

  private final List<Box> sheets = new ArrayList<>();
  private final List<PageBox> pages;

  private SheetEnds(BlockBox root) {
    this.pages = root.getLayer().getPages();
    collect(root);
  }

  /**
   * Changes the classes of sheets, so that fewer end on a nearly empty page.
   *
   * @return whether anything was changed, and the document must be laid out again
   */
  static boolean mend(BlockBox laidOut) {
    SheetEnds ends = new SheetEnds(laidOut);
    return ends.tighten() || ends.letOneFollow();
  }

  private void collect(Box box) {
    Element element = box.getElement();
    if (element != null && Markup.hasClass(element, "sheet")) {
      sheets.add(box);
      return;
    }
    box.getChildren().forEach(this::collect);
  }

  private boolean tighten() {
    boolean any = false;
    for (int at = 0; at < sheets.size(); at++) {
      Box sheet = sheets.get(at);
      boolean spills = pageOf(sheet.getAbsY()) < lastPage(sheet);
      if (isShort(at) && spills && !Markup.hasClass(sheet.getElement(), TIGHT)) {
        addClass(sheet, TIGHT);
        any = true;
      }
    }
    return any;
  }

  /** One only, for it moves all that stands behind it. */
  private boolean letOneFollow() {
    for (int at = 0; at + 1 < sheets.size(); at++) {
      Box next = sheets.get(at + 1);
      if (isShort(at) && !Markup.hasClass(next.getElement(), FOLLOWS)) {
        addClass(next, FOLLOWS);
        return true;
      }
    }
    return false;
  }

  private static void addClass(Box sheet, String name) {
    Element element = sheet.getElement();
    element.setAttribute("class", element.getAttribute("class") + ' ' + name);
  }

  /** Whether the last page of a sheet holds little, and nothing else. */
  private boolean isShort(int at) {
    Box sheet = sheets.get(at);
    int page = lastPage(sheet);
    boolean before = at > 0 && lastPage(sheets.get(at - 1)) == page;
    boolean after = at + 1 < sheets.size() && pageOf(sheets.get(at + 1).getAbsY()) == page;
    double top = pages.get(page).getTop();
    double room = pages.get(page).getBottom() - top;
    return !before && !after && (bottom(sheet) - top) / room < LEAST;
  }

  private int lastPage(Box sheet) {
    return pageOf(bottom(sheet) - 1);
  }

  private static int bottom(Box sheet) {
    return sheet.getAbsY() + sheet.getHeight();
  }

  private int pageOf(int y) {
    int page = 0;
    while (page + 1 < pages.size() && y >= pages.get(page).getBottom()) {
      page++;
    }
    return page;
  }
}
