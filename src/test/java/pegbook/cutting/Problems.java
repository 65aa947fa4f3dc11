package pegbook.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import pegbook.cutting.CuttingProblem.Piece;
import pegbook.cutting.CuttingProblem.Stock;

/** Problems for the tests. */
final class Problems {
  private Problems() {}

  static CuttingProblem of(List<Integer> lengths, Stock... stock) {
    Map<Integer, Integer> counts = new TreeMap<>();
    lengths.forEach(length -> counts.merge(length, 1, Integer::sum));
    List<Piece> pieces = new ArrayList<>();
    counts.forEach((length, count) -> pieces.add(new Piece(length, count)));
    return new CuttingProblem(pieces, List.of(stock));
  }

  static Stock endless(long length, long cost) {
    return new Stock(length, cost, OptionalInt.empty());
  }

  static Stock some(long length, long cost, int limit) {
    return new Stock(length, cost, OptionalInt.of(limit));
  }

  /** Lengths drawn evenly from a range. */
  static List<Integer> uniform(int count, int least, int most, long seed) {
    Random random = new Random(seed);
    return random.ints(count, least, most + 1).boxed().toList();
  }

  /** Three pieces to each bar of 1000 and nothing left: the least is a third of the pieces. */
  static List<Integer> triplets(int bars, long seed) {
    Random random = new Random(seed);
    List<Integer> lengths = new ArrayList<>();
    for (int bar = 0; bar < bars; bar++) {
      int longest = 380 + random.nextInt(111);
      int second = 250 + random.nextInt((1000 - longest) / 2 - 249);
      lengths.addAll(List.of(longest, second, 1000 - longest - second));
    }
    return lengths;
  }
}
