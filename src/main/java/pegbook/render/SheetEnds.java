package pegbook.render;

import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/**
 * Sheets that would end on a nearly empty page. Such a sheet is set tighter; if it still spills
 * over a little, it turns the page earlier, where its template has a place for that, or else the
 * sheet after it goes on below instead of beginning a page. A sheet that is meant for one side is
 * set tighter when it spills at all; when that does not help it takes two sides, with more room for
 * everything, unless that makes three or leaves one nearly empty.
 *
 * <p>Where a sheet ends is known only when it is laid out, so the document is laid out again after
 * each change.
 */
final class SheetEnds {
  /** Laying out again stops after this many times, whatever is left. */
  static final int MOST_TIMES = 8;

  /** A page filled to less than this part is nearly empty. */
  private static final double LEAST = 0.18;

  private static final String TIGHT = "tight";
  private static final String FOLLOWS = "follows";

  /** A place where a sheet may turn the page, and the sheet that does. */
  private static final String TURN = "turn";

  private static final String TURNED = "turned";
  private static final String ONE_SIDE = "one-side";
  private static final String TWO_SIDES = "two-sides";

  /** What is shown in one form of a sheet only. */
  private static final String IF_ONE_SIDE = "if-one-side";

  private static final String IF_TWO_SIDES = "if-two-sides";

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

  /** Whether an element belongs to the form that its sheet has not taken. */
  static boolean isHidden(Element place) {
    List<Element> around = Markup.around(place);
    boolean two = around.stream().anyMatch(each -> Markup.hasClass(each, TWO_SIDES));
    String hidden = two ? IF_ONE_SIDE : IF_TWO_SIDES;
    return around.stream().anyMatch(each -> Markup.hasClass(each, hidden));
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
      int more = lastPage(sheet) - pageOf(sheet.getAbsY());
      if (more > 0 && isFor(sheet, ONE_SIDE)) {
        any |= fit(sheet, ONE_SIDE, TWO_SIDES);
      } else if ((more > 0 && isShort(at)) || (more > 1 && isFor(sheet, TWO_SIDES))) {
        any |= fit(sheet, TWO_SIDES, "");
      }
    }
    return any;
  }

  /** Sets a sheet tighter; one that is tight already and of a form takes the next form, loose. */
  private static boolean fit(Box sheet, String form, String next) {
    if (!isFor(sheet, TIGHT)) {
      addClass(sheet, TIGHT);
      return true;
    }
    if (canTurn(sheet)) {
      addClass(sheet, TURNED);
      return true;
    }
    if (!isFor(sheet, form)) {
      return false;
    }
    removeClass(sheet, TIGHT);
    removeClass(sheet, form);
    addClass(sheet, next);
    return true;
  }

  private static boolean canTurn(Box sheet) {
    return !isFor(sheet, TURNED)
        && Markup.elements(sheet.getElement()).stream()
            .anyMatch(place -> Markup.hasClass(place, TURN));
  }

  private static boolean isFor(Box sheet, String name) {
    return Markup.hasClass(sheet.getElement(), name);
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

  private static void removeClass(Box sheet, String name) {
    Element element = sheet.getElement();
    String others =
        Stream.of(element.getAttribute("class").split("\\s+", -1))
            .filter(each -> !each.equals(name))
            .collect(Collectors.joining(" "));
    element.setAttribute("class", others);
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
