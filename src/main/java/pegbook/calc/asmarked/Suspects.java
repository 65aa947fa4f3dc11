package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.geometry.network.Chances;
import pegbook.geometry.network.Shift;
import pegbook.geometry.network.Suppositions;
import pegbook.measure.Length;

/**
 * Every supposition that one thing alone is wrong: one mark elsewhere, one reading misread.
 *
 * <p>They are ranked by how much of the weighted sum of squares they explain, less a cost for each
 * quantity that they may choose, so that a mark, which may go two ways, must explain more than a
 * reading.
 */
final class Suspects {
  private final Suppositions suppositions;
  private final List<Distances.Distance> distances;

  Suspects(Suppositions suppositions, List<Distances.Distance> distances) {
    this.suppositions = suppositions;
    this.distances = distances;
  }

  /** All of them, best first. */
  List<Suspect> ranked() {
    List<Suspect> all = new ArrayList<>();
    for (String name : suppositions.names()) {
      Shift shift = suppositions.elsewhere(name);
      if (shift.seen() > 0) {
        all.add(mark(name, shift));
      }
    }
    for (int i = 0; i < distances.size(); i++) {
      all.add(reading(distances.get(i).pair(), suppositions.misread(i)));
    }
    all.sort(Comparator.comparingDouble(Suspects::worth).reversed());
    double best = all.isEmpty() ? 0 : worth(all.get(0));
    return all.stream().map(suspect -> behind(suspect, best - worth(suspect))).toList();
  }

  /** What it explains less what it costs. */
  private static double worth(Suspect suspect) {
    return suspect.fall() - TestLevels.COST * suspect.quantities();
  }

  private Suspect mark(String name, Shift shift) {
    double metres = StrictMath.hypot(shift.eastMetres(), shift.northMetres());
    Length deviation = shift.spread().map(spread -> spread.longHalfAxis()).orElse(Length.ZERO);
    return suspect(Optional.of(name), Optional.empty(), shift, new Length(metres), deviation);
  }

  private Suspect reading(Pair pair, Suppositions.Misreading misreading) {
    return suspect(
        Optional.empty(),
        Optional.of(pair),
        new Shift(0, 0, 1, Optional.empty(), misreading.fall()),
        new Length(misreading.errorMetres()),
        new Length(misreading.deviationMetres()));
  }

  private Suspect suspect(
      Optional<String> mark, Optional<Pair> pair, Shift shift, Length size, Length deviation) {
    return new Suspect(
        mark,
        pair,
        shift.seen(),
        shift.eastMetres(),
        shift.northMetres(),
        size,
        deviation,
        shift.fall(),
        Math.max(0, suppositions.weightedSquares() - shift.fall()),
        TestLevels.leftLimit(distances.size() - shift.seen()),
        0);
  }

  private static Suspect behind(Suspect suspect, double lead) {
    return new Suspect(
        suspect.mark(),
        suspect.reading(),
        suspect.quantities(),
        suspect.eastMetres(),
        suspect.northMetres(),
        suspect.size(),
        suspect.deviation(),
        suspect.fall(),
        suspect.left(),
        suspect.leftLimit(),
        lead);
  }

  /** The supposition that stands out most against what chance lets the best of so many explain. */
  static Suspect outstanding(List<Suspect> suspects) {
    return suspects.stream()
        .max(Comparator.comparingDouble(suspect -> suspect.fall() - chanceLimit(suspect, suspects)))
        .orElseThrow();
  }

  /** What the best of so many suppositions explains by chance, but for the level. */
  static double chanceLimit(Suspect suspect, List<Suspect> suspects) {
    return Chances.chiSquaredQuantile(1 - TestLevels.HALF / suspects.size(), suspect.quantities());
  }
}
