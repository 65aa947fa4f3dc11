package pegbook.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static pegbook.cutting.Problems.endless;
import static pegbook.cutting.Problems.some;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import pegbook.cutting.CuttingPlan.AlikeBars;
import pegbook.cutting.CuttingProblem.Piece;
import pegbook.cutting.CuttingProblem.Stock;
import pegbook.testing.Chance;

class CuttingSolverTest {
  @Provide
  Arbitrary<List<Integer>> few() {
    return Arbitraries.integers().between(5, 60).list().ofMinSize(1).ofMaxSize(8);
  }

  @Provide
  Arbitrary<List<Integer>> some60() {
    return Arbitraries.integers().between(12, 60).list().ofMinSize(1).ofMaxSize(30);
  }

  @Property(tries = 200, seed = Chance.SEED)
  void isAsCheapAsTheBestOfAllPlans(
      @ForAll("few") List<Integer> lengths, @ForAll @LongRange(min = 0, max = 4) long kerf) {
    CuttingProblem problem =
        Problems.of(lengths, endless(70, 9), endless(100, 12), some(40, 0, 1), some(61, 2, 2))
            .withKerf(kerf);
    CuttingPlan plan = CuttingSolver.solve(problem);
    long[] best = bestOfAll(problem);
    assertThat(plan.cost()).isEqualTo(best[0]);
    assertThat(plan.count()).isEqualTo((int) best[1]);
    assertThat(plan.isBest()).isTrue();
  }

  /** Least cost and bars over every way to share the pieces out, by subsets. */
  private static long[] bestOfAll(CuttingProblem problem) {
    List<Long> lengths = new ArrayList<>();
    problem.pieces().forEach(p -> lengths.addAll(Collections.nCopies(p.count(), p.length())));
    int[] limits = problem.stock().stream().mapToInt(s -> s.limit().orElse(8)).toArray();
    return best(problem, lengths, (1 << lengths.size()) - 1, limits, new HashMap<>());
  }

  private static long[] best(
      CuttingProblem problem,
      List<Long> lengths,
      int left,
      int[] limits,
      Map<String, long[]> known) {
    if (left == 0) {
      return new long[] {0, 0};
    }
    String key = left + " " + limits[2] + " " + limits[3];
    long[] found = known.get(key);
    if (found != null) {
      return found;
    }
    long[] best = {Long.MAX_VALUE, Long.MAX_VALUE};
    int first = Integer.lowestOneBit(left);
    for (int some = left; some > 0; some = (some - 1) & left) {
      long used = length(lengths, some);
      for (int s = 0; (some & first) != 0 && s < limits.length; s++) {
        Stock stock = problem.stock().get(s);
        if (used <= stock.length() && limits[s] > 0) {
          limits[s]--;
          long[] rest = best(problem, lengths, left & ~some, limits, known);
          limits[s]++;
          long cost = rest[0] + stock.cost();
          if (cost < best[0] || (cost == best[0] && rest[1] + 1 < best[1])) {
            best = new long[] {cost, rest[1] + 1};
          }
        }
      }
    }
    known.put(key, best);
    return best;
  }

  private static long length(List<Long> lengths, int some) {
    long length = 0;
    for (int i = 0; i < lengths.size(); i++) {
      length += (some >> i & 1) * lengths.get(i);
    }
    return length;
  }

  @Property(tries = 60, seed = Chance.SEED)
  void givesEveryPieceOnceAndNeverCostsMoreThanFirstFit(
      @ForAll("some60") List<Integer> lengths, @ForAll @LongRange(min = 0, max = 3) long kerf) {
    CuttingProblem bare =
        Problems.of(lengths, endless(97, 900), endless(120, 1130), some(50, 0, 2));
    CuttingPlan plan = CuttingSolver.solve(bare.withKerf(kerf));
    int[] given = new int[bare.pieces().size()];
    for (AlikeBars bar : plan.bars()) {
      long used = -kerf;
      for (int kind = 0; kind < given.length; kind++) {
        int count = bar.counts().get(kind);
        given[kind] += bar.times() * count;
        used += count * (bare.pieces().get(kind).length() + kerf);
      }
      assertThat(used).isLessThanOrEqualTo(bare.stock().get(bar.stock()).length());
    }
    assertThat(given).containsExactly(bare.pieces().stream().mapToInt(Piece::count).toArray());
    assertThat(plan.cost()).isLessThanOrEqualTo(firstFit(lengths, kerf, 97) * 900);
    assertThat(plan.cost()).isLessThanOrEqualTo(firstFit(lengths, kerf, 120) * 1130);
    assertThat(plan.cost()).isGreaterThanOrEqualTo(plan.leastCost());
  }

