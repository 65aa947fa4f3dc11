package pegbook.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Supports in rows and columns.
 *
 * @param columns along the length, at least 2
 * @param rows along the width, at least 2
 */
public record Grid(int columns, int rows) {
  public Grid {
    if (columns < 2 || rows < 2) {
      throw new IllegalArgumentException(columns + " columns, " + rows + " rows");
    }
  }

  /** Number of supports. */
  public int count() {
    return columns * rows;
  }

  /**
   * The places, evenly spaced between the outer ones: clockwise along the edge from the upper left
   * corner, then the inner ones row by row from the top, each from left to right.
   */
  List<Point> places(double halfLengthMetres, double halfWidthMetres) {
    List<Point> places = new ArrayList<>();
    Placer placer = new Placer(halfLengthMetres, halfWidthMetres);
    for (int column = 0; column < columns - 1; column++) {
      places.add(placer.at(column, 0));
    }
    for (int row = 0; row < rows - 1; row++) {
      places.add(placer.at(columns - 1, row));
    }
    for (int column = columns - 1; column > 0; column--) {
      places.add(placer.at(column, rows - 1));
    }
    for (int row = rows - 1; row > 0; row--) {
      places.add(placer.at(0, row));
    }
    for (int row = 1; row < rows - 1; row++) {
      for (int column = 1; column < columns - 1; column++) {
        places.add(placer.at(column, row));
      }
    }
    return places;
  }

  /** From a column and a row, counted from the upper left, to a place. */
  private final class Placer {
    private final double halfLengthMetres;
    private final double halfWidthMetres;

    Placer(double halfLengthMetres, double halfWidthMetres) {
      this.halfLengthMetres = halfLengthMetres;
      this.halfWidthMetres = halfWidthMetres;
    }

    Point at(int column, int row) {
      return new Point(
          halfLengthMetres * (2.0 * column / (columns - 1) - 1),
          halfWidthMetres * (1 - 2.0 * row / (rows - 1)));
    }
  }
}
