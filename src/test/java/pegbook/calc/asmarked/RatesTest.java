package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Reason;
import pegbook.calc.asmarked.AsMarked.Verdict;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/**
 * How often the judgement is right, over simulated fields (fixed seeds). The bounds are those
 * within which a binomial number stays with three standard deviations.
 */
class RatesTest {
  private static final int FIELDS = 2000;

  private static LayoutJob octagon() {
    LayoutJob layout = LayoutJob.of(new Outline.Regular(8, new Length(5))).named("S1", "S4");
    return layout.pier("P1", 0.2, -0.1);
  }

  private static List<Pair> tapes() {
    List<String> ring = IntStream.rangeClosed(1, 8).mapToObj(i -> "S" + i).toList();
    List<Pair> pairs = new ArrayList<>(MarkedField.ring(ring, 1, 2, 4));
    List.of("S1", "S3", "S6").forEach(mark -> pairs.add(new Pair("P1", mark)));
    return pairs;
  }

  private static List<AsMarked> fields(int count, long seed, Consumer<MarkedField> spoil) {
    List<AsMarked> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      MarkedField field = new MarkedField(octagon(), "S1", "S4", seed + i);
      spoil.accept(field);
      all.add(field.calculate());
    }
    return all;
  }

  private static double share(List<AsMarked> fields, java.util.function.Predicate<AsMarked> of) {
    return (double) fields.stream().filter(of).count() / fields.size();
  }

  private static double band(double rate, int count) {
    return 3 * Math.sqrt(rate * (1 - rate) / count);
  }

  private static void print(String what, double rate) {
    System.out.printf(Locale.ROOT, "%-60s %.4f%n", what, rate);
  }

  @Test
  void withNothingWrongTheAlarmIsAsRareAsItsLevelSays() {
    List<AsMarked> fields = fields(FIELDS, 1, field -> field.tape(tapes()));
    double sum =
        share(fields, f -> f.test().orElseThrow().squares() > f.test().orElseThrow().limit());
    double alarm = share(fields, f -> f.test().orElseThrow().alarm());
    double beyond =
        fields.stream()
            .flatMap(f -> f.rows().stream())
            .mapToDouble(r -> r.isBeyond() ? 1 : 0)
            .average()
            .orElseThrow();
    double named =
        share(
            fields, f -> f.verdict() == Verdict.MARK_MOVED || f.verdict() == Verdict.READING_WRONG);
    print("sum of squares beyond its limit, nothing wrong", sum);
    print("alarm, nothing wrong", alarm);
    print("something named, nothing wrong", named);
    print("single readings beyond their limit, nothing wrong", beyond);
    print(
        "mean T/n",
        fields.stream()
            .mapToDouble(f -> f.test().orElseThrow().squares() / f.test().orElseThrow().distances())
            .average()
            .orElseThrow());
    for (double mm : new double[] {4, 6, 8, 10, 12, 15, 20, 30, 100}) {
      Random random = new Random(99);
      List<AsMarked> moved =
          fields(
              500,
              1000,
              field -> {
                double a = random.nextDouble() * 2 * Math.PI;
                field.move("S6", mm / 1000 * Math.sin(a), mm / 1000 * Math.cos(a)).tape(tapes());
              });
      double right =
          share(
              moved,
              f ->
                  f.verdict() == Verdict.MARK_MOVED
                      && f.suspects().get(0).mark().equals(Optional.of("S6")));
      double wrong =
          share(
              moved,
              f ->
                  (f.verdict() == Verdict.MARK_MOVED || f.verdict() == Verdict.READING_WRONG)
                      && !f.suspects().get(0).mark().equals(Optional.of("S6")));
      double al = share(moved, f -> f.test().orElseThrow().alarm());
      print("S6 moved " + mm + ": alarm", al);
      print("   named right", right);
      print("   named wrong", wrong);
      for (Reason r : Reason.values())
        print("   " + r, share(moved, f -> f.reason().equals(Optional.of(r))));
    }
    for (double mm : new double[] {6, 10, 15, 25, 100}) {
      Random random = new Random(98);
      List<AsMarked> moved =
          fields(
              500,
              5000,
              field -> {
                field.tape(tapes()).misread(random.nextInt(20), new Length(mm / 1000));
              });
      print("misread " + mm + ": alarm", share(moved, f -> f.test().orElseThrow().alarm()));
      print("   named reading", share(moved, f -> f.verdict() == Verdict.READING_WRONG));
      print("   named mark", share(moved, f -> f.verdict() == Verdict.MARK_MOVED));
      for (Reason r : Reason.values())
        print("   " + r, share(moved, f -> f.reason().equals(Optional.of(r))));
    }
  }
}
