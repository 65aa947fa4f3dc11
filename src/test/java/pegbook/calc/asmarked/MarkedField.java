package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.job.Field;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.testing.LayoutJob;

/**
 * A figure as people mark it: a baseline measured off, every other mark swung from it by two tapes,
 * and then distances taped between the painted marks. Every tape errs in reading and by its own
 * length, and is read to its division. Nothing here knows how the calculator reckons.
 */
final class MarkedField {
  private final LayoutJob layout;
  private final Placement placement;
  private final TapeAccuracy accuracy;
  private final Random random;
  private final String first;
  private final String second;
  private final Map<String, Point> painted = new LinkedHashMap<>();
  private final List<Field.Taped> readings = new ArrayList<>();

  MarkedField(LayoutJob layout, String first, String second, long seed) {
    this.layout = layout;
    this.placement = PlacementCalculator.calculate(layout.job());
    this.accuracy = TapeAccuracy.of(layout.job().layout().tape());
    this.random = new Random(seed);
    this.first = first;
    this.second = second;
    setOut();
  }

  private void setOut() {
    Point from = placement.mark(first).at();
    Point to = placement.mark(second).at();
    Length baseline = off(from.distanceTo(to));
    painted.put(first, from);
    Point end = from.moved(from.azimuthTo(to), baseline);
    painted.put(second, end);
    for (PlacedMark mark : placement.marks()) {
      if (!painted.containsKey(mark.id())) {
        Swing swing =
            Swing.of(
                new Segment(from, end),
                off(from.distanceTo(mark.at())),
                off(to.distanceTo(mark.at())));
        painted.put(
            mark.id(), ((Swing.Crossing) swing).on(new Segment(from, to).sideOf(mark.at())));
      }
    }
  }

  /** A distance with the errors of laying it off to a whole division. */
  private Length off(Length distance) {
    return erring(distance.setTo(accuracy.division(), Rounding.NEAREST));
  }

  private Length erring(Length distance) {
    double reading = random.nextGaussian() * accuracy.reading().metres();
    double tape = random.nextGaussian() * accuracy.tapeSigma(distance).metres();
    return new Length(distance.metres() + reading + tape);
  }

  Placement placement() {
    return placement;
  }

  /** Kicks one mark aside. */
  MarkedField move(String mark, double eastMetres, double northMetres) {
    painted.compute(mark, (name, at) -> at.plus(eastMetres, northMetres));
    return this;
  }

  /** Paints two names at each other's places. */
  MarkedField swap(String one, String other) {
    Point first = painted.getOrDefault(one, Point.ORIGIN);
    painted.put(one, painted.getOrDefault(other, Point.ORIGIN));
    painted.put(other, first);
    return this;
  }

  /** Tapes some distances. */
  MarkedField tape(List<Pair> pairs) {
    for (Pair pair : pairs) {
      Length distance = painted.get(pair.from()).distanceTo(painted.get(pair.to()));
      Length reading = erring(distance).setTo(accuracy.division(), Rounding.NEAREST);
      readings.add(new Field.Taped(pair.from(), pair.to(), reading));
    }
    return this;
  }

  /** Misreads one distance that was taped. */
  MarkedField misread(int reading, Length error) {
    Field.Taped taped = readings.get(reading);
    readings.set(reading, new Field.Taped(taped.from(), taped.to(), taped.tape().plus(error)));
    return this;
  }

  List<Field.Taped> readings() {
    return readings;
  }

  AsMarked calculate() {
    layout.field = new Field(readings, List.of());
    Job job = layout.job();
    return AsMarkedCalculator.calculate(job, placement, first, second);
  }

  /** Every mark to its next neighbours in order: 1 for sides, 2 for short diagonals and so on. */
  static List<Pair> ring(List<String> marks, int... steps) {
    List<Pair> pairs = new ArrayList<>();
    for (int step : steps) {
      boolean half = 2 * step == marks.size();
      for (int i = 0; i < (half ? step : marks.size()); i++) {
        pairs.add(new Pair(marks.get(i), marks.get((i + step) % marks.size())));
      }
    }
    return pairs;
  }

  /** All pairs of some marks. */
  static List<Pair> all(List<String> marks) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      for (int j = i + 1; j < marks.size(); j++) {
        pairs.add(new Pair(marks.get(i), marks.get(j)));
      }
    }
    return pairs;
  }
}
