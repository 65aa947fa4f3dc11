package pegbook.job;

import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Volume;

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

    /** Its concrete: the frustum of a cone over an upright edge. */
    Volume volume(Length hole) {
      double d = hole.metres();
      double b = diameter.metres();
      return new Volume(
          Math.PI / 4 * ((d * d + d * b + b * b) / 3 * flare.metres() + b * b * toe.metres()));
    }
  }

  /**
   * A pad.
   *
   * @param thickness from the underside of the concrete up to the tube that stands on it
   */
  public record Pad(Length thickness) {
    /** Its concrete. */
    Volume volume(Length hole) {
      return new Volume(Math.PI / 4 * hole.metres() * hole.metres() * thickness.metres());
    }
  }

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

    /** Its concrete. */
    Volume volume() {
      double share = shape == Shape.ROUND ? Math.PI / 4 : 1;
      return new Volume(share * width.metres() * width.metres() * thickness.metres());
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

  /**
   * Concrete of the bell or the pad; zero where there is none.
   *
   * @param hole diameter dug
   */
  public Volume bottomVolume(Length hole) {
    return bell.map(some -> some.volume(hole))
        .or(() -> pad.map(some -> some.volume(hole)))
        .orElse(Volume.ZERO);
  }

  /** Concrete of the cap; zero where there is none. */
  public Volume capVolume() {
    return cap.map(Cap::volume).orElse(Volume.ZERO);
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
