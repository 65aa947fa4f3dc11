package pegbook.job;

import java.util.Optional;
import pegbook.measure.Pressure;
import pegbook.measure.Speed;

/**
 * How stiff the ground is, as the job gives it: a low and a high value, equal where one is known.
 */
public sealed interface GroundStiffness {
  /** Where it is from. */
  Optional<String> from();

  /** As a shear modulus. */
  record ByModulus(Pressure low, Pressure high, Optional<String> from) implements GroundStiffness {}

  /** As the velocity of shear waves. */
  record ByVelocity(Speed low, Speed high, Optional<String> from) implements GroundStiffness {}
}
