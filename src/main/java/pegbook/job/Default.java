package pegbook.job;

/**
 * A value that the job left out.
 *
 * @param path where it would stand in the job file, such as "supports.gravel"
 * @param written the value, as it would be written there
 * @param basis where it is from
 */
public record Default(String path, String written, Basis basis) {
  /** Where a default is from. */
  public enum Basis {
    /** Common practice, no source. */
    COMMON_PRACTICE,
    /** A published rule; the assumptions sheet names it. */
    PUBLISHED,
    /** Follows from another value of the job. */
    DERIVED
  }
}
