package pegbook.render;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/**
 * What a filled template may hold. The page would otherwise come out silently wrong: an unknown
 * element unstyled, a heading level skipped for the ear only.
 */
final class MarkupRules {
  private static final Set<String> ELEMENTS =
      Set.of(
          "html",
          "head",
          "title",
          "body",
          "section",
          "div",
          "p",
          "h1",
          "h2",
          "h3",
          "h4",
          "ul",
          "ol",
          "li",
          "table",
          "caption",
          "colgroup",
          "col",
          "thead",
          "tbody",
          "tr",
          "th",
          "td",
          "span",
          "strong",
          "em",
          "sup",
          "sub",
          "br",
          "a",
          "abbr",
          "object",
          "input");

  private static final Set<String> ATTRIBUTES =
      Set.of(
          "id",
          "class",
          "style",
          "title",
          "lang",
          "href",
          "colspan",
          "rowspan",
          "scope",
          "type",
          "name",
          "alt",
          "data-drawing",
          "start");

  private final String where;

  private MarkupRules(String where) {
    this.where = where;
  }

  /**
   * Passes when a document keeps the rules.
   *
   * @throws RenderException that names the first breach
   */
  static void check(Document document, String where) {
    MarkupRules rules = new MarkupRules(where);
    List<Element> elements = Markup.elements(document);
    elements.forEach(rules::checkNames);
    rules.checkLinks(elements);
    rules.checkHeadings(elements);
    elements.stream()
        .filter(element -> element.getTagName().equals("table"))
        .forEach(rules::checkHeads);
  }

  private void checkNames(Element element) {
    if (!ELEMENTS.contains(element.getTagName())) {
      throw refused(element, "a packet has no such element");
    }
    NamedNodeMap attributes = element.getAttributes();
    for (int at = 0; at < attributes.getLength(); at++) {
      String name = attributes.item(at).getNodeName();
      if (!ATTRIBUTES.contains(name)) {
        throw refused(element, "a packet has no attribute " + name);
      }
    }
  }

  private void checkLinks(List<Element> elements) {
    Set<String> ids = new LinkedHashSet<>();
    for (Element element : elements) {
      if (element.hasAttribute("id") && !ids.add(element.getAttribute("id"))) {
        throw refused(element, "the id stands twice");
      }
    }
    for (Element element : elements) {
      String link = element.getAttribute("href");
      if (element.hasAttribute("href")
          && !(link.startsWith("#") && ids.contains(link.substring(1)))) {
        throw refused(element, "links lead to an #id of the document only, not to " + link);
      }
    }
  }

  private void checkHeadings(List<Element> elements) {
    int before = 0;
    for (Element element : elements) {
      if (!element.getTagName().matches("h[1-4]")) {
        continue;
      }
      int level = element.getTagName().charAt(1) - '0';
      if (level > before + 1) {
        throw refused(element, "a heading level is skipped before \"" + Markup.text(element) + '"');
      }
      before = level;
    }
  }

  /** A table needs heads; each says which way it heads, by its place unless the template says. */
  private void checkHeads(Element table) {
    List<Element> heads = Markup.elements(table, "th");
    boolean inStrip =
        Markup.around(table).stream().anyMatch(each -> Markup.hasClass(each, "title-strip"));
    if (heads.isEmpty() && !inStrip) {
      throw refused(table, "a table needs heads (th)");
    }
    for (Element head : heads) {
      boolean top =
          Markup.around(head).stream().anyMatch(each -> each.getTagName().equals("thead"));
      if (!head.hasAttribute("scope")) {
        head.setAttribute("scope", top ? "col" : "row");
      }
    }
  }

  private RenderException refused(Element element, String reason) {
    String id = element.hasAttribute("id") ? " id=\"" + element.getAttribute("id") + '"' : "";
    return new RenderException(where, "<" + element.getTagName() + id + ">: " + reason);
  }
}
