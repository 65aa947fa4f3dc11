package pegbook.calc.safepegs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import pegbook.calc.safepegs.SafePegs.Crossing;
import pegbook.calc.safepegs.SafePegs.Find;
import pegbook.calc.safepegs.SafePegs.Peg;
import pegbook.calc.safepegs.SafePegs.PegString;
import pegbook.calc.safepegs.SafePegs.Setting;
import pegbook.calc.safepegs.SafePegs.Tape;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Swing;
import pegbook.job.Feature;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/** Pegs of made-up jobs with their heaps, and of figures that can be checked by hand. */
class SafePegsCalculatorTest {
  /** Few marks and many, rings, grids, free figures, with heaps, tarps and features. */
  private static final List<PegScene> SCENES =
      IntStream.of(0, 1, 2, 4, 6, 11, 16, 20, 25, 28, 32, 41, 44).mapToObj(PegScene::made).toList();

  static Stream<PegScene> scenes() {
    return SCENES.stream();
  }

  private static LayoutJob hexagon() {
    LayoutJob layout = LayoutJob.of(new Outline.Regular(6, new Length(4)));
    layout.azimuth = Optional.of(pegbook.measure.Angle.ZERO);
    return layout;
  }

  private static List<String> findings(PegScene scene) {
    return scene.pegs().findings().stream().map(Finding::id).toList();
  }

  /** By JTS: outside holes with their margin, heaps, strips, lot, floor, features. */
  @ParameterizedTest
  @MethodSource("scenes")
  void pegsStandClearOfEverything(PegScene scene) {
    PegRules rules = scene.pegs().rules();
    for (Peg peg : scene.pegs().pegs()) {
      Geometry place = PegScene.point(peg.peg().at());
      String name = peg.peg().id();
      for (Hole hole : scene.holes()) {
        assertThat(place.distance(PegScene.point(hole.centre())))
            .as(name + " and hole " + hole.mark())
            .isGreaterThanOrEqualTo(hole.diameter().metres() / 2 + rules.hole().metres());
      }
      for (SpoilHeap heap : scene.heaps()) {
        assertThat(place.distance(PegScene.point(heap.centre())))
            .as(name + " and heap " + heap.holes())
            .isGreaterThanOrEqualTo(heap.radius().metres() + rules.heap().metres());
        for (String mark : heap.holes()) {
          assertThat(place.distance(PegScene.line(scene.mark(mark), heap.centre())))
              .as(name + " and the strip of " + mark)
              .isGreaterThanOrEqualTo(rules.path().metres() / 2);
        }
      }
      for (Feature feature : scene.job().site().features()) {
        assertThat(place.distance(PegScene.shape(feature)))
            .as(name + " and " + feature.name())
            .isGreaterThanOrEqualTo(feature.keepClear().map(Length::metres).orElse(0.0));
      }
      scene
          .job()
          .site()
          .boundary()
          .ifPresent(lot -> assertThat(PegScene.shape(lot).contains(place)).as(name).isTrue());
      boolean under = PegScene.shape(scene.placement().outline()).distance(place) < 1e-9;
      assertThat(under).as(name).isEqualTo(scene.pegs().underFloor().contains(name));
    }
  }

  /** By walking along the tape: nothing fixed within reach, no cone higher than the tape. */
  private static boolean isSeen(PegScene scene, Point peg, Point mark, double heightMetres) {
    Geometry way = PegScene.line(peg, mark);
    double passing = scene.pegs().rules().passing().metres();
    boolean fixed =
        scene.job().site().features().stream()
            .filter(feature -> feature.kind() == Feature.Kind.OBJECT)
            .anyMatch(feature -> way.distance(PegScene.shape(feature)) < passing - 1e-9);
    boolean reached =
        peg.distanceTo(mark).metres() <= scene.job().layout().tape().length().metres();
    return reached
        && !fixed
        && scene.heaps().stream().noneMatch(heap -> rises(heap, peg, mark, heightMetres));
  }

