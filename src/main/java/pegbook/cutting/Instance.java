package pegbook.cutting;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import pegbook.cutting.CuttingProblem.Piece;
import pegbook.cutting.CuttingProblem.Stock;

/**
 * A problem made ready for the search: longest pieces first, lengths in the largest unit that keeps
 * them whole, and one weight for each stock, its cost times a number above that of all bars, plus
 * one. The least weight is the least cost, then the fewest bars.
 */
final class Instance {
  /** Kinds of pieces, longest first: their places in the problem. */
  final int[] place;

  final long[] length;
  final int[] count;
  final long[] size;
  final long[] weight;

  /** How many bars there are of a stock; never more than there are pieces. */
  final int[] limit;

  /** Weight of one unit of cost. */
  final long unitCost;

  /** By which weights are multiplied where pieces get a price: no rounding of it matters. */
  final long scale;

  Instance(CuttingProblem problem) {
    List<Piece> pieces = problem.pieces();
    List<Stock> stock = problem.stock();
    place =
        IntStream.range(0, pieces.size())
            .boxed()
            .sorted((a, b) -> Long.compare(pieces.get(b).length(), pieces.get(a).length()))
            .mapToInt(Integer::intValue)
            .toArray();
    long unit =
        LongStream.concat(
                pieces.stream().mapToLong(Piece::length), stock.stream().mapToLong(Stock::length))
            .mapToObj(BigInteger::valueOf)
            .reduce(BigInteger.ZERO, BigInteger::gcd)
            .longValueExact();
    length = Arrays.stream(place).mapToLong(i -> pieces.get(i).length() / unit).toArray();
    count = Arrays.stream(place).map(i -> pieces.get(i).count()).toArray();
    int all = Arrays.stream(count).sum();
    size = stock.stream().mapToLong(s -> s.length() / unit).toArray();
    limit = stock.stream().mapToInt(s -> Math.min(all, s.limit().orElse(all))).toArray();
    unitCost = all + 1L;
    weight = stock.stream().mapToLong(s -> s.cost() * unitCost + 1).toArray();
    long most = Arrays.stream(weight).max().orElse(1) * all;
    scale = Long.highestOneBit((1L << 58) / most);
  }

  int kinds() {
    return length.length;
  }

  int stocks() {
    return size.length;
  }

  /** Whether there are fewer bars of a stock than might be wanted. */
  boolean isLimited(int stock) {
    return limit[stock] < unitCost - 1;
  }

  long used(int[] counts) {
    long used = 0;
    for (int i = 0; i < counts.length; i++) {
      used += counts[i] * length[i];
    }
    return used;
  }

  long weightOf(List<Pattern> patterns) {
    return patterns.stream().mapToLong(pattern -> weight[pattern.stock()]).sum();
  }
}
