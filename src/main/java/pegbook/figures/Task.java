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
    /** A booked machine bores the hole; where none is booked, boring is part of digging. */
    BORE,
    DIG,
    CARRY_SPOIL,
    /** Someone looks into the bare hole. */
    LOOK,
    GRAVEL,
    /** Form, sleeve and anchor template. */
    FORM,
    STEEL,
    INSPECTION,
    /** The first of two pours of a hole. */
    FIRST_LIFT,
    /** Roughen and clean the top of the first lift, lap the bars, set the form on it. */
    JOINT,
    /** The only pour of a hole, or the second of two. */
    POUR,
    STRIP,
    /** Posts, beams, joists: once the last footing may be loaded. */
    FRAME,
    BOARDS,
    /** The trench of the power line. */
    TRENCH,
    /** Sand, pipe, conductors. */
    LAY_PIPE,
    /** Someone looks at what lies in the open trench. */
    TRENCH_INSPECTION,
    BACKFILL;

    /** True for the power line's own work, which waits for nothing at the holes. */
    public boolean isTrenching() {
      return compareTo(TRENCH) >= 0;
    }
  }

  /** Kinds that place concrete; none of them is ever cut. */
  public static final List<Kind> POURS = List.of(Kind.FIRST_LIFT, Kind.POUR);

  /** Kinds that only wait. */
  public static final List<Kind> HOLD_POINTS =
      List.of(Kind.LOOK, Kind.INSPECTION, Kind.TRENCH_INSPECTION);
}