  private static boolean rises(SpoilHeap heap, Point from, Point to, double heightMetres) {
    int steps = 3000;
    for (int i = 0; i <= steps; i++) {
      double part = (double) i / steps;
      double east = from.east() + part * (to.east() - from.east());
      double north = from.north() + part * (to.north() - from.north());
      double off = Math.hypot(east - heap.centre().east(), north - heap.centre().north());
      double cone = heap.height().metres() * (1 - off / heap.radius().metres());
      if (cone > heightMetres + 2e-3) {
        return true;
      }
    }
    return false;
  }

  @ParameterizedTest
  @Tag("long")
  @MethodSource("scenes")
  void threeSeeEveryMarkOrAFindingSaysWhyNot(PegScene scene) {
    double height = scene.pegs().rules().tape().metres();
    List<Point> taped =
        scene.pegs().pegs().stream()
            .filter(peg -> peg.peg().taped())
            .map(peg -> peg.peg().at())
            .toList();
    long seeingAll =
        taped.stream()
            .filter(
                peg ->
                    scene.placement().marks().stream()
                        .allMatch(mark -> isSeen(scene, peg, mark.at(), height)))
            .count();
    if (scene.pegs().allSeen()) {
      assertThat(seeingAll).isGreaterThanOrEqualTo(3);
      assertThat(findings(scene)).doesNotContain("safe-pegs-split", "safe-pegs-few");
    } else {
      assertThat(findings(scene)).containsAnyOf("safe-pegs-split", "safe-pegs-few");
    }
    for (Find find : scene.pegs().finds()) {
      List<Tape> tapes = new ArrayList<>(List.of(find.first(), find.second()));
      find.check().ifPresent(tapes::add);
      tapes.forEach(
          tape ->
              assertThat(isSeen(scene, scene.peg(tape.name()), scene.mark(find.mark()), height))
                  .as(find.mark() + " from " + tape.name())
                  .isTrue());
      boolean few =
          scene.pegs().findings().stream()
              .anyMatch(
                  finding ->
                      finding.id().equals("safe-pegs-few")
                          && finding.subjects().contains(find.mark()));
      assertThat(find.check().isPresent()).as(find.mark()).isNotEqualTo(few);
    }
  }

  /** Every printed distance within half a division of the places' own, by JTS. */
  @ParameterizedTest
  @MethodSource("scenes")
  void printedDistancesAreThoseOfThePlaces(PegScene scene) {
    for (Find find : scene.pegs().finds()) {
      isTaped(scene, find.first(), scene.mark(find.mark()));
      isTaped(scene, find.second(), scene.mark(find.mark()));
      find.check().ifPresent(check -> isTaped(scene, check, scene.mark(find.mark())));
    }
    for (Peg peg : scene.pegs().pegs()) {
      peg.check().ifPresent(check -> isTaped(scene, check, peg.peg().at()));
      assertThat(scene.set(peg.setting()).distanceTo(peg.peg().at()).metres())
          .as(peg.peg().id() + " set as the sheet says")
          .isLessThan(peg.setting() instanceof Setting.InLine ? scene.halfDivisionMetres() : 1e-5);
    }
  }

  private static void isTaped(PegScene scene, Tape tape, Point to) {
    double metres = PegScene.point(scene.place(tape.name())).distance(PegScene.point(to));
    assertThat(tape.length().metres())
        .as(tape.name())
        .isCloseTo(metres, within(scene.halfDivisionMetres()));
  }

  /**
   * Two circles with the printed radii cross at the mark, on the printed side, as weakly as said.
   */
  @ParameterizedTest
  @MethodSource("scenes")
  void theTapesFindEveryCentreAgain(PegScene scene) {
    for (Find find : scene.pegs().finds()) {
      Point mark = scene.mark(find.mark());
      double angle =
          Swing.angleAt(mark, scene.peg(find.first().name()), scene.peg(find.second().name()))
              .degrees();
      assertThat(find.crossing().degrees()).isCloseTo(angle, within(1e-6));
      assertThat(find.weak()).isEqualTo(angle < 30 - 1e-4 || angle > 150 + 1e-4);
      if (!find.weak()) {
        // Half a division in each tape, crossing at 30 degrees at worst: 1 / sin 15 of it.
        assertThat(scene.swung(find.first(), find.second(), find.left()).distanceTo(mark).metres())
            .as(find.mark())
            .isLessThan(scene.halfDivisionMetres() * 3.9);
      }
    }
  }

