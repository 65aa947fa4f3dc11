package pegbook.calc.asmarked;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pegbook.calc.asmarked.AsMarked.Move;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Reason;
import pegbook.calc.asmarked.AsMarked.Step;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Verdict;
import pegbook.figures.Finding;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Field;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.Chance;
import pegbook.testing.LayoutJob;

class AsMarkedCalculatorTest {
  private static final List<String> RING =
      IntStream.rangeClosed(1, 8).mapToObj(i -> "S" + i).toList();

  private static LayoutJob octagon() {
    return LayoutJob.of(new Outline.Regular(8, new Length(5))).named("S1", "S4");
  }

  private static MarkedField field(LayoutJob layout, long seed) {
    return new MarkedField(layout, "S1", "S4", seed);
  }

  private static List<String> ids(AsMarked found) {
    return found.findings().stream().map(Finding::id).toList();
  }

  @Property(tries = 60, seed = Chance.SEED)
  void aPlantedMoveIsFoundInDirectionAndSizeWithinItsError(
      @ForAll @IntRange(min = 1, max = 8) int mark,
      @ForAll @DoubleRange(min = 0, max = 6.28) double azimuth,
      @ForAll @DoubleRange(min = 0.03, max = 0.6) double metres,
      @ForAll @IntRange(min = 0, max = 10_000) int seed) {
    double east = metres * Math.sin(azimuth);
    double north = metres * Math.cos(azimuth);
    AsMarked found =
        field(octagon(), seed)
            .move("S" + mark, east, north)
            .tape(MarkedField.ring(RING, 1, 2, 4))
            .calculate();
    Suspect first = found.suspects().get(0);
    assertThat(first.mark()).isEqualTo(Optional.of("S" + mark));
    // One field in a hundred shows a second mistake that is none: then nothing is named.
    assertThat(found.verdict() == Verdict.MARK_MOVED || found.reason().isPresent()).isTrue();
    assertThat(Math.hypot(first.eastMetres() - east, first.northMetres() - north))
        .isLessThan(4.5 * first.deviation().metres());
  }

  @Property(tries = 60, seed = Chance.SEED)
  void aPlantedWrongReadingIsFoundWithinItsError(
      @ForAll @IntRange(min = 0, max = 19) int reading,
      @ForAll @DoubleRange(min = 0.03, max = 1) double metres,
      @ForAll boolean shorter,
      @ForAll @IntRange(min = 0, max = 10_000) int seed) {
    List<Pair> tapes = MarkedField.ring(RING, 1, 2, 4);
    Length error = new Length(shorter ? -metres : metres);
    AsMarked found = field(octagon(), seed).tape(tapes).misread(reading, error).calculate();
    Suspect first = found.suspects().get(0);
    assertThat(first.reading()).isEqualTo(Optional.of(tapes.get(reading)));
    assertThat(first.size().minus(error).abs().metres())
        .isLessThan(4.5 * first.deviation().metres());
  }

  @Property(tries = 25, seed = Chance.SEED)
  void neitherOrderNorTurnNorDirectionOfReadingsMatters(
      @ForAll @IntRange(min = 0, max = 10_000) int seed,
      @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
    MarkedField field =
        field(octagon(), seed).move("S6", 0.02, -0.03).tape(MarkedField.ring(RING, 1, 2, 4));
    AsMarked found = field.calculate();
    List<Field.Taped> readings = new ArrayList<>();
    field
        .readings()
        .forEach(taped -> readings.add(new Field.Taped(taped.to(), taped.from(), taped.tape())));
    Collections.shuffle(readings, new Random(seed));
    LayoutJob turned = octagon();
    turned.azimuth = Optional.of(Angle.ofDegrees(degrees));
    turned.field = new Field(readings, List.of());
    Placement placement = new MarkedField(turned, "S1", "S4", 0).placement();
    AsMarked again = AsMarkedCalculator.calculate(turned.job(), placement, "S1", "S4");
    assertThat(again.verdict()).isEqualTo(found.verdict());
    assertThat(again.suspects().get(0).name()).isEqualTo(found.suspects().get(0).name());
    assertThat(again.test().orElseThrow().squares())
        .isCloseTo(
            found.test().orElseThrow().squares(), org.assertj.core.api.Assertions.within(1e-4));
    assertThat(again.suspects().get(0).size().metres())
        .isCloseTo(
            found.suspects().get(0).size().metres(), org.assertj.core.api.Assertions.within(1e-7));
    assertThat(again.move().map(Move::tapes).map(List::size))
        .isEqualTo(found.move().map(Move::tapes).map(List::size));
  }

