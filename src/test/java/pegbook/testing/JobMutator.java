package pegbook.testing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Changes job files at random: keys, values by the grammar of what a job file may say, and bytes.
 * The same number gives the same change. It knows every key and value of the jobs it was given, and
 * puts them where they may stand and where they may not.
 */
public final class JobMutator {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final List<String> UNITS =
      List.of(
          "in", "ft", "mm", "cm", "m", "yd", "deg", "°", "lb", "kg", "psf", "kPa", "psi", "MPa",
          "°F", "°C", "%", "h", "lb/ft3", "kg/m3", "kN", "lbf", "gal", "L", "furlong", "");

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0",
          "1",
          "-1",
          "1e308",
          "1e400",
          "-1e308",
          "1e-320",
          "0.1",
          "1/2",
          "1/0",
          "3 1/16",
          "99999999999999999999",
          "0.30000000000000004",
          "NaN",
          "Infinity",
          "½",
          "٣",
          "1,5",
          "0x10",
          "+5",
          "1.",
          ".5",
          "1 000");

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "S1",
          "S2",
          "S500",
          "P1",
          "centre",
          "choose",
          "unknown",
          "none",
          "true",
          "null",
          "../../etc",
          "a\u0000b",
          "\u202ex",
          "\ud800",
          "#{cover.title}",
          "${7*7}",
          "<b>",
          "&amp;");

  private final List<ObjectNode> jobs = new ArrayList<>();
  private final Map<String, List<JsonNode>> values = new LinkedHashMap<>();

  /**
   * Mutates some jobs.
   *
   * @param texts of sound job files
   */
  public JobMutator(List<String> texts) {
    for (String text : texts) {
      ObjectNode job = tree(text);
      jobs.add(job);
      learn(job);
    }
  }

  private static ObjectNode tree(String text) {
    try {
      return (ObjectNode) JSON.readTree(text);
    } catch (JsonProcessingException broken) {
      throw new IllegalArgumentException(broken);
    }
  }

  private void learn(JsonNode at) {
    at.properties()
        .forEach(
            entry -> {
              values
                  .computeIfAbsent(entry.getKey(), key -> new ArrayList<>())
                  .add(entry.getValue());
              learn(entry.getValue());
            });
    if (at.isArray()) {
      at.forEach(this::learn);
    }
  }

  /** The bytes of a mutated job file: mostly one change, sometimes several. */
  public byte[] job(long number) {
    Chance chance = new Chance(31 * number + 17);
    ObjectNode job = chance.oneOf(jobs).deepCopy();
    int changes = chance.often(0.75) ? 1 : chance.whole(2, 6);
    boolean inBytes = chance.often(0.15);
    for (int change = 0; change < changes && !inBytes; change++) {
      change(job, chance);
    }
    byte[] bytes = job.toPrettyString().getBytes(StandardCharsets.UTF_8);
    for (int change = 0; change < changes && inBytes; change++) {
      bytes = changed(bytes, chance);
    }
    return bytes;
  }

  private void change(ObjectNode job, Chance chance) {
    List<ObjectNode> sections = new ArrayList<>();
    List<ArrayNode> rows = new ArrayList<>();
    collect(job, sections, rows);
    if (!rows.isEmpty() && chance.often(0.15)) {
      changeRow(chance.oneOf(rows), chance);
      return;
    }
    ObjectNode section = chance.oneOf(sections);
    List<String> keys = new ArrayList<>();
    section.fieldNames().forEachRemaining(keys::add);
    if (keys.isEmpty() || chance.often(0.08)) {
      String key = chance.oneOf(List.copyOf(values.keySet()));
      section.set(key, known(key, chance));
      return;
    }
    String key = chance.oneOf(keys);
    switch (chance.whole(0, 11)) {
      case 0, 1 -> section.remove(key);
      case 2 -> section.set(key + "s", section.remove(key));
      case 3, 4, 5, 6, 7, 8 -> section.set(key, known(key, chance));
      default -> section.set(key, madeUp(chance, 0));
    }
  }

  private static void collect(JsonNode at, List<ObjectNode> sections, List<ArrayNode> rows) {
    if (at instanceof ObjectNode section) {
      sections.add(section);
    }
    if (at instanceof ArrayNode row) {
      rows.add(row);
    }
    at.forEach(inside -> collect(inside, sections, rows));
  }

  private JsonNode known(String key, Chance chance) {
    return values.containsKey(key) ? chance.oneOf(values.get(key)).deepCopy() : madeUp(chance, 0);
  }

  private void changeRow(ArrayNode row, Chance chance) {
    int size = row.size();
    switch (chance.whole(0, 4)) {
      case 0 -> row.removeAll();
      case 1 -> row.add(madeUp(chance, 0));
      case 2 -> {
        if (size > 0) {
          row.remove(chance.whole(0, size - 1));
        }
      }
      case 3 -> {
        if (size > 0) {
          row.set(chance.whole(0, size - 1), madeUp(chance, 0));
        }
      }
      default -> {
        int copies = chance.oneOf(List.of(1, 2, 30, 600));
        for (int copy = 0; copy < copies && size > 0; copy++) {
          row.add(row.get(copy % size).deepCopy());
        }
      }
    }
  }

  /** A value after the grammar: a quantity, a place, a text, a number, a section, a row. */
  private JsonNode madeUp(Chance chance, int depth) {
    return switch (chance.whole(0, depth > 3 ? 5 : 9)) {
      case 0, 1 -> TextNode.valueOf(quantity(chance));
      case 2 -> TextNode.valueOf(quantity(chance) + ", " + quantity(chance));
      case 3 -> TextNode.valueOf(chance.oneOf(TEXTS));
      case 4 -> NODES.numberNode(chance.oneOf(List.of(0.0, -1.0, 3.0, 1e9, 1e300, 2.5)));
      case 5 -> chance.often(0.5) ? NODES.nullNode() : NODES.booleanNode(chance.often(0.5));
      case 6 -> TextNode.valueOf("x".repeat(chance.oneOf(List.of(79, 200, 5000))));
      case 7 -> NODES.arrayNode().add(madeUp(chance, depth + 1)).add(madeUp(chance, depth + 1));
      case 8 -> {
        String key = chance.oneOf(List.copyOf(values.keySet()));
        yield NODES.objectNode().set(key, madeUp(chance, depth + 1));
      }
      default -> nested(chance.oneOf(List.of(5, 70, 200)));
    };
  }

  private static String quantity(Chance chance) {
    String one = chance.oneOf(NUMBERS) + (chance.often(0.8) ? " " : "") + chance.oneOf(UNITS);
    return chance.often(0.2) ? one + " " + chance.whole(0, 11) + " in" : one;
  }

  private static JsonNode nested(int depth) {
    JsonNode inner = NODES.arrayNode();
    for (int at = 0; at < depth; at++) {
      inner = NODES.arrayNode().add(inner);
    }
    return inner;
  }

  private static byte[] changed(byte[] bytes, Chance chance) {
    if (bytes.length < 2) {
      return bytes;
    }
    int at = chance.whole(0, bytes.length - 1);
    int to = Math.min(bytes.length, at + chance.whole(1, 40));
    return switch (chance.whole(0, 5)) {
      case 0 -> {
        byte[] flipped = bytes.clone();
        flipped[at] = (byte) chance.whole(0, 255);
        yield flipped;
      }
      case 1 -> Arrays.copyOf(bytes, at);
      case 2 -> joined(bytes, 0, at, bytes, to, bytes.length);
      case 3 -> joined(bytes, 0, to, bytes, at, bytes.length);
      case 4 -> {
        byte[] brackets = "[".repeat(50_000).getBytes(StandardCharsets.UTF_8);
        yield joined(
            joined(bytes, 0, at, brackets, 0, brackets.length),
            0,
            at + 50_000,
            bytes,
            at,
            bytes.length);
      }
      default -> joined(new byte[] {(byte) 0xef, (byte) 0xbb, (byte) 0xbf}, 0, 3, bytes, 0, to);
    };
  }

  private static byte[] joined(
      byte[] one, int oneFrom, int oneTo, byte[] other, int otherFrom, int otherTo) {
    byte[] joined = new byte[oneTo - oneFrom + otherTo - otherFrom];
    System.arraycopy(one, oneFrom, joined, 0, oneTo - oneFrom);
    System.arraycopy(other, otherFrom, joined, oneTo - oneFrom, otherTo - otherFrom);
    return joined;
  }
}
