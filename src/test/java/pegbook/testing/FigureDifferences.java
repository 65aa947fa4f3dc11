package pegbook.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What changed between two files of results, figure by figure. */
public final class FigureDifferences {
  private FigureDifferences() {}

  /** One line a figure: its path, what it was, what it is. */
  public static List<String> between(JsonNode before, JsonNode after) {
    Map<String, String> old = figures(before);
    Map<String, String> now = figures(after);
    Set<String> paths = new LinkedHashSet<>(old.keySet());
    paths.addAll(now.keySet());
    return paths.stream().flatMap(path -> difference(path, old, now)).toList();
  }

  private static Stream<String> difference(
      String path, Map<String, String> old, Map<String, String> now) {
    String before = old.getOrDefault(path, "(nothing)");
    String after = now.getOrDefault(path, "(nothing)");
    return before.equals(after) ? Stream.empty() : Stream.of(path + ": " + before + " → " + after);
  }

  private static Map<String, String> figures(JsonNode root) {
    Map<String, String> figures = new LinkedHashMap<>();
    collect("", root, figures);
    return figures;
  }

  private static void collect(String path, JsonNode node, Map<String, String> figures) {
    if (node.isObject()) {
      node.properties()
          .forEach(field -> collect(path + "/" + field.getKey(), field.getValue(), figures));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        collect(path + "/" + name(node.get(i), i), node.get(i), figures);
      }
    } else {
      figures.put(path, node.toString());
    }
  }

  /** An entry of a list by its own name where it has one, so that a new row moves no other. */
  private static String name(JsonNode entry, int place) {
    return Stream.of("id", "mark", "hole", "name")
        .map(entry::path)
        .filter(JsonNode::isTextual)
        .map(JsonNode::asText)
        .findFirst()
        .map(text -> place + "(" + text + ")")
        .orElse(Integer.toString(place));
  }
}
