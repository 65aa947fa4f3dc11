package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.figures.Finding;
import pegbook.testing.TrialPacket;

class FindingsSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50));
  }

  private static FindingsSheet sheet(TrialPacket trial) {
    return FindingsSheet.of(trial.packet(), trial.writing());
  }

  private static List<FindingsSheet.Box> boxes(FindingsSheet sheet) {
    return sheet.groups().stream().flatMap(group -> group.boxes().stream()).toList();
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyFindingIsPrintedOnceTheHardestFirst(TrialPacket trial) {
    FindingsSheet sheet = sheet(trial);
    int count = trial.packet().findings().size();
    List<String> numbers = IntStream.rangeClosed(1, count).mapToObj(at -> "F" + at).toList();
    assertThat(boxes(sheet)).extracting(FindingsSheet.Box::number).isEqualTo(numbers);
    assertThat(sheet.summary()).extracting(FindingsSheet.Row::number).isEqualTo(numbers);
    assertThat(boxes(sheet))
        .extracting(FindingsSheet.Box::kind)
        .isSortedAccordingTo(
            java.util.Comparator.comparingInt(
                kind -> List.of("stop", "ask", "note").indexOf(kind)));
  }

  @ParameterizedTest
  @MethodSource("packets")
  void countsAddUp(TrialPacket trial) {
    FindingsSheet sheet = sheet(trial);
    for (FindingsSheet.Tally tally : sheet.counts()) {
      long found =
          trial.packet().findings().stream()
              .filter(one -> one.kind().name().equalsIgnoreCase(tally.kind()))
              .count();
      assertThat(tally.count()).isEqualTo(Long.toString(found));
    }
  }

  @ParameterizedTest
  @MethodSource("packets")
  void onlyQuestionsHaveALineForTheAnswer(TrialPacket trial) {
    assertThat(boxes(sheet(trial)))
        .allSatisfy(box -> assertThat(box.answer()).isEqualTo(box.kind().equals("ask")));
  }

  @ParameterizedTest
  @MethodSource("packets")
  void nothingIsLeftOpenInTheWords(TrialPacket trial) {
    assertThat(boxes(sheet(trial)))
        .allSatisfy(
            box -> {
              assertThat(box.title() + box.text() + box.way()).doesNotContain("{", "}");
              assertThat(List.of(box.title(), box.text(), box.way(), box.decides(), box.place()))
                  .noneMatch(String::isBlank);
            });
  }

  /** A finding that has no source says so: common practice is a source of its own kind. */
  @ParameterizedTest
  @MethodSource("packets")
  void everyFindingNamesASource(TrialPacket trial) {
    assertThat(trial.packet().findings())
        .filteredOn(finding -> finding.citations().isEmpty())
        .extracting(Finding::id)
        .as("findings without a source")
        .isEmpty();
  }

  /** A tired reader: a title of a few words, a text of a few sentences. */
  @ParameterizedTest
  @MethodSource("packets")
  void findingsAreShort(TrialPacket trial) {
    assertThat(boxes(sheet(trial)))
        .allSatisfy(
            box -> {
              assertThat(box.title().length()).as(box.title()).isLessThanOrEqualTo(70);
              assertThat(box.way().length()).as(box.way()).isLessThanOrEqualTo(330);
            });
  }
}
