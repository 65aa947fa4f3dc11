package pegbook.calc.buyinglist;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import pegbook.calc.buyinglist.BuyingList.Group;
import pegbook.calc.buyinglist.BuyingList.Line;
import pegbook.calc.buyinglist.BuyingList.Supplier;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.figures.TaskDay;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Mass;
import pegbook.measure.Money;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.published.Citation;

/**
 * Puts everything that the subjects want bought onto one list.
 *
 * <p>Nothing is decided anew: each order is the one that its subject decided, and what two subjects
 * want of one thing is added up. The list says who sells it, what it weighs, by which day it is
 * needed and, where the job has prices, what it costs.
 */
public final class BuyingListCalculator {
  private final Job job;
  private final List<TaskDay> days;
  private final BuyingListFormulas formulas;
  private final List<Working> workings = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private BuyingListCalculator(Job job, List<TaskDay> days) {
    this.job = job;
    this.days = days;
    this.formulas = new BuyingListFormulas(job.heading().units());
  }

  /**
   * Makes the list.
   *
   * @param job its prices and its load
   * @param needs of all subjects, in the order of the sheets
   * @param days on which each kind of work is done
   */
  public static BuyingList calculate(Job job, List<Need> needs, List<TaskDay> days) {
    return new BuyingListCalculator(job, days).list(needs);
  }

  private BuyingList list(List<Need> needs) {
    Map<Supplier, List<Need>> bySupplier = new TreeMap<>();
    once(needs).stream()
        .filter(need -> need.order() > 0)
        .sorted(Comparator.comparing(Goods::of))
        .forEach(
            need ->
                bySupplier
                    .computeIfAbsent(Goods.of(need).supplier(), any -> new ArrayList<>())
                    .add(need));
    List<Group> groups = new ArrayList<>();
    bySupplier.forEach(
        (supplier, wanted) -> groups.add(group(letter(groups.size()), supplier, wanted)));
    return new BuyingList(
        groups,
        job.shop().load(),
        sum(groups.stream().flatMap(group -> group.sum().stream()).toList()),
        groups.stream().mapToInt(Group::withoutPrice).sum(),
        findings,
        workings);
  }

  /** What makes two needs one thing of the shop. */
  private record Thing(String id, Map<String, Argument> arguments, Unit unit) {}

  /** What several subjects want of one thing, added up. */
  private static Collection<Need> once(List<Need> needs) {
    Map<Thing, Need> once = new LinkedHashMap<>();
    for (Need need : needs) {
      once.merge(
          new Thing(need.id(), need.arguments(), need.unit()),
          need,
          (one, other) ->
              new Need(
                  one.id(),
                  one.arguments(),
                  one.amount() + other.amount(),
                  one.order() + other.order(),
                  one.unit(),
                  Optional.empty()));
    }
    return once.values();
  }

  private static String letter(int index) {
    return Character.toString((char) ('A' + index));
  }

  private Group group(String letter, Supplier supplier, List<Need> needs) {
    List<Line> lines = new ArrayList<>();
    List<OrderMass> masses = new ArrayList<>();
    for (Need need : needs) {
      String name = letter + (lines.size() + 1);
      Optional<OrderMass> mass = OrderMass.of(name, need, job.heading().units());
      mass.ifPresent(masses::add);
      lines.add(line(name, need, mass.map(OrderMass::mass)));
    }
    masses.forEach(mass -> workings.add(mass.working()));
    Optional<Mass> mass = masses.stream().map(OrderMass::mass).reduce(Mass::plus);
    return new Group(
        letter,
        supplier,
        lines,
        mass,
        trips(letter, masses),
        sum(lines.stream().flatMap(line -> line.sum().stream()).toList()),
        (int) lines.stream().filter(line -> line.sum().isEmpty()).count());
  }

  private Line line(String name, Need need, Optional<Mass> mass) {
    Goods goods = Goods.of(need);
    Optional<Money> each = goods.price(need, job);
    return new Line(
        name,
        need,
        mass,
        firstDay(goods),
        each,
        each.map(price -> price.times(exact(need.order())).payable()));
  }

  /** Orders are whole numbers or quarters; a double holds both exactly. */
  private static BigDecimal exact(double order) {
    return BigDecimal.valueOf(Rounding.NEAREST.steps(order, 0.0001), 4);
  }

  /** The first day of its work; the first day of all where that work is not planned. */
  private Optional<TaskDay> firstDay(Goods goods) {
    Comparator<TaskDay> early = Comparator.comparingInt(TaskDay::day);
    Optional<TaskDay> own = days.stream().filter(day -> isFor(goods, day)).min(early);
    return own.isPresent() ? own : days.stream().min(early);
  }

  /** What is for the pour is for the first of its lifts. */
  private static boolean isFor(Goods goods, TaskDay day) {
    return day.kind() == goods.work()
        || (goods.work() == Task.Kind.POUR && day.kind() == Task.Kind.FIRST_LIFT);
  }

  private OptionalInt trips(String letter, List<OrderMass> masses) {
    Optional<Mass> load = job.shop().load();
    Optional<Mass> all = masses.stream().map(OrderMass::mass).reduce(Mass::plus);
    if (load.isEmpty() || all.isEmpty()) {
      return OptionalInt.empty();
    }
    Optional<Mass> heaviest =
        masses.stream().flatMap(mass -> mass.piece().stream()).max(Comparator.naturalOrder());
    Mass room = load.get();
    if (heaviest.isPresent()) {
      Working whole = Working.of(formulas.wholePieces(), letter, room, heaviest.get());
      if (!(whole.result() > 0)) {
        findings.add(tooHeavy(heaviest.get(), room));
        return OptionalInt.empty();
      }
      workings.add(whole);
      room = whole.asMass();
    }
    Working trips = Working.of(formulas.trips(), letter, all.get(), room);
    workings.add(trips);
    return OptionalInt.of((int) Rounding.UP.steps(trips.result(), 1));
  }

  private static Finding tooHeavy(Mass piece, Mass load) {
    return Finding.of(
            Finding.Kind.ASK,
            "piece-heavier-than-load",
            "shop.load",
            Finding.Decider.OWNER,
            Citation.COMMON_PRACTICE)
        .with("piece", Argument.of(piece))
        .with("load", Argument.of(load));
  }

  private static Optional<Money> sum(List<Money> sums) {
    return sums.stream().reduce(Money::plus);
  }
}
