package pegbook.calc.buyinglist;

import java.util.Arrays;
import java.util.Optional;
import pegbook.calc.buyinglist.BuyingList.Supplier;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.job.Job;
import pegbook.job.Prices;
import pegbook.job.Prices.Item;
import pegbook.job.Stock;
import pegbook.measure.Length;
import pegbook.measure.Money;

/**
 * Who sells what, for which work it must lie there, and which price is its own. Suppliers differ
 * from place to place: common practice. In the order of the list.
 */
enum Goods {
  READY_MIX(Supplier.READY_MIX_PLANT, Task.Kind.POUR, Item.READY_MIX),
  CONCRETE_BAGS(Supplier.BUILDING_YARD, Task.Kind.POUR, Item.BAG),
  CEMENT_BAGS(Supplier.BUILDING_YARD, Task.Kind.POUR, Item.CEMENT),
  MIX_SAND(Supplier.BUILDING_YARD, Task.Kind.POUR, Item.SAND),
  MIX_STONE(Supplier.BUILDING_YARD, Task.Kind.POUR, Item.STONE),
  GRAVEL(Supplier.BUILDING_YARD, Task.Kind.GRAVEL, Item.GRAVEL),
  GRAVEL_BAGS(Supplier.BUILDING_YARD, Task.Kind.GRAVEL, Item.GRAVEL_BAG),
  SIDE_GRAVEL(Supplier.BUILDING_YARD, Task.Kind.POUR, Item.GRAVEL),
  SIDE_GRAVEL_BAGS(Supplier.BUILDING_YARD, Task.Kind.POUR, Item.GRAVEL_BAG),
  SIDE_FLEECE(Supplier.BUILDING_YARD, Task.Kind.POUR),
  FORM_TUBE(Supplier.BUILDING_YARD, Task.Kind.FORM),
  FROST_SLEEVES(Supplier.BUILDING_YARD, Task.Kind.FORM),
  FORM_BOARDS(Supplier.BUILDING_YARD, Task.Kind.FORM),
  FORM_HANGERS(Supplier.BUILDING_YARD, Task.Kind.FORM),
  FORM_BRACES(Supplier.BUILDING_YARD, Task.Kind.FORM),
  CAP_BOARDS(Supplier.BUILDING_YARD, Task.Kind.FORM),
  CAP_DECK(Supplier.BUILDING_YARD, Task.Kind.FORM),
  CAP_LEGS(Supplier.BUILDING_YARD, Task.Kind.FORM),
  TIMBER(Supplier.BUILDING_YARD, Task.Kind.FRAME),
  FLOOR_BOARDS(Supplier.BUILDING_YARD, Task.Kind.BOARDS),
  HOLE_COVERS(Supplier.BUILDING_YARD, Task.Kind.DIG, Item.SHEET),
  HOLE_COVERS_WIDE(Supplier.BUILDING_YARD, Task.Kind.DIG, Item.SHEET),
  GROUND_STAKES(Supplier.BUILDING_YARD, Task.Kind.DIG),
  BARRIER_FENCE(Supplier.BUILDING_YARD, Task.Kind.DIG),
  FENCE_POSTS(Supplier.BUILDING_YARD, Task.Kind.DIG),
  CURING_SHEET(Supplier.BUILDING_YARD, Task.Kind.POUR),
  CURING_BLANKETS(Supplier.BUILDING_YARD, Task.Kind.POUR),
  BARS(Supplier.STEEL_YARD, Task.Kind.STEEL),
  WIRE_TIES(Supplier.STEEL_YARD, Task.Kind.STEEL, Item.WIRE_TIE),
  BAR_FEET(Supplier.STEEL_YARD, Task.Kind.STEEL, Item.BAR_FOOT),
  SIDE_SPACERS(Supplier.STEEL_YARD, Task.Kind.STEEL, Item.SIDE_SPACER),
  BAR_CAPS(Supplier.STEEL_YARD, Task.Kind.STEEL, Item.BAR_CAP),
  BOLT_CAPS(Supplier.STEEL_YARD, Task.Kind.POUR, Item.BAR_CAP),
  CONDUIT(Supplier.ELECTRICAL_SHOP, Task.Kind.LAY_PIPE),
  POWER_BENDS(Supplier.ELECTRICAL_SHOP, Task.Kind.LAY_PIPE),
  POWER_COUPLINGS(Supplier.ELECTRICAL_SHOP, Task.Kind.LAY_PIPE),
  POWER_WIRE(Supplier.ELECTRICAL_SHOP, Task.Kind.LAY_PIPE, Item.WIRE),
  POWER_EARTH_WIRE(Supplier.ELECTRICAL_SHOP, Task.Kind.LAY_PIPE, Item.GROUND_WIRE),
  POWER_CABLE(Supplier.ELECTRICAL_SHOP, Task.Kind.LAY_PIPE, Item.CABLE),
  POWER_DATA_CABLE(Supplier.ELECTRICAL_SHOP, Task.Kind.LAY_PIPE, Item.DATA_CABLE),
  POWER_WARNING_TAPE(Supplier.ELECTRICAL_SHOP, Task.Kind.LAY_PIPE, Item.WARNING_TAPE),
  POWER_SAND(Supplier.BUILDING_YARD, Task.Kind.LAY_PIPE, Item.BEDDING_SAND),
  MARKING_PAINT(Supplier.HARDWARE_SHOP, Task.Kind.MARK_OUT, Item.PAINT),
  SAFE_PEGS(Supplier.HARDWARE_SHOP, Task.Kind.SET_PEGS, Item.PEG),
  PEG_NAILS(Supplier.HARDWARE_SHOP, Task.Kind.SET_PEGS, Item.NAIL),
  PEG_STRING(Supplier.HARDWARE_SHOP, Task.Kind.SET_PEGS, Item.STRING),
  FLAGGING(Supplier.HARDWARE_SHOP, Task.Kind.SET_PEGS),
  DATUM_STAKES(Supplier.HARDWARE_SHOP, Task.Kind.DIG),
  DATUM_STRING(Supplier.HARDWARE_SHOP, Task.Kind.DIG, Item.STRING),
  FORM_SCREWS(Supplier.HARDWARE_SHOP, Task.Kind.FORM),
  ANCHOR_BOLTS(Supplier.HARDWARE_SHOP, Task.Kind.FORM),
  TEMPLATE_BOARD(Supplier.HARDWARE_SHOP, Task.Kind.FORM),
  CABLE_SLEEVE(Supplier.HARDWARE_SHOP, Task.Kind.FORM),
  POST_BASES(Supplier.HARDWARE_SHOP, Task.Kind.FRAME),
  POST_CAPS(Supplier.HARDWARE_SHOP, Task.Kind.FRAME),
  JOIST_TIES(Supplier.HARDWARE_SHOP, Task.Kind.FRAME),
  JOIST_HANGERS(Supplier.HARDWARE_SHOP, Task.Kind.FRAME),
  HEADER_HANGERS(Supplier.HARDWARE_SHOP, Task.Kind.FRAME),
  FRAME_NAILS(Supplier.HARDWARE_SHOP, Task.Kind.FRAME),
  BOARD_SCREWS(Supplier.HARDWARE_SHOP, Task.Kind.BOARDS),
  /** What no row names; it stands on the list all the same. */
  UNKNOWN(Supplier.OTHER, Task.Kind.MARK_OUT);

