package pegbook.figures;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Duration;

/**
 * Something to do.
 *
 * <p>Its words stand in the text bundle under {@code task.KIND} in lower case with hyphens.
 *
 * @param kind what
 * @param mark the hole, where it is at one
 * @param least person-hours, all going well
 * @param most person-hours, all going badly
 */
public record Task(Kind kind, Optional<String> mark, Duration least, Duration most) {
  /** Kinds of work, in the order in which they follow one another at a hole. */
  public enum Kind {
    MARK_OUT,
    PROVE,
    SET_PEGS,
    DIG,
    CARRY_SPOIL,
    GRAVEL,
    STEEL,
    INSPECTION,
    POUR
  }

  /** Kinds that only wait. */
  public static final List<Kind> HOLD_POINTS = List.of(Kind.INSPECTION);
}