  /** Strings from peg to peg run over their marks, and the two named cross at the centre. */
  @ParameterizedTest
  @MethodSource("scenes")
  void stringsCrossOverTheCentres(PegScene scene) {
    double half = scene.halfDivisionMetres();
    for (PegString string : scene.pegs().strings()) {
      Geometry way = PegScene.line(scene.peg(string.first()), scene.peg(string.second()));
      isTaped(scene, new Tape(string.first(), string.length()), scene.peg(string.second()));
      for (Tape over : string.over()) {
        assertThat(way.distance(PegScene.point(scene.mark(over.name())))).isLessThan(half);
        isTaped(scene, new Tape(string.first(), over.length()), scene.mark(over.name()));
      }
      assertThat(
              isSeen(
                  scene,
                  scene.peg(string.first()),
                  scene.peg(string.second()),
                  scene.pegs().rules().string().metres()))
          .isTrue();
    }
    for (Crossing crossing : scene.pegs().crossings()) {
      PegString one = scene.pegs().strings().get(crossing.one());
      PegString other = scene.pegs().strings().get(crossing.other());
      Geometry at =
          PegScene.line(scene.peg(one.first()), scene.peg(one.second()))
              .intersection(PegScene.line(scene.peg(other.first()), scene.peg(other.second())));
      assertThat(at.distance(PegScene.point(scene.mark(crossing.mark()))))
          .as(crossing.mark())
          .isLessThan(3 * half);
      assertThat(crossing.angle().degrees()).isBetween(30 - 1e-4, 90.0);
    }
    long crossed = scene.pegs().crossings().size();
    long without =
        scene.pegs().findings().stream()
            .filter(
                finding ->
                    finding.id().equals("safe-pegs-no-string")
                        || finding.id().equals("safe-pegs-many"))
            .mapToLong(finding -> finding.subjects().size())
            .sum();
    assertThat(crossed + without).isEqualTo(scene.placement().marks().size());
  }

  @Test
  void scenesShowEveryCase() {
    assertThat(SCENES.stream().filter(scene -> scene.pegs().allSeen()).count()).isPositive();
    assertThat(SCENES.stream().flatMap(scene -> findings(scene).stream()))
        .contains("safe-pegs-split", "safe-pegs-many");
    assertThat(
            SCENES.stream()
                .flatMap(scene -> scene.pegs().pegs().stream())
                .map(peg -> peg.setting().getClass().getSimpleName()))
        .contains("Swing", "InLine", "Meeting");
  }

  /**
   * Plane geometry: the sides of a hexagon, drawn out, cross at the points of a six-pointed star,
   * √3 times as far from the centre as the corners; each corner lies under two of them, which cross
   * at 60 degrees there.
   */
  @Test
  void aHexagonWithoutAPierGetsAStar() {
    PegScene scene = PegScene.of(hexagon(), Optional.empty());
    double corner = scene.mark("S1").distanceTo(Point.ORIGIN).metres();
    assertThat(scene.pegs().pegs()).hasSize(6);
    assertThat(scene.pegs().strings()).hasSize(6);
    for (Peg peg : scene.pegs().pegs()) {
      assertThat(peg.setting()).isInstanceOf(Setting.Meeting.class);
      assertThat(peg.peg().at().distanceTo(Point.ORIGIN).metres())
          .isCloseTo(corner * Math.sqrt(3), within(1e-9));
    }
    assertThat(scene.pegs().crossings())
        .hasSize(6)
        .allSatisfy(crossing -> assertThat(crossing.angle().degrees()).isCloseTo(60, within(1e-6)));
    assertThat(findings(scene)).isEmpty();
  }

  /** Rows and columns: three and four strings, two pegs each, square to one another. */
  @Test
  void aGridSharesItsStringsAlongTheRows() {
    LayoutJob layout = LayoutJob.of(new Outline.Rectangle(new Length(7.5), new Length(5), 4, 3));
    PegScene scene = PegScene.of(layout, Optional.empty());
    assertThat(scene.pegs().strings()).hasSize(7);
    assertThat(scene.pegs().strings().stream().map(string -> string.over().size()))
        .containsExactlyInAnyOrder(4, 4, 4, 3, 3, 3, 3);
    assertThat(scene.pegs().crossings())
        .allSatisfy(crossing -> assertThat(crossing.angle().degrees()).isCloseTo(90, within(1e-6)));
  }

