package pegbook.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The plan that everybody finds: longest pieces first, each from the first bar that still holds it.
 * With several stocks, each in turn is the one that a new bar comes from; the lightest plan is
 * taken. It is where the search starts, never its answer by itself.
 */
final class FirstFit {
  private final Instance instance;

  FirstFit(Instance instance) {
    this.instance = instance;
  }

  List<Pattern> plan() {
    List<Pattern> best = List.of();
    for (int stock = 0; stock < instance.stocks(); stock++) {
      List<Pattern> plan = lightest(plan(stock));
      if (best.isEmpty() || instance.weightOf(plan) < instance.weightOf(best)) {
        best = plan;
      }
    }
    return best;
  }

  private static final class Bar {
    private final int stock;
    private final int[] counts;
    private long left;

    private Bar(int stock, long left, int kinds) {
      this.stock = stock;
      this.left = left;
      this.counts = new int[kinds];
    }
  }

  private List<Pattern> plan(int preferred) {
    int[] limit = instance.limit.clone();
    List<Bar> bars = new ArrayList<>();
    for (int kind = 0; kind < instance.kinds(); kind++) {
      long length = instance.length[kind];
      for (int i = 0; i < instance.count[kind]; i++) {
        Bar bar =
            bars.stream()
                .filter(open -> open.left >= length)
                .findFirst()
                .orElseGet(() -> newBar(bars, preferred, length, limit));
        bar.left -= length;
        bar.counts[kind]++;
      }
    }
    return bars.stream().map(bar -> new Pattern(bar.stock, bar.counts)).toList();
  }

  private Bar newBar(List<Bar> bars, int preferred, long length, int[] limit) {
    int stock =
        holding(length, limit)
            .filter(s -> instance.isLimited(s) || s == preferred)
            .boxed()
            .min(
                Comparator.comparingLong(s -> s == preferred ? Long.MAX_VALUE : instance.weight[s]))
            .orElseGet(() -> lightestHolding(length, limit));
    limit[stock]--;
    Bar bar = new Bar(stock, instance.size[stock], instance.kinds());
    bars.add(bar);
    return bar;
  }

  private IntStream holding(long length, int[] limit) {
    return IntStream.range(0, instance.stocks())
        .filter(stock -> limit[stock] > 0 && instance.size[stock] >= length);
  }

  private int lightestHolding(long length, int[] limit) {
    return holding(length, limit)
        .boxed()
        .min(Comparator.comparingLong(stock -> instance.weight[stock]))
        .orElseThrow(() -> new IllegalStateException("no stock holds " + length));
  }

  /** The same pieces on the lightest stock that holds them. */
  List<Pattern> lightest(List<Pattern> plan) {
    int[] limit = instance.limit.clone();
    plan.forEach(pattern -> limit[pattern.stock()]--);
    List<Pattern> lighter = new ArrayList<>();
    for (Pattern pattern : plan) {
      long used = instance.used(pattern.counts());
      Optional<Integer> other =
          holding(used, limit).boxed().min(Comparator.comparingLong(s -> instance.weight[s]));
      if (other.isPresent() && instance.weight[other.get()] < instance.weight[pattern.stock()]) {
        limit[other.get()]--;
        limit[pattern.stock()]++;
        lighter.add(pattern.on(other.get()));
      } else {
        lighter.add(pattern);
      }
    }
    return lighter;
  }
}
