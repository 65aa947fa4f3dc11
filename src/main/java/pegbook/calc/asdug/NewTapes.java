package pegbook.calc.asdug;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.asdug.AsDug.Row;
import pegbook.calc.asdug.DugChecks.Purpose;
import pegbook.calc.asdug.DugChecks.Tape;
import pegbook.figures.Hole;
import pegbook.figures.Swings;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/**
 * Readings round holes that lie off their marks: back to the true mark, and on to marks that are
 * taped from this hole and not dug yet.
 *
 * @param tapes in the order of the marks
 * @param workings the steps
 */
record NewTapes(List<Tape> tapes, List<Working> workings) {

  static NewTapes of(Job job, AsDug asDug, Swings swings) {
    List<Tape> tapes = new ArrayList<>();
    List<Working> workings = new ArrayList<>();
    Reader reader = new Reader(job, workings);
    for (Row row : asDug.rows()) {
      if (!row.moved().isMoreThan(AsDugCalculator.TOLERANCE)) {
        continue;
      }
      Point mark = row.planned().centre();
      Point middle = row.filled().centre();
      for (String end : ends(swings, row.mark())) {
        Point from = asDug.planned(end).centre();
        tapes.add(
            new Tape(
                Purpose.TRUE_MARK,
                row.mark(),
                end,
                row.mark(),
                reader.read(end + " – " + row.mark(), from, mark),
                reader.read(end + " – " + row.mark() + "′", from, middle)));
      }
      for (Hole other : asDug.planned()) {
        boolean isOpen = job.field().dug(other.mark()).isEmpty();
        if (isOpen && ends(swings, other.mark()).contains(row.mark())) {
          tapes.add(
              new Tape(
                  Purpose.ON_TO,
                  row.mark(),
                  row.mark(),
                  other.mark(),
                  reader.read(row.mark() + "′ – " + other.mark(), middle, other.centre()),
                  reader.read(row.mark() + " – " + other.mark(), mark, other.centre())));
        }
      }
    }
    return new NewTapes(tapes, workings);
  }

  /** From which marks a mark is taped; a mark of the baseline from the other one. */
  private static List<String> ends(Swings swings, String mark) {
    return swings
        .pairOf(mark)
        .map(pair -> List.of(pair.first(), pair.second()))
        .orElseGet(() -> List.of(swings.first(), swings.second()))
        .stream()
        .filter(end -> !end.equals(mark))
        .toList();
  }

  private record Reader(Job job, List<Working> workings) {
    Length read(String subject, Point from, Point to) {
      Working working =
          Working.of(
              new AsDugFormulas(job.heading().units()).tape(),
              subject,
              new Length(to.east() - from.east()),
              new Length(to.north() - from.north()));
      if (!workings.contains(working)) {
        workings.add(working);
      }
      return working.asLength().setTo(job.layout().tape().division(), Rounding.NEAREST);
    }
  }
}
