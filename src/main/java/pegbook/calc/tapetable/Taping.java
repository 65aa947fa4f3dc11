package pegbook.calc.tapetable;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import pegbook.calc.tapetable.TapeTable.Check;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.calc.tapetable.TapeTable.Shift;
import pegbook.calc.tapetable.TapeTable.Stand;
import pegbook.figures.Formula;
import pegbook.figures.PlacedMark;
import pegbook.figures.Working;
import pegbook.geometry.Crossings;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.job.Layout;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/**
 * Tapes marks from one baseline: readings, crossings, checks, and what setting the readings does.
 */
final class Taping {
  private final TapeTableFormulas formulas;
  private final Layout layout;
  private final Crossings crossings;
  private final PlacedMark first;
  private final PlacedMark second;
  private final Segment baseline;
  private final Length drawn;
  private final Length set;
  private final Map<String, Working> workings = new LinkedHashMap<>();

  Taping(
      TapeTableFormulas formulas,
      Layout layout,
      Crossings crossings,
      PlacedMark first,
      PlacedMark second) {
    this.formulas = formulas;
    this.layout = layout;
    this.crossings = crossings;
    this.first = first;
    this.second = second;
    this.baseline = new Segment(first.at(), second.at());
    this.drawn = distance(first, second);
    this.set = set(drawn);
  }

  Segment baseline() {
    return baseline;
  }

  /** The baseline's length, set to the division. */
  Length set() {
    return set;
  }

  List<Working> workings() {
    return List.copyOf(workings.values());
  }

  /** The rows of marks in the order of work. */
  List<Row> rows(List<PlacedMark> ordered) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < ordered.size(); i++) {
      rows.add(row(ordered.get(i), ordered.subList(0, i), i + 3));
    }
    return rows;
  }

  private Row row(PlacedMark mark, List<PlacedMark> placed, int order) {
    Length a = distance(first, mark);
    Length b = distance(second, mark);
    Stand stand = stand(mark.at());
    Optional<Angle> crossing =
        stand.isOnLine()
            ? Optional.empty()
            : Optional.of(
                worked(Working.of(formulas.crossing(), mark.id(), a, b, drawn)).asAngle());
    boolean weak = Crossings.isWeak(crossings.weakness(baseline.from(), baseline.to(), mark.at()));
    return new Row(
        order,
        mark.id(),
        stand,
        set(a),
        set(b),
        crossing,
        weak,
        check(mark, stand, placed, set(b)),
        shift(mark.at(), stand, set(a), set(b)));
  }

  Stand stand(Point mark) {
    if (!crossings.isOnLine(baseline, mark)) {
      return baseline.offsetMetres(mark) > 0 ? Stand.LEFT : Stand.RIGHT;
    }
    double along = baseline.alongMetres(mark);
    if (along < 0) {
      return Stand.BEYOND_FIRST;
    }
    return along > drawn.metres() ? Stand.BEYOND_SECOND : Stand.BETWEEN;
  }

  /**
   * On the string line the second tape is the check; elsewhere a distance to a mark already there.
   */
  private Optional<Check> check(
      PlacedMark mark, Stand stand, List<PlacedMark> placed, Length fromSecond) {
    if (stand.isOnLine()) {
      return Optional.of(new Check(second.id(), fromSecond, false));
    }
    CheckChoice choice = new CheckChoice(baseline, layout.tape().length(), crossings.onLine());
    return choice
        .among(mark.at(), placed)
        .map(to -> new Check(to.id(), set(distance(to, mark)), choice.seesMirror(to)));
  }

  /** How far the set readings, on a baseline that is itself set, put a mark off. */
  private Optional<Length> shift(Point mark, Stand stand, Length a, Length b) {
    double along = baseline.alongMetres(mark);
    double offset = baseline.offsetMetres(mark);
    if (stand.isOnLine()) {
      double put = stand == Stand.BEYOND_FIRST ? -a.metres() : a.metres();
      return Optional.of(new Length(StrictMath.hypot(put - along, offset)));
    }
    Segment line = new Segment(Point.ORIGIN, new Point(0, set.metres()));
    if (!(Swing.of(line, a, b) instanceof Swing.Crossing swing)) {
      return Optional.empty();
    }
    Point put = swing.on(stand == Stand.LEFT ? Segment.Side.LEFT : Segment.Side.RIGHT);
    return Optional.of(put.distanceTo(new Point(-offset, along)));
  }

  /**
   * The mark that set readings put furthest off, and by how much; the baseline's second mark
   * counts. The furthest beside the baseline gets its working.
   */
  Optional<Shift> largestShift(List<Row> rows) {
    List<Shift> shifts = new ArrayList<>();
    shifts.add(new Shift(second.id(), set.minus(drawn).abs()));
    rows.forEach(
        row -> row.shift().ifPresent(distance -> shifts.add(new Shift(row.mark(), distance))));
    Shift largest =
        shifts.stream()
            .reduce((one, next) -> next.distance().isMoreThan(one.distance()) ? next : one)
            .orElseThrow();
    return rows.stream()
        .filter(row -> row.mark().equals(largest.mark()) && !row.stand().isOnLine())
        .findFirst()
        .map(row -> new Shift(row.mark(), workedShift(row)))
        .or(() -> Optional.of(largest));
  }

  private Length workedShift(Row row) {
    String mark = row.mark();
    Length a = known(formulas.distance(), subject(first.id(), mark)).asLength();
    Length b = known(formulas.distance(), subject(second.id(), mark)).asLength();
    Length x = worked(Working.of(formulas.alongDrawn(), mark, a, b, drawn)).asLength();
    Length y = worked(Working.of(formulas.offDrawn(), mark, a, x)).asLength();
    Length setX =
        worked(Working.of(formulas.alongSet(), mark, row.fromFirst(), row.fromSecond(), set))
            .asLength();
    Length setY = worked(Working.of(formulas.offSet(), mark, row.fromFirst(), setX)).asLength();
    return worked(Working.of(formulas.shift(), mark, x, y, setX, setY)).asLength();
  }

  Length distance(PlacedMark from, PlacedMark to) {
    return worked(
            Working.of(
                formulas.distance(),
                subject(from.id(), to.id()),
                new Length(from.at().east()),
                new Length(from.at().north()),
                new Length(to.at().east()),
                new Length(to.at().north())))
        .asLength();
  }

  private static String subject(String from, String to) {
    return from + "–" + to;
  }

  Length set(Length length) {
    return length.setTo(layout.tape().division(), Rounding.NEAREST);
  }

  /** Keeps a working once. */
  private Working worked(Working working) {
    workings.putIfAbsent(working.formula().id() + " " + working.subject(), working);
    return known(working.formula(), working.subject());
  }

  private Working known(Formula formula, String subject) {
    return Objects.requireNonNull(workings.get(formula.id() + " " + subject));
  }
}
