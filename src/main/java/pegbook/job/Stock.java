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
 */
public record Stock(
    Length length,
    List<Bar> bars,
    List<Offcut> offcuts,
    Length kerf,
    Length usefulOffcut,
    Pressure yield,
    Coating coating,
    List<Bar> timber) {
  /** Stock without any timber listed. */
  public Stock(
      Length length,
      List<Bar> bars,
      List<Offcut> offcuts,
      Length kerf,
      Length usefulOffcut,
      Pressure yield,
      Coating coating) {
    this(length, bars, offcuts, kerf, usefulOffcut, yield, coating, List.of());
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

  /** The price of a bar or a timber of a size and length, where it is known. */
  public Optional<Money> price(String size, Length sold) {
    return Stream.concat(bars.stream(), timber.stream())
        .filter(bar -> bar.size().equals(size))
        .filter(bar -> !bar.length().minus(sold).abs().isMoreThan(SAME_LENGTH))
        .flatMap(bar -> bar.price().stream())
        .findFirst();
  }

  /**
   * A length that is sold.
   *
   * @param size name of the bar
   * @param length of a bar
   * @param price of a bar, where it is known
   * @param count how many can be had; empty: as many as wanted
   */
  public record Bar(String size, Length length, Optional<Money> price, Optional<Integer> count) {}

  /**
   * Offcuts that cost nothing any more.
   *
   * @param size name of the bar
   * @param length of one
   * @param count how many
   */
  public record Offcut(String size, Length length, int count) {}
}
