package pegbook.job;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import pegbook.measure.Length;
import pegbook.measure.Money;

/**
 * What things cost, all in one currency; what has no price here is bought all the same.
 *
 * @param currency ISO 4217 code
 * @param items price of one of each thing, or of one cubic yard or metre, foot or metre
 * @param tubes price of a form tube as it is sold, by its inside diameter
 * @param fittings of pipes for wires, by the pipe's size
 */
public record Prices(
    String currency,
    SortedMap<Item, Money> items,
    List<TubePrice> tubes,
    List<FittingPrice> fittings) {
  /** Prices without any of fittings. */
  public Prices(String currency, SortedMap<Item, Money> items, List<TubePrice> tubes) {
    this(currency, items, tubes, List.of());
  }

  /** Two inside diameters no further apart than this are one size of tube. */
  private static final Length SAME_TUBE = Length.ofMillimetres(0.1);

  public Prices {
    items = Collections.unmodifiableSortedMap(new TreeMap<>(items));
    tubes = List.copyOf(tubes);
    fittings = List.copyOf(fittings);
  }

  /** Things that have one price whatever their size. */
  public enum Item {
    /** A bag of concrete mix. */
    BAG,
    /** A cubic yard or metre from a truck. */
    READY_MIX,
    /** A cubic yard or metre, loose. */
    GRAVEL,
    GRAVEL_BAG,
    PEG,
    NAIL,
    /** A foot or a metre. */
    STRING,
    BAR_FOOT,
    SIDE_SPACER,
    /** A cap for a bar or a bolt. */
    BAR_CAP,
    WIRE_TIE,
    /** A can. */
    PAINT,
    /** A sheet of plywood. */
    SHEET,
    /** A bag. */
    CEMENT,
    /** A pound or a kilogram, for the crew's own mix. */
    SAND,
    /** A pound or a kilogram, for the crew's own mix. */
    STONE,
    /** A foot or a metre of one conductor. */
    WIRE,
    /** A foot or a metre of the conductor that grounds. */
    GROUND_WIRE,
    /** A foot or a metre, all its conductors in it. */
    CABLE,
    /** A foot or a metre. */
    DATA_CABLE,
    /** A foot or a metre. */
    WARNING_TAPE,
    /** A cubic yard or metre of sand round pipes. */
    BEDDING_SAND
  }

  /** What joins pipes of a size: a bend, a coupling. */
  public record FittingPrice(String size, Optional<Money> bend, Optional<Money> coupling) {}

  /** Price of a form tube. */
  public record TubePrice(Length inside, Money each) {}

  /** The price of a thing, where there is one. */
  public Optional<Money> of(Item item) {
    return Optional.ofNullable(items.get(item));
  }

  /** The fittings of a size of pipe, where they have prices. */
  public Optional<FittingPrice> fittings(String size) {
    return fittings.stream().filter(each -> each.size().equals(size)).findFirst();
  }

  /** The price of a tube, where there is one. */
  public Optional<Money> ofTube(Length inside) {
    return tubes.stream()
        .filter(tube -> !tube.inside().minus(inside).abs().isMoreThan(SAME_TUBE))
        .map(TubePrice::each)
        .findFirst();
  }
}
