package pegbook.calc.tapetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.tapetable.TapeTable.BetterPair;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.calc.tapetable.TapeTable.Shift;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.PlacedMark;
import pegbook.geometry.BaselineChoice;
import pegbook.geometry.Crossings;
import pegbook.job.Layout;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.published.Citation;

/** What the reader of the tape table must act on. */
final class TapeTableFindings {
  private final Layout layout;
  private final List<PlacedMark> marks;
  private final BaselineChoice choice;
  private final BaselineChoice best;
  private final List<Row> rows;

  /**
   * Takes what was found.
   *
   * @param choice the baseline that is used
   * @param best the best of all pairs
   */
  TapeTableFindings(
      Layout layout,
      List<PlacedMark> marks,
      BaselineChoice choice,
      BaselineChoice best,
      List<Row> rows) {
    this.layout = layout;
    this.marks = marks;
    this.choice = choice;
    this.best = best;
    this.rows = rows;
  }

  List<Finding> all(List<BetterPair> betterPairs, Optional<Shift> largest, Length longest) {
    List<Finding> findings = new ArrayList<>();
    weak(betterPairs).ifPresent(findings::add);
    tapeShort(longest).ifPresent(findings::add);
    rounding(largest).ifPresent(findings::add);
    miss().ifPresent(findings::add);
    unchecked().ifPresent(findings::add);
    return findings;
  }

  private static Finding ask(String id, String place) {
    return Finding.of(Finding.Kind.ASK, id, place, Finding.Decider.OWNER, Citation.COMMON_PRACTICE);
  }

  private Argument name(int mark) {
    return Argument.words(marks.get(mark).id());
  }

  private Optional<Finding> weak(List<BetterPair> betterPairs) {
    List<String> weak = rows.stream().filter(Row::weak).map(Row::mark).toList();
    if (weak.isEmpty()) {
      return Optional.empty();
    }
    boolean otherBaseline = !Crossings.isWeak(best.weakness());
    String id =
        otherBaseline
            ? "tape-table-weak-baseline"
            : betterPairs.size() == weak.size() ? "tape-table-weak-pairs" : "tape-table-weak-left";
    Finding finding =
        ask(id, "layout.baseline")
            .about(weak)
            .with("first", name(choice.first()))
            .with("second", name(choice.second()))
            .with("weakest", Argument.of(weakest()))
            .with("least", Argument.of(Crossings.LEAST))
            .with("most", Argument.of(Crossings.MOST));
    return Optional.of(
        otherBaseline
            ? finding
                .with("betterFirst", name(best.first()))
                .with("betterSecond", name(best.second()))
                .with("betterCrossing", Argument.of(Crossings.strength(best.weakness())))
            : finding);
  }

  /** The weakest crossing as an angle, on the side of the right angle that it really lies. */
  private Angle weakest() {
    return rows.stream()
        .filter(Row::weak)
        .map(row -> row.crossing().orElse(Angle.ZERO))
        .reduce((one, next) -> sharpness(next) < sharpness(one) ? next : one)
        .orElseThrow();
  }

  private static double sharpness(Angle angle) {
    return Math.min(angle.degrees(), 180 - angle.degrees());
  }

  private Optional<Finding> tapeShort(Length longest) {
    Length reach = layout.tape().length();
    if (longest.metres() <= reach.metres() * (1 + 1e-9)) {
      return Optional.empty();
    }
    return Optional.of(
        ask("tape-table-tape-short", "layout.tape.length")
            .about(rows.stream().filter(row -> needs(row, reach)).map(Row::mark).toList())
            .with("reach", Argument.of(reach))
            .with("longest", Argument.of(longest)));
  }

  private static boolean needs(Row row, Length reach) {
    return row.fromFirst().isMoreThan(reach) || row.fromSecond().isMoreThan(reach);
  }

  private Optional<Finding> rounding(Optional<Shift> largest) {
    return largest
        .filter(shift -> shift.distance().isMoreThan(layout.tolerance()))
        .map(
            shift ->
                ask("tape-table-division", "layout.tape.division")
                    .about(rows.stream().filter(row -> isOff(row)).map(Row::mark).toList())
                    .with("mark", Argument.words(shift.mark()))
                    .with("shift", Argument.of(shift.distance()))
                    .with("division", Argument.of(layout.tape().division()))
                    .with("tolerance", Argument.of(layout.tolerance())));
  }

  private boolean isOff(Row row) {
    return row.shift().filter(shift -> shift.isMoreThan(layout.tolerance())).isPresent();
  }

  private Optional<Finding> miss() {
    List<String> missed =
        rows.stream().filter(row -> row.shift().isEmpty()).map(Row::mark).toList();
    return missed.isEmpty()
        ? Optional.empty()
        : Optional.of(
            ask("tape-table-no-meeting", "layout.baseline")
                .about(missed)
                .with("division", Argument.of(layout.tape().division())));
  }

  /** With one mark beside the baseline there is nothing to check it against. */
  private Optional<Finding> unchecked() {
    List<Row> beside = rows.stream().filter(row -> !row.stand().isOnLine()).toList();
    boolean checked = rows.size() > 1 || beside.isEmpty();
    return checked
        ? Optional.empty()
        : Optional.of(ask("tape-table-no-check", "layout").about(List.of(beside.get(0).mark())));
  }
}
