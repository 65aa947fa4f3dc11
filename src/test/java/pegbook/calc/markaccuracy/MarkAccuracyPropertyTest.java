package pegbook.calc.markaccuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import pegbook.figures.BaselineErrors;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.PlanErrors;
import pegbook.figures.Swings;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Crossings;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Layout.TapeItself;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.Chance;

class MarkAccuracyPropertyTest {
  private static final Length REACH = new Length(1000);

  /** Marks round a ring, each at its own distance, so that no two are near each other. */
  @Provide
  Arbitrary<List<Point>> rings() {
    return Arbitraries.doubles()
        .between(2, 6)
        .list()
        .ofMinSize(3)
        .ofMaxSize(7)
        .map(
            radii -> {
              List<Point> marks = new ArrayList<>();
              for (int i = 0; i < radii.size(); i++) {
                marks.add(
                    Point.ORIGIN.moved(
                        Angle.ofDegrees(360.0 * i / radii.size()), new Length(radii.get(i))));
              }
              return marks;
            });
  }

  private static BaselineErrors errors(double scale) {
    return new BaselineErrors(
        new TapeAccuracy(
            Length.ofMillimetres(1.5 * scale),
            new TapeItself.CommonPractice(),
            Length.ofMillimetres(scale)),
        Crossings.onTape(Length.ofMillimetres(scale)));
  }

  private static Placement placement(List<Point> places) {
    List<PlacedMark> marks = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      marks.add(new PlacedMark("S" + (i + 1), MarkKind.SUPPORT, places.get(i), Optional.empty()));
    }
    return new Placement(new Polygon(places), false, marks, List.of(), List.of());
  }

  private static ErrorEllipse ellipse(List<Point> places, int mark, double scale) {
    PlanErrors plan =
        new PlanErrors(errors(scale), placement(places), new Swings("S1", "S2", List.of()));
    return ErrorEllipse.of(plan.of("S" + mark).covariance());
  }

  private static double best(List<Point> places, double scale) {
    return PairSearch.among(errors(scale), places, REACH).best().orElseThrow().radiusMetres();
  }

  @Property(tries = 200, seed = Chance.SEED)
  void shiftingAndTurningChangesNoRadius(
      @ForAll("rings") List<Point> marks,
      @ForAll @DoubleRange(min = -50, max = 50) double shift,
      @ForAll @DoubleRange(min = 0, max = 359) double turn) {
    List<Point> moved =
        marks.stream().map(at -> at.turned(Angle.ofDegrees(turn)).plus(shift, -shift)).toList();
    ErrorEllipse before = ellipse(marks, 3, 1);
    ErrorEllipse after = ellipse(moved, 3, 1);

    alike(after.semiMajor().metres(), before.semiMajor().metres());
    alike(after.semiMinor().metres(), before.semiMinor().metres());
    boolean round = before.semiMajor().metres() < 1.01 * before.semiMinor().metres();
    if (!round) {
      double apart = after.azimuth().minus(before.azimuth()).degrees() - turn;
      assertThat(apart - 180 * Math.rint(apart / 180)).isCloseTo(0, within(1e-4));
    }
    alike(best(moved, 1), best(marks, 1));
  }

  /** Other names for the same places: the best worst radius is the same. */
  @Property(tries = 200, seed = Chance.SEED)
  void renamingChangesNoBest(@ForAll("rings") List<Point> marks) {
    List<Point> renamed = new ArrayList<>(marks.subList(1, marks.size()));
    renamed.add(marks.get(0));
    java.util.Collections.swap(renamed, 0, renamed.size() - 2);

    alike(best(renamed, 1), best(marks, 1));
  }

  /** A figure and a tape twice as large have errors twice as large. */
  @Property(tries = 200, seed = Chance.SEED)
  void scaleIsKept(
      @ForAll("rings") List<Point> marks, @ForAll @DoubleRange(min = 0.5, max = 20) double scale) {
    List<Point> larger =
        marks.stream().map(at -> new Point(at.east() * scale, at.north() * scale)).toList();

    alike(
        ellipse(larger, 3, scale).semiMajor().metres() / scale,
        ellipse(marks, 3, 1).semiMajor().metres());
    alike(best(larger, scale) / scale, best(marks, 1));
  }

  /** A mirror image has the same errors. */
  @Property(tries = 200, seed = Chance.SEED)
  void aMirrorImageIsAlike(@ForAll("rings") List<Point> marks) {
    List<Point> mirrored = marks.stream().map(at -> new Point(-at.east(), at.north())).toList();

    alike(best(mirrored, 1), best(marks, 1));
  }

  private static void alike(double one, double other) {
    if (Double.isInfinite(other)) {
      assertThat(one).isInfinite();
    } else {
      assertThat(one).isCloseTo(other, within(1e-7 * Math.abs(other) + 1e-12));
    }
  }
}
