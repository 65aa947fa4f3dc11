package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.Hole;
import pegbook.geometry.Point;
import pegbook.sheet.drafting.Extent;

/**
 * How a figure is cut into parts: an even grid over its marks, coarse ones tried first. Parts
 * without a mark are left out; those that remain are lettered by rows, the northern first.
 *
 * @param across parts side by side
 * @param up rows of them
 */
record PlanParts(int across, int up) {
  /** Coarse grids before fine ones: fewer plans to carry. */
  static final List<PlanParts> GRIDS =
      List.of(
          new PlanParts(1, 2),
          new PlanParts(2, 1),
          new PlanParts(2, 2),
          new PlanParts(2, 3),
          new PlanParts(3, 3),
          new PlanParts(3, 4),
          new PlanParts(4, 4),
          new PlanParts(5, 5),
          new PlanParts(6, 6),
          new PlanParts(8, 8));

  /** The parts with their marks. */
  List<PlanPart> of(List<Hole> holes) {
    Extent all = Extent.of(holes.stream().map(Hole::centre).toList());
    List<PlanPart> parts = new ArrayList<>();
    for (int row = up - 1; row >= 0; row--) {
      for (int column = 0; column < across; column++) {
        Cell cell = new Cell(column, row);
        List<Hole> inside =
            holes.stream().filter(hole -> cell.equals(cell(all, hole.centre()))).toList();
        if (!inside.isEmpty()) {
          parts.add(new PlanPart(letter(parts.size()), ground(all, cell), inside));
        }
      }
    }
    return parts;
  }

  /** A place in the grid, counted from the south-west. */
  private record Cell(int column, int row) {}

  private Cell cell(Extent all, Point place) {
    return new Cell(
        step(place.east() - all.west(), all.widthMetres(), across),
        step(place.north() - all.south(), all.heightMetres(), up));
  }

  private static int step(double along, double whole, int parts) {
    return whole <= 0 ? 0 : (int) Math.min(parts - 1, Math.floor(along / whole * parts));
  }

  private Extent ground(Extent all, Cell cell) {
    double width = all.widthMetres() / across;
    double height = all.heightMetres() / up;
    double west = all.west() + cell.column() * width;
    double south = all.south() + cell.row() * height;
    return new Extent(west, south, west + width, south + height);
  }

  /** A to Z, then AA, AB and so on. */
  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }
}
