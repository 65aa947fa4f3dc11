package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pegbook.measure.Length;

/**
 * Chooses the places to tape from.
 *
 * <p>Of places that see every mark, all threes are looked at. The best has the smallest worst
 * spread: of each mark's best two places, and, at a quarter of the weight, of its second best two,
 * so that the third peg is a good check and one peg may be lost. Where no three see every mark, or
 * some mark is crossed too weakly from them, places are added one by one, each time the one that
 * gives the most marks what they lack.
 *
 * @param places chosen, indices into the sightings
 * @param allSeen true when three of them or more see every mark
 * @param cost of the worst mark, metres; for comparison of threes only
 */
record PegChoice(List<Integer> places, boolean allSeen, double cost) {
  static final int WANTED = 3;
  private static final int MOST = 9;
  private static final double SECOND_WEIGHT = 0.25;

  /** A second best crossing counts at most this many times the best. */
  private static final double SECOND_MOST = 10;

  private static final double ALIKE = 1e-9;

  PegChoice {
    places = List.copyOf(places);
  }

  static PegChoice of(Sightings sightings, Length apart) {
    PegChoice three = three(sightings, apart);
    return three.allSeen && three.isStrong(sightings)
        ? three
        : oneByOne(sightings, apart, three.places);
  }

  /** The best three that see every mark; none of them when there are no three. */
  static PegChoice three(Sightings sightings, Length apart) {
    List<Integer> all = new ArrayList<>();
    for (int place = 0; place < sightings.places(); place++) {
      if (sightings.seesAll(place)) {
        all.add(place);
      }
    }
    double[][][] spreads = spreads(sightings, all);
    PegChoice best = new PegChoice(List.of(), false, Double.POSITIVE_INFINITY);
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        if (!areApart(sightings, all.get(i), all.get(j), apart)) {
          continue;
        }
        for (int k = j + 1; k < all.size(); k++) {
          double limit = best.cost * (1 - ALIKE);
          double cost = worst(spreads[i][j], spreads[i][k], spreads[j][k], limit);
          if (cost < limit
              && areApart(sightings, all.get(i), all.get(k), apart)
              && areApart(sightings, all.get(j), all.get(k), apart)) {
            best = new PegChoice(List.of(all.get(i), all.get(j), all.get(k)), true, cost);
          }
        }
      }
    }
    return best;
  }

  private static double[][][] spreads(Sightings sightings, List<Integer> all) {
    double[][][] spreads = new double[all.size()][all.size()][];
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        spreads[i][j] = new double[sightings.marks()];
        for (int mark = 0; mark < sightings.marks(); mark++) {
          spreads[i][j][mark] = sightings.spread(all.get(i), all.get(j), mark);
        }
      }
    }
    return spreads;
  }

  /** The worst mark of three places; stops looking once a limit is passed. */
  private static double worst(double[] one, double[] two, double[] three, double limit) {
    double worst = 0;
    for (int mark = 0; mark < one.length && worst < limit; mark++) {
      double least = Math.min(one[mark], Math.min(two[mark], three[mark]));
      double more = Math.max(one[mark], two[mark]);
      double middle = Math.max(Math.min(one[mark], two[mark]), Math.min(more, three[mark]));
      double second = Math.min(middle, SECOND_MOST * least);
      worst = Math.max(worst, least + SECOND_WEIGHT * second);
    }
    return worst;
  }

  private static boolean areApart(Sightings sightings, int one, int other, Length apart) {
    return !sightings.place(one).distanceTo(sightings.place(other)).isLessThan(apart);
  }

  private boolean isStrong(Sightings sightings) {
    return IntStream.range(0, sightings.marks())
        .allMatch(mark -> isCrossed(sightings, places, mark));
  }

  private static PegChoice oneByOne(Sightings sightings, Length apart, List<Integer> first) {
    List<Integer> chosen = new ArrayList<>(first);
    while (chosen.size() < MOST) {
      int best = -1;
      double most = 1e-6;
      for (int place = 0; place < sightings.places(); place++) {
        double gain = isFree(sightings, chosen, place, apart) ? gain(sightings, chosen, place) : 0;
        if (gain > most + 1e-6) {
          most = gain;
          best = place;
        }
      }
      if (best < 0) {
        break;
      }
      chosen.add(best);
    }
    long seeingAll = chosen.stream().filter(sightings::seesAll).count();
    return new PegChoice(chosen, seeingAll >= WANTED, Double.POSITIVE_INFINITY);
  }

  private static boolean isFree(
      Sightings sightings, List<Integer> chosen, int place, Length apart) {
    return chosen.stream().allMatch(other -> areApart(sightings, place, other, apart));
  }

  /** What a further place gives: a first, second or third tape, a good crossing. */
  private static double gain(Sightings sightings, List<Integer> chosen, int place) {
    double gain = 0;
    for (int mark = 0; mark < sightings.marks(); mark++) {
      if (!sightings.sees(place, mark)) {
        continue;
      }
      int at = mark;
      List<Integer> there = chosen.stream().filter(other -> sightings.sees(other, at)).toList();
      boolean crosses = there.stream().anyMatch(other -> !sightings.isWeak(place, other, at));
      gain += there.size() < WANTED ? 1 : 0;
      gain += !isCrossed(sightings, there, at) && crosses ? 2 : 0;
    }
    return gain;
  }

  private static boolean isCrossed(Sightings sightings, List<Integer> there, int mark) {
    for (int i = 0; i < there.size(); i++) {
      for (int j = i + 1; j < there.size(); j++) {
        if (!sightings.isWeak(there.get(i), there.get(j), mark)) {
          return true;
        }
      }
    }
    return false;
  }
}
