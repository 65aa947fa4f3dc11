package pegbook.job;

import pegbook.measure.Length;

/**
 * A form tube.
 *
 * @param inside inside diameter
 * @param from where it begins: at the ground, concrete filling the hole below; or at the bottom,
 *     soil filled in round it
 */
public record Tube(Length inside, From from) {
  /** Where a tube begins. */
  public enum From {
    GROUND,
    BOTTOM
  }
}
