package pegbook.figures;

import pegbook.measure.Force;

/**
 * What a support carries at worst.
 *
 * @param parts dead, live and snow load before any combination
 * @param governs the combination that gives the most
 * @param total what it gives, without the footing's own weight
 */
public record CombinedLoad(SupportLoad parts, Combination governs, Force total) {

  /** Combinations for allowable stress that press on the ground: D dead, L live, S snow load. */
  public enum Combination {
    /** D. */
    DEAD,
    /** D + L. */
    DEAD_LIVE,
    /** D + S. */
    DEAD_SNOW,
    /** D + 0.75 L + 0.75 S. */
    DEAD_LIVE_SNOW
  }

  public String mark() {
    return parts.mark();
  }
}
