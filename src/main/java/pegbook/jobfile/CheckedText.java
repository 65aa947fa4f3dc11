package pegbook.jobfile;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A text that must be something in particular: a date, a time zone, a country, a mark's name.
 *
 * @param complaint when it is not
 * @param of what it is, if it is
 */
record CheckedText<T>(Complaint complaint, Function<String, Optional<T>> of) implements Value<T> {
  @Override
  public Optional<T> read(Node node, Report report) {
    Optional<T> taken = node instanceof Node.Text text ? of.apply(text.value()) : Optional.empty();
    if (taken.isEmpty()) {
      report.complain(node, complaint, Map.of());
    }
    return taken;
  }

  @Override
  public String called() {
    return complaint.expected(Map.of());
  }
}
