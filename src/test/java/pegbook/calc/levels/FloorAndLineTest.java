package pegbook.calc.levels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.depthtargets.DepthTargetsCalculator;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.DigJob;

/** The floor over the ground, the posts under it, and lines that are high or hang through. */
class FloorAndLineTest {
  private static Levels levels(DigJob of) {
    Job job = of.job();
    pegbook.calc.depthtargets.DepthTargets targets =
        DepthTargetsCalculator.calculate(job, of.placement());
    return LevelsCalculator.calculate(job, of.placement(), targets.holes(), targets.datum());
  }

  private static DigJob flat(double lowest) {
    DigJob job = new DigJob().frostInches(42);
    for (int i = 1; i <= 6; i++) {
      job.levels.put("S" + i, i == 4 ? Length.ofInches(lowest) : Length.ZERO);
    }
    return job;
  }

  private static DigJob floor(DigJob job, double top, Optional<Length> buildUp) {
    job.floor =
        Optional.of(
            new Floor(
                Floor.Use.PRIVATE_DECK,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Length.ofInches(top)),
                buildUp));
    return job;
  }

  private static Optional<Finding> found(Levels levels, String id) {
    return levels.findings().stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** A line is high over the ground from 5 ft on, or 1.5 m; it is dropped by 4 ft, or 1.2 m. */
  @ParameterizedTest
  @CsvSource({"IMPERIAL, 1.524, 1.2192", "METRIC, 1.5, 1.2"})
  void aHighLineIsNamed(UnitSystem units, double reach, double drop) {
    DigJob job = flat(-120);
    job.units = units;
    Finding high = found(levels(job), "levels-line-high").orElseThrow();
    assertThat(high.subjects()).containsExactly("S4");
    assertThat(metres(high, "reach")).isCloseTo(reach, within(1e-9));
    assertThat(metres(high, "drop")).isCloseTo(drop, within(1e-9));
    assertThat(found(levels(flat(-12)), "levels-line-high")).isEmpty();
  }

  private static double metres(Finding finding, String name) {
    return ((Length) ((Argument.Measured) finding.arguments().get(name)).quantity()).metres();
  }

  /**
   * 40 in over the highest ground at a support; the concrete stands 6 in, so 34 in to the floor,
   * and 19 in of post under 15 in of floor; 8 in more where the ground lies 8 in lower.
   */
  @Test
  void postsFillWhatTheFloorLeaves() {
    Levels levels = levels(floor(flat(-8), 40, Optional.of(Length.ofInches(15))));
    PostCheck.of(levels).post("S1", 34, 19).post("S4", 42, 27);
    assertThat(levels.workings())
        .extracting(each -> each.formula().id())
        .contains("levels.cut", "levels.to-floor");
    assertThat(levels.postPieces("6x6"))
        .extracting(piece -> Math.round(piece.length().inches() * 4) / 4.0)
        .containsExactlyInAnyOrder(19.0, 27.0);
  }

  /** Reads posts by their marks. */
  private record PostCheck(List<Levels.Post> posts) {
    static PostCheck of(Levels levels) {
      return new PostCheck(levels.floor().orElseThrow().posts());
    }

    PostCheck post(String mark, double toFloor, double cut) {
      Levels.Post post =
          posts.stream().filter(each -> each.mark().equals(mark)).findFirst().orElseThrow();
      assertThat(post.toFloor().inches()).isCloseTo(toFloor, within(1e-6));
      assertThat(post.cut().orElseThrow().inches()).isCloseTo(cut, within(1e-6));
      return this;
    }
  }

  /** Concrete of 6 in under a floor of 20 in: no room for a post at S1, 2 in at S4. */
  @Test
  void aPostWithoutRoomIsAskedAboutAndNotSawn() {
    Levels levels = levels(floor(flat(-8), 20, Optional.of(Length.ofInches(15))));
    Finding none = found(levels, "levels-no-post").orElseThrow();
    assertThat(none.subjects()).containsExactly("S1", "S2", "S3", "S5", "S6");
    assertThat(levels.postPieces("6x6")).hasSize(1);
    assertThat(levels.postPieces("6x6").get(0).marks()).containsExactly("S4");
    // Without a build-up nothing is sawn, and there is room for something.
    Levels open = levels(floor(flat(-8), 20, Optional.empty()));
    assertThat(found(open, "levels-no-post")).isEmpty();
    assertThat(open.postPieces("6x6")).isEmpty();
  }

  /** A pier under the floor decides its height like a support; one outside only gets its own. */
  @Test
  void aPierOutsideDoesNotLiftTheFloor() {
    DigJob inside = floor(flat(0), 40, Optional.empty()).pier("P1", Point.ORIGIN, Optional.empty());
    inside.levels.put("P1", Length.ofInches(10));
    assertThat(levels(inside).floor().orElseThrow().height().inches()).isCloseTo(50, within(1e-6));
    DigJob outside =
        floor(flat(0), 40, Optional.empty()).pier("P1", new Point(4, 0), Optional.empty());
    outside.levels.put("P1", Length.ofInches(10));
    Levels levels = levels(outside);
    assertThat(levels.floor().orElseThrow().height().inches()).isCloseTo(40, within(1e-6));
    // 10 in of ground and 36 in of pier are 6 in over the floor.
    assertThat(levels.floor().orElseThrow().piers())
        .singleElement()
        .satisfies(
            pier -> {
              assertThat(pier.mark()).isEqualTo("P1");
              assertThat(pier.overFloor().inches()).isCloseTo(6, within(1e-6));
            });
    assertThat(levels.floor().orElseThrow().posts()).hasSize(6);
    outside.levels.remove("P1");
    assertThat(levels(outside).floor().orElseThrow().piers()).isEmpty();
  }

  private static Working working(UnitSystem units, String id) {
    DigJob job = flat(-8);
    job.units = units;
    return levels(job).workings().stream()
        .filter(each -> each.formula().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** 0.001 lb a foot pulled by 10 lb, 0.0015 kg a metre by 45 N: habits, each in its system. */
  @Test
  void theLineIsThatOfTheUnits() {
    Working imperial = working(UnitSystem.IMPERIAL, "levels.sag");
    assertThat(imperial.inputs().get(0)).isEqualTo(0.001);
    assertThat(imperial.inputs().get(2)).isEqualTo(10);
    Working metric = working(UnitSystem.METRIC, "levels.sag");
    assertThat(metric.inputs().get(0)).isEqualTo(0.0015);
    assertThat(metric.inputs().get(2)).isEqualTo(45);
  }
}
