package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.provingmarks.ProvingMarks;
import pegbook.calc.provingmarks.ProvingMarks.Check;
import pegbook.sheet.drawing.Element;
import pegbook.testing.TrialPacket;

class ProvingMarksSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(12));
  }

  private static ProvingMarksSheet sheet(TrialPacket trial) {
    return ProvingMarksSheet.of(trial.packet(), trial.writing());
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyDistanceStandsInItsRow(TrialPacket trial) {
    ProvingMarks proving = trial.packet().provingMarks();
    List<ProvingMarksSheet.CheckRow> rows = sheet(trial).rows();

    assertThat(rows).hasSameSizeAs(proving.checks());
    for (int i = 0; i < rows.size(); i++) {
      Check check = proving.checks().get(i);
      Formats formats = trial.writing().formats();
      assertThat(rows.get(i).pair()).contains(check.pair().first()).contains(check.pair().second());
      assertThat(rows.get(i).expected()).isEqualTo(formats.tape(check.expected()));
      assertThat(rows.get(i).least())
          .isEqualTo(formats.tape(check.expected().minus(check.limit())));
      assertThat(rows.get(i).most()).isEqualTo(formats.tape(check.expected().plus(check.limit())));
    }
    assertThat(sheet(trial).ties()).hasSameSizeAs(proving.ties());
  }

  /** Every distance is a line of the picture; the north arrow has a few more. */
  @ParameterizedTest
  @MethodSource("packets")
  void everyDistanceIsDrawn(TrialPacket trial) {
    long lines =
        sheet(trial).picture().elements().stream().filter(Element.Line.class::isInstance).count();

    assertThat(lines).isGreaterThanOrEqualTo(trial.packet().provingMarks().checks().size());
  }

  /** The sheet never says that more is proved than is. */
  @ParameterizedTest
  @MethodSource("packets")
  void theLeadSaysWhatPasses(TrialPacket trial) {
    ProvingMarks proving = trial.packet().provingMarks();
    String lead = sheet(trial).lead();

    assertThat(lead.contains("They do not show every mistake") || lead.contains("it is not proved"))
        .isEqualTo(!proving.isWithinTolerance());
    assertThat(lead).contains(proving.worst().mark());
    assertThat(sheet(trial).smallest().startsWith("No smaller set"))
        .isEqualTo(proving.size().smallest());
  }
}