  private final Supplier supplier;
  private final Task.Kind work;
  private final Optional<Item> item;

  Goods(Supplier supplier, Task.Kind work, Item item) {
    this.supplier = supplier;
    this.work = work;
    this.item = Optional.of(item);
  }

  /** Has no price, or one by its size. */
  Goods(Supplier supplier, Task.Kind work) {
    this.supplier = supplier;
    this.work = work;
    this.item = Optional.empty();
  }

  static Goods of(Need need) {
    return Arrays.stream(values())
        .filter(goods -> goods.name().replace('_', '-').equalsIgnoreCase(need.id()))
        .findFirst()
        .orElse(UNKNOWN);
  }

  Supplier supplier() {
    return supplier;
  }

  /** The work for which it must lie there. */
  Task.Kind work() {
    return work;
  }

  /** The price of one, where the job has it. */
  Optional<Money> price(Need need, Job job) {
    Optional<Prices> prices = job.prices();
    return switch (this) {
      case FORM_TUBE ->
          length(need, "inside").flatMap(inside -> prices.flatMap(known -> known.ofTube(inside)));
      case POWER_BENDS -> fittings(need, prices).flatMap(Prices.FittingPrice::bend);
      case POWER_COUPLINGS -> fittings(need, prices).flatMap(Prices.FittingPrice::coupling);
      case FLOOR_BOARDS ->
          length(need, "stock").flatMap(sold -> job.stock().price(Stock.BOARDS, sold));
      case BARS, TIMBER, CONDUIT ->
          words(need, "size")
              .flatMap(
                  size -> length(need, "stock").flatMap(sold -> job.stock().price(size, sold)));
      default -> item.flatMap(thing -> prices.flatMap(known -> known.of(thing)));
    };
  }

  private static Optional<Prices.FittingPrice> fittings(Need need, Optional<Prices> prices) {
    return words(need, "size").flatMap(size -> prices.flatMap(known -> known.fittings(size)));
  }

  /** A length among a need's words. */
  static Optional<Length> length(Need need, String name) {
    return need.arguments().get(name) instanceof Argument.Measured measured
            && measured.quantity() instanceof Length length
        ? Optional.of(length)
        : Optional.empty();
  }

  /** A name among a need's words. */
  static Optional<String> words(Need need, String name) {
    return need.arguments().get(name) instanceof Argument.Words words
        ? Optional.of(words.words())
        : Optional.empty();
  }
}
