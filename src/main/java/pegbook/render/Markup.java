package pegbook.render;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Reads filled templates as a tree, and walks it. Reads no document type and nothing outside. */
final class Markup {
  private Markup() {}

  /**
   * The tree of a document.
   *
   * @throws RenderException when it is not well-formed, or has a document type
   */
  static Document parse(String markup, String where) {
    try {
      DocumentBuilder builder = factory().newDocumentBuilder();
      builder.setErrorHandler(new Refuse());
      return builder.parse(new InputSource(new StringReader(markup)));
    } catch (SAXParseException broken) {
      String line =
          markup.lines().skip(Math.max(0, broken.getLineNumber() - 1)).findFirst().orElse("");
      throw new RenderException(where, broken.getMessage() + " in: " + line.strip(), broken);
    } catch (SAXException | IOException | ParserConfigurationException broken) {
      throw new RenderException(where, String.valueOf(broken.getMessage()), broken);
    }
  }

  private static DocumentBuilderFactory factory() throws ParserConfigurationException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
    factory.setXIncludeAware(false);
    factory.setExpandEntityReferences(false);
    return factory;
  }

  /** Every element under a node, in the order of the document. */
  static List<Element> elements(Node root) {
    List<Element> found = new ArrayList<>();
    collect(root, found);
    return found;
  }

  private static void collect(Node root, List<Element> found) {
    for (Node child = root.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element) {
        found.add(element);
        collect(element, found);
      }
    }
  }

  /** Every element of a name under a node, in the order of the document. */
  static List<Element> elements(Node root, String name) {
    return elements(root).stream().filter(element -> element.getTagName().equals(name)).toList();
  }

  /** The elements that enclose an element, the nearest first. */
  static List<Element> around(Element element) {
    List<Element> found = new ArrayList<>();
    for (Node node = element.getParentNode();
        node instanceof Element;
        node = node.getParentNode()) {
      found.add((Element) node);
    }
    return found;
  }

  /** An element's text as it prints: spaces and line ends run together. */
  static String text(Element element) {
    return element.getTextContent().strip().replaceAll("\\s+", " ");
  }

  /** Whether a class stands among an element's classes. */
  static boolean hasClass(Element element, String name) {
    return List.of(element.getAttribute("class").split("\\s+", -1)).contains(name);
  }

  /** A length in millimetres as a style sheet writes it. */
  static String millimetres(double length) {
    return String.format(Locale.ROOT, "%.3fmm", length);
  }

  /** The parser would print to the terminal; a complaint is a failure instead. */
  private static final class Refuse implements ErrorHandler {
    @Override
    public void warning(SAXParseException complaint) throws SAXException {
      throw complaint;
    }

    @Override
    public void error(SAXParseException complaint) throws SAXException {
      throw complaint;
    }

    @Override
    public void fatalError(SAXParseException complaint) throws SAXException {
      throw complaint;
    }
  }
}
