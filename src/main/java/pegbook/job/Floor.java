package pegbook.job;

import java.util.Locale;
import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Pressure;

/**
 * What the supports carry.
 *
 * @param use what it is used for; decides which rules may apply at all
 * @param live load of use
 * @param dead own weight
 * @param groundSnow snow on the ground, not on the floor
 * @param top walking surface above the highest ground under the floor
 * @param buildUp from the tops of the posts up to the walking surface: beams, joists and boards
 * @param frame what its frame is made of; absent: the packet works no frame
 */
public record Floor(
    Use use,
    Optional<Pressure> live,
    Optional<Pressure> dead,
    Optional<Pressure> groundSnow,
    Optional<Length> top,
    Optional<Length> buildUp,
    Optional<Frame> frame) {
  /** A floor whose frame is not worked. */
  public Floor(
      Use use,
      Optional<Pressure> live,
      Optional<Pressure> dead,
      Optional<Pressure> groundSnow,
      Optional<Length> top,
      Optional<Length> buildUp) {
    this(use, live, dead, groundSnow, top, buildUp, Optional.empty());
  }

  /** Uses. */
  public enum Use {
    PRIVATE_DECK,
    PRIVATE_PLATFORM,
    HUT,
    PUBLIC,
    ASSEMBLY,
    SCHOOL;

    /** As the words name it: lower case, hyphens. */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
