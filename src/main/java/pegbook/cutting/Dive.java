package pegbook.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Goes from parts of bars to whole bars: those that are whole, and those that nearly are, are cut;
 * the rest of the pieces is solved again, and so on; the last few pieces are searched through.
 *
 * <p>Where the rest can no longer meet the weight wanted, fewer bars are cut at once, then others.
 * How often a dive may turn aside after a rest that looked well is limited.
 */
final class Dive {
  /** So few pieces are searched through. */
  private static final int FEW_PIECES = 42;

  /** Single bars tried where cutting several at once does not do. */
  private static final int SINGLE_BARS = 8;

  private static final long STEPS = 400_000;
  private static final double WHOLE = 1 - 1e-6;

  private final Instance instance;
  private final Relaxation relaxation;
  private final double nearly;
  private int turns;

  /**
   * A dive.
   *
   * @param nearly which part of a bar counts as a bar
   * @param turns how often it may turn aside
   */
  Dive(Instance instance, Relaxation relaxation, double nearly, int turns) {
    this.instance = instance;
    this.relaxation = relaxation;
    this.nearly = nearly;
    this.turns = turns;
  }

  /** Pieces and stock that are left, and what they may weigh. */
  private record Rest(List<Integer> wanted, List<Integer> limit, long left) {
    int[] wantedCounts() {
      return wanted.stream().mapToInt(Integer::intValue).toArray();
    }

    int[] limits() {
      return limit.stream().mapToInt(Integer::intValue).toArray();
    }

    Rest without(List<Pattern> bars, Instance instance) {
      int[] after = wantedCounts();
      int[] stock = limits();
      for (Pattern bar : bars) {
        bar.takeFrom(after);
        stock[bar.stock()]--;
      }
      return new Rest(
          Arrays.stream(after).boxed().toList(),
          Arrays.stream(stock).boxed().toList(),
          left - instance.weightOf(bars));
    }
  }

  /** A plan no heavier than said. */
  Optional<List<Pattern>> plan(Relaxation.Outcome parts, long atMost) {
    Rest all =
        new Rest(
            Arrays.stream(instance.count).boxed().toList(),
            Arrays.stream(instance.limit).boxed().toList(),
            atMost);
    return follow(all, parts);
  }

  private Optional<List<Pattern>> follow(Rest rest, Relaxation.Outcome parts) {
    if (rest.wanted().stream().mapToInt(Integer::intValue).sum() <= FEW_PIECES) {
      return new LossSearch(instance, parts.prices(), relaxation.byLength())
          .find(rest.wantedCounts(), rest.limits(), rest.left(), STEPS);
    }
    boolean isFirst = true;
    for (List<Pattern> bars : ways(rest, parts)) {
      Rest after = rest.without(bars, instance);
      Optional<Relaxation.Outcome> next =
          relaxation
              .solve(after.wantedCounts(), after.limits())
              .filter(outcome -> outcome.bound() <= after.left() * instance.scale);
      if (next.isEmpty()) {
        continue;
      }
      if (!isFirst && --turns < 0) {
        break;
      }
      isFirst = false;
      Optional<List<Pattern>> found = follow(after, next.get());
      if (found.isPresent()) {
        List<Pattern> plan = new ArrayList<>(bars);
        plan.addAll(found.get());
        return Optional.of(plan);
      }
    }
    return Optional.empty();
  }

  /** What may be cut next: several bars, half of them, or one. */
  private List<List<Pattern>> ways(Rest rest, Relaxation.Outcome parts) {
    List<Integer> fullest =
        IntStream.range(0, parts.patterns().size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -parts.bars().get(i)))
            .toList();
    List<List<Pattern>> ways = new ArrayList<>();
    List<Pattern> together = together(fullest, rest, parts);
    if (together.size() > 1) {
      ways.add(together);
      ways.add(together.subList(0, together.size() / 2));
    }
    fullest.stream()
        .limit(SINGLE_BARS)
        .filter(i -> parts.bars().get(i) > 1 - WHOLE)
        .map(i -> parts.patterns().get(i))
        .filter(pattern -> rest.limit().get(pattern.stock()) > 0)
        .map(pattern -> pattern.trimmedTo(rest.wantedCounts()))
        .filter(pattern -> !pattern.isEmpty())
        .forEach(pattern -> ways.add(List.of(pattern)));
    return ways;
  }

  private List<Pattern> together(List<Integer> fullest, Rest rest, Relaxation.Outcome parts) {
    int[] wanted = rest.wantedCounts();
    int[] limit = rest.limits();
    List<Pattern> together = new ArrayList<>();
    for (int i : fullest) {
      double bars = parts.bars().get(i);
      long whole = (long) Math.floor(bars + (1 - WHOLE));
      long most = whole + (bars - whole >= nearly ? 1 : 0);
      Pattern pattern = parts.patterns().get(i);
      for (int bar = 0; bar < most && limit[pattern.stock()] > 0; bar++) {
        if (!pattern.isWithin(wanted) || pattern.isEmpty()) {
          break;
        }
        pattern.takeFrom(wanted);
        limit[pattern.stock()]--;
        together.add(pattern);
      }
    }
    return together;
  }
}
