package pegbook.job;

import java.util.Optional;
import pegbook.measure.Speed;

/**
 * What an authority or a licensed designer said the structure is designed for. Nothing is worked
 * from it; a reader of the packet must know it.
 *
 * @param code edition of the building code in force
 * @param occupancy what the structure counts as
 * @param wind the wind it must stand
 * @param seismic the earthquake class of the place and the structure
 * @param salt what is known of salt and sulfate at the concrete
 * @param lateral how a sideways push comes down to the ground
 */
public record Design(
    Optional<Said> code,
    Optional<Occupancy> occupancy,
    Optional<DesignWind> wind,
    Optional<Seismic> seismic,
    Optional<Said> salt,
    Optional<Said> lateral) {
  /** Nobody has said anything. */
  public static final Design UNKNOWN =
      new Design(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /**
   * Somebody's words.
   *
   * @param words what was said
   * @param from whose word it is
   */
  public record Said(String words, String from) {}

  /**
   * What the structure counts as.
   *
   * @param group in the code's words
   * @param category risk category or consequence class, where given
   * @param from whose word it is
   */
  public record Occupancy(String group, Optional<String> category, String from) {}

  /**
   * Wind on the whole structure.
   *
   * @param speed the code's speed for the place
   * @param exposure exposure or terrain category
   * @param from whose figure it is
   */
  public record DesignWind(Speed speed, String exposure, String from) {}

  /**
   * How much earthquakes count.
   *
   * @param category design category, or a word of the code for little
   * @param from whose figure it is
   */
  public record Seismic(String category, String from) {
    /** True where the usual rules for small structures end, by their own words. */
    public boolean isHigh() {
      return category.startsWith("D") || category.equals("E") || category.equals("F");
    }
  }
}
