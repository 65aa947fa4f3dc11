package pegbook.jobfile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of the JSON text with its path and place. */
sealed interface Node {
  /** From the root, such as {@code piers[0].hole}. */
  String path();

  /** Where the value begins. */
  Location at();

  /** A text. */
  record Text(String path, Location at, String value) implements Node {}

  /** A number, in the digits of the file. */
  record Digits(String path, Location at, String digits) implements Node {}

  /** {@code true}, {@code false} or {@code null}. */
  record Word(String path, Location at, String word) implements Node {}

  /** A list. */
  record Row(String path, Location at, List<Node> items) implements Node {
    public Row {
      items = List.copyOf(items);
    }
  }

  /** An object, its keys in the order of the file. */
  record Section(String path, Location at, Map<String, Entry> entries) implements Node {
    public Section {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    /** An empty object in the place of one that was left out. */
    static Section leftOut(String path, Location at) {
      return new Section(path, at, Map.of());
    }

    /** The path of one of its keys. */
    String pathOf(String key) {
      return path.isEmpty() ? key : path + "." + key;
    }
  }

  /**
   * A key with its value.
   *
   * @param keyAt where the key begins
   */
  record Entry(Location keyAt, Node value) {}
}
