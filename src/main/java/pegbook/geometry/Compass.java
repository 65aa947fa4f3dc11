package pegbook.geometry;

import pegbook.measure.Angle;

/** The eight winds, as words for a direction. */
public enum Compass {
  NORTH,
  NORTH_EAST,
  EAST,
  SOUTH_EAST,
  SOUTH,
  SOUTH_WEST,
  WEST,
  NORTH_WEST;

  /** The wind nearest to an azimuth; halfway between two, the next clockwise. */
  public static Compass of(Angle azimuth) {
    return values()[(int) Math.floor(azimuth.normalized().degrees() / 45 + 0.5) % 8];
  }
}
