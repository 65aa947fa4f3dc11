package pegbook.jobfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import pegbook.measure.Length;

/**
 * An object with a length behind the name of each mark.
 *
 * @param level the limits of a length
 */
record LevelsValue(QuantityValue<Length> level) implements Value<Map<String, Length>> {
  @Override
  public Optional<Map<String, Length>> read(Node node, Report report) {
    if (!(node instanceof Node.Section section)) {
      report.complain(node, Complaint.TYPE, Map.of("kind", called()));
      return Optional.empty();
    }
    if (section.entries().size() > JobMarks.MOST) {
      String found = section.entries().size() + " marks";
      Map<String, String> most = Map.of("most", Integer.toString(JobMarks.MOST));
      report.complain(node.at(), node.path(), found, Complaint.MARKS_TOO_MANY, most);
      return Optional.empty();
    }
    Map<String, Length> levels = new LinkedHashMap<>();
    section
        .entries()
        .forEach(
            (mark, entry) ->
                level.read(entry.value(), report).ifPresent(length -> levels.put(mark, length)));
    return levels.size() == section.entries().size() ? Optional.of(levels) : Optional.empty();
  }

  @Override
  public String called() {
    return Complaint.phrase("kind.object", Map.of());
  }
}
