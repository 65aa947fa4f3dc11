package pegbook.calc.asdug;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.asdug.AsDug.Depth;
import pegbook.calc.asdug.DugChecks.OffCentre;
import pegbook.calc.asdug.DugChecks.Verdict;
import pegbook.figures.Argument;
import pegbook.figures.Bottom;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Swings;
import pegbook.job.Field;
import pegbook.job.Field.Dug;
import pegbook.job.Field.Moved;
import pegbook.job.Soil;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.testing.FillJob;

/** Holes of 18 in, 48 in to the underside, 4 in of gravel, unless a test says otherwise. */
class AsDugCalculatorTest {
  private static final Swings SWINGS = new Swings("S1", "S2", List.of());

  private static Dug dug(String hole, Double depth) {
    return new Dug(
        hole,
        Optional.empty(),
        Optional.ofNullable(depth).map(Length::ofInches),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Dug moved(String hole, double east, double north, Optional<Length> diameter) {
    return new Dug(
        hole,
        Optional.empty(),
        Optional.empty(),
        diameter,
        Optional.of(new Moved(Length.ofInches(east), Length.ofInches(north))),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** S1 at the origin, S2 ten feet east, S3 ten feet north of S1. */
  private static FillJob job(double gravel, Dug... dug) {
    FillJob of = new FillJob();
    of.dig.field = new Field(List.of(), List.of(dug));
    Hole plain = of.hole("S1", 18, 48, gravel, 6);
    of.with(plain).with(at(of, "S2", gravel, 120, 0)).with(at(of, "S3", gravel, 0, 120));
    return of;
  }

  private static Hole at(FillJob of, String mark, double gravel, double east, double north) {
    Hole hole = of.hole(mark, 18, 48, gravel, 6);
    return hole.asDug(
        hole.centre().plus(of.length(east).metres(), of.length(north).metres()),
        hole.diameter(),
        hole.depth(),
        hole.gravel());
  }

  private static AsDug asDug(FillJob of) {
    return AsDugCalculator.calculate(of.job(), of.holes);
  }

  private static DugChecks checks(FillJob of, double psf, Double mayCarry) {
    List<Bottom> bottoms = new ArrayList<>();
    AsDug asDug = asDug(of);
    asDug
        .holes()
        .forEach(
            hole ->
                bottoms.add(
                    new Bottom(
                        hole.mark(),
                        hole.standing(),
                        Pressure.ofPsf(psf),
                        Optional.ofNullable(mayCarry).map(Pressure::ofPsf))));
    return DugChecksCalculator.calculate(of.job(), asDug, SWINGS, bottoms);
  }

  private static List<String> ids(List<Finding> findings) {
    return findings.stream().map(Finding::id).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "47.9, 4, SHALLOW, 48, 4",
    "48, 4, LESS_GRAVEL, 48, 0",
    "50.5, 4, LESS_GRAVEL, 48, 2.5",
    "52, 4, AS_PLANNED, 48, 4",
    "55, 4, MORE_GRAVEL, 48, 7",
    "47.9, 0, SHALLOW, 48, 0",
    "48, 0, AS_PLANNED, 48, 0",
    "51, 0, MORE_CONCRETE, 51, 0"
  })
  void aFoundDepthSaysWhatTheHoleTakes(
      double found, double gravel, Depth depth, double underside, double layer) {
    AsDug asDug = asDug(job(gravel, dug("S1", found)));
    AsDug.Row row = asDug.row("S1").orElseThrow();
    assertThat(row.depth()).isEqualTo(depth);
    assertThat(row.filled().depth().inches()).isEqualTo(underside, offset(1e-9));
    assertThat(row.filled().gravel().inches()).isEqualTo(layer, offset(1e-9));
    assertThat(asDug.holes().get(1)).as("the others as planned").isEqualTo(asDug.planned().get(1));
    boolean stops = asDug.findings().stream().anyMatch(finding -> finding.kind() == Kind.STOP);
    assertThat(stops).isEqualTo(depth == Depth.SHALLOW);
  }

  @Test
  void hoursAloneChangeNothing() {
    FillJob of = job(4);
    of.dig.field =
        new Field(List.of(), List.of(Dug.inHours("S1", new pegbook.measure.Duration(3))));
    assertThat(asDug(of).rows()).isEmpty();
    assertThat(asDug(of).holes()).isEqualTo(asDug(of).planned());
  }

  @Test
  void rockAboveTheDepthAsksTheAuthorityAndNotForASpade() {
    Dug rock =
        new Dug(
            "S2",
            Optional.empty(),
            Optional.of(Length.ofInches(40)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Length.ofInches(40)));
    Finding finding = asDug(job(4, rock)).findings().get(0);
    assertThat(finding.id()).isEqualTo("rock-above-depth");
    assertThat(finding.kind()).isEqualTo(Kind.STOP);
    assertThat(finding.decides()).isEqualTo(Finding.Decider.BUILDING_AUTHORITY);
    assertThat(finding.subjects()).containsExactly("S2");
  }

  @Test
  void otherSoilAndWaterAreTold() {
    Dug wet =
        new Dug(
            "S1",
            Optional.empty(),
            Optional.of(Length.ofInches(52)),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Soil.PEAT),
            Optional.of(Length.ofInches(50)),
            Optional.empty());
    assertThat(ids(asDug(job(4, wet)).findings())).containsExactly("dug-soft-soil", "dug-water");
    Dug dry =
        new Dug(
            "S1",
            Optional.empty(),
            Optional.of(Length.ofInches(52)),
            Optional.empty(),
            Optional.empty(),
            Optional.of(job(4).job().ground().soil()),
            Optional.of(Length.ofInches(60)),
            Optional.empty());
    assertThat(asDug(job(4, dry)).findings())
        .as("water below the bottom, soil as planned")
        .isEmpty();
  }

  /**
   * Of a disc: the kern is an eighth of the width, and the stress p · (1 + m · y / (I / A)) with I
   * / A = R² / 4 is p · (1 + 8 m / B) at the edge. Held against the sum of a disc cut into small
   * squares, and against the far edge, where nothing is left as the load reaches the kern.
   */
  @Test
  void theEdgePressureIsThatOfADisc() {
    AsDugFormulas formulas = new AsDugFormulas(pegbook.measure.UnitSystem.IMPERIAL);
    double radius = 9;
    int cut = 2000;
    double area = 0;
    double inertia = 0;
    double side = 2 * radius / cut;
    for (int i = 0; i < cut; i++) {
      double x = -radius + (i + 0.5) * side;
      double chord = 2 * Math.sqrt(radius * radius - x * x);
      area += chord * side;
      inertia += chord * side * x * x;
    }
    double edge = 1000 * (1 + 1.5 * radius / (inertia / area));
    assertThat(formulas.edgePressure().function().applyAsDouble(new double[] {1000, 1.5, 18}))
        .isEqualTo(edge, offset(0.2))
        .isEqualTo(1000 * (1 + 8 * 1.5 / 18), offset(1e-9));
    double kern = formulas.kern().function().applyAsDouble(new double[] {18});
    assertThat(1 - kern * radius / (inertia / area)).as("far edge").isEqualTo(0, offset(1e-4));
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1000, 1500, WITHIN",
    "1, 1000, 1444, EXCEEDS",
    "1, 1000, 1445, WITHIN",
    "2.25, 1000, 3000, WITHIN",
    "2.26, 1000, 9000, OUTSIDE_KERN",
    "1, 1000, , UNKNOWN"
  })
  void aLoadOffTheMiddleIsHeldAgainstTheGround(
      double inches, double psf, Double mayCarry, Verdict verdict) {
    DugChecks checks = checks(job(4, moved("S1", inches, 0, Optional.empty())), psf, mayCarry);
    OffCentre load = checks.loads().get(0);
    assertThat(load.verdict()).isEqualTo(verdict);
    assertThat(load.kern().inches()).isEqualTo(18 / 8.0, offset(1e-9));
    boolean stops = checks.findings().stream().anyMatch(finding -> finding.kind() == Kind.STOP);
    assertThat(stops).isEqualTo(verdict == Verdict.EXCEEDS || verdict == Verdict.OUTSIDE_KERN);
  }

  /**
   * S1 moved 3 in east and 4 in south: 5 in off. From S2, ten feet east, tape 120 in to the mark.
   */
  @Test
  void tapesLeadBackToTheMarkAndOnToWhatIsNotDug() {
    DugChecks checks = checks(job(4, moved("S1", 3, -4, Optional.empty())), 100, 1e4);
    assertThat(checks.loads().get(0).moved().inches()).isEqualTo(5, offset(1e-9));
    List<DugChecks.Tape> back =
        checks.tapes().stream()
            .filter(tape -> tape.purpose() == DugChecks.Purpose.TRUE_MARK)
            .toList();
    assertThat(back).hasSize(1);
    assertThat(back.get(0).from()).isEqualTo("S2");
    assertThat(back.get(0).reading().inches()).isEqualTo(120, offset(1e-6));
    assertThat(back.get(0).other().inches()).isEqualTo(Math.hypot(117, 4), offset(0.5 / 16 + 1e-9));
    List<DugChecks.Tape> on =
        checks.tapes().stream().filter(tape -> tape.purpose() == DugChecks.Purpose.ON_TO).toList();
    assertThat(on).extracting(DugChecks.Tape::to).containsExactly("S2", "S3");
    assertThat(on.get(1).reading().inches()).isEqualTo(Math.hypot(3, 124), offset(0.5 / 16 + 1e-9));
    assertThat(ids(checks.findings())).contains("dug-off-middle", "dug-moved");
  }

  /** A tube of 12 in stands on its mark in a hole of 18 in that is 3 1/2 in off: 1/2 in over. */
  @Test
  void aTubeThatHasNoRoomOnItsMarkStops() {
    FillJob of = job(4, moved("S1", 3.5, 0, Optional.empty()));
    of.holes.set(0, of.tube(of.holes.get(0), 12, Tube.From.BOTTOM));
    DugChecks checks = checks(of, 100, 1e4);
    assertThat(checks.loads()).as("its concrete stands on the mark").isEmpty();
    assertThat(checks.rooms().get(0).tube().orElseThrow().inches()).isEqualTo(-0.5, offset(1e-9));
    assertThat(ids(checks.findings())).contains("dug-tube-over-rim");
  }

  /**
   * Steel made for 18 in with 3 in of cover is 12 in wide; in 17 in, an inch off: 1 1/2 in left.
   */
  @Test
  void steelOnItsMarkNeedsItsCover() {
    FillJob of = job(4, moved("S1", 1, 0, Optional.of(Length.ofInches(17))));
    of.holes.set(0, of.steel(of.holes.get(0), 4, "#4", 3, Optional.empty()));
    DugChecks checks = checks(of, 100, 1e4);
    assertThat(checks.rooms().get(0).cover().orElseThrow().inches()).isEqualTo(1.5, offset(1e-9));
    assertThat(ids(checks.findings())).contains("dug-cover-thin");
  }

  /** Two holes of 18 in, 30 in apart: 12 in of soil; one dug 6 in towards the other leaves 6 in. */
  @Test
  void littleSoilBetweenHolesIsTold() {
    FillJob of = job(4, moved("S1", 6, 0, Optional.empty()));
    of.holes.set(1, at(of, "S2", 4, 30, 0));
    DugChecks checks = checks(of, 100, 1e4);
    assertThat(checks.betweens().get(0).neighbour()).isEqualTo("S2");
    assertThat(checks.betweens().get(0).soil().inches()).isEqualTo(6, offset(1e-9));
    assertThat(checks.betweens().get(0).planned().inches()).isEqualTo(12, offset(1e-9));
    assertThat(ids(checks.findings())).contains("dug-thin-wall");
  }

  /** Clay carries 1500 psf by the code's table of presumed pressures. */
  /**
   * By the pencil: 36 in from middle to middle, 18 in wide, so a hole may go 18 in below its
   * neighbour's underside. Found 67 in instead of 48 in, it goes 1 in below the line; 2 in nearer,
   * 3 in.
   */
  @Test
  void aHoleFoundTooDeepBesideAShallowerFootingStops() {
    FillJob of = beside(dug("S1", 66.0));
    assertThat(ids(checks(of, 1000, 2000.0).findings())).doesNotContain("dug-below-bearing-line");
    Finding below = below(beside(dug("S1", 67.0)));
    assertThat(below.kind()).isEqualTo(Kind.STOP);
    assertThat(below.subjects()).containsExactly("S1", "S2");
    assertThat(inchesBelow(below)).isEqualTo(1, offset(1e-6));
    Dug deep = dug("S1", 67.0);
    Finding nearer =
        below(
            beside(
                new Dug(
                    "S1",
                    deep.hours(),
                    deep.depth(),
                    deep.diameter(),
                    Optional.of(new Moved(Length.ofInches(2), Length.ZERO)),
                    deep.soil(),
                    deep.water(),
                    deep.rock())));
    assertThat(inchesBelow(nearer)).isEqualTo(3, offset(1e-6));
  }

  private static double inchesBelow(Finding finding) {
    return finding.arguments().get("below") instanceof Argument.Measured measured
            && measured.quantity() instanceof Length length
        ? length.inches()
        : Double.NaN;
  }

  private static Finding below(FillJob of) {
    return checks(of, 1000, 2000.0).findings().stream()
        .filter(finding -> finding.id().equals("dug-below-bearing-line"))
        .findFirst()
        .orElseThrow();
  }

  private static FillJob beside(Dug dug) {
    FillJob of = new FillJob();
    of.dig.field = new Field(List.of(), List.of(dug));
    return of.with(of.hole("S1", 18, 48, 0, 6)).with(at(of, "S2", 0, 36, 0));
  }

  /** Form, post and steel stand on the mark; steel is as wide as it was planned. */
  @Test
  void whatStandsInAHoleStandsOnItsMark() {
    Dug moved = moved("S1", 3, 0, Optional.of(Length.ofInches(22)));
    AsDug asDug =
        asDug(
            job(
                0,
                new Dug(
                    "S1",
                    Optional.empty(),
                    Optional.of(Length.ofInches(54)),
                    moved.diameter(),
                    moved.movedBy(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty())));
    Hole stands = asDug.onMarks().get(0);
    assertThat(stands.centre()).isEqualTo(asDug.planned("S1").centre());
    assertThat(stands.diameter()).isEqualTo(Length.ofInches(22));
    assertThat(stands.depth()).isEqualTo(Length.ofInches(54));
    Hole steel = asDug.forSteel().get(0);
    assertThat(steel.diameter()).isEqualTo(Length.ofInches(18));
    assertThat(steel.depth()).isEqualTo(Length.ofInches(54));
    assertThat(asDug.forSteel().get(1)).isEqualTo(asDug.planned("S2"));
  }

  /** Hours, or anything of its bottom, say that a hole is dug; water and rock on the way do not. */
  @Test
  void aHoleIsDugOnceItsBottomIsKnown() {
    AsDug asDug =
        asDug(
            job(
                4,
                Dug.inHours("S1", new pegbook.measure.Duration(3)),
                dug("S2", 40.0),
                new Dug(
                    "S3",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(Length.ofInches(20)),
                    Optional.empty())));
    assertThat(asDug.dug()).containsExactly("S1");
    assertThat(asDug.soFar())
        .extracting(pegbook.figures.DugSoFar::mark)
        .containsExactly("S1", "S2");
    assertThat(asDug.soFar().get(1).goesOnFrom()).contains(Length.ofInches(40));
  }

  @Test
  void weakerSoilThanTheFootingPressesStops() {
    Dug clay =
        new Dug(
            "S1",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Soil.CLAY),
            Optional.empty(),
            Optional.empty());
    assertThat(ids(checks(job(4, clay), 1501, 3000.0).findings())).contains("dug-soil-weaker");
    assertThat(ids(checks(job(4, clay), 1499, 3000.0).findings()))
        .doesNotContain("dug-soil-weaker");
  }
}
