package pegbook.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.measure.Duration;
import pegbook.measure.Length;

/**
 * What was really done on the ground.
 *
 * @param marked distances taped between marks once they were painted
 * @param dug holes that were dug, as they were found
 */
public record Field(List<Taped> marked, List<Dug> dug) {
  /** Nothing yet. */
  public static final Field NOTHING = new Field(List.of(), List.of());

  public Field {
    marked = List.copyOf(marked);
    dug = List.copyOf(dug);
  }

  /**
   * A level distance between two marks as it was read.
   *
   * @param from one mark
   * @param to the other
   * @param tape the reading
   */
  public record Taped(String from, String to, Length tape) {}

  /**
   * A hole that was dug, as it was found.
   *
   * @param hole its mark
   * @param hours person-hours that digging it took, cleaning and measuring included, carting not
   * @param depth to the bare bottom, from the lowest ground at the rim
   * @param diameter of the bottom
   * @param movedBy from the mark to the middle of the bottom
   * @param soil at the bottom
   * @param water depth below the ground at which water stands in it
   * @param rock depth below the ground at which rock was met
   */
  public record Dug(
      String hole,
      Optional<Duration> hours,
      Optional<Length> depth,
      Optional<Length> diameter,
      Optional<Moved> movedBy,
      Optional<Soil> soil,
      Optional<Length> water,
      Optional<Length> rock) {
    /** A hole of which only the hours are known. */
    public static Dug inHours(String hole, Duration hours) {
      return new Dug(
          hole,
          Optional.of(hours),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }

    /**
     * Whether its bottom was reached: hours are those of the whole hole, and width, place and soil
     * are those of its bottom. Water and rock may be met on the way.
     */
    public boolean isDown() {
      return Stream.of(hours, depth, diameter, movedBy, soil).anyMatch(Optional::isPresent);
    }

    /** Whether more is known than how long it took. */
    public boolean isMeasured() {
      return Stream.of(depth, diameter, movedBy, soil, water, rock).anyMatch(Optional::isPresent);
    }
  }

  /** How far a hole's middle lies from its mark: west and south are below zero. */
  public record Moved(Length east, Length north) {}

  /** What was found of a hole, where it was dug. */
  public Optional<Dug> dug(String hole) {
    return dug.stream().filter(one -> one.hole().equals(hole)).findFirst();
  }
}
