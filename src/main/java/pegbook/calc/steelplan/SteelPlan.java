package pegbook.calc.steelplan;

import java.util.List;
import java.util.Optional;
import pegbook.figures.BarPiece;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Ratio;

/**
 * The reinforcement of the job.
 *
 * @param elements what each kind of footing counts as, with its rule for upright steel
 * @param cages one for each kind of footing with steel that fits
 * @param barList one line for each shape, marks A, B and so on
 * @param sizes how much of each size of bar
 */
public record SteelPlan(
    List<Element> elements,
    List<Cage> cages,
    List<BarLine> barList,
    List<SizeTotal> sizes,
    List<Finding> findings,
    List<Working> workings,
    List<Need> needs,
    List<Task> tasks)
    implements Result {
  public SteelPlan {
    elements = List.copyOf(elements);
    cages = List.copyOf(cages);
    barList = List.copyOf(barList);
    sizes = List.copyOf(sizes);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
    tasks = List.copyOf(tasks);
  }

  /** The bar list as pieces to be cut. */
  public List<CutPiece> pieces() {
    return barList.stream().map(BarLine::piece).toList();
  }

  /**
   * The steel of footings that are alike.
   *
   * @param marks the footings
   * @param bars number of vertical bars
   * @param size name of their size
   * @param diameter of a bar
   * @param cut length of a vertical bar
   * @param rings the ties round them, where there are any
   * @param concrete diameter of the narrowest concrete that the steel runs through
   * @param height of the concrete, from its underside to its top
   * @param outside diameter over all steel
   * @param barCircle diameter of the circle through the centres of the vertical bars
   * @param clear distance between neighbouring bars; zero for a single bar
   * @param leastClear what the rule wants of it
   * @param cover beside and above the steel
   * @param bottomCover under it
   * @param ratio area of the vertical bars to that of the concrete
   * @param pieces what one footing takes
   */
  public record Cage(
      List<String> marks,
      int bars,
      String size,
      Length diameter,
      Length cut,
      Optional<Rings> rings,
      Length concrete,
      Length height,
      Length outside,
      Length barCircle,
      Length clear,
      Length leastClear,
      Length cover,
      Length bottomCover,
      Ratio ratio,
      List<BarPiece> pieces) {
    public Cage {
      marks = List.copyOf(marks);
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * Rings round the vertical bars.
   *
   * @param size name of their size
   * @param diameter of the bar
   * @param count of rings in a footing
   * @param spacing from ring to ring, evenly, as it comes out
   * @param greatestSpacing what the rule allows
   * @param fromEnd from the end of the vertical bars to the first ring
   * @param outside diameter over the ring
   * @param overlap of the ends
   * @param insideBend diameter of the pin that hooks are bent round
   * @param hookExtension straight end behind the bend of a hook
   * @param cut length of the straight bar that makes one
   */
  public record Rings(
      String size,
      Length diameter,
      int count,
      Length spacing,
      Length greatestSpacing,
      Length fromEnd,
      Length outside,
      Length overlap,
      Length insideBend,
      Length hookExtension,
      Length cut) {}

  /**
   * A line of the bar list.
   *
   * @param barMark A, B and so on
   * @param size of the bar
   * @param shape how it is bent
   * @param count in the whole job
   * @param cut length cut
   * @param each mass of one
   * @param marks the footings it goes to
   */
  public record BarLine(
      String barMark,
      String size,
      BarPiece.Shape shape,
      int count,
      Length cut,
      Mass each,
      List<String> marks) {
    public BarLine {
      marks = List.copyOf(marks);
    }

    public Mass mass() {
      return each.times(count);
    }

    CutPiece piece() {
      return new CutPiece(size, barMark, cut, count, marks, shape == BarPiece.Shape.STRAIGHT);
    }
  }

  /**
   * What goes in of a size of bar.
   *
   * @param size of the bar
   * @param length of all pieces
   * @param mass of all pieces
   */
  public record SizeTotal(String size, Length length, Mass mass) {}
}
