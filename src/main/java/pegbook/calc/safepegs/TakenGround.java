package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.geometry.Point;

/**
 * Strips of ground, found by the squares of a grid that they reach into, so that a place is held
 * against the few strips near it and not against thousands.
 */
final class TakenGround {
  private static final double SQUARE_METRES = 1;

  /** A strip counts as reaching this much farther than it does: rounding finds none too few. */
  private static final double SPARE_METRES = 1e-6;

  private final Map<Square, List<Strip>> squares = new LinkedHashMap<>();

  private record Square(long east, long north) {}

  void take(Strip strip) {
    double spare = strip.radiusMetres() + SPARE_METRES;
    double endEast = strip.east() + strip.eastward();
    double endNorth = strip.north() + strip.northward();
    long lastEast = square(Math.max(strip.east(), endEast) + spare);
    long lastNorth = square(Math.max(strip.north(), endNorth) + spare);
    for (long east = square(Math.min(strip.east(), endEast) - spare); east <= lastEast; east++) {
      for (long north = square(Math.min(strip.north(), endNorth) - spare);
          north <= lastNorth;
          north++) {
        squares.computeIfAbsent(new Square(east, north), any -> new ArrayList<>()).add(strip);
      }
    }
  }

  /** Whether any strip covers a place. */
  boolean covers(Point place) {
    Square here = new Square(square(place.east()), square(place.north()));
    for (Strip strip : squares.getOrDefault(here, List.of())) {
      if (strip.covers(place)) {
        return true;
      }
    }
    return false;
  }

  private static long square(double metres) {
    return (long) Math.floor(metres / SQUARE_METRES);
  }
}
