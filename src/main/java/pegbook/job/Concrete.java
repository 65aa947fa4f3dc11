package pegbook.job;

import java.util.Optional;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.Volume;

/**
 * The concrete.
 *
 * @param bag mass of a bag of dry mix
 * @param yield volume that a bag makes; absent: by its mass
 * @param strength specified compressive strength at 28 days
 * @param waste spilt, left in the mixer
 * @param overBreak how much more than its drawn size a dug hole takes; absent: by digging
 * @param air entrained air of the mix, by volume, as its bag or ticket says; absent: not said
 * @param mixing how it is mixed; decides how long a pour takes
 * @param truckMinimum the least that the plant brings or charges; absent: not said
 * @param batch concrete that is mixed at a time; absent: by the way of mixing
 * @param ownMix what the crew mixes from cement, sand and stone; absent: from bags, or a truck
 */
public record Concrete(
    Mass bag,
    Optional<Volume> yield,
    Pressure strength,
    Ratio waste,
    Optional<Ratio> overBreak,
    Optional<Ratio> air,
    Mixing mixing,
    Optional<Volume> truckMinimum,
    Optional<Volume> batch,
    Optional<OwnMix> ownMix) {

  /** How concrete is mixed. */
  public enum Mixing {
    /** Bags, in a tub or barrow with a hoe. */
    BY_HAND,
    /** Bags, in a turning drum. */
    MIXER,
    /** Delivered mixed by a truck. */
    READY_MIX
  }
}
