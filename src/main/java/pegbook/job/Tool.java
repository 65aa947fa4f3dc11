package pegbook.job;

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
    DIGGING_BAR
  }
}
