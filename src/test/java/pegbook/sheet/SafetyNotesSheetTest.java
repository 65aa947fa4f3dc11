package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.testing.TrialPacket;

class SafetyNotesSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(20));
  }

  private static SafetyNotesSheet sheet(TrialPacket trial) {
    return SafetyNotesSheet.of(trial.packet(), trial.writing());
  }

  private static List<SafetyNotesSheet.Line> lines(SafetyNotesSheet sheet) {
    return sheet.stages().stream().flatMap(stage -> stage.lines().stream()).toList();
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyNoteIsPrinted(TrialPacket trial) {
    assertThat(lines(sheet(trial))).hasSameSizeAs(trial.packet().safetyNotes().notes());
  }

  @ParameterizedTest
  @MethodSource("packets")
  void aCommandIsShortAndHasAReasonASourceAndSomeoneWhoDecides(TrialPacket trial) {
    assertThat(lines(sheet(trial)))
        .allSatisfy(
            line -> {
              assertThat(line.action()).doesNotContain("{", "}").hasSizeLessThanOrEqualTo(90);
              assertThat(line.reason()).doesNotContain("{", "}").hasSizeLessThanOrEqualTo(290);
              assertThat(line.source()).isNotBlank();
              assertThat(line.decides()).isNotBlank();
            });
  }

  @ParameterizedTest
  @MethodSource("packets")
  void sectionsOfTheUnitedStatesArePrintedThereOnly(TrialPacket trial) {
    boolean unitedStates = trial.packet().job().place().isUnitedStates();
    String sources =
        String.join("\n", lines(sheet(trial)).stream().map(SafetyNotesSheet.Line::source).toList());
    assertThat(sources.contains("29 CFR")).isEqualTo(unitedStates);
  }

  /** Nothing that a court or a child could read as a promise. */
  @ParameterizedTest
  @MethodSource("packets")
  void nothingIsPromised(TrialPacket trial) {
    assertThat(lines(sheet(trial)))
        .allSatisfy(
            line ->
                assertThat((line.action() + " " + line.reason()).toLowerCase(java.util.Locale.ROOT))
                    .doesNotContain(" is safe", "are safe", "approved", "guarantee"));
  }

  /** Each colour prints the use that the code gives it. */
  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/safety/marking-colours.csv", useHeadersInDisplayName = true)
  void coloursPrintTheirPublishedUse(String colour, String use) {
    TrialPacket trial = TrialPacket.examples().findFirst().orElseThrow();
    SafetyNotesSheet.Colour printed =
        sheet(trial).colours().stream()
            .flatMap(List::stream)
            .filter(one -> one.colour().equalsIgnoreCase(colour))
            .findFirst()
            .orElseThrow();
    String word =
        switch (use) {
          case "proposed excavation" -> "dig";
          case "temporary survey" -> "survey";
          case "potable water" -> "drinking water";
          default -> use;
        };
    assertThat(printed.use()).contains(word);
  }

  @Test
  void recalledValuesAreMarked() {
    TrialPacket trial = TrialPacket.examples().findFirst().orElseThrow();
    Sources sources = new Sources(trial.writing().texts());
    assertThat(sources.write(new pegbook.published.Citation("niosh-coupling", "")))
        .contains("from memory, confirm");
    assertThat(sources.write(new pegbook.published.Citation("cfr-1926", "1926.651(b)")))
        .isEqualTo("29 CFR 1926.651(b)");
  }
}
