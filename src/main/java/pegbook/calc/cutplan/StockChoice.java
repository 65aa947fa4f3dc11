package pegbook.calc.cutplan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pegbook.cutting.CuttingProblem;
import pegbook.figures.StockKind;
import pegbook.job.Frame;
import pegbook.job.Job;
import pegbook.job.Stock;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.measure.UnitSystem;
import pegbook.published.TimberSize;

/**
 * What one size may be cut from.
 *
 * @param rows what lies in the shed, then what is bought, each longest first
 * @param isUsual the job names no length of it: usual ones are taken; bars and boards always have a
 *     length of the job's or one that is listed among its defaults
 */
record StockChoice(List<Row> rows, boolean isUsual) {
  /**
   * A kind of stock.
   *
   * @param length of a bar
   * @param isFromShed an offcut
   * @param price of one, where known
   * @param limit how many there are; empty: as many as wanted
   * @param isBeyond bars that the job does not list: more than it says can be had
   */
  record Row(
      Length length,
      boolean isFromShed,
      Optional<Money> price,
      Optional<Integer> limit,
      boolean isBeyond) {}

  StockChoice {
    rows = List.copyOf(rows);
  }

  static StockChoice of(Job job, String size) {
    Stock stock = job.stock();
    List<Row> rows = new ArrayList<>();
    stock
        .listed(size)
        .forEach(bar -> rows.add(new Row(bar.length(), false, bar.price(), bar.count(), false)));
    StockKind kind = StockKind.of(size);
    boolean isUsual = rows.isEmpty() && (kind == StockKind.TIMBER || kind == StockKind.CONDUIT);
    if (rows.isEmpty()) {
      usual(job, size)
          .forEach(
              length ->
                  rows.add(new Row(length, false, Optional.empty(), Optional.empty(), false)));
    }
    Row longestSold = rows.stream().max(Comparator.comparing(Row::length)).orElseThrow();
    stock.offcuts().stream()
        .filter(offcut -> offcut.size().equals(size))
        .forEach(
            offcut ->
                rows.add(
                    new Row(
                        offcut.length(),
                        true,
                        Optional.empty(),
                        Optional.of(offcut.count()),
                        false)));
    Length longest = rows.stream().map(Row::length).max(Comparator.naturalOrder()).orElseThrow();
    boolean isEndless =
        rows.stream().anyMatch(row -> row.limit().isEmpty() && !row.length().isLessThan(longest));
    if (!isEndless) {
      Optional<Money> price =
          longestSold.length().equals(longest) ? longestSold.price() : Optional.empty();
      rows.add(new Row(longest, false, price, Optional.empty(), true));
    }
    rows.sort(
        Comparator.comparing((Row row) -> !row.isFromShed())
            .thenComparing(Row::length, Comparator.reverseOrder())
            .thenComparing(Row::isBeyond));
    return new StockChoice(rows, isUsual);
  }

  /** What is taken where nothing is listed of a size. */
  private static List<Length> usual(Job job, String size) {
    return switch (StockKind.of(size)) {
      case BAR -> List.of(job.stock().length());
      case TIMBER -> Stock.usualTimber(TimberSize.find(size).orElseThrow().units());
      case CONDUIT -> Stock.usualConduit(job.heading().units() == UnitSystem.IMPERIAL);
      case BOARD -> job.boards().map(Frame.Boards::sold).stream().toList();
    };
  }

  /** The lengths that are taken unlisted, shortest first. */
  List<Length> usual() {
    return isUsual
        ? rows.stream()
            .filter(row -> !row.isFromShed())
            .map(Row::length)
            .distinct()
            .sorted()
            .toList()
        : List.of();
  }

  Length longest() {
    return rows.stream().map(Row::length).reduce(Length.ZERO, Length::max);
  }

  /**
   * The stock for the search.
   *
   * @param pieces how many pieces there are
   */
  List<CuttingProblem.Stock> forSearch(int pieces) {
    long dearest = rows.stream().mapToLong(StockChoice::cost).max().orElse(0);
    long beyond = (dearest + 1) * (pieces + 1);
    return rows.stream()
        .map(
            row ->
                new CuttingProblem.Stock(
                    CutUnits.of(row.length()),
                    row.isBeyond() ? beyond : cost(row),
                    row.limit().map(OptionalInt::of).orElse(OptionalInt.empty())))
        .toList();
  }

  /** Hundredths of the currency; without prices, millimetres bought. */
  private static long cost(Row row) {
    if (row.isFromShed()) {
      return 0;
    }
    return row.price()
        .map(price -> price.amount().multiply(BigDecimal.valueOf(100)).longValueExact())
        .orElseGet(() -> Math.round(row.length().millimetres()));
  }
}
