package pegbook.jobfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A list of one kind of value.
 *
 * @param item what its items are
 * @param least fewest items
 * @param most most items
 */
record ListValue<T>(Value<T> item, int least, int most) implements Value<List<T>> {
  @Override
  public Optional<List<T>> read(Node node, Report report) {
    if (!(node instanceof Node.Row row)) {
      report.complain(node, Complaint.TYPE, Map.of("kind", called()));
      return Optional.empty();
    }
    if (row.items().size() < least || row.items().size() > most) {
      Map<String, String> words = Map.of("count", count());
      String found = items(row.items().size());
      report.complain(node.at(), node.path(), found, Complaint.LIST_LENGTH, words);
      return Optional.empty();
    }
    List<T> items = new ArrayList<>();
    row.items().forEach(child -> item.read(child, report).ifPresent(items::add));
    return items.size() == row.items().size() ? Optional.of(List.copyOf(items)) : Optional.empty();
  }

  private String count() {
    return least == most ? items(most) : least + " to " + items(most);
  }

  private static String items(int count) {
    return count == 1 ? "1 item" : count + " items";
  }

  @Override
  public String called() {
    return Complaint.phrase("kind.list", Map.of());
  }
}
