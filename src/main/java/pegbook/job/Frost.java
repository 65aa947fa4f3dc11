package pegbook.job;

import java.time.LocalDate;
import java.util.Optional;
import pegbook.measure.Length;

/**
 * The authority's frost depth.
 *
 * @param depth below the ground; zero where the authority asks for none
 * @param from whose word it is
 * @param exemption the authority's recorded leave to stay above it
 */
public record Frost(Length depth, String from, Optional<Exemption> exemption) {

  /**
   * Leave to stay above the frost depth.
   *
   * @param who the person or office that gave it
   * @param when the day
   * @param covers what it covers
   */
  public record Exemption(String who, LocalDate when, Covers covers) {}

  /** Which footings an exemption covers. */
  public enum Covers {
    SUPPORTS,
    PIERS,
    ALL
  }
}
