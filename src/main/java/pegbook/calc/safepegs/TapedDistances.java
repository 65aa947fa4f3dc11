package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/** Works out distances and angles between named places, and keeps their workings once each. */
final class TapedDistances {
  private final SafePegsFormulas formulas;
  private final Length division;
  private final Map<String, Point> places = new LinkedHashMap<>();
  private final Map<String, Working> workings = new LinkedHashMap<>();

  TapedDistances(SafePegsFormulas formulas, Length division) {
    this.formulas = formulas;
    this.division = division;
  }

  void name(String name, Point place) {
    places.put(name, place);
  }

  Point place(String name) {
    return Objects.requireNonNull(places.get(name));
  }

  /** Formula by formula. */
  List<Working> workings() {
    List<Working> sorted = new ArrayList<>();
    for (String id :
        workings.values().stream().map(one -> one.formula().id()).distinct().toList()) {
      workings.values().stream().filter(one -> one.formula().id().equals(id)).forEach(sorted::add);
    }
    return sorted;
  }

  /** A distance as it is. */
  Length distance(String from, String to) {
    Point first = place(from);
    Point second = place(to);
    return worked(
            Working.of(
                formulas.distance(),
                from + "–" + to,
                new Length(first.east()),
                new Length(first.north()),
                new Length(second.east()),
                new Length(second.north())))
        .asLength();
  }

  /** A distance set to the tape's division. */
  Length set(String from, String to) {
    return distance(from, to).setTo(division, Rounding.NEAREST);
  }

  /** The angle at a mark between tapes from two pegs. */
  Angle crossing(String mark, String first, String second) {
    return worked(
            Working.of(
                formulas.crossing(),
                mark,
                distance(first, mark),
                distance(second, mark),
                distance(first, second)))
        .asAngle();
  }

  Length spread(String mark, Length firstSigma, Length secondSigma, Angle crossing) {
    return worked(Working.of(formulas.spread(), mark, firstSigma, secondSigma, crossing))
        .asLength();
  }

  /** The angle over a mark between two strings, each named by its two pegs. */
  Angle stringAngle(String mark, String first, String second, String third, String fourth) {
    return worked(
            Working.of(formulas.stringAngle(), mark, folded(first, second), folded(third, fourth)))
        .asAngle();
  }

  /** The azimuth of a line without a direction. */
  private Angle folded(String from, String to) {
    double degrees = place(from).azimuthTo(place(to)).degrees();
    return Angle.ofDegrees(degrees >= 180 ? degrees - 180 : degrees);
  }

  private Working worked(Working working) {
    String key = working.formula().id() + " " + working.subject();
    workings.putIfAbsent(key, working);
    return Objects.requireNonNull(workings.get(key));
  }
}
