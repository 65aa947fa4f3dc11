package pegbook.render;

import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Sheets that would end on a nearly empty page. Such a sheet is set tighter; if it still spills
 * over a little, it turns the page earlier, where its template has a place for that, or else the
 * sheet after it goes on below instead of beginning a page. A sheet that is meant for one side is
 * set tighter when it spills at all; when that does not help it takes two sides, with more room for
 * everything, unless that makes three or leaves one nearly empty. A table whose head would stand
 * alone at the foot of a page begins the next one ({@link LoneHeads}).
 *
 * <p>Where a sheet ends is known only when it is laid out, so what was changed is laid out again.
 * Every sheet begins a page, but for those that go on below another: the rest of the document is
 * left out meanwhile, as it moves whole pages only.
 */
final class SheetEnds {
  /** Laying out again stops after this many times, whatever is left. */
  static final int MOST_TIMES = 8;

  /** A page filled to less than this part is nearly empty. */
  private static final double LEAST = 0.18;

  static final String SHEET = "sheet";
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

  private static final String STYLE = "style";

  private final List<Element> sheets;

  /** The style that each sheet was written with. */
  private final List<String> styles;

  /** Where each sheet stood when it was laid out last. */
  private final Map<Element, Extent> extents = new LinkedHashMap<>();

  private final LoneHeads heads = new LoneHeads();

  private List<Element> shown;

  /**
   * Where a sheet stands; pages count from the first that was laid out with it.
   *
   * @param first its first page
   * @param last its last page
   * @param filled how much of its last page lies above its end
   */
  private record Extent(int first, int last, double filled) {}

  /** The ends of a document's sheets, before it is laid out. */
  SheetEnds(Document markup) {
    this.sheets =
        Markup.elements(markup.getDocumentElement()).stream()
            .filter(each -> Markup.hasClass(each, SHEET))
            .filter(
                each -> Markup.around(each).stream().noneMatch(box -> Markup.hasClass(box, SHEET)))
            .toList();
    this.styles = sheets.stream().map(sheet -> sheet.getAttribute(STYLE)).toList();
    this.shown = sheets;
  }

  /** Whether no sheet is left out. */
  boolean isWhole() {
    return shown.size() == sheets.size();
  }

  /** Leaves no sheet out. */
  void showAll() {
    show(sheets);
  }

  /**
   * Changes the classes of sheets, so that fewer end on a nearly empty page, and leaves the others
   * out.
   *
   * @param laidOut what was laid out, of the sheets that are not left out
   * @return whether anything was changed, and must be laid out again
   */
  boolean mend(BlockBox laidOut) {
    measure(laidOut, laidOut.getLayer().getPages());
    List<Element> changed = tighten();
    changed.forEach(heads::forget);
    changed.addAll(sheetsOf(heads.mend(laidOut, changed)));
    if (changed.isEmpty()) {
      changed = letOneFollow();
    }
    if (!changed.isEmpty()) {
      show(changed);
    }
    return !changed.isEmpty();
  }

  private List<Element> sheetsOf(List<Element> places) {
    return sheets.stream()
        .filter(sheet -> places.stream().anyMatch(place -> Markup.around(place).contains(sheet)))
        .toList();
  }

  /** Whether an element belongs to the form that its sheet has not taken. */
  static boolean isHidden(Element place) {
    List<Element> around = Markup.around(place);
    boolean two = around.stream().anyMatch(each -> Markup.hasClass(each, TWO_SIDES));
    String hidden = two ? IF_ONE_SIDE : IF_TWO_SIDES;
    return around.stream().anyMatch(each -> Markup.hasClass(each, hidden));
  }

  private void measure(Box box, List<PageBox> pages) {
    Element element = box.getElement();
    if (element != null && Markup.hasClass(element, SHEET)) {
      extents.put(element, extent(box, pages));
      return;
    }
    box.getChildren().forEach(child -> measure(child, pages));
  }

  private static Extent extent(Box sheet, List<PageBox> pages) {
    int bottom = sheet.getAbsY() + sheet.getHeight();
    int last = pageOf(bottom - 1, pages);
    double top = pages.get(last).getTop();
    double room = pages.get(last).getBottom() - top;
    return new Extent(pageOf(sheet.getAbsY(), pages), last, (bottom - top) / room);
  }

