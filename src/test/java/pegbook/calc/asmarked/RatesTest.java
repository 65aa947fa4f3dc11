package pegbook.calc.asmarked;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Verdict;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/**
 * How often the judgement is right, over simulated fields with fixed seeds: eight supports on a
 * circle of 5 m and a pier, 23 distances, an ordinary tape. Bounds are three standard deviations of
 * a binomial number. What was measured is written to {@code target/as-marked-rates.txt}.
 */
class RatesTest {
  private static final int FIELDS = 2000;
  private static final int FEWER = 400;
  private static final List<String> MEASURED = new ArrayList<>();

  private static final List<Pair> TAPES = tapes();

  private static List<Pair> tapes() {
    List<String> ring = IntStream.rangeClosed(1, 8).mapToObj(i -> "S" + i).toList();
    List<Pair> pairs = new ArrayList<>(MarkedField.ring(ring, 1, 2, 4));
    List.of("S1", "S3", "S6").forEach(mark -> pairs.add(new Pair("P1", mark)));
    return pairs;
  }

  @AfterAll
  static void write() throws IOException {
    Files.writeString(
        Path.of("target", "as-marked-rates.txt"), String.join("\n", MEASURED) + "\n", UTF_8);
  }

  private static List<AsMarked> fields(int count, long seed, Consumer<MarkedField> spoil) {
    List<AsMarked> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      LayoutJob layout =
          LayoutJob.of(new Outline.Regular(8, new Length(5)))
              .named("S1", "S4")
              .pier("P1", 0.2, -0.1);
      MarkedField field = new MarkedField(layout, "S1", "S4", seed + i);
      spoil.accept(field);
      all.add(field.calculate());
    }
    return all;
  }

  private static double share(String what, List<AsMarked> fields, Predicate<AsMarked> which) {
    double share = (double) fields.stream().filter(which).count() / fields.size();
    MEASURED.add(String.format(Locale.ROOT, "%-64s %.4f of %d", what, share, fields.size()));
    return share;
  }

  private static double band(double rate, int count) {
    return 3 * Math.sqrt(rate * (1 - rate) / count);
  }

  private static boolean isNamed(AsMarked found) {
    return found.verdict() == Verdict.MARK_MOVED || found.verdict() == Verdict.READING_WRONG;
  }

  private static boolean isNamed(AsMarked found, String name) {
    return isNamed(found) && found.suspects().get(0).name().equals(name);
  }

  @Test
  @Tag("long")
  void withNothingWrongAlarmsAreAsRareAsTheirLevel() {
    List<AsMarked> fields = fields(FIELDS, 1, field -> field.tape(TAPES));
    double sum =
        share(
            "nothing wrong: sum of squares beyond its limit (level 0.025)",
            fields,
            found -> found.test().orElseThrow().squares() > found.test().orElseThrow().limit());
    assertThat(sum).isCloseTo(TestLevels.HALF, within(band(TestLevels.HALF, FIELDS)));
    double alarm =
        share(
            "nothing wrong: alarm, all tests (level at most 0.05)",
            fields,
            found -> found.test().orElseThrow().alarm());
    assertThat(alarm)
        .isLessThan(TestLevels.ALARM + band(TestLevels.ALARM, FIELDS))
        .isGreaterThan(TestLevels.HALF - band(TestLevels.HALF, FIELDS));
    double named = share("nothing wrong: something named", fields, RatesTest::isNamed);
    assertThat(named).isLessThan(0.01 + band(0.01, FIELDS));
    double beyond =
        fields.stream()
            .flatMap(found -> found.rows().stream())
            .mapToDouble(row -> row.isBeyond() ? 1 : 0)
            .average()
            .orElseThrow();
    MEASURED.add(
        String.format(Locale.ROOT, "nothing wrong: readings beyond their limit %.4f", beyond));
    // Readings of one field hang together through their marks: half as many count as independent.
    assertThat(beyond)
        .isCloseTo(TestLevels.READING, within(band(TestLevels.READING, FIELDS * 23 / 2)));
  }

  @Test
  @Tag("long")
  void aMovedMarkIsFoundOrNothingIsNamed() {
    double[] millimetres = {6, 10, 15, 20, 40, 300};
    double[] leastAlarms = {0.15, 0.7, 0.98, 1, 1, 1};
    double[] leastNamed = {0.05, 0.45, 0.9, 0.96, 0.96, 0.96};
    for (int i = 0; i < millimetres.length; i++) {
      double metres = millimetres[i] / 1000;
      Random random = new Random(99);
      List<AsMarked> fields =
          fields(
              FEWER,
              10_000,
              field -> {
                double azimuth = random.nextDouble() * 2 * Math.PI;
                field
                    .move("S6", metres * Math.sin(azimuth), metres * Math.cos(azimuth))
                    .tape(TAPES);
              });
      String what = String.format(Locale.ROOT, "S6 moved %.0f mm: ", millimetres[i]);
      assertThat(share(what + "alarm", fields, found -> found.test().orElseThrow().alarm()))
          .as(what)
          .isGreaterThanOrEqualTo(leastAlarms[i]);
      assertThat(share(what + "S6 named", fields, found -> isNamed(found, "S6")))
          .as(what)
          .isGreaterThanOrEqualTo(leastNamed[i]);
      assertThat(
              share(
                  what + "another named", fields, found -> isNamed(found) && !isNamed(found, "S6")))
          .as(what)
          .isLessThanOrEqualTo(0.02);
    }
  }

  @Test
  @Tag("long")
  void aWrongReadingIsFoundOrNothingIsNamed() {
    double[] millimetres = {6, 10, 15, 25, 300};
    double[] leastAlarms = {0.2, 0.75, 0.98, 1, 1};
    double[] leastNamed = {0.05, 0.5, 0.93, 0.96, 0.96};
    for (int i = 0; i < millimetres.length; i++) {
      Length error = Length.ofMillimetres(millimetres[i]);
      int[] wrong = new int[FEWER];
      Random random = new Random(98);
      List<Integer> next = new ArrayList<>();
      List<AsMarked> fields =
          fields(
              FEWER,
              20_000,
              field -> {
                int reading = random.nextInt(TAPES.size() - 3);
                wrong[next.size()] = reading;
                next.add(reading);
                field.tape(TAPES).misread(reading, error);
              });
      String what = String.format(Locale.ROOT, "a reading %.0f mm too long: ", millimetres[i]);
      assertThat(share(what + "alarm", fields, found -> found.test().orElseThrow().alarm()))
          .as(what)
          .isGreaterThanOrEqualTo(leastAlarms[i]);
      Predicate<AsMarked> right =
          found -> isNamed(found, TAPES.get(wrong[fields.indexOf(found)]).name());
      assertThat(share(what + "it is named", fields, right))
          .as(what)
          .isGreaterThanOrEqualTo(leastNamed[i]);
      assertThat(
              share(what + "another named", fields, found -> isNamed(found) && !right.test(found)))
          .as(what)
          .isLessThanOrEqualTo(0.02);
    }
  }
}
