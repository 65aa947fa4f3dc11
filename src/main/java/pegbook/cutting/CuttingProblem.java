package pegbook.cutting;

import java.util.List;
import java.util.OptionalInt;

/**
 * What is cut from what, in whole units of length and of money.
 *
 * @param pieces kinds of pieces, each length once
 * @param stock kinds of stock; every piece is no longer than the longest that is not limited
 */
public record CuttingProblem(List<Piece> pieces, List<Stock> stock) {
  /** Costs and bars go into one number, which leaves so much for both. */
  private static final long LARGEST = 1_000_000_000_000_000L;

  /**
   * A kind of piece.
   *
   * @param length above zero
   * @param count how many, at least one
   */
  public record Piece(long length, int count) {}

  /**
   * A kind of stock.
   *
   * @param length of a bar
   * @param cost of a bar, not below zero
   * @param limit how many there are; empty: as many as wanted
   */
  public record Stock(long length, long cost, OptionalInt limit) {}

  public CuttingProblem {
    pieces = List.copyOf(pieces);
    stock = List.copyOf(stock);
    long endless =
        stock.stream().filter(s -> s.limit().isEmpty()).mapToLong(Stock::length).max().orElse(0);
    require(!pieces.isEmpty() && pieces.size() <= 2000, "no pieces, or too many kinds");
    require(
        pieces.stream().allMatch(p -> p.length() > 0 && p.length() <= endless && p.count() > 0),
        "a piece that no unlimited stock holds");
    require(
        pieces.stream().map(Piece::length).distinct().count() == pieces.size(),
        "a length that comes twice");
    require(stock.stream().allMatch(s -> s.cost() >= 0 && s.length() > 0), "stock below zero");
    long bars = pieces.stream().mapToLong(Piece::count).sum();
    long dearest = stock.stream().mapToLong(Stock::cost).max().orElse(0);
    require(bars <= 100_000 && dearest < LARGEST / ((bars + 1) * (bars + 1)), "costs too large");
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException(otherwise);
    }
  }

  /**
   * The same with what a saw takes: a bar of length L gives n pieces when their lengths and n − 1
   * cuts are no longer than L, which is when each piece longer by the cut fits into L and one cut.
   *
   * @param kerf what one cut takes
   */
  public CuttingProblem withKerf(long kerf) {
    return new CuttingProblem(
        pieces.stream().map(p -> new Piece(p.length() + kerf, p.count())).toList(),
        stock.stream().map(s -> new Stock(s.length() + kerf, s.cost(), s.limit())).toList());
  }
}
