package pegbook.job;

import java.util.Locale;
import java.util.Optional;
import pegbook.measure.Length;

/**
 * Something to dig with.
 *
 * @param kind what it is
 * @param name what the packet calls it
 * @param diameter hole that it cuts by itself, for augers
 * @param reach depth to which it works in a hole that a person does not enter
 */
public record Tool(Kind kind, String name, Optional<Length> diameter, Length reach) {
  /** Kinds of tool. */
  public enum Kind {
    SPADE,
    CLAMSHELL,
    HAND_AUGER,
    POWER_AUGER,
    DIGGING_BAR;

    /** What a tool of this kind is called when the job gives it no name. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** Whether it has no name of its own. */
  public boolean isNamedByKind() {
    return name.equals(kind.word());
  }
}
