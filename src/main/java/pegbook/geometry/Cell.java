package pegbook.geometry;

import java.util.Comparator;
import java.util.List;
import pegbook.measure.Area;

/**
 * The part of a floor that lies nearest to one of several places.
 *
 * @param place the place
 * @param pieces its parts: one as a rule, more where the floor's edge or an opening cuts it apart,
 *     none where no part of the floor is nearest to the place
 */
public record Cell(Point place, List<Piece> pieces) {
  public Cell {
    pieces = List.copyOf(pieces);
  }

  /**
   * A part in one.
   *
   * @param edge its outer edge, clockwise
   * @param holes edges of openings that lie wholly inside it, clockwise
   * @param inside a place well inside it
   */
  public record Piece(Polygon edge, List<Polygon> holes, Point inside) {
    public Piece {
      holes = List.copyOf(holes);
    }

    public Area area() {
      return holes.stream().map(Polygon::area).reduce(edge.area(), Area::minus);
    }
  }

  public Area area() {
    return pieces.stream().map(Piece::area).reduce(Area.ZERO, Area::plus);
  }

  /**
   * The largest of its parts.
   *
   * @throws java.util.NoSuchElementException when there is none
   */
  public Piece largest() {
    return pieces.stream().max(Comparator.comparing(Piece::area)).orElseThrow();
  }
}
