package pegbook.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.measure.Pressure;
import pegbook.measure.UnitSystem;

/**
 * What pieces are cut from.
 *
 * @param length of bars whose size is not named under {@code bars}
 * @param bars lengths sold of a size
 * @param offcuts that lie in the shed already
 * @param kerf what one cut takes
 * @param usefulOffcut from which length on what is left over is kept
 * @param yield strength of the steel, as its grade says
 * @param coating of the bars
 * @param timber lengths sold of a size of timber
 * @param conduit lengths sold of a size of pipe for wires
 * @param boards lengths sold of the floor's boards, all of the size {@link #BOARDS}
 */
public record Stock(
    Length length,
    List<Bar> bars,
    List<Offcut> offcuts,
    Length kerf,
    Length usefulOffcut,
    Pressure yield,
    Coating coating,
    List<Bar> timber,
    List<Bar> conduit,
    List<Bar> boards) {
  /** Name of the floor's boards among the sizes: a floor has one size of board. */
  public static final String BOARDS = "boards";

  /** Stock of which only bars are listed. */
  public Stock(
      Length length,
      List<Bar> bars,
      List<Offcut> offcuts,
      Length kerf,
      Length usefulOffcut,
      Pressure yield,
      Coating coating) {
    this(
        length, bars, offcuts, kerf, usefulOffcut, yield, coating, List.of(), List.of(), List.of());
  }

  /** What lies on the steel. */
  public enum Coating {
    NONE,
    /** Concrete holds it less well. */
    EPOXY,
    ZINC
  }

  public Stock {
    bars = List.copyOf(bars);
    offcuts = List.copyOf(offcuts);
    timber = List.copyOf(timber);
    conduit = List.copyOf(conduit);
    boards = List.copyOf(boards);
  }

  /** Bars of these lengths are one kind of thing in the shop. */
  private static final Length SAME_LENGTH = Length.ofMillimetres(0.1);

  /** Lengths of timber that yards usually have: common practice. */
  public static List<Length> usualTimber(UnitSystem units) {
    return units == UnitSystem.IMPERIAL
        ? List.of(
            Length.ofFeet(8),
            Length.ofFeet(10),
            Length.ofFeet(12),
            Length.ofFeet(14),
            Length.ofFeet(16))
        : List.of(
            new Length(3), new Length(3.6), new Length(4.2), new Length(4.8), new Length(5.4));
  }

  /** The longest of them. */
  public static Length longestUsual(UnitSystem units) {
    List<Length> usual = usualTimber(units);
    return usual.get(usual.size() - 1);
  }

  /** Lengths in which pipes for wires are usually sold: common practice. */
  public static List<Length> usualConduit(boolean inches) {
    return List.of(inches ? Length.ofFeet(10) : new Length(3));
  }

  /** Everything that is listed of a size, in the order of the job. */
  public List<Bar> listed(String size) {
    return Stream.of(bars, timber, conduit, boards)
        .flatMap(List::stream)
        .filter(bar -> bar.size().equals(size))
        .toList();
  }

  /** The price of a size and length, where it is known. */
  public Optional<Money> price(String size, Length sold) {
    return listed(size).stream()
        .filter(bar -> !bar.length().minus(sold).abs().isMoreThan(SAME_LENGTH))
        .flatMap(bar -> bar.price().stream())
        .findFirst();
  }

  /**
   * A length that is sold.
   *
   * @param size name of the bar, the timber, the pipe or the boards
   * @param length of one
   * @param price of one, where it is known
   * @param count how many can be had; empty: as many as wanted
   */
  public record Bar(String size, Length length, Optional<Money> price, Optional<Integer> count) {}

  /**
   * Offcuts that cost nothing any more.
   *
   * @param size name of the bar, the timber, the pipe or the boards
   * @param length of one
   * @param count how many
   */
  public record Offcut(String size, Length length, int count) {}
}
