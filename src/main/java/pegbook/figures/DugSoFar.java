package pegbook.figures;

import java.util.Optional;
import pegbook.measure.Length;

/**
 * How far a hole was dug that somebody wrote down.
 *
 * @param mark the hole
 * @param goesOnFrom the depth from which it must be dug on; none where nothing is left to dig
 */
public record DugSoFar(String mark, Optional<Length> goesOnFrom) {
  /** Whether nothing is left to dig. */
  public boolean isDug() {
    return goesOnFrom.isEmpty();
  }
}
