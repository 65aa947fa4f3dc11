package pegbook.render;

import java.util.List;
import java.util.Locale;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Completes a document: language, title, style, bookmarks, and the contents list where the template
 * has {@code <div class="contents"/>}. They come from the headings as they are, so that dropping a
 * sheet from a template needs no other change.
 */
final class DocumentHead {
  /** Class of what stays out of the contents list. */
  private static final String UNLISTED = "unlisted";

  private DocumentHead() {}

  static void complete(Document markup, PacketDocument document, String style) {
    Element root = markup.getDocumentElement();
    root.setAttribute("lang", document.language());
    Markup.elements(root, "head").forEach(old -> old.getParentNode().removeChild(old));
    List<Element> headings = headings(root);
    Element head = markup.createElement("head");
    root.insertBefore(head, root.getFirstChild());
    head.appendChild(text(markup, "title", document.title()));
    head.appendChild(meta(markup, "author", document.author()));
    head.appendChild(meta(markup, "subject", document.subject()));
    head.appendChild(text(markup, "style", style + pageSize(document.paper())));
    head.appendChild(bookmarks(markup, headings));
    fillContents(markup, headings);
  }

  private static List<Element> headings(Element root) {
    List<Element> headings =
        Markup.elements(root).stream().filter(each -> each.getTagName().matches("h[12]")).toList();
    for (int at = 0; at < headings.size(); at++) {
      Element heading = headings.get(at);
      if (!heading.hasAttribute("id")) {
        heading.setAttribute("id", "heading-" + (at + 1));
      }
    }
    return headings;
  }

  private static String pageSize(PageSize paper) {
    return String.format(
        Locale.ROOT,
        "%n@page { size: %s %s; }%n",
        Markup.millimetres(paper.widthMm()),
        Markup.millimetres(paper.heightMm()));
  }

  private static Element text(Document markup, String name, String text) {
    Element element = markup.createElement(name);
    element.setTextContent(text);
    return element;
  }

  private static Element meta(Document markup, String name, String content) {
    Element element = markup.createElement("meta");
    element.setAttribute("name", name);
    element.setAttribute("content", content);
    return element;
  }

  private static Element bookmarks(Document markup, List<Element> headings) {
    Element bookmarks = markup.createElement("bookmarks");
    Element sheet = bookmarks;
    for (Element heading : headings) {
      Element bookmark = markup.createElement("bookmark");
      bookmark.setAttribute("name", Markup.text(heading));
      bookmark.setAttribute("href", "#" + heading.getAttribute("id"));
      boolean top = heading.getTagName().equals("h1");
      (top ? bookmarks : sheet).appendChild(bookmark);
      sheet = top ? bookmark : sheet;
    }
    return bookmarks;
  }

  /** Lists the sheets that follow the contents. */
  private static void fillContents(Document markup, List<Element> headings) {
    for (Element contents : Markup.elements(markup, "div")) {
      if (!Markup.hasClass(contents, "contents")) {
        continue;
      }
      Element list = markup.createElement("ol");
      headings.stream()
          .filter(heading -> isListed(heading) && isAfter(heading, contents))
          .forEach(heading -> list.appendChild(line(markup, heading)));
      contents.appendChild(list);
    }
  }

  /** The title of a sheet, unless the sheet is one of many that stand for another's details. */
  private static boolean isListed(Element heading) {
    return heading.getTagName().equals("h1")
        && Markup.around(heading).stream().noneMatch(box -> Markup.hasClass(box, UNLISTED));
  }

  private static boolean isAfter(Node node, Node mark) {
    return (mark.compareDocumentPosition(node) & Node.DOCUMENT_POSITION_FOLLOWING) != 0;
  }

  private static Element line(Document markup, Element heading) {
    Element line = markup.createElement("li");
    Element link = text(markup, "a", Markup.text(heading));
    link.setAttribute("href", "#" + heading.getAttribute("id"));
    link.setAttribute("title", Markup.text(heading));
    line.appendChild(link);
    return line;
  }
}
