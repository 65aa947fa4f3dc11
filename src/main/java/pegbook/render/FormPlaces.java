package pegbook.render;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Where a document is to be filled in. Each input becomes an empty box of the page, so that it is
 * laid out and tagged like any other; {@link FormFields} then puts a form field over it.
 */
final class FormPlaces {
  /** Stable names, with points between their parts: they are read back from filled sheets. */
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*");

  private FormPlaces() {}

  /**
   * A field to come.
   *
   * @param id id of its box in the markup
   * @param name full name of the field
   * @param description what is to be filled in, for readers who cannot see it
   * @param tick true for a box to tick, false for a text
   */
  record Place(String id, String name, String description, boolean tick) {}

  /**
   * Takes the inputs out of a document.
   *
   * @return the fields to come, in the order of the document
   */
  static List<Place> take(Document markup, String where) {
    List<Place> places = new ArrayList<>();
    Set<String> names = new LinkedHashSet<>();
    for (Element input : Markup.elements(markup, "input")) {
      Place place = place(input, "field-" + (places.size() + 1), where);
      if (!names.add(place.name())) {
        throw new RenderException(where, "<input>: the name " + place.name() + " stands twice");
      }
      input.getParentNode().replaceChild(box(markup, input, place), input);
      places.add(place);
    }
    return places;
  }

  private static Place place(Element input, String id, String where) {
    String name = input.getAttribute("name");
    String type = input.getAttribute("type");
    String title = input.getAttribute("title");
    boolean repeated =
        Markup.around(input).stream().anyMatch(each -> each.getTagName().equals("thead"));
    if (!type.equals("checkbox") && !type.equals("text")) {
      throw new RenderException(where, "<input>: the type is checkbox or text, not " + type);
    }
    if (!NAME.matcher(name).matches() || title.isBlank() || repeated) {
      throw new RenderException(
          where,
          "<input name=\"" + name + "\">: needs a plain name, a title, a place outside heads");
    }
    return new Place(id, name, title, type.equals("checkbox"));
  }

  private static Element box(Document markup, Element input, Place place) {
    Element box = markup.createElement("span");
    String own = input.getAttribute("class");
    box.setAttribute("id", place.id());
    box.setAttribute("class", (place.tick() ? "field-tick " : "field-text ") + own);
    box.setAttribute("title", place.description());
    return box;
  }
}
