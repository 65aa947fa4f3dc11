package pegbook.jobfile;

import java.util.Map;
import java.util.Optional;

/**
 * A word with a meaning of its own, or a value.
 *
 * @param word the word
 * @param meaning what it means
 * @param value what else may stand there
 */
record WordOr<T>(String word, T meaning, Value<T> value) implements Value<T> {
  @Override
  public Optional<T> read(Node node, Report report) {
    if (node instanceof Node.Text text) {
      if (text.value().equals(word)) {
        return Optional.of(meaning);
      }
      // A text without any digit was meant for the word, not for the value.
      if (text.value().chars().noneMatch(Character::isDigit)) {
        report.complain(node, Complaint.TYPE, Map.of("kind", called()));
        return Optional.empty();
      }
    }
    return value.read(node, report);
  }

  @Override
  public String called() {
    return Complaint.phrase(
        "kind.wordOr", Map.of("word", Shown.quoted(word), "other", value.called()));
  }
}
