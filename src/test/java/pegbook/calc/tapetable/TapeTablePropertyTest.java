package pegbook.calc.tapetable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.Chance;
import pegbook.testing.LayoutJob;

class TapeTablePropertyTest {
  private static LayoutJob job(int sides, double degrees, double east, double north) {
    LayoutJob job = LayoutJob.of(new Outline.Regular(sides, new Length(6))).pier("P1", east, north);
    job.azimuth = Optional.of(Angle.ofDegrees(degrees));
    return job;
  }

  private static TapeTable table(LayoutJob job, Placement placement) {
    return TapeTableCalculator.calculate(job.job(), placement);
  }

  /** The readings alone, swung on the printed side, find every mark again within their division. */
  @Property(tries = 300, seed = Chance.SEED)
  void theReadingsFindTheMarksAgain(
      @ForAll @IntRange(min = 3, max = 24) int sides,
      @ForAll @DoubleRange(min = 0, max = 359.99) double degrees,
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double east,
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double north) {
    LayoutJob job = job(sides, degrees, east, north);
    Placement placement = PlacementCalculator.calculate(job.job());
    TapeTable table = table(job, placement);
    Point first = placement.mark(table.baseline().first()).at();
    Point second = placement.mark(table.baseline().second()).at();
    for (Row row : table.rows()) {
      if (row.weak()) {
        continue;
      }
      Point mark = placement.mark(row.mark()).at();
      Point found = found(new Segment(first, second), row);
      // Half a division in each of two tapes, crossing at 30 degrees at worst, and the baseline's
      // own.
      assertThat(found.distanceTo(mark).millimetres()).isLessThan(2.8);
    }
  }

  private static Point found(Segment baseline, Row row) {
    return switch (row.stand()) {
      case BETWEEN, BEYOND_SECOND -> baseline.at(row.fromFirst().metres(), 0);
      case BEYOND_FIRST -> baseline.at(-row.fromFirst().metres(), 0);
      case LEFT -> ((Swing.Crossing) Swing.of(baseline, row.fromFirst(), row.fromSecond())).left();
      case RIGHT ->
          ((Swing.Crossing) Swing.of(baseline, row.fromFirst(), row.fromSecond())).right();
    };
  }

  /** No other pair of marks has a stronger worst crossing, by plain search over angles. */
  @Property(tries = 60, seed = Chance.SEED)
  void noPairIsStrongerThanTheChosen(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double east,
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double north) {
    LayoutJob job = job(sides, 8, east, north);
    Placement placement = PlacementCalculator.calculate(job.job());
    TapeTable table = table(job, placement);
    double chosen = worst(placement, table.baseline().first(), table.baseline().second());
    for (PlacedMark first : placement.marks()) {
      for (PlacedMark second : placement.marks()) {
        if (!first.equals(second)) {
          assertThat(worst(placement, first.id(), second.id())).isLessThan(chosen + 1e-6);
        }
      }
    }
  }

  /** Degrees from 0 to 90; marks on the line between its ends, or little beyond, do not count. */
  private static double worst(Placement placement, String first, String second) {
    Segment line = new Segment(placement.mark(first).at(), placement.mark(second).at());
    double worst = 90;
    for (PlacedMark mark : placement.marks()) {
      if (mark.id().equals(first) || mark.id().equals(second)) {
        continue;
      }
      if (Math.abs(line.offsetMetres(mark.at())) > 0.0005) {
        double angle = Swing.angleAt(mark.at(), line.from(), line.to()).degrees();
        worst = Math.min(worst, Math.min(angle, 180 - angle));
      } else {
        double along = line.alongMetres(mark.at()) / line.length().metres();
        worst = along >= -1 - 1e-9 && along <= 2 + 1e-9 ? worst : 0;
      }
    }
    return worst;
  }

  /** Turning the whole figure changes no reading, side, crossing, check or order. */
  @Property(tries = 100, seed = Chance.SEED)
  void turningTheFigureChangesNoTape(
      @ForAll @IntRange(min = 3, max = 16) int sides,
      @ForAll @DoubleRange(min = 0, max = 359.99) double degrees) {
    LayoutJob job = LayoutJob.of(new Outline.Regular(sides, new Length(6)));
    LayoutJob turned = LayoutJob.of(new Outline.Regular(sides, new Length(6)));
    turned.azimuth = Optional.of(Angle.ofDegrees(degrees));
    List<Row> rows = table(job, PlacementCalculator.calculate(job.job())).rows();
    List<Row> same = table(turned, PlacementCalculator.calculate(turned.job())).rows();
    for (int i = 0; i < rows.size(); i++) {
      assertThat(same.get(i).mark()).isEqualTo(rows.get(i).mark());
      assertThat(same.get(i).stand()).isEqualTo(rows.get(i).stand());
      assertThat(same.get(i).fromFirst().metres())
          .isCloseTo(rows.get(i).fromFirst().metres(), within(1e-9));
      assertThat(same.get(i).check().map(TapeTable.Check::to))
          .isEqualTo(rows.get(i).check().map(TapeTable.Check::to));
    }
  }
}
