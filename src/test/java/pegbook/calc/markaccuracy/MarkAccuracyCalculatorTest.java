package pegbook.calc.markaccuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.calc.markaccuracy.MarkAccuracy.Lean;
import pegbook.calc.markaccuracy.MarkAccuracy.MarkError;
import pegbook.calc.markaccuracy.MarkAccuracy.PairError;
import pegbook.calc.markaccuracy.MarkAccuracy.PegTape;
import pegbook.calc.markaccuracy.MarkAccuracy.PeggedBaseline;
import pegbook.calc.markaccuracy.MarkAccuracy.Remedy;
import pegbook.calc.markaccuracy.MarkAccuracy.Setting;
import pegbook.calc.markaccuracy.MarkAccuracy.ThirdTape;
import pegbook.calc.markaccuracy.MarkAccuracy.Verdict;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.BaselineErrors;
import pegbook.figures.Diggings;
import pegbook.figures.Finding;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.figures.Swings;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Crossings;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.job.Layout;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.measure.Volume;
import pegbook.testing.LayoutJob;

class MarkAccuracyCalculatorTest {
  private static final Diggings UNTOUCHED = new Diggings(List.of(), List.of());

  /** A floor round a square of supports, their places given. */
  private static LayoutJob posts(Point... supports) {
    Polygon floor =
        new Polygon(
            List.of(new Point(-4, -4), new Point(-4, 4), new Point(4, 4), new Point(4, -4)));
    LayoutJob job = LayoutJob.of(new Outline.Free(floor.corners(), Optional.of(List.of(supports))));
    job.azimuth = Optional.empty();
    job.inset = Length.ZERO;
    return job;
  }

  private static MarkAccuracy of(LayoutJob layout, String first, String second) {
    return of(layout, new Swings(first, second, List.of()), UNTOUCHED);
  }

  private static MarkAccuracy of(LayoutJob layout, Swings swings, Diggings diggings) {
    Job job = layout.job();
    return MarkAccuracyCalculator.calculate(
        job, PlacementCalculator.calculate(job), swings, diggings);
  }

