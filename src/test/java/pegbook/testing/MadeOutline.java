package pegbook.testing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * An outline made up so that its supports stand a known distance apart.
 *
 * @param json as it stands in a job file
 * @param supports how many supports it has
 * @param reach radius round its centre that holds all of it, mm
 * @param clear radius round its centre that holds no support, mm
 */
record MadeOutline(JsonNode json, int supports, double reach, double clear) {

  /** What outlines are made from. */
  record Wish(Chance chance, Written written, int supports, double spacing, double inset) {
    int upTo(int most) {
      return Math.min(supports, most);
    }
  }

  /** The kinds of outline, in the order in which they take turns. */
  static MadeOutline of(int kind, Wish wish) {
    return switch (kind) {
      case 0 -> regular(wish);
      case 1 -> rectangle(wish);
      case 2 -> chamfered(wish);
      case 3 -> circle(wish);
      default -> points(wish);
    };
  }

  private static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  private static JsonNode named(String kind, ObjectNode outline) {
    return object().set(kind, outline);
  }

  private static MadeOutline regular(Wish wish) {
    int sides = wish.upTo(24);
    double half = Math.PI / sides;
    double side = wish.spacing() + 2 * wish.inset() * Math.tan(half);
    double radius = side / 2 / Math.sin(half);
    ObjectNode outline = object().put("sides", sides);
    if (wish.chance().often(0.3)) {
      outline.put("side", wish.written().length(side));
    } else if (sides % 2 == 0 && wish.chance().often(0.5)) {
      outline.put("acrossFlats", wish.written().length(2 * radius * Math.cos(half)));
    } else {
      outline.put("acrossCorners", wish.written().length(2 * radius));
    }
    double ring = wish.spacing() / 2 / Math.sin(half);
    return new MadeOutline(named("regular", outline), sides, radius, ring);
  }

  private static MadeOutline rectangle(Wish wish) {
    int fewest = Math.max(2, wish.supports() / 12);
    int rows = wish.chance().whole(fewest, Math.max(fewest, Math.min(6, wish.supports() / 2)));
    int columns = Math.max(2, wish.supports() / rows);
    double length = wish.spacing() * (columns - 1) + 2 * wish.inset();
    double width = 1.2 * wish.spacing() * (rows - 1) + 2 * wish.inset();
    ObjectNode outline =
        object()
            .put("length", wish.written().length(length))
            .put("width", wish.written().length(width))
            .put("columns", columns)
            .put("rows", rows);
    double reach = Math.hypot(length, width) / 2;
    return new MadeOutline(named("rectangle", outline), rows * columns, reach, 0);
  }

  private static MadeOutline chamfered(Wish wish) {
    double shortened = 2 * Math.tan(Math.PI / 8) * wish.inset();
    double cut = (wish.spacing() + shortened) / Math.sqrt(2);
    double length = 2 * cut + wish.spacing() * wish.chance().between(1, 3) + shortened;
    double width = 2 * cut + wish.spacing() + shortened;
    ObjectNode outline =
        object()
            .put("length", wish.written().length(length))
            .put("width", wish.written().length(width))
            .put("cut", wish.written().length(cut));
    double reach = Math.hypot(length, width) / 2;
    return new MadeOutline(
        named("chamferedRectangle", outline), 8, reach, width / 2 - wish.inset());
  }

  private static MadeOutline circle(Wish wish) {
    double ring = wish.spacing() / 2 / Math.sin(Math.PI / wish.supports());
    ObjectNode outline =
        object()
            .put("diameter", wish.written().length(2 * (ring + wish.inset())))
            .put("posts", wish.supports());
    return new MadeOutline(named("circle", outline), wish.supports(), ring + wish.inset(), ring);
  }

  /** A lopsided figure; up to nine supports stand at its corners, more on a ring inside it. */
  private static MadeOutline points(Wish wish) {
    boolean atCorners = wish.supports() <= 9;
    int corners = atCorners ? wish.supports() : wish.chance().whole(6, 10);
    double ring = wish.spacing() / 2 / Math.sin(Math.PI / wish.supports());
    double radius = atCorners ? 1.6 * ring + 3 * wish.inset() : ring / 0.6;
    ObjectNode outline = object();
    ArrayNode places = outline.putArray("corners");
    for (int i = 0; i < corners; i++) {
      double turn = (i + wish.chance().between(-0.12, 0.12)) * 2 * Math.PI / corners;
      places.add(place(wish, turn, radius * wish.chance().between(0.88, 1.12)));
    }
    if (!atCorners) {
      ArrayNode supports = outline.putArray("supports");
      for (int i = 0; i < wish.supports(); i++) {
        supports.add(place(wish, i * 2 * Math.PI / wish.supports(), ring));
      }
    }
    return new MadeOutline(named("points", outline), wish.supports(), 1.3 * radius, 0);
  }

  private static String place(Wish wish, double turn, double radius) {
    return wish.written().place(new Position(radius * Math.sin(turn), radius * Math.cos(turn)));
  }
}
