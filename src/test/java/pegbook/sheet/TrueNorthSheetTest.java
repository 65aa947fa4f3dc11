package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.truenorth.TrueNorth;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;
import pegbook.testing.TrialPacket;

class TrueNorthSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50))
        .filter(trial -> TrueNorthSheet.isWanted(trial.packet()));
  }

  private static TrueNorthSheet sheet(TrialPacket trial) {
    return TrueNorthSheet.of(trial.packet(), trial.writing());
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyWayHasItsStepsAndItsError(TrialPacket trial) {
    TrueNorth north = trial.packet().trueNorth();
    TrueNorthSheet sheet = sheet(trial);

    assertThat(sheet.noon().isEmpty()).isEqualTo(north.noon().isEmpty());
    assertThat(sheet.equal().isEmpty()).isEqualTo(north.equal().isEmpty());
    int ways =
        (int)
            Stream.of(north.noon(), north.equal(), north.compass())
                .filter(way -> way.isPresent())
                .count();
    assertThat(sheet.errors()).hasSize(ways);
    assertThat(sheet.errors()).allSatisfy(row -> assertThat(row.working()).isNotEmpty());
    assertThat(sheet.days()).hasSameSizeAs(north.days());
  }

  /** The first mark's line and the shadows lie on paper in their true directions, north up. */
  @ParameterizedTest
  @MethodSource("packets")
  void directionsOnPaperAreTrue(TrialPacket trial) {
    TrueNorth north = trial.packet().trueNorth();
    List<Element> elements = sheet(trial).drawings().get(0).elements();
    Spot foot =
        elements.stream()
            .filter(Element.Circle.class::isInstance)
            .map(Element.Circle.class::cast)
            .filter(circle -> circle.fill().isPresent())
            .findFirst()
            .orElseThrow()
            .centre();
    List<Double> azimuths =
        elements.stream()
            .filter(Element.Line.class::isInstance)
            .map(Element.Line.class::cast)
            .filter(line -> line.from().equals(foot))
            .filter(line -> !line.pen().equals(Pen.HAIR))
            .map(line -> 90 - Spots.directionDegrees(line.from(), line.to()))
            .toList();

    holds(azimuths, north.turn().azimuth().degrees());
    north.equal().ifPresent(equal -> holds(azimuths, equal.firstShadow().degrees()));
    north.equal().ifPresent(equal -> holds(azimuths, equal.secondShadow().degrees()));
    north.noon().ifPresent(noon -> holds(azimuths, noon.toNorth() ? 0 : 180));
  }

  private static void holds(List<Double> azimuths, double wanted) {
    assertThat(azimuths)
        .anySatisfy(
            azimuth ->
                assertThat(Math.IEEEremainder(azimuth - wanted, 360)).isEqualTo(0, within(1e-6)));
  }
}
