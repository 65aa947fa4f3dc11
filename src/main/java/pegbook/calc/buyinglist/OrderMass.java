package pegbook.calc.buyinglist;

import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Quantity;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.Bar;
import pegbook.published.Bars;

/**
 * What a line weighs.
 *
 * @param working the step
 * @param piece mass of one piece, where it comes in pieces
 */
record OrderMass(Working working, Optional<Mass> piece) {
  /** The mass of a line's order; none where its things are too light to count. */
  static Optional<OrderMass> of(String line, Need need, UnitSystem units) {
    BuyingListFormulas formulas = new BuyingListFormulas(units);
    Count count = new Count(need.order());
    return switch (Goods.of(need)) {
      case CONCRETE_BAGS, CEMENT_BAGS ->
          quantity(need, "bag", Mass.class)
              .map(bag -> pieces(need, Working.of(formulas.pieces(), line, count, bag)));
      case GRAVEL_BAGS ->
          quantity(need, "bag", Volume.class)
              .map(bag -> pieces(need, Working.of(formulas.gravelBags(), line, count, bag)));
      case GRAVEL -> {
        Volume volume = new Volume(need.unit().toSi(need.order()));
        Working working = Working.of(formulas.gravel(), line, volume);
        yield Optional.of(new OrderMass(working, Optional.empty()));
      }
      case BARS -> {
        Optional<Length> stock = Goods.length(need, "stock");
        Optional<Bar> bar = Goods.words(need, "size").flatMap(Bars::find);
        yield stock.isEmpty() || bar.isEmpty()
            ? Optional.empty()
            : Optional.of(
                pieces(
                    need,
                    Working.of(formulas.bars(), line, count, stock.get(), bar.get().diameter())));
      }
      default -> Optional.empty();
    };
  }

  private static OrderMass pieces(Need need, Working working) {
    return new OrderMass(working, Optional.of(working.asMass().times(1 / need.order())));
  }

  private static <Q extends Quantity> Optional<Q> quantity(Need need, String name, Class<Q> kind) {
    return need.arguments().get(name) instanceof Argument.Measured measured
        ? Optional.of(measured.quantity()).filter(kind::isInstance).map(kind::cast)
        : Optional.empty();
  }

  Mass mass() {
    return working.asMass();
  }
}
