package pegbook.jobfile;

import java.util.Map;
import java.util.Optional;

/**
 * An object that may be written as the value of its main key alone: {@code "16 in"} for {@code
 * {"inside": "16 in"}}.
 *
 * @param main that key
 * @param section the object
 */
record ShortForm<T>(Key<?> main, SectionValue<T> section) implements Value<T> {
  @Override
  public Optional<T> read(Node node, Report report) {
    if (node instanceof Node.Text || node instanceof Node.Digits) {
      Map<String, Node.Entry> entries = Map.of(main.name(), new Node.Entry(node.at(), node));
      return section.read(new Node.Section(node.path(), node.at(), entries), report);
    }
    if (node instanceof Node.Section) {
      return section.read(node, report);
    }
    report.complain(node, Complaint.TYPE, Map.of("kind", called()));
    return Optional.empty();
  }

  @Override
  public String called() {
    return Complaint.phrase("kind.shortForm", Map.of("main", main.value().called()));
  }
}
