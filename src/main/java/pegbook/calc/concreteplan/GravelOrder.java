package pegbook.calc.concreteplan;

import java.util.Map;
import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/**
 * Gravel as it is sold: up to a quarter of a cubic yard or metre in bags, more by the heap in
 * quarters. Common practice.
 *
 * @param working bags or heap, before it is set up
 * @param need to buy
 * @param volume of the whole order
 */
record GravelOrder(Working working, Need need, Volume volume) {
  private static final double HEAP_STEP = 0.25;

  /**
   * The order for some loose gravel.
   *
   * @param id of the need: "gravel" under the concrete, "side-gravel" round tubes
   * @param subject whose gravel it is; empty: that of all holes
   */
  static GravelOrder of(Job job, String id, String subject, Volume loose) {
    UnitSystem units = job.heading().units();
    ConcretePlanFormulas formulas = new ConcretePlanFormulas(units);
    Working heap = Working.of(formulas.gravelHeap(), subject, loose);
    long quarters = Rounding.UP.steps(heap.result(), HEAP_STEP);
    return quarters > 1
        ? heap(id, heap, quarters * HEAP_STEP)
        : bags(
            id,
            Working.of(formulas.gravelBags(), subject, loose, job.shop().gravelBag()),
            job.shop().gravelBag());
  }

  private static GravelOrder heap(String id, Working working, double order) {
    Unit unit = working.formula().result().unit();
    Need need = new Need(id, Map.of(), working.result(), order, unit, Optional.empty());
    return new GravelOrder(working, need, new Volume(unit.toSi(order)));
  }

  private static GravelOrder bags(String id, Working working, Volume bag) {
    long bags = Rounding.UP.steps(working.result(), 1);
    Need need =
        new Need(
            id + "-bags",
            Map.of("bag", Argument.of(bag)),
            working.result(),
            bags,
            Unit.NONE,
            Optional.empty());
    return new GravelOrder(working, need, bag.times((double) bags));
  }
}
