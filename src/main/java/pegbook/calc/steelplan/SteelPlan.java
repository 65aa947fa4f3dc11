package pegbook.calc.steelplan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

  /** The same with more findings, before its own. */
  SteelPlan with(List<Finding> more) {
    return new SteelPlan(
        elements,
        cages,
        barList,
        sizes,
        Stream.concat(more.stream(), findings.stream()).toList(),
        workings,
        needs,
        tasks);
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
   * @param uprights how the vertical bars stand
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
      Uprights uprights,
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

    /** Length of a vertical bar, cut. */
    public Length cut() {
      return uprights.cut();
    }

    /** Between the middles of neighbouring bars; for a single bar, the concrete's width. */
    Length fromBarToBar() {
      return bars > 1 ? clear.plus(diameter) : concrete;
    }
  }

  /**
   * Vertical bars.
   *
   * @param foot height of their lower end over the underside of the concrete
   * @param rise from there to their upper end
   * @param cut length cut
   * @param hook at their foot, where there is one
   * @param starters that stand beside them in the first lift, where there are two
   * @param embedment how far the lowest bars reach below where they are pulled most
   */
  public record Uprights(
      Length foot,
      Length rise,
      Length cut,
      Optional<Hook> hook,
      Optional<Starters> starters,
      Optional<Embedment> embedment) {
    /** The hook of the bars that stand lowest. */
    public Optional<Hook> lowestHook() {
      return starters.map(Starters::hook).orElse(hook);
    }
  }

  /**
   * Bars that stand in the first lift and lap with the vertical bars of the second.
   *
   * @param joint height of the joint over the underside of the concrete
   * @param rise from the foot, at the bottom cover, to the upper end
   * @param lap beside the vertical bars, above the joint
   * @param leastLap what the rule asks
   * @param cut length cut
   * @param hook at their foot, where there is one
   * @param clear between neighbouring pairs of bars
   */
  public record Starters(
      Length joint,
      Length rise,
      Length lap,
      Length leastLap,
      Length cut,
      Optional<Hook> hook,
      Length clear) {}

  /**
   * A standard hook of 90 degrees.
   *
   * @param leg from the back of the bar to the end, outside
   * @param insideBend diameter of the pin that it is bent round
   * @param turn which way it lies
   */
  public record Hook(Length leg, Length insideBend, Turn turn) {}

  /** Which way the legs of hooks lie. */
  public enum Turn {
    INWARD,
    OUTWARD,
    /** They fit neither way. */
    NO_ROOM
  }

  /**
   * How far bars reach into the concrete below a section.
   *
   * @param atJoint the section is the joint of two lifts; else the ground
   * @param reach below it
   * @param needed what the rule asks of these bars
   * @param neededHooked what it asks of hooked ones
   * @param isHooked they are hooked
   */
  public record Embedment(
      boolean atJoint, Length reach, Length needed, Length neededHooked, boolean isHooked) {
    /** Whether it is shorter than the rule asks. */
    public boolean isShort() {
      return reach.plus(SteelPlanFindings.TOLERANCE).isLessThan(needed);
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
