package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pegbook.job.Default;
import pegbook.measure.NearestWord;

/** The values read behind the keys of one object, defaults filled in. */
final class Fields {
  private final Node.Section section;
  private final Report report;
  private final Map<String, Object> byName = new TreeMap<>();
  private boolean whole = true;

  private Fields(Node.Section section, Report report) {
    this.section = section;
    this.report = report;
  }

  /**
   * Reads the keys of an object in the order of their table, and refuses those it does not know.
   */
  static Fields read(Node.Section section, List<Key<?>> table, Report report) {
    Fields fields = new Fields(section, report);
    fields.refuseUnknown(table);
    table.forEach(fields::read);
    report.keep(fields);
    return fields;
  }

  /** Whether every key that is needed was read and nothing was refused. */
  boolean isWhole() {
    return whole;
  }

  /** A value that is required or has a default. */
  <T> T get(Key<T> key) {
    return find(key).orElseThrow(() -> new IllegalStateException("no " + key.name()));
  }

  /** A value that the job may leave out; nothing also when it was refused. */
  @SuppressWarnings("unchecked")
  <T> Optional<T> find(Key<T> key) {
    // Only read() puts a value in, and it puts what the key's own value gave.
    return Optional.ofNullable((T) byName.get(key.name()));
  }

  /** A value whose default holds in this job. */
  <T> T getOrAssume(Key<T> key) {
    if (find(key).isEmpty() && key.presence() instanceof Key.Presence.Sometimes sometimes) {
      assume(key, sometimes.fallback()).ifPresent(value -> byName.put(key.name(), value));
    }
    return get(key);
  }

  /** A value, or the default that would hold, without noting that it was used. */
  <T> Optional<T> findOrDefault(Key<T> key) {
    if (!has(key) && key.presence() instanceof Key.Presence.Sometimes sometimes) {
      String json = sometimes.fallback().json(report.units());
      return key.value().read(JsonTree.ofDefault(json, section.pathOf(key.name())), report);
    }
    return find(key);
  }

  /** Whether the file has the key, but nothing that could be read behind it. */
  boolean isRefused(Key<?> key) {
    return has(key) && !byName.containsKey(key.name());
  }

  /** Whether the file has the key. */
  boolean has(Key<?> key) {
    return section.entries().containsKey(key.name());
  }

  /** The node behind a key; where it was left out, an empty one in its place. */
  Node node(Key<?> key) {
    Node.Entry entry = section.entries().get(key.name());
    return entry != null
        ? entry.value()
        : Node.Section.leftOut(section.pathOf(key.name()), section.at());
  }

  /** The node of an item of a list under a key. */
  Node item(Key<?> key, int index) {
    return node(key) instanceof Node.Row row ? row.items().get(index) : node(key);
  }

  /** Complains about the value behind a key, or about the default that stands for it. */
  void complain(Key<?> key, Complaint complaint) {
    String found =
        has(key)
            ? Shown.of(node(key))
            : Complaint.phrase("found.default", Map.of("found", key.defaultJson(report.units())));
    report.complain(node(key).at(), node(key).path(), found, complaint, Map.of());
  }

  /** Complains that not exactly one of some keys was given. */
  void complainNotOne(List<? extends Key<?>> keys) {
    complain(Complaint.KEY_NOT_ONE, keys, names(keys));
  }

  /** Complains about which of some keys were given. */
  void complain(Complaint complaint, List<? extends Key<?>> keys, String expected) {
    List<? extends Key<?>> given = keys.stream().filter(this::has).toList();
    String found = given.isEmpty() ? "none of them" : names(given);
    report.complain(section.at(), section.path(), found, complaint, Map.of("keys", expected));
  }

  private static String names(List<? extends Key<?>> keys) {
    return quoted(keys.stream().<String>map(Key::name).toList());
  }

  /** The object itself. */
  Node.Section section() {
    return section;
  }

  private void refuseUnknown(List<Key<?>> table) {
    List<String> known = table.stream().<String>map(Key::name).toList();
    section
        .entries()
        .forEach(
            (name, entry) -> {
              if (!known.contains(name)) {
                whole = false;
                refuse(name, entry, known);
              }
            });
  }

  private void refuse(String name, Node.Entry entry, List<String> known) {
    String wayOut =
        NearestWord.among(known, name)
            .map(nearest -> Complaint.phrase("write", Map.of("texts", Shown.quoted(nearest))))
            .orElseGet(() -> Complaint.phrase("known.keys", Map.of("keys", quoted(known))));
    Map<String, String> words = Map.of("write", wayOut);
    report.complain(
        entry.keyAt(), entry.value().path(), Shown.quoted(name), Complaint.KEY_UNKNOWN, words);
  }

  private static String quoted(List<String> names) {
    return names.stream().map(Shown::quoted).collect(Collectors.joining(", "));
  }

  private void read(Key<?> key) {
    Node.Entry entry = section.entries().get(key.name());
    Optional<?> value = entry == null ? leftOut(key) : key.value().read(entry.value(), report);
    value.ifPresent(some -> byName.put(key.name(), some));
    boolean mayLack = entry == null && key.mayLack();
    whole &= value.isPresent() || mayLack;
  }

  private Optional<?> leftOut(Key<?> key) {
    if (key.presence() instanceof Key.Presence.Fallback fallback) {
      return assume(key, fallback);
    } else if (key.presence() instanceof Key.Presence.Required required) {
      Map<String, String> words = Map.of("key", key.name(), "example", required.example());
      String path = section.pathOf(key.name());
      report.complain(section.at(), path, "nothing", Complaint.KEY_MISSING, words);
    }
    return Optional.empty();
  }

  private <T> Optional<T> assume(Key<T> key, Key.Presence.Fallback fallback) {
    String path = section.pathOf(key.name());
    String json = fallback.json(report.units());
    if (json.equals("{}")) {
      return key.value().read(Node.Section.leftOut(path, section.at()), report);
    }
    Node node = JsonTree.ofDefault(json, path);
    String written = node instanceof Node.Text text ? text.value() : json;
    report.assume(new Default(path, written, fallback.basis()));
    return key.value().read(node, report);
  }
}
