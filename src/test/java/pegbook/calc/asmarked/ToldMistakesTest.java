package pegbook.calc.asmarked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Together;
import pegbook.calc.asmarked.AsMarked.Verdict;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.geometry.Point;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/** What is said of a mistake that is told: which marks, where they belong, what was read. */
class ToldMistakesTest {
  private static final List<String> RING =
      IntStream.rangeClosed(1, 8).mapToObj(i -> "S" + i).toList();
  private static final List<Pair> ALL = MarkedField.all(RING);

  private static MarkedField field(int seed) {
    LayoutJob layout = LayoutJob.of(new Outline.Regular(8, new Length(5))).named("S1", "S4");
    return new MarkedField(layout, "S1", "S4", seed);
  }

  private static Finding only(AsMarked found, String id) {
    return found.findings().stream()
        .filter(finding -> finding.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Each of the two stands where the plan has the other. */
  @ParameterizedTest
  @CsvSource({"S2, S3, 1", "S5, S8, 2"})
  void swappedNamesAreToldWithWhereTheyStand(String one, String other, int seed) {
    MarkedField field = field(seed).swap(one, other).tape(ALL);
    AsMarked found = field.calculate();
    Together two = found.together().orElseThrow();
    assertThat(two.kind()).isEqualTo(Together.Kind.SWAPPED);
    assertThat(two.suspects()).extracting(Suspect::name).containsExactly(one, other);
    Point first = field.placement().mark(one).at();
    Point second = field.placement().mark(other).at();
    Suspect moved = two.suspects().get(0);
    assertThat(moved.eastMetres()).isCloseTo(second.east() - first.east(), within(1e-9));
    assertThat(moved.northMetres()).isCloseTo(second.north() - first.north(), within(1e-9));
    Suspect back = two.suspects().get(1);
    assertThat(back.eastMetres()).isCloseTo(-moved.eastMetres(), within(1e-9));
    assertThat(back.northMetres()).isCloseTo(-moved.northMetres(), within(1e-9));
    assertThat(two.left()).isLessThanOrEqualTo(two.leftLimit()).isPositive();
    Finding told = only(found, "as-marked-swapped");
    assertThat(told.kind()).isEqualTo(Finding.Kind.STOP);
    assertThat(told.subjects()).containsExactly(one, other);
    assertThat(told.arguments())
        .containsEntry("one", Argument.words(one))
        .containsEntry("other", Argument.words(other));
  }

  /** Two tapes to a mark from others than the two would fit many places. */
  @Test
  void aSwapIsNotToldOfAMarkWithTwoTapes() {
    List<Pair> few =
        ALL.stream()
            .filter(
                pair -> !pair.ends("S2") || pair.ends("S3") || pair.ends("S5") || pair.ends("S7"))
            .toList();
    AsMarked found = field(1).swap("S2", "S3").tape(few).calculate();
    assertThat(found.together()).isEmpty();
    List<Pair> enough =
        ALL.stream()
            .filter(pair -> few.contains(pair) || pair.equals(new Pair("S2", "S6")))
            .toList();
    assertThat(field(1).swap("S2", "S3").tape(enough).calculate().together()).isPresent();
  }

  @Test
  void aWrongReadingIsToldWithWhatWasReadAndPlanned() {
    int reading = ALL.indexOf(new Pair("S3", "S7"));
    MarkedField field = field(3).tape(ALL).misread(reading, Length.ofInches(12));
    AsMarked found = field.calculate();
    assertThat(found.verdict()).isEqualTo(Verdict.READING_WRONG);
    Finding told = only(found, "as-marked-misread");
    assertThat(told.subjects()).containsExactly("S3", "S7");
    assertThat(told.arguments())
        .containsEntry("pair", Argument.words("S3–S7"))
        .containsEntry("taped", Argument.of(field.readings().get(reading).tape()));
    Length planned =
        field.placement().mark("S3").at().distanceTo(field.placement().mark("S7").at());
    Length said = (Length) ((Argument.Measured) told.arguments().get("planned")).quantity();
    assertThat(said.metres()).isCloseTo(planned.metres(), within(1e-9));
  }

  /** Of two distances read twice the one is named whose readings lie further apart. */
  @Test
  void theWorseOfTwoDoubledReadingsIsNamed() {
    List<Pair> again = List.of(new Pair("S1", "S2"), new Pair("S3", "S4"), new Pair("S5", "S6"));
    MarkedField field =
        field(2)
            .tape(ALL)
            .tape(again)
            .misread(ALL.size(), new Length(0.05))
            .misread(ALL.size() + 1, new Length(0.09))
            .misread(ALL.size() + 2, new Length(0.06));
    Finding told = only(field.calculate(), "as-marked-doubled");
    assertThat(told.arguments())
        .containsEntry("pairs", Argument.of(List.of("S1–S2", "S3–S4", "S5–S6")))
        .containsEntry("worst", Argument.words("S3–S4"));
  }

  /** Each distance has a line of its own, and the leading suspect its fall, lead and move. */
  @Test
  void aMoveIsWorkedInLines() {
    AsMarked found = field(5).move("S6", 0.05, 0.02).tape(ALL).calculate();
    assertThat(found.workings().stream().map(working -> working.formula().id()))
        .startsWith("as-marked.limit")
        .contains("as-marked.left", "as-marked.lead", "as-marked.shift");
    assertThat(
            found.workings().stream()
                .filter(working -> working.formula().id().equals("as-marked.limit")))
        .hasSize(ALL.size());
    assertThat(field(5).tape(ALL).calculate().workings())
        .allMatch(working -> working.formula().id().equals("as-marked.limit"));
    Suspect moved = found.suspects().get(0);
    assertThat(moved.name()).isEqualTo("S6");
    assertThat(Math.hypot(moved.eastMetres() - 0.05, moved.northMetres() - 0.02))
        .isLessThan(4.5 * moved.deviation().metres());
  }
}
