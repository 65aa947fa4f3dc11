package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.sheet.drawing.Element;
import pegbook.testing.TrialPacket;

class CoverSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50));
  }

  private static CoverSheet sheet(TrialPacket trial) {
    return CoverSheet.of(trial.packet(), trial.writing());
  }

  @ParameterizedTest
  @MethodSource("packets")
  void theJobStandsInTenNumbers(TrialPacket trial) {
    assertThat(sheet(trial).figures()).hasSize(10).noneMatch(fact -> fact.value().isBlank());
    assertThat(sheet(trial).place()).noneMatch(fact -> fact.value().isBlank());
  }

  /** One dot for each mark, a ring more for each pier. */
  @ParameterizedTest
  @MethodSource("packets")
  void thePictureShowsEveryMark(TrialPacket trial) {
    List<PlacedMark> marks = trial.packet().placement().marks();
    long piers = marks.stream().filter(mark -> mark.kind() == MarkKind.PIER).count();
    List<Element> elements = sheet(trial).picture().elements();
    assertThat(elements.stream().filter(Element.Circle.class::isInstance))
        .hasSize((int) (marks.size() + piers));
  }

  /** The picture is not turned or mirrored: what lies further north stands higher. */
  @ParameterizedTest
  @MethodSource("packets")
  void northIsUp(TrialPacket trial) {
    List<PlacedMark> marks = trial.packet().placement().marks();
    List<Element.Circle> dots =
        sheet(trial).picture().elements().stream()
            .filter(Element.Circle.class::isInstance)
            .map(Element.Circle.class::cast)
            .filter(circle -> circle.fill().isPresent())
            .toList();
    assertThat(dots).hasSameSizeAs(marks);
    for (int i = 1; i < marks.size(); i++) {
      double north = marks.get(i).at().north() - marks.get(0).at().north();
      double up = dots.get(i).centre().y() - dots.get(0).centre().y();
      double east = marks.get(i).at().east() - marks.get(0).at().east();
      double right = dots.get(i).centre().x() - dots.get(0).centre().x();
      assertThat(up * east).isCloseTo(right * north, offset(1e-6));
      assertThat(up * north).isGreaterThanOrEqualTo(0);
      assertThat(right * east).isGreaterThanOrEqualTo(0);
    }
  }

  @Test
  void theMainExampleTellsItsOwnStory() {
    CoverSheet sheet = sheet(TrialPacket.example(Path.of("input/sky-deck.json")));
    assertThat(sheet.title()).isEqualTo("Sky deck, Alder Hollow");
    assertThat(sheet.issue()).isEqualTo("Build packet, revision B, issued 2027-04-12");
    assertThat(sheet.figures())
        .contains(new CoverSheet.Fact("Holes", "6 for supports, 1 for piers"))
        .contains(new CoverSheet.Fact("First day", "Sat 2027-05-08"));
  }
}
