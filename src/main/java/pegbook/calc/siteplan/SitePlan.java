package pegbook.calc.siteplan;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.geometry.Gap;
import pegbook.geometry.Point;
import pegbook.measure.Length;

/**
 * The figure among its surroundings.
 *
 * @param clearances how far things keep from one another, in the order in which they are listed; a
 *     working names them C1 and so on, and the ties T1 and so on
 * @param ties distances from fixed things to marks
 * @param sizes the outline's own sizes
 */
public record SitePlan(
    List<Clearance> clearances,
    List<Tie> ties,
    List<Size> sizes,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public SitePlan {
    clearances = List.copyOf(clearances);
    ties = List.copyOf(ties);
    sizes = List.copyOf(sizes);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** The fixed things that the ties are taken from, each once, in the order of the ties. */
  public List<Point> tiedFrom() {
    return ties.stream().map(Tie::from).distinct().toList();
  }

  /** What keeps clear. */
  public enum Keeper {
    /** The edge of a hole. */
    HOLE,
    /** The foot of a spoil heap. */
    HEAP,
    /** The floor's edge. */
    FLOOR
  }

  /**
   * One clearance.
   *
   * @param keeper what keeps clear
   * @param mark the nearest hole, or the holes of the nearest heap; empty for the floor
   * @param feature the thing it keeps clear of; empty for a lot line
   * @param distance from edge to edge; negative when one lies in the other
   * @param required how far it should be, where that is known
   * @param breach true when it is less
   * @param towards the wind in which the thing lies
   * @param gap the shortest way, from the hole's or heap's centre or the floor's edge
   */
  public record Clearance(
      Keeper keeper,
      String mark,
      String feature,
      Length distance,
      Optional<Length> required,
      boolean breach,
      Compass towards,
      Gap gap) {}

  /**
   * A distance from a fixed thing to a mark of the baseline; together they show a figure that is
   * shifted or turned as a whole, which distances between marks never do. Mirrored across its
   * baseline it keeps them: the ties of the marks' proof show that.
   *
   * @param number 1 and so on, as the plan names it
   * @param fixed what it is taken from
   * @param from where that is
   * @param mark to which mark of the baseline
   * @param to where that is
   * @param tape the distance, set to the tape's division
   * @param towards the wind in which the mark lies, seen from the fixed thing
   */
  public record Tie(
      int number, Fixed fixed, Point from, String mark, Point to, Length tape, Compass towards) {}

  /** A fixed thing to measure from. */
  public sealed interface Fixed {
    /** A feature at a single place. */
    record Thing(String name) implements Fixed {}

    /** A corner of a building or the like. */
    record Corner(String name, Compass side) implements Fixed {}

    /** The benchmark. */
    record OfBenchmark(String on) implements Fixed {}

    /** A corner of the lot, which needs its pin found. */
    record LotCorner(Compass side) implements Fixed {}
  }

  /**
   * A size of the outline.
   *
   * @param from one end, on the outline
   * @param to the other
   * @param across true for an overall size, false for a side
   */
  public record Size(Point from, Point to, boolean across) {
    public Length length() {
      return from.distanceTo(to);
    }
  }
}
