package pegbook.calc.cutplan;

import java.util.List;
import java.util.Optional;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.measure.Ratio;

/**
 * How all pieces are cut.
 *
 * @param sizes one plan for each size, in the order of the pieces
 * @param kerf what one cut takes
 * @param usefulOffcut from which length on what is left is kept
 */
public record CutPlan(
    List<SizePlan> sizes,
    Length kerf,
    Length usefulOffcut,
    List<Finding> findings,
    List<Working> workings,
    List<Need> needs)
    implements Result {
  public CutPlan {
    sizes = List.copyOf(sizes);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
  }

  /** What is ordered of a size. */
  public List<Order> orders(String size) {
    return sizes.stream()
        .filter(plan -> plan.size().equals(size))
        .flatMap(plan -> plan.orders().stream())
        .toList();
  }

  /**
   * The plan of one size.
   *
   * @param size what is cut
   * @param pieces that are cut
   * @param orders what is bought, longest first
   * @param bars how each bar is cut, what lies in the shed first, then longest first
   * @param proof how good the plan is
   * @param tooLong pieces that no stock holds; they are in no bar
   * @param usual lengths that are taken as none is listed; none where some are
   */
  public record SizePlan(
      String size,
      List<CutPiece> pieces,
      List<Order> orders,
      List<CutBar> bars,
      Proof proof,
      List<CutPiece> tooLong,
      List<Length> usual) {
    public SizePlan {
      pieces = List.copyOf(pieces);
      orders = List.copyOf(orders);
      bars = List.copyOf(bars);
      tooLong = List.copyOf(tooLong);
      usual = List.copyOf(usual);
    }
  }

  /**
   * Bars of one length to buy.
   *
   * @param length of a bar
   * @param bars how many
   * @param exact how many the pieces alone would fill
   * @param each price of one, where known
   * @param beyond how many more than the job lists
   */
  public record Order(Length length, int bars, double exact, Optional<Money> each, int beyond) {
    /** What they cost together. */
    public Optional<Money> cost() {
      return each.map(price -> price.times(bars));
    }
  }

  /**
   * Bars cut alike.
   *
   * @param name as it stands at the drawing: the size and a number
   * @param length of the bar
   * @param isFromShed an offcut that is there already
   * @param times how many
   * @param runs pieces in the order of cutting
   * @param left what is left of it
   * @param isKept long enough to keep
   */
  public record CutBar(
      String name,
      Length length,
      boolean isFromShed,
      int times,
      List<Run> runs,
      Length left,
      boolean isKept) {
    public CutBar {
      runs = List.copyOf(runs);
    }
  }

  /** Alike pieces one after another. */
  public record Run(CutPiece piece, int count) {}

  /**
   * What is known of the least there can be.
   *
   * @param isCheapest no plan costs less, or buys less length where there are no prices
   * @param isBest nor does one with the same cost have fewer bars
   * @param gap how much of the cost might be saved at most
   */
  public record Proof(boolean isCheapest, boolean isBest, Ratio gap) {}
}
