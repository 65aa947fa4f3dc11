package pegbook.job;

import java.util.Optional;
import pegbook.measure.Length;

/**
 * What makes a footing wider than its shaft: at its bottom a bell or a pad, at its head a cap.
 *
 * @param bell undercut of the hole's bottom; never together with a pad
 * @param pad round slab as wide as the hole, under a tube that is narrower
 * @param cap head over the ground
 */
public record Widenings(Optional<Bell> bell, Optional<Pad> pad, Optional<Cap> cap) {
  /** A shaft and nothing else. */
  public static final Widenings NONE =
      new Widenings(Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * A bell.
   *
   * @param diameter at its bottom
   * @param flare height over which it widens from the hole's diameter to its own
   * @param toe height of the upright edge under the flare; zero is a sharp edge
   */
  public record Bell(Length diameter, Length flare, Length toe) {
    /** From the underside of the concrete up to where the hole is as wide as dug from above. */
    public Length height() {
      return flare.plus(toe);
    }
  }

  /**
   * A pad.
   *
   * @param thickness from the underside of the concrete up to the tube that stands on it
   */
  public record Pad(Length thickness) {}

  /**
   * A cap: the upper part of the concrete over the ground.
   *
   * @param shape seen from above
   * @param width diameter, or side of a square
   * @param thickness down from the concrete's top
   */
  public record Cap(Shape shape, Length width, Length thickness) {
    /** Diameter of the circle round it. */
    public Length across() {
      return shape == Shape.ROUND ? width : width.times(Math.sqrt(2));
    }
  }

  /** What a cap looks like from above. */
  public enum Shape {
    ROUND,
    SQUARE
  }

  /** How far the widened bottom reaches up from the underside of the concrete; zero is none. */
  public Length bottomHeight() {
    return bell.map(Bell::height).or(() -> pad.map(Pad::thickness)).orElse(Length.ZERO);
  }

  /** How far the cap reaches down from the top of the concrete; zero is none. */
  public Length capThickness() {
    return cap.map(Cap::thickness).orElse(Length.ZERO);
  }

  /** Whether there is any. */
  public boolean isAny() {
    return bell.isPresent() || pad.isPresent() || cap.isPresent();
  }

  /** The same without a bell, as where the hole was dug as wide as that all the way. */
  public Widenings withoutBell() {
    return new Widenings(Optional.empty(), pad, cap);
  }
}