  private static MarkError mark(MarkAccuracy accuracy, String name) {
    return accuracy.marks().stream()
        .filter(mark -> mark.mark().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The same standard deviation for every distance, and no rounding to speak of. */
  private static LayoutJob evenTape(LayoutJob job, double millimetres) {
    job.accuracy =
        new Layout.Accuracy(
            Length.ofMillimetres(millimetres),
            new Layout.TapeItself.Growing(Length.ZERO, new Length(1)));
    job.division = Length.ofMillimetres(1);
    return job;
  }

  /**
   * By hand: S1 (-3, -3), S2 (3, -3), S3 (0, 0): the tapes cross square, both at 45° to the
   * baseline. With a standard deviation of 2 mm (and 1/√12 for the rounding, 2.0207 together) for
   * each tape and the baseline, the second tape has 2.0207 · √(1 + 1/2) = 2.4748; the half axes are
   * the two, along the two tapes.
   */
  @Test
  void aSquareCrossingByHand() {
    MarkAccuracy accuracy =
        of(evenTape(posts(new Point(-3, -3), new Point(3, -3), new Point(0, 0)), 2), "S1", "S2");
    MarkError third = mark(accuracy, "S3");

    assertThat(third.setting()).isEqualTo(Setting.SWING);
    assertThat(third.ellipse().semiMajor().millimetres()).isCloseTo(2.4748, within(0.0001));
    assertThat(third.ellipse().semiMinor().millimetres()).isCloseTo(2.0207, within(0.0001));
    assertThat(third.ellipse().azimuth().degrees()).isCloseTo(135, within(1e-6));
    assertThat(third.lean()).isEqualTo(new Lean.Towards("S2"));
    assertThat(third.verdict()).isEqualTo(Verdict.WITHIN);
    assertThat(mark(accuracy, "S1").radius()).isEqualTo(Length.ZERO);
    assertThat(mark(accuracy, "S1").lean()).isEqualTo(new Lean.Nowhere());
    MarkError second = mark(accuracy, "S2");
    assertThat(second.setting()).isEqualTo(Setting.SECOND);
    assertThat(second.radius().millimetres()).isCloseTo(1.95996 * 2.0207, within(0.001));
    assertThat(second.ellipse().azimuth().degrees()).isCloseTo(90, within(1e-9));
  }

  /**
   * By hand, at the middle of the string: along 2.0207 mm, across 2 · √(1 + 1/4 + 1/4) = 2.4495.
   */
  @Test
  void aMarkOnTheStringByHand() {
    MarkAccuracy accuracy =
        of(
            evenTape(
                posts(new Point(-3, -3), new Point(3, -3), new Point(0, -3), new Point(0, 3)), 2),
            "S1",
            "S2");
    MarkError middle = mark(accuracy, "S3");

    assertThat(middle.setting()).isEqualTo(Setting.STRING);
    assertThat(middle.ellipse().semiMajor().millimetres()).isCloseTo(2.4495, within(0.0001));
    assertThat(middle.ellipse().semiMinor().millimetres()).isCloseTo(2.0207, within(0.0001));
    assertThat(middle.ellipse().azimuth().degrees()).isCloseTo(0, within(1e-6));
    assertThat(middle.lean()).isEqualTo(new Lean.SquareTo("S1"));
  }

  /** What is printed for the worst mark is what its workings give, and what the causes give. */
  @Test
  void theWorkingsLeadToTheWorstRadius() {
    MarkAccuracy accuracy =
        of(
            posts(new Point(-3, -3), new Point(3, -3), new Point(0, 3), new Point(1, 1)),
            "S1",
            "S2");
    double worked =
        accuracy.workings().stream()
            .filter(working -> working.formula().id().equals("mark-accuracy.radius"))
            .mapToDouble(working -> working.asLength().metres())
            .max()
            .orElseThrow();

    assertThat(worked).isCloseTo(accuracy.asked().radius().orElseThrow().metres(), within(1e-9));
    assertThat(accuracy.workings())
        .extracting(working -> working.formula().id())
        .contains(
            "mark-accuracy.tape-part",
            "mark-accuracy.distance",
            "mark-accuracy.second",
            "mark-accuracy.major",
            "mark-accuracy.minor");
  }

  /** Beside a short line marks far off its end are poor; two others serve for all. */
  @Test
  void anotherPairComesFirst() {
    LayoutJob job =
        posts(new Point(-3, -3), new Point(-2.4, -3), new Point(3, 3), new Point(-3, 3));
    MarkAccuracy accuracy = of(job, "S1", "S2");

    assertThat(mark(accuracy, "S3").verdict()).isEqualTo(Verdict.WORSE);
    assertThat(accuracy.remedy()).contains(new Remedy.OtherPair());
    PairError best = accuracy.bestPair();
    MarkAccuracy again = of(job, best.first(), best.second());
    assertThat(again.marks()).noneMatch(MarkError::isBad);
    assertThat(again.asked().radius().orElseThrow().metres())
        .isCloseTo(best.radius().orElseThrow().metres(), within(1e-9));
    assertThat(again.asked().worst()).isEqualTo(best.worst());
    assertThat(accuracy.findings())
        .extracting(Finding::id)
        .containsExactly("mark-accuracy-other-pair");
    assertThat(again.remedy()).isEmpty();
    assertThat(again.findings()).isEmpty();
  }

  /** On a wide ring no two marks serve for all; a tape from the pier in its middle does. */
  @Test
  void thenAThirdTape() {
    LayoutJob job = LayoutJob.of(new Outline.Circle(new Length(18), 24)).pier("P1", 0, 0);
    job.tolerance = Length.ofMillimetres(12);
    MarkAccuracy accuracy = of(job, "S1", "S13");

    assertThat(accuracy.marks()).anyMatch(MarkError::isBad);
    assertThat(accuracy.bestPair().radius().orElseThrow()).isGreaterThan(job.tolerance);
    Remedy.ThirdTapes thirds = (Remedy.ThirdTapes) accuracy.remedy().orElseThrow();
    for (ThirdTape third : thirds.tapes()) {
      assertThat(third.radius()).isLessThanOrEqualTo(job.tolerance);
      assertThat(third.radius()).isLessThan(mark(accuracy, third.mark()).radius());
      assertThat(mark(accuracy, third.from()).isBad()).isFalse();
    }
  }

  /** With no tolerance to speak of nothing helps, and it is said. */
  @Test
  void inTheEndNothingHelps() {
    LayoutJob job = posts(new Point(-3, -3), new Point(3, -3), new Point(0, 3));
    job.tolerance = Length.ofMillimetres(1);
    MarkAccuracy accuracy = of(job, "S1", "S2");

    assertThat(accuracy.remedy()).contains(new Remedy.None());
    assertThat(accuracy.findings()).extracting(Finding::id).containsExactly("mark-accuracy-none");
  }

  /** Marks in one row next to the line: pegs beside the work see them square. */
  @Test
  void pegsServeWhereNoMarksDo() {
    LayoutJob job =
        posts(new Point(-3, 0), new Point(3, 0), new Point(-1, 0.02), new Point(1, -0.02));
    MarkAccuracy accuracy = of(job, "S1", "S2");

    assertThat(mark(accuracy, "S3").isBad()).isTrue();
    assertThat(accuracy.remedy()).contains(new Remedy.Pegs());
    PeggedBaseline pegs = accuracy.pegged().orElseThrow();
    assertThat(pegs.radius()).isLessThanOrEqualTo(job.tolerance);
    assertThat(accuracy.findings()).extracting(Finding::id).containsExactly("mark-accuracy-pegs");
    // Each peg's two distances and side give its place again.
    Placement placement = PlacementCalculator.calculate(job.job());
    List<Point> places = List.of(pegs.first(), pegs.second());
    for (int i = 0; i < 2; i++) {
      MarkAccuracy.PegPlace place = pegs.places().get(i);
      Segment line =
          new Segment(
              placement.mark(place.firstMark()).at(), placement.mark(place.secondMark()).at());
      assertThat(line.from().distanceTo(places.get(i)).metres())
          .isCloseTo(place.fromFirst().metres(), within(0.0005001));
      assertThat(line.to().distanceTo(places.get(i)).metres())
          .isCloseTo(place.fromSecond().metres(), within(0.0005001));
      assertThat(line.offsetMetres(places.get(i)) > 0).isEqualTo(place.left());
    }
    for (PegTape tape : pegs.tapes()) {
      Point at = placement.mark(tape.mark()).at();
      assertThat(pegs.first().distanceTo(at).metres())
          .isCloseTo(tape.fromFirst().metres(), within(0.0005001));
      assertThat(tape.radius()).isLessThanOrEqualTo(pegs.radius().plus(new Length(1e-9)));
    }
  }

  /** No peg on the floor, near a hole, in a heap, outside the lot or in a keep-clear zone. */
  @Test
  void pegsStandOnFreeGround() {
    Polygon lot =
        new Polygon(
            List.of(new Point(-7, -7), new Point(-7, 7), new Point(7, 7), new Point(7, -7)));
    LayoutJob layout =
        posts(new Point(-3, -3), new Point(3, -3), new Point(0, 3))
            .feature(
                "gas line",
                Feature.Kind.BURIED_LINE,
                new Feature.Shape.Line(new Segment(new Point(-7, -6), new Point(7, -6))),
                Optional.of(new Length(1.2)))
            .feature(
                "drain",
                Feature.Kind.BURIED_LINE,
                new Feature.Shape.Line(new Segment(new Point(6, -7), new Point(6, 7))),
                Optional.empty());
    layout.boundary = Optional.of(lot);
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    SpoilHeap heap =
        new SpoilHeap(
            List.of("S1"), new Point(-5.5, 0), new Length(1.2), new Length(0.7), new Volume(0.5));

    List<Point> places =
        new PegGround(job, placement, new Diggings(List.of(), List.of(heap))).places();

    assertThat(places).hasSizeGreaterThan(15);
    for (Point place : places) {
      assertThat(lot.contains(place)).isTrue();
      assertThat(placement.outline().contains(place)).isFalse();
      assertThat(placement.outline().distanceToEdge(place).feet()).isGreaterThanOrEqualTo(2);
      assertThat(place.distanceTo(heap.centre()).metres()).isGreaterThanOrEqualTo(1.2 + 0.3048);
      assertThat(place.north()).isGreaterThanOrEqualTo(-4.8 - 1e-9);
      assertThat(Math.abs(place.east() - 6)).isGreaterThanOrEqualTo(0.6096 - 1e-9);
    }
  }

  /** A lot with no free ground has no pegs, and the sheet can say so. */
  @Test
  void noPegsWithoutAPlace() {
    LayoutJob job = posts(new Point(-3, -3), new Point(3, -3), new Point(0, 3));
    job.boundary =
        Optional.of(
            new Polygon(
                List.of(
                    new Point(-4.2, -4.2),
                    new Point(-4.2, 4.2),
                    new Point(4.2, 4.2),
                    new Point(4.2, -4.2))));

    assertThat(of(job, "S1", "S2").pegged()).isEmpty();
  }

  /** A mark a hand's breadth off the line: its error is as large as its distance from the line. */
  @Test
  void aMarkHardByTheLineCannotBeTold() {
    MarkAccuracy accuracy =
        of(
            posts(new Point(-3, -3), new Point(3, -3), new Point(0, -2.99), new Point(0, 3)),
            "S1",
            "S2");

    assertThat(mark(accuracy, "S3").verdict()).isEqualTo(Verdict.NOT_TOLD);
    assertThat(accuracy.asked().worst()).isEqualTo("S3");
    assertThat(accuracy.asked().radius()).isEmpty();
  }

  /** The quick search finds what looking at every pair to the end finds. */
  @Test
  void theSearchDropsNoBetterPair() {
    List<Point> marks = new ArrayList<>();
    java.util.Random random = new java.util.Random(7);
    for (int round = 0; round < 40; round++) {
      marks.clear();
      for (int i = 0; i < 3 + round % 6; i++) {
        marks.add(new Point(random.nextInt(800) / 100.0 - 4, random.nextInt(800) / 100.0 - 4));
      }
      BaselineErrors errors =
          new BaselineErrors(
              TapeAccuracy.of(
                  LayoutJob.of(new Outline.Regular(3, new Length(3))).job().layout().tape()),
              Crossings.onTape(Length.ofMillimetres(1)));
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < marks.size(); i++) {
        for (int j = 0; j < marks.size(); j++) {
          if (i != j) {
            least = Math.min(least, worst(errors, marks, i, j));
          }
        }
      }
      double found =
          PairSearch.among(errors, marks, new Length(30)).best().orElseThrow().radiusMetres();
      if (Double.isInfinite(least)) {
        assertThat(found).isInfinite();
      } else {
        assertThat(found).isCloseTo(least, within(1e-9));
      }
    }
  }

  private static double worst(BaselineErrors errors, List<Point> marks, int first, int second) {
    Segment line = new Segment(marks.get(first), marks.get(second));
    double worst = errors.atSecond(line).radiusHolding(0.95).metres();
    for (int i = 0; i < marks.size(); i++) {
      if (i != first && i != second) {
        worst =
            Math.max(
                worst,
                errors
                    .at(line, marks.get(i))
                    .map(ellipse -> ellipse.radiusHolding(0.95).metres())
                    .orElse(Double.POSITIVE_INFINITY));
      }
    }
    return worst;
  }

  /** Finer tapes and shorter errors never make a mark worse. */
  @Test
  void aBetterClassIsBetter() {
    Map<Layout.TapeClass, Length> radii = new java.util.EnumMap<>(Layout.TapeClass.class);
    for (Layout.TapeClass each : Layout.TapeClass.values()) {
      LayoutJob job = posts(new Point(-3, -3), new Point(3, -3), new Point(0, 3));
      job.accuracy =
          new Layout.Accuracy(Length.ofMillimetres(1), new Layout.TapeItself.OfClass(each));
      radii.put(each, of(job, "S1", "S2").asked().radius().orElseThrow());
    }
    assertThat(List.copyOf(radii.values())).isSorted().doesNotHaveDuplicates();
  }

  /** The closed form of two tapes and the sum of causes are one. */
  @Test
  void causesAddUpToTheClosedForm() {
    LayoutJob layout =
        posts(new Point(-3, -3), new Point(3, -2), new Point(0.3, 3), new Point(-1, 1.7));
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    BaselineErrors errors =
        new BaselineErrors(TapeAccuracy.of(job.layout().tape()), Crossings.onTape(layout.division));
    Segment line = new Segment(placement.mark("S1").at(), placement.mark("S2").at());
    for (MarkError mark : of(layout, "S1", "S2").marks()) {
      if (mark.setting() == Setting.SWING) {
        ErrorEllipse closed = errors.at(line, placement.mark(mark.mark()).at()).orElseThrow();
        assertThat(mark.ellipse().semiMajor().metres())
            .isCloseTo(closed.semiMajor().metres(), within(1e-12));
        assertThat(mark.ellipse().azimuth().degrees())
            .isCloseTo(closed.azimuth().degrees(), within(1e-6));
      }
    }
  }
}
