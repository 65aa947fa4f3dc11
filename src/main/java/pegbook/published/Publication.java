package pegbook.published;

/**
 * Something published that the packet leans on.
 *
 * @param id short name in the code, letters, digits and hyphens
 * @param title as printed
 * @param edition year or edition
 * @param publisher who publishes it
 * @param status how the values were come by
 */
public record Publication(
    String id, String title, String edition, String publisher, Status status) {

  /** How the values of a publication were come by. */
  public enum Status {
    /** Read in a copy of it. */
    READ,
    /** Read in a text that quotes it. */
    QUOTED,
    /** Recalled, not looked up: confirm before relying on it. */
    MEMORY,
    /** A habit of the trade with no publication behind it. */
    PRACTICE
  }
}
