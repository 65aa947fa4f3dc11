package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.markaccuracy.MarkAccuracy;
import pegbook.calc.markaccuracy.MarkAccuracy.MarkError;
import pegbook.calc.tapetable.TapeTable;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.testing.TrialPacket;

class MarkAccuracySheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(12));
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyMarkHasItsRowInTheOrderOfWork(TrialPacket trial) {
    MarkAccuracySheet sheet = MarkAccuracySheet.of(trial.packet(), trial.writing());
    TapeTable table = trial.packet().tapeTable();
    List<String> order = new ArrayList<>();
    order.add(table.baseline().first());
    order.add(table.baseline().second());
    table.rows().forEach(row -> order.add(row.mark()));

    assertThat(sheet.rows())
        .extracting(MarkAccuracySheet.MarkRow::mark)
        .containsExactlyElementsOf(order);
    boolean bad = trial.packet().markAccuracy().marks().stream().anyMatch(MarkError::isBad);
    assertThat(sheet.bad()).isEqualTo(bad);
    assertThat(sheet.rows().stream().anyMatch(row -> row.emphasis().equals("strong")))
        .isEqualTo(bad);
  }

  /** Tolerance circles have the same exaggeration as the ovals: radius over tolerance is kept. */
  @ParameterizedTest
  @MethodSource("packets")
  void ovalsAndCirclesAreOfOneScale(TrialPacket trial) {
    MarkAccuracy accuracy = trial.packet().markAccuracy();
    List<Element> elements =
        MarkAccuracySheet.of(trial.packet(), trial.writing()).picture().elements();
    List<Element.Circle> circles =
        elements.stream()
            .filter(Element.Circle.class::isInstance)
            .map(Element.Circle.class::cast)
            .filter(circle -> circle.pen().filter(Pen.THIN.dashed()::equals).isPresent())
            .toList();
    List<Element.Path> ovals =
        elements.stream()
            .filter(Element.Path.class::isInstance)
            .map(Element.Path.class::cast)
            .filter(path -> path.pen().filter(Pen.MEDIUM::equals).isPresent())
            .filter(path -> path.spots().size() == 48)
            .toList();
    assertThat(circles).hasSameSizeAs(accuracy.marks());
    List<MarkError> drawn =
        accuracy.marks().stream()
            .filter(mark -> pegbook.sheet.plan.AccuracyPicture.hasOval(accuracy, mark))
            .filter(mark -> mark.radius().metres() > 0)
            .toList();
    assertThat(ovals).hasSameSizeAs(drawn);
    for (int i = 0; i < ovals.size(); i++) {
      List<pegbook.sheet.drawing.Spot> spots = ovals.get(i).spots();
      double halfMm = Spots.distanceMm(spots.get(0), spots.get(24)) / 2;
      double expected =
          circles.get(0).radiusMm() * drawn.get(i).radius().dividedBy(accuracy.tolerance());
      assertThat(halfMm).isCloseTo(expected, within(1e-6));
      // The long axis lies on its azimuth, north up.
      double degrees = 90 - Spots.directionDegrees(spots.get(24), spots.get(0));
      double apart = degrees - drawn.get(i).ellipse().azimuth().degrees();
      assertThat(apart - 180 * Math.rint(apart / 180)).isCloseTo(0, within(1e-4));
    }
  }
}
