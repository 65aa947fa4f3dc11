package pegbook.calc.levels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.levels.Levels.Row;
import pegbook.figures.DatumLine;
import pegbook.figures.Hole;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.measure.Length;

/**
 * Reads heights from the datum line.
 *
 * <p>The line itself and the depths from it are the depth targets' and are taken as they are. Added
 * are the ground, the tops of the concrete, the posts of a level floor, and how far the line sags.
 * A mark without a level has no row: it is unknown, never zero.
 */
public final class LevelsCalculator {
  private LevelsCalculator() {}

  /**
   * Reads the heights.
   *
   * @param holes in the order of the marks
   * @param line the datum line, where any level is known
   */
  public static Levels calculate(
      Job job, Placement placement, List<Hole> holes, Optional<DatumLine> line) {
    List<Working> workings = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    line.ifPresent(datum -> rows.addAll(rows(job, holes, datum, workings)));
    List<String> unknown =
        placement.marks().stream()
            .filter(mark -> mark.level().isEmpty())
            .map(PlacedMark::id)
            .toList();
    FloorHeights floor = FloorHeights.of(job, placement, holes, line, workings);
    Optional<LineSag> sag = longest(placement).map(between -> LineSag.of(job, between, workings));
    return new Levels(
        line,
        rows,
        unknown,
        floor.floor(),
        sag,
        LevelsFindings.of(job, rows, floor),
        workings,
        sag.map(hanging -> LineNeeds.of(job, rows, hanging)).orElse(List.of()));
  }

  private static List<Row> rows(
      Job job, List<Hole> holes, DatumLine datum, List<Working> workings) {
    LevelsFormulas formulas = LevelsFormulas.in(job.heading().units());
    Length division = job.layout().tape().division();
    List<Row> rows = new ArrayList<>();
    for (Hole hole : holes) {
      if (hole.level().isPresent() && hole.datumToUnderside().isPresent()) {
        Length level = hole.level().get();
        Working ground =
            Working.of(formulas.toGround(), hole.mark(), datum.height(), level, division);
        Working top =
            Working.of(formulas.toTop(), hole.mark(), datum.height(), level, hole.top(), division);
        workings.addAll(List.of(ground, top));
        rows.add(
            new Row(
                hole.mark(),
                hole.kind(),
                level,
                ground.asLength(),
                hole.datumToUnderside().get(),
                hole.datumToBottom().orElseThrow(),
                top.asLength()));
      }
    }
    return rows;
  }

  /** The longest way between two marks that the line serves; none with fewer than two. */
  private static Optional<Length> longest(Placement placement) {
    List<Point> places =
        placement.marks().stream()
            .filter(mark -> mark.level().isPresent())
            .map(PlacedMark::at)
            .toList();
    Optional<Length> longest = Optional.empty();
    for (int i = 0; i < places.size(); i++) {
      for (int j = i + 1; j < places.size(); j++) {
        Length way = places.get(i).distanceTo(places.get(j));
        longest = Optional.of(longest.map(way::max).orElse(way));
      }
    }
    return longest;
  }
}
