package pegbook.calc.buyinglist;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.TaskDay;
import pegbook.figures.Working;
import pegbook.measure.Mass;
import pegbook.measure.Money;

/**
 * All that is bought for the job, each thing once.
 *
 * @param groups one for each supplier, none of them empty
 * @param load the most that is fetched at a time, where the job says
 * @param total what the lines with a price cost, where there is any
 * @param withoutPrice how many lines have none
 */
public record BuyingList(
    List<Group> groups,
    Optional<Mass> load,
    Optional<Money> total,
    int withoutPrice,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public BuyingList {
    groups = List.copyOf(groups);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** Who sells a thing, in the order of the list. */
  public enum Supplier {
    READY_MIX_PLANT,
    BUILDING_YARD,
    STEEL_YARD,
    HARDWARE_SHOP,
    ELECTRICAL_SHOP,
    /** Nobody says who sells it. */
    OTHER
  }

  /**
   * What one supplier sells.
   *
   * @param letter names it on the list: A, B and so on
   * @param supplier who
   * @param lines in the order of the list
   * @param mass of the lines that are heavy enough to count, where there are any
   * @param trips how often one drives for them at least, where a load is known and nothing is too
   *     heavy for it
   * @param sum of the lines that have a price, where there are any
   * @param withoutPrice how many lines have none
   */
  public record Group(
      String letter,
      Supplier supplier,
      List<Line> lines,
      Optional<Mass> mass,
      OptionalInt trips,
      Optional<Money> sum,
      int withoutPrice) {
    public Group {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A line of the list.
   *
   * @param name letter of its group and number in it, such as "B3"
   * @param need what, how much is needed and how much is ordered
   * @param mass of all that is ordered, where it is heavy enough to count
   * @param by the first day on which it is worked with, where anything is planned
   * @param each price of one
   * @param sum price of all that is ordered
   */
  public record Line(
      String name,
      Need need,
      Optional<Mass> mass,
      Optional<TaskDay> by,
      Optional<Money> each,
      Optional<Money> sum) {
    /** Ordered beyond what is needed, in the need's unit. */
    public double spare() {
      return need.order() - need.amount();
    }
  }

  /** All lines, in the order of the list. */
  public List<Line> lines() {
    return groups.stream().flatMap(group -> group.lines().stream()).toList();
  }
}
