package pegbook.job;

import java.util.Locale;
import java.util.Optional;

/**
 * Someone to call.
 *
 * @param who what they are called for
 * @param name as the job calls them, where it does
 * @param number to dial, as it is written
 */
public record Call(Who who, Optional<String> name, String number) {
  /** What someone is called for, in the order of the day sheets. */
  public enum Who {
    EMERGENCY,
    UTILITY_MARKING,
    INSPECTOR,
    ENGINEER,
    ELECTRICIAN,
    CONCRETE_PLANT,
    OWNER;

    /** As words name it: lower case, hyphens. */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
