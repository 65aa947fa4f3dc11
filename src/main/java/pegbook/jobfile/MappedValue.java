package pegbook.jobfile;

import java.util.Optional;
import java.util.function.Function;

/**
 * A value taken for something else.
 *
 * @param value what stands in the file
 * @param to what it is taken for
 */
record MappedValue<A, T>(Value<A> value, Function<A, T> to) implements Value<T> {
  @Override
  public Optional<T> read(Node node, Report report) {
    return value.read(node, report).map(to);
  }

  @Override
  public String called() {
    return value.called();
  }
}
