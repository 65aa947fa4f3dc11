package pegbook.jobfile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pegbook.measure.NearestWord;

/**
 * One of several words.
 *
 * @param byWord what each word means
 */
record ChoiceValue<T>(Map<String, T> byWord) implements Value<T> {
  ChoiceValue {
    byWord = Collections.unmodifiableMap(new LinkedHashMap<>(byWord));
  }

  /** The names of an enum's values, in small letters and with spaces. */
  static <E extends Enum<E>> ChoiceValue<E> of(Class<E> type) {
    Map<String, E> byWord = new LinkedHashMap<>();
    for (E constant : type.getEnumConstants()) {
      byWord.put(constant.name().toLowerCase(Locale.ROOT).replace('_', ' '), constant);
    }
    return new ChoiceValue<>(byWord);
  }

  List<String> words() {
    return new ArrayList<>(byWord.keySet());
  }

  @Override
  public Optional<T> read(Node node, Report report) {
    if (!(node instanceof Node.Text text)) {
      report.complain(node, Complaint.TYPE, Map.of("kind", called()));
      return Optional.empty();
    }
    Optional<T> meant = Optional.ofNullable(byWord.get(text.value()));
    if (meant.isEmpty()) {
      report.complain(
          node, Complaint.CHOICE, Map.of("choices", choices(), "write", write(text.value())));
    }
    return meant;
  }

  private String write(String written) {
    return NearestWord.among(words(), written)
        .map(nearest -> Complaint.phrase("write", Map.of("texts", Shown.quoted(nearest))))
        .orElse("");
  }

  private String choices() {
    return words().stream().map(Shown::quoted).collect(Collectors.joining(", "));
  }

  @Override
  public String called() {
    return Complaint.phrase("kind.choice", Map.of("choices", choices()));
  }
}