  @Property(tries = 80, seed = Chance.SEED)
  void theStepsBringAMarkToItsPlace(
      @ForAll @IntRange(min = 1, max = 8) int mark,
      @ForAll @DoubleRange(min = 0, max = 6.28) double azimuth,
      @ForAll @DoubleRange(min = 0.02, max = 0.1) double metres) {
    AsMarked found =
        field(octagon(), mark)
            .move("S" + mark, metres * Math.sin(azimuth), metres * Math.cos(azimuth))
            .tape(MarkedField.all(RING))
            .calculate();
    if (found.move().isEmpty()) {
      return;
    }
    Placement placement = field(octagon(), 0).placement();
    Suspect suspect = found.suspects().get(0);
    Point planned = placement.mark(found.move().get().mark()).at();
    Point at = planned.plus(suspect.eastMetres(), suspect.northMetres());
    for (Step step : found.move().get().steps()) {
      at = moved(at, step, placement, at);
    }
    // Two steps, each to half a millimetre, and what a straight step misses of a curved way.
    assertThat(at.distanceTo(planned).metres()).isLessThan(0.0012 + metres * metres);
  }

  private static Point moved(Point at, Step step, Placement placement, Point from) {
    Point first = placement.mark(step.first()).at();
    Point second = placement.mark(step.second()).at();
    double metres = step.amount().metres();
    Angle toFirst = from.azimuthTo(first);
    Angle quarter = Angle.ofDegrees(90);
    return switch (step.way()) {
      case TOWARD -> at.moved(toFirst, new Length(metres));
      case AWAY -> at.moved(toFirst, new Length(-metres));
      case ALONG -> at.moved(first.azimuthTo(second), new Length(metres));
      case LEFT -> at.moved(toFirst.minus(quarter), new Length(metres));
      case RIGHT -> at.moved(toFirst.plus(quarter), new Length(metres));
      case FROM_LINE, TO_LINE -> {
        Segment line = new Segment(first, second);
        double side = Math.signum(line.offsetMetres(at));
        double away = step.way() == AsMarked.Way.FROM_LINE ? 1 : -1;
        yield line.at(line.alongMetres(at), line.offsetMetres(at) + side * away * metres);
      }
    };
  }

  @Test
  void aGoodFieldFits() {
    AsMarked found = field(octagon(), 3).tape(MarkedField.ring(RING, 1, 2, 4)).calculate();
    assertThat(found.verdict()).isEqualTo(Verdict.FITS);
    assertThat(found.suspects()).isEmpty();
    assertThat(found.findings()).isEmpty();
    assertThat(found.rows()).hasSize(20);
  }

  @Test
  void nothingTapedIsNothing() {
    AsMarked found = field(octagon(), 3).calculate();
    assertThat(found.isTaped()).isFalse();
    assertThat(found.findings()).isEmpty();
    assertThat(found.verdict()).isEqualTo(Verdict.NOTHING_TAPED);
  }

  @Test
  void aMoveBeyondTheToleranceStopsTheHoleAndASmallOneDoesNot() {
    List<Pair> tapes = MarkedField.all(RING);
    AsMarked far = field(octagon(), 5).move("S6", 0.03, 0).tape(tapes).calculate();
    assertThat(far.findings()).hasSize(1);
    assertThat(far.findings().get(0).id()).isEqualTo("as-marked-moved");
    assertThat(far.findings().get(0).kind()).isEqualTo(Finding.Kind.STOP);
    assertThat(far.findings().get(0).subjects()).containsExactly("S6");
    LayoutJob wide = octagon();
    wide.tolerance = new Length(0.05);
    AsMarked near = field(wide, 5).move("S6", 0.03, 0).tape(tapes).calculate();
    assertThat(ids(near)).containsExactly("as-marked-near");
    assertThat(near.findings().get(0).kind()).isEqualTo(Finding.Kind.NOTE);
  }

  @Test
  void tapesFromTheBaselineAloneNameNothing() {
    List<Pair> tapes = new ArrayList<>(List.of(new Pair("S1", "S4")));
    for (String mark : List.of("S2", "S3", "S5", "S6", "S7", "S8")) {
      tapes.add(new Pair("S1", mark));
      tapes.add(new Pair("S4", mark));
    }
    AsMarked found = field(octagon(), 7).move("S6", 0.05, 0.02).tape(tapes).calculate();
    assertThat(found.verdict()).isEqualTo(Verdict.UNCLEAR);
    assertThat(found.reason()).contains(Reason.BASELINE_ONLY);
    assertThat(found.move()).isEmpty();
    assertThat(found.further()).isNotEmpty();
    assertThat(found.further().get(0).pair().ends("S6")).isTrue();
    assertThat(ids(found)).contains("as-marked-baseline-only", "as-marked-few");
  }

  @Test
  void oneSpareDistanceNamesNothing() {
    LayoutJob square = LayoutJob.of(new Outline.Regular(4, new Length(5))).named("S1", "S2");
    AsMarked found =
        new MarkedField(square, "S1", "S2", 7)
            .move("S4", 0.05, 0.02)
            .tape(MarkedField.all(List.of("S1", "S2", "S3", "S4")))
            .calculate();
    assertThat(found.verdict()).isEqualTo(Verdict.UNCLEAR);
    assertThat(found.reason()).contains(Reason.ONE_REDUNDANCY);
  }