  /** Bars of one length, pieces in the order they come, as a helper would begin. */
  private static long firstFit(List<Integer> lengths, long kerf, long stock) {
    List<Long> left = new ArrayList<>();
    for (int length : lengths) {
      int bar = 0;
      while (bar < left.size() && left.get(bar) < length + kerf) {
        bar++;
      }
      if (bar == left.size()) {
        left.add(stock + kerf);
      }
      left.set(bar, left.get(bar) - length - kerf);
    }
    return left.size();
  }

  @Property(tries = 20, seed = Chance.SEED)
  void givesTheSamePlanInWhateverOrderPiecesCome(
      @ForAll("some60") List<Integer> lengths, @ForAll long seed) {
    CuttingProblem problem = Problems.of(lengths, endless(97, 900), endless(120, 1130));
    List<Piece> shuffled = new ArrayList<>(problem.pieces());
    Collections.shuffle(shuffled, new Random(seed));
    CuttingPlan plan = CuttingSolver.solve(problem);
    CuttingPlan other = CuttingSolver.solve(new CuttingProblem(shuffled, problem.stock()));
    assertThat(other.cost()).isEqualTo(plan.cost());
    assertThat(other.count()).isEqualTo(plan.count());
    assertThat(byLength(other, shuffled)).isEqualTo(byLength(plan, problem.pieces()));
  }

  private static List<String> byLength(CuttingPlan plan, List<Piece> pieces) {
    return plan.bars().stream()
        .map(
            bar -> {
              List<String> counts = new ArrayList<>();
              for (int kind = 0; kind < pieces.size(); kind++) {
                counts.add(pieces.get(kind).length() + ":" + bar.counts().get(kind));
              }
              Collections.sort(counts);
              return bar.times() + " of " + bar.stock() + counts;
            })
        .toList();
  }

  /** Lengths in finest steps that have no large unit in common are set to coarser ones. */
  @Test
  void holdsItsBoundWhereSumsAreTooMany() {
    Random random = new Random(3);
    List<Integer> lengths = random.ints(40, 50_000_000, 400_000_000).boxed().toList();
    CuttingPlan plan = CuttingSolver.solve(Problems.of(lengths, endless(1_000_000_007, 11)));
    long material = lengths.stream().mapToLong(Integer::longValue).sum();
    assertThat(plan.leastCost()).isGreaterThanOrEqualTo(11 * (material / 1_000_000_007 + 1));
    assertThat(plan.cost()).isBetween(plan.leastCost(), plan.leastCost() + 11);
  }

  /** The dearer bar is the cheaper plan: 2 × 60 fit on 120 and only one on 100. */
  @Test
  void takesTheStockThatIsCheaperInAll() {
    CuttingPlan plan =
        CuttingSolver.solve(
            new CuttingProblem(
                List.of(new Piece(60, 5)), List.of(endless(100, 1000), endless(120, 1300))));
    assertThat(plan.cost()).isEqualTo(2 * 1300 + 1000);
    assertThat(plan.bars())
        .containsExactly(new AlikeBars(0, List.of(1), 1), new AlikeBars(1, List.of(2), 2));
  }

  @Test
  void refusesAPieceThatNoStockHolds() {
    assertThatThrownBy(
            () -> new CuttingProblem(List.of(new Piece(130, 1)), List.of(endless(100, 1))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
