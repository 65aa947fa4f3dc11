package pegbook.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import pegbook.calc.asmarked.AsMarked;
import pegbook.calc.asmarked.AsMarkedCalculator;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.geometry.network.Adjustment;
import pegbook.geometry.network.Datum;
import pegbook.geometry.network.Network;
import pegbook.geometry.network.NetworkAdjustment;
import pegbook.geometry.network.NetworkPoint;
import pegbook.geometry.network.TapedDistance;
import pegbook.job.Field;
import pegbook.job.Job;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/**
 * Adjusts 200 marks, and judges 200 marks of which one was moved. Run it with the test class path:
 * {@code java -cp … pegbook.bench.NetworkBench}.
 */
public final class NetworkBench {
  private static final int MARKS = 200;

  private NetworkBench() {}

  /** Runs both a few times and prints milliseconds. */
  public static void main(String[] arguments) {
    LayoutJob layout = LayoutJob.of(new Outline.Circle(new Length(25), 40)).named("S1", "S60");
    Placement placement = ring(PlacementCalculator.calculate(layout.job()));
    List<Field.Taped> readings = readings(placement.marks());
    layout.field = new Field(readings, List.of());
    Job job = layout.job();
    System.out.println(MARKS + " marks, " + readings.size() + " distances");
    for (int run = 0; run < 4; run++) {
      long start = System.nanoTime();
      Adjustment adjustment =
          NetworkAdjustment.of(network(placement.marks(), readings), Datum.free()).adjusted();
      long adjusted = System.nanoTime();
      AsMarked found = AsMarkedCalculator.calculate(job, placement, "S1", "S60");
      long judged = System.nanoTime();
      System.out.printf(
          Locale.ROOT,
          "free adjustment, %d steps: %d ms; judged (%s %s): %d ms%n",
          adjustment.steps(),
          (adjusted - start) / 1_000_000,
          found.verdict(),
          found.suspects().isEmpty() ? "" : found.suspects().get(0).name(),
          (judged - adjusted) / 1_000_000);
    }
  }

  /** More marks than a job's circle takes, on the same outline. */
  private static Placement ring(Placement few) {
    List<PlacedMark> marks = new ArrayList<>();
    for (int i = 0; i < MARKS; i++) {
      Point at = new Point(0, 12).turned(Angle.ofDegrees(360.0 * i / MARKS));
      marks.add(new PlacedMark("S" + (i + 1), MarkKind.SUPPORT, at, Optional.empty()));
    }
    return new Placement(few.outline(), few.round(), marks, List.of(), List.of());
  }

  private static List<Field.Taped> readings(List<PlacedMark> marks) {
    Random random = new Random(5);
    List<Field.Taped> readings = new ArrayList<>();
    for (int step : new int[] {1, 3, 20, 67, 100}) {
      for (int i = 0; i < (2 * step == marks.size() ? step : marks.size()); i++) {
        PlacedMark from = marks.get(i);
        PlacedMark to = marks.get((i + step) % marks.size());
        double metres = place(from).distanceTo(place(to)).metres();
        double deviation = 0.0015 + 0.00026 * metres;
        readings.add(
            new Field.Taped(
                from.id(), to.id(), new Length(metres + deviation * random.nextGaussian())));
      }
    }
    return readings;
  }

  private static Point place(PlacedMark mark) {
    return mark.id().equals("S123") ? mark.at().plus(0.15, 0.1) : mark.at();
  }

  private static Network network(List<PlacedMark> marks, List<Field.Taped> readings) {
    return new Network(
        marks.stream().map(mark -> NetworkPoint.free(mark.id(), mark.at())).toList(),
        readings.stream()
            .map(
                taped ->
                    new TapedDistance(taped.from(), taped.to(), taped.tape(), new Length(0.003)))
            .toList());
  }
}