  @Test
  void aTieNamesNothingAndTheDistanceThatIsAskedForBreaksIt() {
    // S6 has two tapes only; one of them is off: is it the reading, or did S6 move across the
    // other?
    List<Pair> tapes = new ArrayList<>(MarkedField.ring(RING, 1, 2, 4));
    tapes.removeIf(pair -> pair.ends("S6"));
    tapes.add(new Pair("S5", "S6"));
    tapes.add(new Pair("S6", "S2"));
    Placement placement = field(octagon(), 0).placement();
    Point at = placement.mark("S6").at();
    Angle across = placement.mark("S5").at().azimuthTo(at).plus(Angle.ofDegrees(90));
    Point moved = at.moved(across, new Length(0.04));
    double east = moved.east() - at.east();
    double north = moved.north() - at.north();
    AsMarked found = field(octagon(), 11).move("S6", east, north).tape(tapes).calculate();
    assertThat(found.verdict()).isEqualTo(Verdict.UNCLEAR);
    assertThat(found.reason().orElseThrow()).isIn(Reason.EQUAL, Reason.TWO_TAPES);
    assertThat(found.further()).isNotEmpty();
    assertThat(found.gaps().twice()).containsExactly("S6");
    found.further().forEach(further -> tapes.add(further.pair()));
    AsMarked again = field(octagon(), 11).move("S6", east, north).tape(tapes).calculate();
    assertThat(again.verdict()).isEqualTo(Verdict.MARK_MOVED);
    assertThat(again.move().orElseThrow().mark()).isEqualTo("S6");
  }

  @Test
  void twoMistakesAreToldAsTwo() {
    AsMarked found =
        field(octagon(), 13)
            .move("S6", 0.05, 0.02)
            .move("S2", -0.03, 0.06)
            .tape(MarkedField.ring(RING, 1, 2, 4))
            .calculate();
    assertThat(found.reason()).contains(Reason.SEVERAL);
    assertThat(found.again()).isNotEmpty();
    assertThat(found.again()).allMatch(pair -> pair.ends("S6") || pair.ends("S2"));
    assertThat(ids(found)).containsAnyOf("as-marked-two", "as-marked-several").hasSize(1);
  }

  @Test
  void doubledReadingsAreAveragedWhenTheyAgreeAndShownWhenNot() {
    MarkedField field = field(octagon(), 17).tape(MarkedField.ring(RING, 1, 2, 4));
    Field.Taped first = field.readings().get(0);
    Field.Taped second = field.readings().get(1);
    Length more = Length.ofMillimetres(2);
    field.readings().add(new Field.Taped(first.to(), first.from(), first.tape().plus(more)));
    field
        .readings()
        .add(new Field.Taped(second.from(), second.to(), second.tape().plus(new Length(0.3))));
    AsMarked found = field.calculate();
    assertThat(found.rows()).hasSize(19);
    assertThat(found.rows().get(0).readings()).isEqualTo(2);
    assertThat(found.rows().get(0).taped().minus(first.tape()).millimetres())
        .isCloseTo(1, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(found.doubled()).hasSize(1);
    assertThat(found.doubled().get(0).least()).isEqualTo(second.tape());
    assertThat(found.doubled().get(0).most()).isEqualTo(second.tape().plus(new Length(0.3)));
    assertThat(ids(found)).contains("as-marked-doubled");
  }

  @Test
  void distancesThatCannotMeetAreShown() {
    MarkedField field = field(octagon(), 19).tape(MarkedField.ring(RING, 1, 2, 4));
    // S1 to S3 longer than by way of S2.
    int index = 8;
    assertThat(field.readings().get(index).from()).isEqualTo("S1");
    AsMarked found = field.misread(index, new Length(1)).calculate();
    assertThat(found.triangles()).hasSize(1);
    assertThat(found.triangles().get(0).corner()).isEqualTo("S2");
    assertThat(found.triangles().get(0).longest()).isEqualTo(new Pair("S1", "S3"));
    assertThat(ids(found)).contains("as-marked-triangle", "as-marked-misread");
  }

  @Test
  void marksWithTooFewTapesAreNamedWithTheDistancesThatAreMissing() {
    List<Pair> tapes = new ArrayList<>(MarkedField.all(List.of("S1", "S2", "S3", "S4", "S5")));
    tapes.add(new Pair("S1", "S6"));
    tapes.add(new Pair("S1", "S7"));
    tapes.add(new Pair("S3", "S7"));
    AsMarked found = field(octagon(), 23).tape(tapes).calculate();
    assertThat(found.gaps().never()).containsExactly("S8");
    assertThat(found.gaps().once()).containsExactly("S6");
    assertThat(found.gaps().twice()).containsExactly("S7");
    assertThat(found.gaps().missing()).hasSizeLessThanOrEqualTo(6);
    assertThat(ids(found)).containsExactly("as-marked-once", "as-marked-few");
    List<Pair> more = new ArrayList<>(tapes);
    more.addAll(found.gaps().missing());
    AsMarked again = field(octagon(), 23).tape(more).calculate();
    assertThat(again.gaps().missing()).isEmpty();
  }
}
