package pegbook.calc.asmarked;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Reason;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Together;
import pegbook.calc.asmarked.AsMarked.Verdict;
import pegbook.figures.Finding;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/** Two mistakes planted in made-up fields; the fields know nothing of how they are looked for. */
class TwoMistakesTest {
  private static final List<String> RING =
      IntStream.rangeClosed(1, 8).mapToObj(i -> "S" + i).toList();
  private static final List<Pair> ALL = MarkedField.all(RING);
  private static final int FIELDS = 40;

  private static MarkedField field(int seed) {
    LayoutJob layout = LayoutJob.of(new Outline.Regular(8, new Length(5))).named("S1", "S4");
    return new MarkedField(layout, "S1", "S4", seed);
  }

  private static Set<String> names(AsMarked found) {
    return found.together().stream()
        .flatMap(two -> two.suspects().stream())
        .map(Suspect::name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> ids(AsMarked found) {
    return found.findings().stream().map(Finding::id).toList();
  }

  /** Of forty fields with two moved marks nine in ten name both, and hardly one names others. */
  @Test
  @Tag("long")
  void twoMovedMarksAreFoundTogether() {
    int right = 0;
    int wrong = 0;
    for (int seed = 0; seed < FIELDS; seed++) {
      String one = "S" + (2 + seed % 2);
      String other = "S" + (5 + seed % 4);
      AsMarked found =
          field(seed)
              .move(one, 0.05 * Math.sin(seed), 0.05 * Math.cos(seed))
              .move(other, 0.07 * Math.cos(2.0 * seed), 0.07 * Math.sin(2.0 * seed))
              .tape(ALL)
              .calculate();
      boolean named = found.together().isPresent();
      boolean both = named && names(found).equals(Set.of(one, other));
      right += both ? 1 : 0;
      wrong += named && !both ? 1 : 0;
    }
    assertThat(right).isGreaterThanOrEqualTo(36);
    assertThat(wrong).isLessThanOrEqualTo(1);
  }

  /** Each move is told in size and direction although the other mark is off as well. */
  @Test
  void bothMovesAreTold() {
    AsMarked found = field(13).move("S6", 0.05, 0.02).move("S2", -0.03, 0.06).tape(ALL).calculate();
    Together two = found.together().orElseThrow();
    assertThat(two.kind()).isEqualTo(Together.Kind.TWO);
    assertThat(two.moves()).hasSize(2);
    Suspect six =
        two.suspects().stream().filter(one -> one.name().equals("S6")).findFirst().orElseThrow();
    double off = Math.hypot(six.eastMetres() - 0.05, six.northMetres() - 0.02);
    assertThat(off).isLessThan(4.5 * six.deviation().metres());
    assertThat(ids(found)).containsExactly("as-marked-two");
    assertThat(found.verdict()).isEqualTo(Verdict.UNCLEAR);
    assertThat(found.reason()).contains(Reason.SEVERAL);
  }

  /** A mark that was kicked and a reading that slipped by a foot. */
  @Test
  void aMarkAndAReadingAreFoundTogether() {
    int reading = ALL.indexOf(new Pair("S3", "S7"));
    AsMarked found =
        field(4).move("S5", 0.06, 0).tape(ALL).misread(reading, Length.ofInches(12)).calculate();
    assertThat(names(found)).containsExactly("S3–S7", "S5");
  }

  /** Neighbours, and marks across the figure; one field in a hundred fits nothing by chance. */
  @Test
  @Tag("long")
  void swappedNamesAreToldAsSwapped() {
    int told = 0;
    for (List<String> pair : List.of(List.of("S2", "S3"), List.of("S5", "S8"))) {
      for (int seed = 0; seed < 6; seed++) {
        AsMarked found = field(seed).swap(pair.get(0), pair.get(1)).tape(ALL).calculate();
        if (found.together().isPresent()) {
          told++;
          assertThat(found.together().get().kind()).isEqualTo(Together.Kind.SWAPPED);
          assertThat(names(found)).containsExactlyElementsOf(pair);
          assertThat(found.together().get().moves()).isEmpty();
          assertThat(ids(found)).containsExactly("as-marked-swapped");
        }
      }
    }
    assertThat(told).isGreaterThanOrEqualTo(10);
  }

  /** Three marks that moved are no two: nothing is named in nearly every field. */
  @Test
  @Tag("long")
  void threeMistakesNameNothing() {
    int named = 0;
    for (int seed = 0; seed < FIELDS; seed++) {
      AsMarked found =
          field(seed)
              .move("S2", 0.05, 0.03)
              .move("S5", -0.06, 0.04)
              .move("S7", 0.02, -0.08)
              .tape(ALL)
              .calculate();
      assertThat(found.reason()).contains(Reason.SEVERAL);
      named += found.together().isPresent() ? 1 : 0;
    }
    assertThat(named).isLessThanOrEqualTo(2);
  }

  /** Where few distances are to spare, two of many pairs explain them; nobody is named. */
  @Test
  void tooFewDistancesNameNothing() {
    List<Pair> few = MarkedField.ring(RING, 1, 2).subList(0, 15);
    for (int seed = 0; seed < 10; seed++) {
      AsMarked found =
          field(seed).move("S3", 0.05, 0.05).move("S6", 0.06, 0.03).tape(few).calculate();
      assertThat(found.together()).isEmpty();
    }
  }

  @Test
  void oneMistakeAsksForNoSecond() {
    AsMarked found = field(5).move("S6", 0.05, 0.02).tape(ALL).calculate();
    assertThat(found.verdict()).isEqualTo(Verdict.MARK_MOVED);
    assertThat(found.together()).isEmpty();
  }
}
