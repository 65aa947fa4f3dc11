package pegbook.jobfile;

import java.util.Map;
import java.util.Optional;

/**
 * A line of text that is printed as it stands, without spaces at its ends.
 *
 * @param longest number of characters
 */
record TextValue(int longest) implements Value<String> {
  @Override
  public Optional<String> read(Node node, Report report) {
    if (!(node instanceof Node.Text text)) {
      report.complain(node, Complaint.TYPE, Map.of("kind", called()));
      return Optional.empty();
    }
    String value = text.value().strip();
    if (value.isEmpty()) {
      report.complain(node, Complaint.TEXT_EMPTY, Map.of());
    } else if (value.codePointCount(0, value.length()) > longest) {
      report.complain(node, Complaint.TEXT_LONG, Map.of("most", Integer.toString(longest)));
    } else if (value.codePoints().anyMatch(Shown::isInvisible)) {
      report.complain(node, Complaint.TEXT_INVISIBLE, Map.of());
    } else {
      return Optional.of(value);
    }
    return Optional.empty();
  }

  @Override
  public String called() {
    return Complaint.phrase("kind.text", Map.of());
  }
}