  @Test
  void lowHeapsBlockNothingAndHighOnesAreNamed() {
    LayoutJob layout = hexagon();
    assertThat(PegScene.of(layout, Optional.of(0.29)).pegs().allSeen()).isTrue();
    PegScene high = PegScene.of(layout, Optional.of(3.0));
    double height = high.pegs().rules().tape().metres();
    high.pegs()
        .finds()
        .forEach(
            find ->
                assertThat(
                        isSeen(high, high.peg(find.first().name()), high.mark(find.mark()), height))
                    .isTrue());
  }

  private static Polygon square(double half) {
    return new Polygon(
        List.of(
            new Point(-half, -half),
            new Point(-half, half),
            new Point(half, half),
            new Point(half, -half)));
  }

  /** A lot that ends at the floor's edge leaves no room outside; the figure's inside remains. */
  @Test
  void aTightLotUsesTheGroundUnderTheFloor() {
    LayoutJob layout = LayoutJob.of(new Outline.Rectangle(new Length(8), new Length(8), 2, 2));
    layout.azimuth = Optional.of(pegbook.measure.Angle.ofDegrees(315));
    layout.boundary = Optional.of(square(4.2));
    PegScene scene = PegScene.of(layout, Optional.empty());
    assertThat(scene.pegs().underFloor()).isNotEmpty();
    scene.pegs().pegs().forEach(peg -> assertThat(square(4.2).contains(peg.peg().at())).isTrue());
  }

  /** Where zones cover everything, the finding says so and nothing is printed as a peg. */
  @Test
  void aLotWithoutAnyRoomIsSaid() {
    LayoutJob layout = LayoutJob.of(new Outline.Rectangle(new Length(2), new Length(2), 2, 2));
    layout.azimuth = Optional.of(pegbook.measure.Angle.ofDegrees(315));
    layout.boundary = Optional.of(square(1.1));
    PegScene scene = PegScene.of(layout, Optional.empty());
    assertThat(scene.pegs().pegs()).isEmpty();
    assertThat(scene.pegs().finds()).isEmpty();
    assertThat(scene.pegs().needs()).isEmpty();
    assertThat(scene.pegs().tasks()).isEmpty();
    assertThat(findings(scene)).containsExactly("safe-pegs-no-room", "safe-pegs-no-string");
  }

  /** A long building through the middle: no peg sees both halves. */
  @Test
  void aBuildingBetweenTheMarksSplitsThePegs() {
    LayoutJob layout = LayoutJob.of(new Outline.Rectangle(new Length(8), new Length(8), 2, 2));
    layout.azimuth = Optional.of(pegbook.measure.Angle.ofDegrees(315));
    layout.feature(
        "long wall",
        Feature.Kind.OBJECT,
        new Feature.Shape.Line(new pegbook.geometry.Segment(new Point(-90, 0), new Point(90, 0))),
        Optional.empty());
    PegScene scene = PegScene.of(layout, Optional.empty());
    assertThat(scene.pegs().allSeen()).isFalse();
    Finding finding = scene.pegs().findings().get(0);
    assertThat(finding.id()).isEqualTo("safe-pegs-split");
    assertThat(finding.arguments().get("features").toString()).contains("long wall");
    assertThat(scene.pegs().finds()).allMatch(find -> find.check().isPresent());
  }

  @Test
  void theSameJobGivesTheSamePegs() {
    assertThat(PegScene.made(25).pegs()).isEqualTo(SCENES.get(8).pegs());
  }

  @Test
  void pegsAndNailsAreOrderedUpAndWorkIsARange() {
    SafePegs pegs = PegScene.of(hexagon(), Optional.empty()).pegs();
    assertThat(pegs.needs().get(0).amount()).isEqualTo(6);
    assertThat(pegs.needs().get(0).order()).isEqualTo(7);
    double longest = pegs.strings().get(0).length().metres();
    assertThat(pegs.needs().get(2).order()).isEqualTo(Math.ceil(2 * (longest + 0.6)));
    assertThat(pegs.tasks().get(0).least()).isLessThan(pegs.tasks().get(0).most());
  }
}
