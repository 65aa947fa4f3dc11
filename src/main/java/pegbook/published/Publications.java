package pegbook.published;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The catalogue of publications. */
public final class Publications {
  private static final Map<String, Publication> BY_ID = read();
  private static final Map<String, String> SHORT_NAMES = readShortNames();

  private Publications() {}

  /**
   * The publication with an id.
   *
   * @throws IllegalArgumentException when the catalogue has none
   */
  public static Publication find(String id) {
    Publication publication = BY_ID.get(id);
    if (publication == null) {
      throw new IllegalArgumentException("no publication \"" + id + "\" in publications.csv");
    }
    return publication;
  }

  /** How it is called beside a number: its short name, or its title where it has none. */
  public static String shortName(String id) {
    String name = SHORT_NAMES.get(id);
    return name == null ? find(id).title() : name;
  }

  /** All, in the catalogue's order. */
  public static List<Publication> all() {
    return List.copyOf(BY_ID.values());
  }

  private static Map<String, Publication> read() {
    Map<String, Publication> byId = new LinkedHashMap<>();
    for (Table.Row row : Table.read("publications").rows()) {
      Publication publication =
          new Publication(
              row.text("id"),
              row.text("title"),
              row.text("edition"),
              row.text("publisher"),
              Publication.Status.valueOf(row.text("status")));
      byId.put(publication.id(), publication);
    }
    return byId;
  }

  private static Map<String, String> readShortNames() {
    Map<String, String> byId = new LinkedHashMap<>();
    for (Table.Row row : Table.read("short_names").rows()) {
      byId.put(row.text("id"), row.text("name"));
    }
    return byId;
  }
}