  /** The page, counted from nought, that a height stands on. */
  static int pageOf(int y, List<PageBox> pages) {
    int page = 0;
    while (page + 1 < pages.size() && y >= pages.get(page).getBottom()) {
      page++;
    }
    return page;
  }

  /** Shows sheets, with those that go on below them or above, and leaves the others out. */
  private void show(List<Element> chosen) {
    List<Element> together = new ArrayList<>();
    for (int from = 0; from < sheets.size(); ) {
      int to = from + 1;
      while (to < sheets.size() && is(sheets.get(to), FOLLOWS)) {
        to++;
      }
      List<Element> run = sheets.subList(from, to);
      if (run.stream().anyMatch(chosen::contains)) {
        together.addAll(run);
      }
      from = to;
    }
    for (int at = 0; at < sheets.size(); at++) {
      Element sheet = sheets.get(at);
      String style = styles.get(at);
      if (!together.contains(sheet)) {
        sheet.setAttribute(STYLE, "display: none");
      } else if (style.isEmpty()) {
        sheet.removeAttribute(STYLE);
      } else {
        sheet.setAttribute(STYLE, style);
      }
    }
    shown = together;
  }

  private List<Element> tighten() {
    List<Element> changed = new ArrayList<>();
    for (int at = 0; at < sheets.size(); at++) {
      Element sheet = sheets.get(at);
      Extent extent = extents.get(sheet);
      if (extent == null) {
        continue;
      }
      int more = extent.last() - extent.first();
      boolean isChanged = false;
      if (more > 0 && is(sheet, ONE_SIDE)) {
        isChanged = fit(sheet, ONE_SIDE, TWO_SIDES);
      } else if ((more > 0 && isShort(at)) || (more > 1 && is(sheet, TWO_SIDES))) {
        isChanged = fit(sheet, TWO_SIDES, "");
      }
      if (isChanged) {
        changed.add(sheet);
      }
    }
    return changed;
  }

  /** Sets a sheet tighter; one that is tight already and of a form takes the next form, loose. */
  private static boolean fit(Element sheet, String form, String next) {
    if (!is(sheet, TIGHT)) {
      addClass(sheet, TIGHT);
      return true;
    }
    if (canTurn(sheet)) {
      addClass(sheet, TURNED);
      return true;
    }
    if (!is(sheet, form)) {
      return false;
    }
    removeClass(sheet, TIGHT);
    removeClass(sheet, form);
    addClass(sheet, next);
    return true;
  }

  private static boolean canTurn(Element sheet) {
    return !is(sheet, TURNED)
        && Markup.elements(sheet).stream().anyMatch(place -> Markup.hasClass(place, TURN));
  }

  private static boolean is(Element sheet, String name) {
    return Markup.hasClass(sheet, name);
  }

  /** One only, for it moves all that stands behind it on the same pages. */
  private List<Element> letOneFollow() {
    for (int at = 0; at + 1 < sheets.size(); at++) {
      Element next = sheets.get(at + 1);
      if (isShort(at) && !is(next, FOLLOWS)) {
        addClass(next, FOLLOWS);
        return List.of(next);
      }
    }
    return List.of();
  }

  private static void addClass(Element sheet, String name) {
    sheet.setAttribute("class", sheet.getAttribute("class") + ' ' + name);
  }

  private static void removeClass(Element sheet, String name) {
    String others =
        Stream.of(sheet.getAttribute("class").split("\\s+", -1))
            .filter(each -> !each.equals(name))
            .collect(Collectors.joining(" "));
    sheet.setAttribute("class", others);
  }

  /** Whether a sheet was laid out, and its last page holds little and nothing else. */
  private boolean isShort(int at) {
    Extent extent = extents.get(sheets.get(at));
    if (extent == null) {
      return false;
    }
    boolean before =
        at > 0 && is(sheets.get(at), FOLLOWS) && lastPage(sheets.get(at - 1)) == extent.last();
    boolean after =
        at + 1 < sheets.size()
            && is(sheets.get(at + 1), FOLLOWS)
            && firstPage(sheets.get(at + 1)) == extent.last();
    return !before && !after && extent.filled() < LEAST;
  }

  private int lastPage(Element sheet) {
    Extent extent = extents.get(sheet);
    return extent == null ? -1 : extent.last();
  }

  private int firstPage(Element sheet) {
    Extent extent = extents.get(sheet);
    return extent == null ? -1 : extent.first();
  }
}
