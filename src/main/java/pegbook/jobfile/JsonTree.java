package pegbook.jobfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Text to a tree of values that know their place. Of a doubled key the first value is kept. */
final class JsonTree {
  static final int MOST_LEVELS = 12;

  /** Keys of an object, items of a list: more than any part of a job may have. */
  static final int MOST_ENTRIES = 1000;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          // The size of the file is the limit; depth is counted here, to say where it is passed.
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNumberLength(JobText.MOST_BYTES)
                  .maxNameLength(JobText.MOST_BYTES)
                  .maxNestingDepth(MOST_LEVELS + 2)
                  .build())
          .build();

  /** Thrown once a problem is reported after which nothing more can be read. */
  private static final class UnreadableException extends Exception {
    private static final long serialVersionUID = 1;
  }

  private final JsonParser parser;
  private final Report report;
  private final SortedMap<String, Location> places = new TreeMap<>();

  private JsonTree(JsonParser parser, Report report) {
    this.parser = parser;
    this.report = report;
  }

  /**
   * The tree with its places.
   *
   * @param root the whole file's object
   * @param places of all values, by path
   */
  record Parsed(Node.Section root, SortedMap<String, Location> places) {}

  /** Reads the text of a whole file; complains and gives nothing when it is no JSON object. */
  static Optional<Parsed> of(String text, Report report) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      JsonTree tree = new JsonTree(parser, report);
      parser.nextToken();
      Node root = tree.value("", 1);
      if (parser.nextToken() != null) {
        Location at = tree.place(parser.currentTokenLocation());
        report.complain(at, "", "more text", Complaint.GOES_ON, Map.of());
        return Optional.empty();
      }
      if (root instanceof Node.Section section) {
        return Optional.of(new Parsed(section, tree.places));
      }
      report.complain(root, Complaint.NOT_AN_OBJECT, Map.of());
    } catch (JsonParseException wrong) {
      SyntaxHint.complain(text, wrong, report);
    } catch (UnreadableException reported) {
      return Optional.empty();
    } catch (IOException impossible) {
      throw new UncheckedIOException("reading from memory", impossible);
    }
    return Optional.empty();
  }

  /** A value in the middle of the text, for one that stands for a key left out. */
  static Node ofDefault(String json, String path) {
    Report none = new Report("");
    try (JsonParser parser = FACTORY.createParser(json)) {
      parser.nextToken();
      return new JsonTree(parser, none).value(path, 1);
    } catch (IOException | UnreadableException wrong) {
      throw new IllegalStateException("default of " + path + ": " + json, wrong);
    }
  }

  private Node value(String path, int level) throws IOException, UnreadableException {
    Location at = place(parser.currentTokenLocation());
    places.put(path, at);
    if (level > MOST_LEVELS) {
      throw tooMuch(at, path, Complaint.TOO_DEEP, MOST_LEVELS);
    }
    return switch (parser.currentToken()) {
      case START_OBJECT -> section(path, at, level);
      case START_ARRAY -> row(path, at, level);
      case VALUE_STRING -> new Node.Text(path, at, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node.Digits(path, at, parser.getText());
      default -> new Node.Word(path, at, parser.getText());
    };
  }

  private Node section(String path, Location at, int level)
      throws IOException, UnreadableException {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      if (entries.size() == MOST_ENTRIES) {
        throw tooMuch(at, path, Complaint.TOO_LONG, MOST_ENTRIES);
      }
      String key = parser.currentName();
      Location keyAt = place(parser.currentTokenLocation());
      String shown = Shown.bare(key);
      String keyPath = path.isEmpty() ? shown : path + "." + shown;
      Node.Entry first = entries.get(key);
      parser.nextToken();
      if (first != null) {
        report.complain(
            keyAt,
            keyPath,
            Shown.quoted(key),
            Complaint.DUPLICATE_KEY,
            Map.of("line", "" + first.keyAt().line()));
        // Read past it, its own places forgotten.
        new JsonTree(parser, report).value(keyPath, level + 1);
      } else {
        entries.put(key, new Node.Entry(keyAt, value(keyPath, level + 1)));
      }
    }
    return new Node.Section(path, at, entries);
  }

  private Node row(String path, Location at, int level) throws IOException, UnreadableException {
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      if (items.size() == MOST_ENTRIES) {
        throw tooMuch(at, path, Complaint.TOO_LONG, MOST_ENTRIES);
      }
      items.add(value(path + "[" + items.size() + "]", level + 1));
    }
    return new Node.Row(path, at, items);
  }

  private UnreadableException tooMuch(Location at, String path, Complaint complaint, int most) {
    report.complain(at, path, "more", complaint, Map.of("most", Integer.toString(most)));
    return new UnreadableException();
  }

  private Location place(JsonLocation at) {
    return new Location(at.getLineNr(), at.getColumnNr());
  }
}
