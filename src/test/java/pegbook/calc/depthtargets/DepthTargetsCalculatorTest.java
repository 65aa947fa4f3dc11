package pegbook.calc.depthtargets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.figures.Argument;
import pegbook.figures.DatumLine;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Hole.DepthRule;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Feature;
import pegbook.job.Frost;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.published.FootingDepth;
import pegbook.testing.DigJob;

class DepthTargetsCalculatorTest {

  private static DepthTargets targets(DigJob of) {
    return DepthTargetsCalculator.calculate(of.job(), of.placement());
  }

  private static Optional<Length> feet(double feet) {
    return Optional.of(Length.ofFeet(feet));
  }

  private static Hole hole(DepthTargets targets, String mark) {
    return targets.holes().stream().filter(h -> h.mark().equals(mark)).findFirst().orElseThrow();
  }

  private static List<String> found(DepthTargets targets, Kind kind) {
    return targets.findings().stream()
        .filter(finding -> finding.kind() == kind)
        .map(Finding::id)
        .toList();
  }

  private static Finding finding(DepthTargets targets, String id) {
    return targets.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  /** International Residential Code R403.1.4: 12 inches (305 mm). */
  @Test
  void leastDepthIsTheCodesInBothItsUnits() {
    FootingDepth least = FootingDepth.find("code-minimum");
    assertThat(least.least().inches()).isEqualTo(12, offset(1e-9));
    assertThat(least.least().millimetres()).isEqualTo(305, offset(0.5));
    assertThat(least.citation().locator()).isEqualTo("R403.1.4");
  }

  @Test
  void codeMinimumDecidesWhereNothingElseIsSaid() {
    DepthTargets targets = targets(new DigJob());
    assertThat(hole(targets, "S1").depth().inches()).isEqualTo(12, offset(1e-9));
    assertThat(hole(targets, "S1").rule()).isEqualTo(DepthRule.CODE_MINIMUM);
    assertThat(hole(targets, "S1").dug().inches()).isEqualTo(16, offset(1e-9));
    assertThat(found(targets, Kind.ASK)).containsExactly("frost-unknown");
    assertThat(found(targets, Kind.NOTE)).containsExactly("levels-none");
  }

  /**
   * Common practice, no source: supports 3 ft and a pier 4 ft deep where the authority says 4 ft.
   */
  @Test
  void shallowSupportsStopAndAPierWithoutMarginAsks() {
    DigJob job = new DigJob().frostInches(48).pier("P1", Point.ORIGIN, feet(4));
    job.supportDepth = feet(3);
    DepthTargets targets = targets(job);

    Finding stop = finding(targets, "frost-not-reached");
    assertThat(stop.kind()).isEqualTo(Kind.STOP);
    assertThat(stop.subjects()).containsExactly("S1", "S2", "S3", "S4", "S5", "S6");
    assertThat(stop.place()).isEqualTo("supports.depth");
    assertThat(stop.arguments().get("asked")).isEqualTo(Argument.of(Length.ofFeet(3)));
    Finding ask = finding(targets, "pier-margin");
    assertThat(ask.kind()).isEqualTo(Kind.ASK);
    assertThat(ask.subjects()).containsExactly("P1");
    assertThat(found(targets, Kind.STOP)).containsExactly("frost-not-reached");

    assertThat(hole(targets, "S4").depth().inches()).isEqualTo(48, offset(1e-9));
    assertThat(hole(targets, "S4").rule()).isEqualTo(DepthRule.FROST);
    assertThat(hole(targets, "P1").depth().inches()).isEqualTo(48, offset(1e-9));
  }

  @Test
  void anExemptionLetsTheJobsDepthStandForWhatItCovers() {
    DigJob job =
        new DigJob()
            .frostInches(48)
            .exempt(Frost.Covers.SUPPORTS)
            .pier("P1", Point.ORIGIN, feet(3));
    job.supportDepth = feet(3);
    DepthTargets targets = targets(job);
    assertThat(hole(targets, "S1").depth().inches()).isEqualTo(36, offset(1e-9));
    assertThat(hole(targets, "S1").rule()).isEqualTo(DepthRule.JOB);
    assertThat(hole(targets, "P1").depth().inches()).isEqualTo(48, offset(1e-9));
    assertThat(finding(targets, "frost-not-reached").subjects()).containsExactly("P1");
    assertThat(finding(targets, "frost-not-reached").place()).isEqualTo("piers[0].depth");
    Finding note = finding(targets, "frost-exemption");
    assertThat(note.kind()).isEqualTo(Kind.NOTE);
    assertThat(note.arguments().get("who")).isEqualTo(Argument.words("county inspector"));
  }

  @Test
  void anExemptedDepthStillKeepsTheCodesLeast() {
    DigJob job = new DigJob().frostInches(48).exempt(Frost.Covers.ALL);
    job.supportDepth = Optional.of(Length.ofInches(8));
    DepthTargets targets = targets(job);
    assertThat(hole(targets, "S1").depth().inches()).isEqualTo(12, offset(1e-9));
    assertThat(hole(targets, "S1").rule()).isEqualTo(DepthRule.CODE_MINIMUM);
  }

  @Test
  void anExemptionIsNotUsedUnlessTheJobAsksForLess() {
    DepthTargets targets = targets(new DigJob().frostInches(48).exempt(Frost.Covers.ALL));
    assertThat(hole(targets, "S1").depth().inches()).isEqualTo(48, offset(1e-9));
    assertThat(found(targets, Kind.NOTE)).containsExactly("levels-none");
  }

  @Test
  void anExemptedPierAboveTheFrostStillAsks() {
    DigJob job =
        new DigJob().frostInches(48).exempt(Frost.Covers.ALL).pier("P1", Point.ORIGIN, feet(3));
    assertThat(found(targets(job), Kind.ASK)).containsExactly("pier-above-frost");
  }

  @Test
  void aPierWellBelowTheFrostAsksNothing() {
    DigJob job = new DigJob().frostInches(42).pier("P1", Point.ORIGIN, feet(4));
    DepthTargets targets = targets(job);
    assertThat(found(targets, Kind.ASK)).isEmpty();
    assertThat(hole(targets, "P1").rule()).isEqualTo(DepthRule.JOB);
  }

  @Test
  void frostDepthZeroIsLegal() {
    DigJob job = new DigJob().frostInches(0).pier("P1", Point.ORIGIN, Optional.empty());
    DepthTargets targets = targets(job);
    assertThat(found(targets, Kind.ASK)).isEmpty();
    assertThat(hole(targets, "P1").depth().inches()).isEqualTo(12, offset(1e-9));
  }

  @Test
  void aJobThatAsksForLessThanTheCodesLeastIsAskedAbout() {
    DigJob job = new DigJob().frostInches(0);
    job.supportDepth = Optional.of(Length.ofInches(10));
    DepthTargets targets = targets(job);
    assertThat(found(targets, Kind.ASK)).containsExactly("depth-below-least");
    assertThat(hole(targets, "S1").depth().inches()).isEqualTo(12, offset(1e-9));
  }

  /** 1.2 m on an inch tape is 47.24 in: the next quarter is 47 1/4. */
  @Test
  void theTargetGoesUpToTheTapesDivision() {
    DigJob job = new DigJob();
    job.frost = Optional.of(new Frost(new Length(1.2), "office", Optional.empty()));
    job.division = Length.ofInches(0.25);
    assertThat(hole(targets(job), "S1").depth().inches()).isEqualTo(47.25, offset(1e-9));
    job.units = UnitSystem.METRIC;
    job.division = Length.ofMillimetres(5);
    assertThat(hole(targets(job), "S1").depth().millimetres()).isEqualTo(1200, offset(1e-9));
  }

  /** Line at 1/2 + 6 = 6 1/2 in, up to 7 in; at a mark 1 1/2 in below the benchmark: 8 1/2 + 42. */
  @Test
  void datumDepthsAreReadFromALineAboveTheHighestGround() {
    DigJob job = new DigJob().frostInches(42);
    job.levels.put("S1", Length.ZERO);
    job.levels.put("S2", Length.ofInches(-1.5));
    job.levels.put("S6", Length.ofInches(0.5));
    DepthTargets targets = targets(job);
    DatumLine line = targets.datum().orElseThrow();
    assertThat(line.height().inches()).isEqualTo(7, offset(1e-9));
    assertThat(line.highest()).isEqualTo("S6");
    Hole second = hole(targets, "S2");
    assertThat(second.datumToUnderside().orElseThrow().inches()).isEqualTo(50.5, offset(1e-9));
    assertThat(second.datumToBottom().orElseThrow().inches()).isEqualTo(54.5, offset(1e-9));
    assertThat(hole(targets, "S3").datumToUnderside()).isEmpty();
    assertThat(line.readings())
        .extracting(DatumLine.Reading::mark)
        .containsExactly("S1", "S2", "S6");
    assertThat(line.readings().get(1).toGround().inches()).isEqualTo(8.5, offset(1e-9));
    assertThat(line.readings().get(1).toTop().inches()).isEqualTo(2.5, offset(1e-9));
    assertThat(line.readings().get(1).topLevel().inches()).isEqualTo(4.5, offset(1e-9));
    assertThat(finding(targets, "levels-missing").subjects()).containsExactly("S3", "S4", "S5");
  }

  @Test
  void groundWaterAboveABottomIsAskedAbout() {
    DigJob job = new DigJob().frostInches(42).pier("P1", Point.ORIGIN, feet(6));
    job.water = Optional.of(Length.ofInches(46));
    assertThat(finding(targets(job), "ground-water").subjects())
        .containsExactly("S1", "S2", "S3", "S4", "S5", "S6", "P1");
    job.water = Optional.of(Length.ofInches(50));
    assertThat(finding(targets(job), "ground-water").subjects()).containsExactly("P1");
    job.water = Optional.of(Length.ofFeet(9));
    assertThat(found(targets(job), Kind.ASK)).isEmpty();
  }

  /**
   * Pier 30 in from S1: edges 30 - 11 - 9 = 10 in apart; bottom 10 in below the concrete is 45°.
   */
  @Test
  void aPierDeepBesideASupportStops() {
    DigJob job = new DigJob().frostInches(42);
    Point support = job.placement().mark("S1").at();
    Point near = support.plus(0, -Length.ofInches(30).metres());
    job.pier("P1", near, Optional.of(Length.ofInches(52)));
    assertThat(found(targets(job), Kind.STOP)).isEmpty();
    job.piers.clear();
    job.pier("P1", near, Optional.of(Length.ofInches(53)));
    Finding stop = finding(targets(job), "bearing-line");
    assertThat(stop.subjects()).containsExactly("P1", "S1");
    assertThat(((Argument.Measured) stop.arguments().get("below")).quantity().si())
        .isEqualTo(0.0254, offset(1e-9));
  }

  @Test
  void aHoleNearerToABuildingThanItIsDeepIsAskedAbout() {
    DigJob job = new DigJob().frostInches(42);
    double south = job.placement().mark("S1").at().north() + Length.ofInches(9 + 40).metres();
    job.features.add(
        new Feature(
            "house",
            Feature.Kind.OBJECT,
            new Feature.Shape.Block(
                new Polygon(
                    List.of(
                        new Point(-5, south),
                        new Point(-5, south + 6),
                        new Point(5, south + 6),
                        new Point(5, south)))),
            Optional.empty()));
    assertThat(finding(targets(job), "building-near").subjects()).containsExactly("S1");
  }
}
