package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * An object with known keys.
 *
 * @param keys its keys
 * @param check how its values must fit each other; sees only those that were read
 * @param build makes what the object stands for, once all its values are sound and fit
 */
record SectionValue<T>(List<Key<?>> keys, Check check, Function<Fields, T> build)
    implements Value<T> {
  /** Looks at values together, and complains. */
  interface Check {
    /** Whether they fit each other as far as they were read. */
    boolean holds(Fields fields, Report report);
  }

  SectionValue {
    keys = List.copyOf(keys);
  }

  SectionValue(List<Key<?>> keys, Function<Fields, T> build) {
    this(keys, (fields, report) -> true, build);
  }

  @Override
  public Optional<T> read(Node node, Report report) {
    if (!(node instanceof Node.Section section)) {
      report.complain(node, Complaint.TYPE, Map.of("kind", called()));
      return Optional.empty();
    }
    Fields fields = Fields.read(section, keys, report);
    boolean fits = check.holds(fields, report);
    return fits && fields.isWhole() ? Optional.of(build.apply(fields)) : Optional.empty();
  }

  @Override
  public String called() {
    return Complaint.phrase("kind.object", Map.of());
  }
}
