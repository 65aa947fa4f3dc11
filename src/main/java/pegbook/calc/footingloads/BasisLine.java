package pegbook.calc.footingloads;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.published.Citation;

/**
 * One line of what the design rests on.
 *
 * @param item what it is about: lower case, hyphens; its words stand in the text bundle
 * @param known how it is known
 * @param value what is known; absent where nobody said
 * @param from whose word it is, where the job names someone
 * @param sources where a value that the job does not give is from
 */
public record BasisLine(
    String item,
    Known known,
    Optional<Argument> value,
    Optional<String> from,
    List<Citation> sources) {

  /** How something is known. */
  public enum Known {
    /** The job says so. */
    JOB,
    /** It was assumed, to be confirmed. */
    ASSUMED,
    /** A published table says so for what the job names. */
    TABLE,
    /** Nobody said: ask. */
    NOT_GIVEN
  }

  public BasisLine {
    sources = List.copyOf(sources);
  }

  static BasisLine job(String item, Argument value) {
    return new BasisLine(item, Known.JOB, Optional.of(value), Optional.empty(), List.of());
  }

  static BasisLine job(String item, Argument value, String from) {
    return new BasisLine(item, Known.JOB, Optional.of(value), Optional.of(from), List.of());
  }

  static BasisLine notGiven(String item) {
    return new BasisLine(item, Known.NOT_GIVEN, Optional.empty(), Optional.empty(), List.of());
  }

  static BasisLine by(String item, Known known, Argument value, Citation source) {
    return new BasisLine(item, known, Optional.of(value), Optional.empty(), List.of(source));
  }
}
