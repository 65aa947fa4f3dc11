package pegbook.render;

import com.openhtmltopdf.css.constants.CSSName;
import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.newtable.TableBox;
import com.openhtmltopdf.newtable.TableCellBox;
import com.openhtmltopdf.newtable.TableRowBox;
import com.openhtmltopdf.newtable.TableSectionBox;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;

/**
 * Tables whose head would stand alone at the foot of a page. The room that the style sheet asks for
 * where a table begins is that of a row as usual; the layout finds out too late that the first one
 * is taller, and leaves the head behind. Such a table turns the page, together with the headings
 * and lines that are kept with it.
 */
final class LoneHeads {
  private static final String STYLE = "style";
  private static final String TURN = "page-break-before: always";

  /** What begins above this part of a page gains nothing by turning it. */
  private static final double TOP = 0.05;

  /** What was made to turn the page, and the style it was written with. */
  private final Map<Element, String> turned = new LinkedHashMap<>();

  /**
   * Makes tables turn the page.
   *
   * @param laidOut what was laid out
   * @param except sheets that are changed already, and will be laid out otherwise
   * @return what was made to turn it
   */
  List<Element> mend(BlockBox laidOut, List<Element> except) {
    List<Element> found = new ArrayList<>();
    look(laidOut, laidOut.getLayer().getPages(), found);
    found.removeIf(turned::containsKey);
    found.removeIf(each -> Markup.around(each).stream().anyMatch(except::contains));
    for (Element each : found) {
      String style = each.getAttribute(STYLE);
      turned.put(each, style);
      each.setAttribute(STYLE, style.isEmpty() ? TURN : style + "; " + TURN);
    }
    return found;
  }

  /** Forgets what was made to turn the page on a sheet, as it is set otherwise now. */
  void forget(Element sheet) {
    turned.forEach(
        (each, style) -> {
          if (Markup.around(each).contains(sheet)) {
            each.setAttribute(STYLE, style);
          }
        });
    turned.keySet().removeIf(each -> Markup.around(each).contains(sheet));
  }

  private static void look(Box box, List<PageBox> pages, List<Element> found) {
    if (box instanceof TableBox table) {
      int page = pageOfLoneHead(table, pages);
      if (page >= 0) {
        Box first = first(table, page, pages);
        PageBox paper = pages.get(page);
        double room = paper.getBottom() - paper.getTop();
        if (first.getElement() != null && first.getAbsY() > paper.getTop() + TOP * room) {
          found.add(first.getElement());
        }
      }
    }
    for (Box child : box.getChildren()) {
      if (child instanceof BlockBox) {
        look(child, pages, found);
      }
    }
  }

  /** The page of a head without its first row; -1 for all other tables. */
  private static int pageOfLoneHead(TableBox table, List<PageBox> pages) {
    TableRowBox row = table.getFirstBodyRow();
    for (Box part : table.getChildren()) {
      if (row != null && part instanceof TableSectionBox section && section.isHeader()) {
        int page = SheetEnds.pageOf(section.getAbsY(), pages);
        return page < SheetEnds.pageOf(row.getAbsY(), pages) ? page : -1;
      }
    }
    return -1;
  }

  /** Where what is kept with a table begins, on the page of its head. */
  private static Box first(TableBox table, int page, List<PageBox> pages) {
    Box first = table;
    for (Box around = table.getParent(); around != null; around = first.getParent()) {
      int at = around.getChildren().indexOf(first);
      if (at > 0 && !isPartOfTable(first)) {
        Box before = around.getChild(at - 1);
        if (!isKeptWithNext(before) || SheetEnds.pageOf(before.getAbsY(), pages) != page) {
          return first;
        }
        first = before;
      } else if (isSheet(around)) {
        return first;
      } else {
        first = around;
      }
    }
    return first;
  }

  private static boolean isPartOfTable(Box box) {
    return box instanceof TableCellBox
        || box instanceof TableRowBox
        || box instanceof TableSectionBox;
  }

  private static boolean isSheet(Box box) {
    return box.getElement() != null && Markup.hasClass(box.getElement(), SheetEnds.SHEET);
  }

  private static boolean isKeptWithNext(Box box) {
    return box.getStyle().isIdent(CSSName.PAGE_BREAK_AFTER, IdentValue.AVOID);
  }
}
