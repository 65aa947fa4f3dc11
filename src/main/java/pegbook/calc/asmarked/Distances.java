package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.asmarked.AsMarked.Doubled;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.figures.TapeAccuracy;
import pegbook.job.Field.Taped;
import pegbook.measure.Length;

/**
 * The job's readings, one for each distance.
 *
 * @param good the distances that count
 * @param doubled those whose readings disagree
 */
record Distances(List<Distance> good, List<Doubled> doubled) {
  /** Distances and marks closer than this count as on each other. */
  private static final double TIE_METRES = 1e-9;

  Distances {
    good = List.copyOf(good);
    doubled = List.copyOf(doubled);
  }

  /**
   * One distance.
   *
   * @param pair its marks
   * @param taped the mean of its readings
   * @param readings how many
   * @param deviation standard deviation of the mean
   */
  record Distance(Pair pair, Length taped, int readings, Length deviation) {}

  /** Puts readings of one distance together, whichever way round they were written. */
  static Distances of(List<Taped> readings, TapeAccuracy accuracy) {
    Map<String, List<Taped>> byPair = new LinkedHashMap<>();
    for (Taped reading : readings) {
      boolean inOrder = reading.from().compareTo(reading.to()) < 0;
      String key =
          inOrder ? reading.from() + " " + reading.to() : reading.to() + " " + reading.from();
      byPair.computeIfAbsent(key, none -> new ArrayList<>()).add(reading);
    }
    List<Distance> good = new ArrayList<>();
    List<Doubled> doubled = new ArrayList<>();
    byPair
        .values()
        .forEach(
            same -> {
              Length limit = limit(accuracy);
              Length least = same.stream().map(Taped::tape).reduce(Length::min).orElseThrow();
              Length most = same.stream().map(Taped::tape).reduce(Length::max).orElseThrow();
              Pair pair = new Pair(same.get(0).from(), same.get(0).to());
              if (most.minus(least).metres() > limit.metres() + TIE_METRES) {
                doubled.add(new Doubled(pair, least, most, limit));
              } else {
                good.add(mean(pair, same, accuracy));
              }
            });
    return new Distances(good, doubled);
  }

  /** By how much two readings of a distance may differ; the tape's own error is in both alike. */
  private static Length limit(TapeAccuracy accuracy) {
    double hand = StrictMath.hypot(accuracy.reading().metres(), rounding(accuracy));
    Length spread = new Length(TestLevels.readingFactor() * Math.sqrt(2) * hand);
    // One division more is nobody's mistake.
    return spread.max(accuracy.division());
  }

  private static double rounding(TapeAccuracy accuracy) {
    return accuracy.roundingSigma().metres();
  }

  /** Reading and rounding average out; the tape's own error does not. */
  private static Distance mean(Pair pair, List<Taped> same, TapeAccuracy accuracy) {
    double sum = same.stream().mapToDouble(taped -> taped.tape().metres()).sum();
    Length mean = new Length(sum / same.size());
    double reading = accuracy.reading().metres();
    double tape = accuracy.tapeSigma(mean).metres();
    double rounding = rounding(accuracy);
    double hand = (reading * reading + rounding * rounding) / same.size();
    return new Distance(pair, mean, same.size(), new Length(Math.sqrt(hand + tape * tape)));
  }
}
