package pegbook.calc.buyinglist;

import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.figures.Formula;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.measure.Area;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Quantity;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.Bar;
import pegbook.published.Bars;
import pegbook.published.ConduitSize;
import pegbook.published.TimberSize;

/**
 * What a line weighs.
 *
 * @param working the step
 * @param piece mass of one piece, where it comes in pieces
 */
record OrderMass(Working working, Optional<Mass> piece) {
  /** The mass of a line's order; none where nobody knows what its things weigh. */
  static Optional<OrderMass> of(String line, Need need, UnitSystem units) {
    BuyingListFormulas formulas = new BuyingListFormulas(units);
    Count count = new Count(need.order());
    return switch (Goods.of(need)) {
      case CONCRETE_BAGS, CEMENT_BAGS ->
          quantity(need, "bag", Mass.class)
              .map(bag -> pieces(need, Working.of(formulas.pieces(), line, count, bag)));
      case MIX_SAND, MIX_STONE -> {
        Mass ordered = new Mass(need.unit().toSi(need.order()));
        yield Optional.of(
            new OrderMass(Working.of(formulas.byWeight(), line, ordered), Optional.empty()));
      }
      case GRAVEL_BAGS, SIDE_GRAVEL_BAGS ->
          quantity(need, "bag", Volume.class)
              .map(bag -> pieces(need, Working.of(formulas.gravelBags(), line, count, bag)));
      case GRAVEL, SIDE_GRAVEL -> {
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
      case FORM_BOARDS, FORM_HANGERS, FORM_BRACES, CAP_BOARDS, CAP_DECK, CAP_LEGS ->
          wood(line, need, formulas.timber(), "stock", "wide");
      case HOLE_COVERS, HOLE_COVERS_WIDE -> wood(line, need, formulas.plywood(), "length", "width");
      case GROUND_STAKES, FENCE_POSTS -> {
        Formula formula =
            Goods.of(need) == Goods.FENCE_POSTS ? formulas.posts() : formulas.stakes();
        yield Optional.of(pieces(need, Working.of(formula, line, count)));
      }
      case POWER_SAND ->
          Optional.of(
              new OrderMass(
                  Working.of(formulas.sand(), line, new Volume(need.unit().toSi(need.order()))),
                  Optional.empty()));
      case CONDUIT -> pipes(need, line, formulas);
      case POWER_WIRE, POWER_EARTH_WIRE, POWER_CABLE -> wires(need, line, formulas);
      case TIMBER -> {
        Optional<Length> stock = Goods.length(need, "stock");
        yield Goods.words(need, "size")
            .flatMap(TimberSize::find)
            .flatMap(
                size ->
                    stock.map(
                        sold ->
                            pieces(
                                need,
                                Working.of(
                                    formulas.frame(),
                                    line,
                                    count,
                                    sold,
                                    size.width(),
                                    size.depth()))));
      }
      case FLOOR_BOARDS -> {
        Optional<Length> stock = Goods.length(need, "stock");
        Optional<Length> thick = Goods.length(need, "thick");
        yield Goods.length(need, "width")
            .flatMap(
                width ->
                    stock.map(
                        sold ->
                            pieces(
                                need,
                                Working.of(
                                    formulas.frame(),
                                    line,
                                    count,
                                    sold,
                                    thick.orElse(Length.ZERO),
                                    width))));
      }
      default -> Optional.empty();
    };
  }

  /** Boards, battens or sheets: as many as are ordered, of three sizes. */
  private static Optional<OrderMass> wood(
      String line, Need need, Formula formula, String length, String width) {
    Optional<Length> thick = Goods.length(need, "thick");
    Optional<Length> wide = Goods.length(need, width);
    Optional<Length> along = Goods.length(need, length);
    if (thick.isEmpty() || wide.isEmpty() || along.isEmpty()) {
      return Optional.empty();
    }
    Count count = new Count(need.order());
    return Optional.of(
        pieces(need, Working.of(formula, line, count, along.get(), wide.get(), thick.get())));
  }

  private static Optional<OrderMass> pipes(Need need, String line, BuyingListFormulas formulas) {
    Count count = new Count(need.order());
    return Goods.words(need, "size")
        .flatMap(ConduitSize::find)
        .flatMap(
            size ->
                Goods.length(need, "stock")
                    .map(
                        stock ->
                            pieces(
                                need,
                                Working.of(
                                    formulas.pipes(size.isMetal()),
                                    line,
                                    count,
                                    stock,
                                    size.outside(),
                                    size.inside()))));
  }

  /** Off a roll by the length, so no piece of it is heavy. */
  private static Optional<OrderMass> wires(Need need, String line, BuyingListFormulas formulas) {
    boolean aluminium =
        Argument.entry("power-line.metal.aluminium").equals(need.arguments().get("metal"));
    Length length = new Length(need.unit().toSi(need.order()));
    return quantity(need, "conducting", Area.class)
        .flatMap(
            metal ->
                quantity(need, "whole", Area.class)
                    .map(
                        whole ->
                            new OrderMass(
                                Working.of(formulas.wire(aluminium), line, length, metal, whole),
                                Optional.empty())));
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
