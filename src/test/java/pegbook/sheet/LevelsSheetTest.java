package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.figures.Hole;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;
import pegbook.testing.TrialPacket;

class LevelsSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50))
        .filter(trial -> LevelsSheet.isWanted(trial.packet()));
  }

  private static LevelsSheet sheet(TrialPacket trial) {
    return LevelsSheet.of(trial.packet(), trial.writing());
  }

  private static List<Hole> known(TrialPacket trial) {
    return trial.packet().depthTargets().holes().stream()
        .filter(hole -> hole.level().isPresent())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyMarkIsReadOrNamedAsUnknown(TrialPacket trial) {
    LevelsSheet sheet = sheet(trial);

    assertThat(sheet.rows())
        .extracting(LevelsSheet.Row::mark)
        .containsExactlyElementsOf(known(trial).stream().map(Hole::mark).toList());
    boolean all = known(trial).size() == trial.packet().placement().marks().size();
    assertThat(sheet.unknown().isEmpty()).isEqualTo(all);
  }

  /** The dig schedule and this sheet tell the digger the same. */
  @ParameterizedTest
  @MethodSource("packets")
  void sameDepthsFromTheLineAsTheDigSchedule(TrialPacket trial) {
    Map<String, DigScheduleSheet.DepthRow> rows =
        DigScheduleSheet.of(trial.packet(), trial.writing()).depths().stream()
            .collect(Collectors.toMap(DigScheduleSheet.DepthRow::mark, row -> row));
    for (LevelsSheet.Row row : sheet(trial).rows()) {
      assertThat(row.toBottom()).isEqualTo(rows.get(row.mark()).lineToBottom());
      assertThat(row.toUnderside()).isEqualTo(rows.get(row.mark()).lineToUnderside());
    }
  }

  /** Every hole is drawn as deep under the ground as it is dug, at the caption's scale. */
  @ParameterizedTest
  @MethodSource("packets")
  void holesAreDrawnToScale(TrialPacket trial) {
    LevelsSheet sheet = sheet(trial);
    List<Element.Path> holes =
        sheet.pictures().stream()
            .map(Drawing::elements)
            .flatMap(List::stream)
            .filter(Element.Path.class::isInstance)
            .map(Element.Path.class::cast)
            .filter(path -> path.spots().size() == 4 && !path.closed())
            .toList();
    DrawingScale scale =
        DrawingScale.series(trial.packet().job().heading().units()).stream()
            .filter(each -> sheet.caption().contains(" " + each.text() + ";"))
            .findFirst()
            .orElseThrow();

    assertThat(holes).hasSameSizeAs(known(trial));
    for (int i = 0; i < holes.size(); i++) {
      Hole hole = known(trial).get(i);
      List<Spot> spots = holes.get(i).spots();
      // Depths from the line are set up to the division, ground is not.
      double division = trial.packet().job().layout().tape().division().millimetres();
      assertThat(spots.get(0).y() - spots.get(1).y())
          .isEqualTo(scale.millimetres(hole.dug()), within(division / scale.ratio() + 0.01));
    }
  }

  /** The line and the floor lie as far apart on paper as in the air. */
  @ParameterizedTest
  @MethodSource("packets")
  void levelLinesAreLevelAndToScale(TrialPacket trial) {
    LevelsSheet sheet = sheet(trial);
    for (Drawing picture : sheet.pictures()) {
      List<Element.Line> level =
          picture.elements().stream()
              .filter(Element.Line.class::isInstance)
              .map(Element.Line.class::cast)
              .filter(
                  line -> line.pen().equals(Pen.HEAVY) || line.pen().equals(Pen.MEDIUM.boundary()))
              .toList();
      assertThat(level).hasSize(trial.packet().levels().floor().isPresent() ? 2 : 1);
      assertThat(level).allSatisfy(line -> assertThat(line.from().y()).isEqualTo(line.to().y()));
    }
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyPostHasItsLengthAndEveryTapeThatMattersIsListed(TrialPacket trial) {
    LevelsSheet sheet = sheet(trial);
    trial
        .packet()
        .levels()
        .floor()
        .ifPresent(
            floor ->
                assertThat(sheet.posts())
                    .hasSameSizeAs(floor.posts())
                    .allSatisfy(row -> assertThat(row.toFloor()).isNotEmpty()));
    long matter =
        trial.packet().tapeCorrections().slopes().stream().filter(slope -> slope.matters()).count();
    assertThat(sheet.slopes()).hasSize((int) Math.min(24, matter));
  }
}
