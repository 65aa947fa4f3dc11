package pegbook.calc.truenorth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.truenorth.TrueNorth.EqualShadows;
import pegbook.calc.truenorth.TrueNorth.SunDay;
import pegbook.calc.truenorth.TrueNorth.Turn;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.job.Job;
import pegbook.job.Outline;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.LayoutJob;

/** From the north line to the first mark, and shadows in both systems of units. */
class TurnToMarkTest {
  private final List<Working> workings = new ArrayList<>();

  private Turn turn(UnitSystem units, double metres, double azimuth) {
    LayoutJob layout = LayoutJob.of(new Outline.Regular(6, new Length(metres)));
    layout.units = units;
    layout.azimuth = Optional.of(Angle.ofDegrees(azimuth));
    Job job = layout.job();
    return TurnToMark.of(job, PlacementCalculator.calculate(job)).turn(workings);
  }

  /** The peg stands at the nearer end of the line, and the mark on its side. */
  @ParameterizedTest
  @CsvSource({
    "8, NORTH, EAST, 8",
    "89, NORTH, EAST, 89",
    "91, SOUTH, EAST, 89",
    "172, SOUTH, EAST, 8",
    "188, SOUTH, WEST, 8",
    "269, SOUTH, WEST, 89",
    "271, NORTH, WEST, 89",
    "352, NORTH, WEST, 8"
  })
  void theTurnGoesFromTheNearerEnd(double azimuth, Compass peg, Compass side, double angle) {
    Turn turn = turn(UnitSystem.METRIC, 4, azimuth);
    assertThat(turn.peg()).isEqualTo(peg);
    assertThat(turn.side()).isEqualTo(side);
    assertThat(turn.onLine()).isFalse();
    // 3 m out: chords of the angle and of what is left of 180°.
    assertThat(turn.along().metres()).isCloseTo(3, within(1e-9));
    assertThat(turn.chord().metres())
        .isCloseTo(6 * Math.sin(Math.toRadians(angle / 2)), within(0.0005));
    assertThat(turn.check().metres())
        .isCloseTo(6 * Math.cos(Math.toRadians(angle / 2)), within(0.0005));
    assertThat(workings)
        .extracting(each -> each.formula().id())
        .containsExactly("true-north.chord", "true-north.chord-check");
    assertThat(workings)
        .extracting(each -> each.formula().result().id())
        .containsExactly("turn-chord", "turn-check");
  }

  @ParameterizedTest
  @CsvSource({"0, NORTH", "180, SOUTH"})
  void aMarkOnTheLineNeedsNoTurn(double azimuth, Compass peg) {
    Turn turn = turn(UnitSystem.METRIC, 4, azimuth);
    assertThat(turn.onLine()).isTrue();
    assertThat(turn.peg()).isEqualTo(peg);
    assertThat(workings).isEmpty();
  }

  /** Supports of a hexagon of 16 m stand 7.77 m out: set up to 8 m or 26 ft; of 40 m at most 10. */
  @Test
  void howFarOutTheTapesAreHeld() {
    assertThat(turn(UnitSystem.METRIC, 16, 8).along().metres()).isCloseTo(8, within(1e-9));
    assertThat(turn(UnitSystem.IMPERIAL, 16, 8).along().feet()).isCloseTo(26, within(1e-9));
    assertThat(turn(UnitSystem.METRIC, 40, 8).along().metres()).isCloseTo(10, within(1e-9));
    assertThat(turn(UnitSystem.IMPERIAL, 40, 8).along().feet()).isCloseTo(30, within(1e-9));
    assertThat(turn(UnitSystem.IMPERIAL, 4, 8).along().feet()).isCloseTo(10, within(1e-9));
    assertThat(turn(UnitSystem.METRIC, 4, 8).toMark().metres()).isCloseTo(1.769, within(1e-9));
  }

  private static TrueNorth north(String units, double latitude, String zone, double longitude) {
    String text =
        """
        {"title": "x", "units": "%s", "ground": {"soil": "sand"}, "crew": {"start": "2027-03-20"},
         "place": {"latitude": "%s deg", "longitude": "%s deg", "timeZone": "%s"},
         "layout": {"outline": {"regular": {"sides": 6, "side": "%s"}}, "centreToFirstMark": "8 deg"}}
        """
            .formatted(units, latitude, longitude, zone, units.equals("metric") ? "2 m" : "7 ft");
    JobFile file = JobFileReader.read("x.json", text.getBytes(StandardCharsets.UTF_8));
    Job job = ((JobFile.Read) file).job();
    return TrueNorthCalculator.calculate(job, PlacementCalculator.calculate(job));
  }

  private static double firstInput(TrueNorth north, String id, String symbol) {
    Working working =
        north.workings().stream()
            .filter(each -> each.formula().id().equals(id))
            .findFirst()
            .orElseThrow();
    for (int i = 0; i < working.inputs().size(); i++) {
      if (working.formula().inputs().get(i).id().equals(symbol)) {
        return working.inputs().get(i);
      }
    }
    throw new IllegalArgumentException(symbol);
  }

  /** A pole of 8 ft or 2.4 m, marked to 1/8 in or 3 mm; its shadow at noon is h · tan ζ. */
  @Test
  void thePoleIsOfTheJobsUnits() {
    TrueNorth imperial = north("imperial", 44.9, "America/Chicago", -91.4);
    TrueNorth metric = north("metric", 60, "Europe/Oslo", 10);
    assertThat(firstInput(imperial, "true-north.noon-error", "pole-height"))
        .isCloseTo(96, within(1e-9));
    assertThat(firstInput(imperial, "true-north.noon-error", "marking-error"))
        .isCloseTo(0.125, within(1e-9));
    assertThat(firstInput(metric, "true-north.noon-error", "pole-height"))
        .isCloseTo(2400, within(1e-6));
    assertThat(firstInput(metric, "true-north.noon-error", "marking-error"))
        .isCloseTo(3, within(1e-9));
    SunDay day = metric.days().get(0);
    assertThat(day.shadow().orElseThrow().metres())
        .isCloseTo(2.4 / Math.tan(day.altitude().radians()), within(1e-3));
  }

  /**
   * On the day of the equinox the sun is due east 6 h before noon; 3 h before, at 60° north, its
   * azimuth is 180 − atan(tan 45° / sin 60°) = 130.9°, so the shadow lies towards 310.9°. South of
   * the equator shadows point south.
   */
  @Test
  void equalShadowsLieOnBothSidesOfNorth() {
    EqualShadows shadows = north("metric", 60, "Europe/Oslo", 10).equal().orElseThrow();
    double first = shadows.firstShadow().degrees();
    double second = shadows.secondShadow().degrees();
    assertThat(first).isBetween(270.0, 360.0);
    assertThat(second).isBetween(0.0, 90.0);
    assertThat(first + second).isCloseTo(360, within(0.5));
    EqualShadows south = north("metric", -40, "Pacific/Auckland", 175).equal().orElseThrow();
    assertThat(south.firstShadow().degrees()).isBetween(180.0, 270.0);
    assertThat(south.secondShadow().degrees()).isBetween(90.0, 180.0);
    assertThat(south.firstShadow().degrees() + south.secondShadow().degrees())
        .isCloseTo(360, within(0.5));
  }
}
