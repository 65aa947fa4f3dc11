package pegbook.calc.levels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import pegbook.calc.depthtargets.DepthTargets;
import pegbook.calc.depthtargets.DepthTargetsCalculator;
import pegbook.calc.levels.Levels.LevelFloor;
import pegbook.calc.levels.Levels.Row;
import pegbook.figures.DatumLine;
import pegbook.figures.Finding;
import pegbook.geometry.Point;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.Chance;
import pegbook.testing.DigJob;

class LevelsCalculatorTest {
  private static Levels levels(DigJob of) {
    Job job = of.job();
    DepthTargets targets = DepthTargetsCalculator.calculate(job, of.placement());
    return LevelsCalculator.calculate(job, of.placement(), targets.holes(), targets.datum());
  }

  private static DigJob withLevels(Map<String, Double> inches) {
    DigJob job = new DigJob().frostInches(42);
    inches.forEach((mark, level) -> job.levels.put(mark, Length.ofInches(level)));
    return job;
  }

  private static DigJob sixLevels(double... inches) {
    Map<String, Double> levels = new LinkedHashMap<>();
    for (int i = 0; i < inches.length; i++) {
      levels.put("S" + (i + 1), inches[i]);
    }
    return withLevels(levels);
  }

  private static Optional<Floor> floor(double topInches, Optional<Length> buildUp) {
    return Optional.of(
        new Floor(
            Floor.Use.PRIVATE_DECK,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Length.ofInches(topInches)),
            buildUp));
  }

  private static List<String> found(Levels levels) {
    return levels.findings().stream().map(Finding::id).toList();
  }

  /** A finish is the bare bottom below the ground, or the top of the concrete above it. */
  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/levels/rod-readings.csv", numLinesToSkip = 1)
  void rodReadingsOfTheNavysText(
      String name, double toGround, double change, double toFinish, double printed) {
    DigJob job = new DigJob();
    job.units = UnitSystem.METRIC;
    job.division = Length.ofMillimetres(1);
    job.levels.put("S1", new Length(-toGround));
    job.supportGravel = Length.ZERO;
    if (change < 0) {
      job.supportDepth = Optional.of(new Length(-change));
    } else {
      job.supportTop = new Length(change);
    }
    Row row = withLineAtBenchmark(job).rows().get(0);

    assertThat(row.toGround().metres()).isEqualTo(toGround, within(printed / 2));
    Length finish = change < 0 ? row.toBottom() : row.toTop();
    assertThat(finish.metres()).as(name).isEqualTo(toFinish, within(printed / 2));
  }

  /** Levels with the line of sight at the benchmark's own height. */
  private static Levels withLineAtBenchmark(DigJob of) {
    Job job = of.job();
    DepthTargets targets = DepthTargetsCalculator.calculate(job, of.placement());
    Length line = targets.datum().orElseThrow().height();
    var holes =
        targets.holes().stream()
            .map(
                hole ->
                    new pegbook.figures.Hole(
                        hole.mark(),
                        hole.kind(),
                        hole.centre(),
                        hole.diameter(),
                        hole.depth(),
                        hole.gravel(),
                        hole.top(),
                        hole.rule(),
                        hole.tube(),
                        hole.steel(),
                        hole.level(),
                        hole.datumToUnderside().map(depth -> depth.minus(line)),
                        hole.widenings()))
            .toList();
    DatumLine sight = new DatumLine(Length.ZERO, "S1", Length.ZERO, List.of());
    return LevelsCalculator.calculate(job, of.placement(), holes, Optional.of(sight));
  }

  /** The shortening of a parabola, 8 a² / (3 L), of published tapes. */
  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/levels/sag.csv", numLinesToSkip = 1)
  void sagOfPublishedTapes(
      String name,
      double pull,
      int spans,
      double span,
      double last,
      double published,
      double recomputed) {
    double shortening = -(spans * shortening(span, pull) + shortening(last, pull));

    assertThat(shortening).as(name).isEqualTo(recomputed, within(0.5e-5));
    assertThat(shortening).as(name).isEqualTo(published, within(0.5e-2));
  }

  private static double shortening(double spanFeet, double pull) {
    double[] inputs = {0.028, spanFeet, pull};
    double sagFeet =
        LevelsFormulas.in(UnitSystem.IMPERIAL).sag().function().applyAsDouble(inputs) / 12;
    return 8 * sagFeet * sagFeet / (3 * spanFeet);
  }

  /** The same string in both systems: 1 lb/1000 ft and 10 lbf over 30 ft. */
  @Test
  void sagIsTheSameInBothSystems() {
    double imperial =
        LevelsFormulas.in(UnitSystem.IMPERIAL)
            .sag()
            .function()
            .applyAsDouble(new double[] {0.001, 30, 10});
    double metric =
        LevelsFormulas.in(UnitSystem.METRIC)
            .sag()
            .function()
            .applyAsDouble(
                new double[] {0.001 * 0.45359237 / 0.3048, 30 * 0.3048, 10 * 4.4482216152605});

    assertThat(metric).isEqualTo(imperial * 25.4, offset(1e-9));
  }

  @Test
  void aMarkWithoutALevelHasNoRow() {
    Levels levels = levels(sixLevels(0, -1.5, -3));

    assertThat(levels.rows()).extracting(Row::mark).containsExactly("S1", "S2", "S3");
    assertThat(levels.unknown()).containsExactly("S4", "S5", "S6");
  }

  @Test
  void withoutLevelsThereIsNothing() {
    Levels levels = levels(new DigJob());

    assertThat(levels.line()).isEmpty();
    assertThat(levels.rows()).isEmpty();
    assertThat(levels.sag()).isEmpty();
    assertThat(levels.floor()).isEmpty();
    assertThat(levels.unknown()).hasSize(6);
    assertThat(levels.workings()).isEmpty();
  }

  /** Line 6 in over S1 at 0: 6 in. A pier's top of 36 in over ground 1 in down reads 29 in up. */
  @Test
  void topsOverTheLineReadUpwards() {
    DigJob job = sixLevels(0, 0, 0, 0, 0, 0).pier("P1", Point.ORIGIN, Optional.empty());
    job.levels.put("P1", Length.ofInches(-1));
    Levels levels = levels(job);

    assertThat(levels.rows().get(6).toTop().inches()).isEqualTo(-29, offset(1e-9));
    assertThat(levels.rows().get(0).toTop().inches()).isEqualTo(0, offset(1e-9));
  }

  @Test
  void postsReachOneLevel() {
    DigJob job = sixLevels(0, -1.5, -3, -2.5, -1, 0.5);
    job.floor = floor(20, Optional.of(Length.ofInches(9.25)));
    LevelFloor floor = levels(job).floor().orElseThrow();

    assertThat(floor.highest()).isEqualTo("S6");
    assertThat(floor.height().inches()).isEqualTo(20.5, offset(1e-9));
    // The line stands at 7 in: 0.5 and 6, set up to a whole inch.
    assertThat(floor.overLine().inches()).isEqualTo(13.5, offset(1e-9));
    assertThat(floor.addToReading().inches()).isEqualTo(4.25, offset(1e-9));
    // 20.5 up to the floor, less 3 in down, less 6 in of concrete: 17.5; less 9.25.
    assertThat(floor.posts().get(2).toFloor().inches()).isEqualTo(17.5, offset(1e-9));
    assertThat(floor.posts().get(2).cut().orElseThrow().inches()).isEqualTo(8.25, offset(1e-9));
  }

  @Test
  void aFloorOverUnknownGroundHasNoHeight() {
    DigJob job = sixLevels(0, -1.5, -3);
    job.floor = floor(20, Optional.empty());
    Levels levels = levels(job);

    assertThat(levels.floor()).isEmpty();
    assertThat(found(levels)).contains("levels-floor-unknown");
    assertThat(levels.findings())
        .anySatisfy(finding -> assertThat(finding.subjects()).containsExactly("S4", "S5", "S6"));
  }

  @Test
  void concreteThatReachesTheFloorLeavesNoPost() {
    DigJob job = sixLevels(0, -20, 0, 0, 0, 0);
    job.floor = floor(6, Optional.empty());

    Finding finding =
        levels(job).findings().stream()
            .filter(each -> each.id().equals("levels-no-post"))
            .findFirst()
            .orElseThrow();
    assertThat(finding.subjects()).containsExactly("S1", "S3", "S4", "S5", "S6");
  }

  @Test
  void aLineOverheadAndAMissingBenchmarkAreFound() {
    DigJob steep = sixLevels(0, -30, -70, -100, -70, -30);

    assertThat(found(levels(steep))).containsExactly("levels-no-benchmark", "levels-line-high");
    assertThat(levels(steep).findings().get(1).subjects()).containsExactly("S3", "S4", "S5");
    assertThat(found(levels(sixLevels(0, -1, -2, -3, -2, -1))))
        .containsExactly("levels-no-benchmark");
  }

  /** Whatever the ground: tops, posts and build-up add up to one level floor. */
  @Property(tries = 200, seed = Chance.SEED)
  void everyPostEndsAtTheFloor(
      @ForAll @Size(6) List<@DoubleRange(min = -60, max = 20) Double> inches,
      @ForAll @DoubleRange(min = 60, max = 120) double top) {
    DigJob job = sixLevels(inches.stream().mapToDouble(Double::doubleValue).toArray());
    job.floor = floor(top, Optional.of(Length.ofInches(11)));
    Levels levels = levels(job);
    LevelFloor floor = levels.floor().orElseThrow();
    double half = job.division.inches() / 2 + 1e-9;
    for (int i = 0; i < 6; i++) {
      double concrete = inches.get(i) + job.supportTop.inches();
      Levels.Post post = floor.posts().get(i);
      assertThat(concrete + post.toFloor().inches())
          .isEqualTo(floor.height().inches(), offset(half));
      assertThat(concrete + post.cut().orElseThrow().inches() + 11)
          .isEqualTo(floor.height().inches(), offset(half));
      // What is cut by the reading of a real top is what is cut by plan.
      assertThat(levels.rows().get(i).toTop().plus(floor.addToReading()).inches())
          .isEqualTo(post.cut().orElseThrow().inches(), offset(2 * half));
    }
  }

  /** Another benchmark changes heights, and not one reading, post or excess. */
  @Property(tries = 100, seed = Chance.SEED)
  void anotherBenchmarkChangesNoReading(
      @ForAll @Size(6) List<@DoubleRange(min = -60, max = 20) Double> inches,
      @ForAll @IntRange(min = -40, max = 40) int shift) {
    DigJob one = sixLevels(inches.stream().mapToDouble(level -> set(level)).toArray());
    DigJob other = sixLevels(inches.stream().mapToDouble(level -> set(level) + shift).toArray());
    one.floor = floor(80, Optional.empty());
    other.floor = one.floor;
    Levels here = levels(one);
    Levels there = levels(other);

    for (int i = 0; i < 6; i++) {
      Row row = here.rows().get(i);
      Row moved = there.rows().get(i);
      assertThat(moved.toGround().metres()).isEqualTo(row.toGround().metres(), offset(1e-9));
      assertThat(moved.toBottom().metres()).isEqualTo(row.toBottom().metres(), offset(1e-9));
      assertThat(moved.toTop().metres()).isEqualTo(row.toTop().metres(), offset(1e-9));
      assertThat(there.floor().orElseThrow().posts().get(i).toFloor().metres())
          .isEqualTo(here.floor().orElseThrow().posts().get(i).toFloor().metres(), offset(1e-9));
    }
  }

  private static double set(double inches) {
    return Math.rint(inches * 16) / 16;
  }

  /** Propped as told, the line sags by no more than half a division anywhere. */
  @Property(tries = 200, seed = Chance.SEED)
  void proppedAsToldTheLineSagsTooLittleToSee(
      @ForAll @DoubleRange(min = 4, max = 90) double acrossFeet,
      @ForAll @IntRange(min = 2, max = 32) int parts) {
    DigJob job = sixLevels(0, 0, 0, 0, 0, 0);
    job.acrossCorners = Length.ofFeet(acrossFeet);
    job.division = Length.ofInches(1.0 / parts);
    LineSag sag = levels(job).sag().orElseThrow();

    assertThat(sag.propEvery().metres()).isLessThanOrEqualTo(sag.longestSpan().metres() + 1e-9);
    Length between = LevelsFormulas.in(UnitSystem.IMPERIAL).sagOver(sag.propEvery()).asLength();
    assertThat(between.metres()).isLessThanOrEqualTo(sag.allowed().metres() + 1e-9);
    if (sag.spans() > 1) {
      assertThat(sag.sag().isMoreThan(sag.allowed()) || sag.span().isMoreThan(sag.longestSpan()))
          .isTrue();
    }
  }
}
