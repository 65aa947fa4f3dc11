package pegbook.render;

import java.util.BitSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import pegbook.lettering.Faces;
import pegbook.lettering.FontLettering;

/** Only characters that the fonts have: the layout would print a stand-in for any other. */
final class CharacterRules {
  /** A character in a style sheet, by its code. */
  private static final Pattern CODE = Pattern.compile("\\\\([0-9a-fA-F]{1,6})");

  private final FontLettering lettering;
  private final String where;
  private final BitSet printable = new BitSet();

  private CharacterRules(FontLettering lettering, String where) {
    this.lettering = lettering;
    this.where = where;
  }

  /**
   * Passes when every text of a document can be printed.
   *
   * @throws RenderException that names the first character which no font has
   */
  static void check(Document document, String where, FontLettering lettering) {
    new CharacterRules(lettering, where).check(document.getDocumentElement());
  }

  private void check(Element around) {
    for (Node child = around.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element) {
        check(element);
      } else if (child.getNodeType() == Node.TEXT_NODE
          || child.getNodeType() == Node.CDATA_SECTION_NODE) {
        check(child.getNodeValue(), around);
      }
    }
  }

  private void check(String text, Element around) {
    text.codePoints()
        .filter(point -> !printable.get(point) && !isPrintable(point))
        .findFirst()
        .ifPresent(
            point -> {
              throw new RenderException(
                  where,
                  "<"
                      + around.getTagName()
                      + ">: no font can print "
                      + Faces.nameOf(point)
                      + " in \""
                      + text.strip()
                      + '"');
            });
  }

  private boolean isPrintable(int point) {
    boolean known = "\n\t\r".indexOf(point) >= 0 || lettering.isPrintable(point);
    printable.set(point, known);
    return known;
  }

  /**
   * Passes when a style sheet writes only what the fonts can print, as signs or as their codes.
   *
   * @throws RenderException that names the first character which no font has
   */
  static void checkStyle(String style, String where, FontLettering lettering) {
    String written =
        CODE.matcher(style).replaceAll(code -> sign(Integer.parseInt(code.group(1), 16)));
    written
        .codePoints()
        .filter(point -> !Character.isWhitespace(point) && !lettering.isPrintable(point))
        .findFirst()
        .ifPresent(
            point -> {
              throw new RenderException(where, "no font can print " + Faces.nameOf(point));
            });
  }

  private static String sign(int code) {
    String sign = Character.isValidCodePoint(code) ? Character.toString(code) : "";
    return Matcher.quoteReplacement(sign);
  }
}
