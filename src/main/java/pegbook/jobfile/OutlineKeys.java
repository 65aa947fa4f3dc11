package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Outline;
import pegbook.measure.Length;

/** The floor's edge: exactly one of five kinds. */
final class OutlineKeys {
  private static final QuantityValue<Length> SIZE =
      Values.length("1 ft", "200 ft", "300 mm", "60 m");

  static final Key<Integer> SIDES = Key.required("sides", new WholeNumber(3, 24), "6");
  static final Key<Length> SIDE = Key.free("side", SIZE);
  static final Key<Length> ACROSS_FLATS = Key.free("acrossFlats", SIZE);
  static final Key<Length> ACROSS_CORNERS = Key.free("acrossCorners", SIZE);
  private static final List<Key<Length>> SIZES = List.of(SIDE, ACROSS_FLATS, ACROSS_CORNERS);
  static final SectionValue<Outline> REGULAR_PART =
      new SectionValue<>(
          List.of(SIDES, SIDE, ACROSS_FLATS, ACROSS_CORNERS),
          OutlineKeys::isOneRegular,
          OutlineKeys::regular);

  static final Key<Length> LENGTH = Key.required("length", SIZE, "\"12 ft\"");
  static final Key<Length> WIDTH = Key.required("width", SIZE, "\"8 ft\"");
  static final Key<Integer> COLUMNS = Key.required("columns", new WholeNumber(2, 100), "3");
  static final Key<Integer> ROWS = Key.required("rows", new WholeNumber(2, 100), "2");
  static final SectionValue<Outline> RECTANGLE_PART =
      new SectionValue<>(
          List.of(LENGTH, WIDTH, COLUMNS, ROWS),
          fields ->
              new Outline.Rectangle(
                  fields.get(LENGTH), fields.get(WIDTH), fields.get(COLUMNS), fields.get(ROWS)));

  static final Key<Length> CUT =
      Key.required("cut", Values.length("1 in", "100 ft", "25 mm", "30 m"), "\"3 ft\"");
  static final SectionValue<Outline> CHAMFERED_PART =
      new SectionValue<>(
          List.of(LENGTH, WIDTH, CUT),
          OutlineKeys::leavesSides,
          fields ->
              new Outline.ChamferedRectangle(
                  fields.get(LENGTH), fields.get(WIDTH), fields.get(CUT)));

  static final Key<Length> DIAMETER = Key.required("diameter", SIZE, "\"12 ft\"");
  static final Key<Integer> POSTS = Key.required("posts", new WholeNumber(3, 60), "8");
  static final SectionValue<Outline> CIRCLE_PART =
      new SectionValue<>(
          List.of(DIAMETER, POSTS),
          fields -> new Outline.Circle(fields.get(DIAMETER), fields.get(POSTS)));

  static final Key<List<Point>> CORNERS =
      Key.required(
          "corners", Values.places(3, 500), "[\"0 ft, 0 ft\", \"0 ft, 9 ft\", \"9 ft, 0 ft\"]");
  static final Key<List<Point>> SUPPORTS = Key.free("supports", Values.places(3, 500));
  static final SectionValue<Outline> POINTS_PART =
      new SectionValue<>(
          List.of(CORNERS, SUPPORTS),
          OutlineKeys::standsInside,
          fields -> new Outline.Free(fields.get(CORNERS), fields.find(SUPPORTS)));

  static final Key<Outline> REGULAR = Key.free("regular", REGULAR_PART);
  static final Key<Outline> RECTANGLE = Key.free("rectangle", RECTANGLE_PART);
  static final Key<Outline> CHAMFERED = Key.free("chamferedRectangle", CHAMFERED_PART);
  static final Key<Outline> CIRCLE = Key.free("circle", CIRCLE_PART);
  static final Key<Outline> POINTS = Key.free("points", POINTS_PART);
  private static final List<Key<Outline>> KINDS =
      List.of(REGULAR, RECTANGLE, CHAMFERED, CIRCLE, POINTS);
  static final SectionValue<Outline> OUTLINE =
      new SectionValue<>(
          List.copyOf(KINDS),
          (fields, report) -> hasOne(fields, KINDS),
          fields -> fields.get(given(fields, KINDS).get(0)));

  private OutlineKeys() {}

  private static <T> List<Key<T>> given(Fields fields, List<Key<T>> keys) {
    return keys.stream().filter(fields::has).toList();
  }

  private static <T> boolean hasOne(Fields fields, List<Key<T>> keys) {
    if (given(fields, keys).size() == 1) {
      return true;
    }
    fields.complainNotOne(keys);
    return false;
  }

  private static boolean isOneRegular(Fields fields, Report report) {
    Optional<Integer> odd = fields.find(SIDES).filter(sides -> sides % 2 == 1);
    if (odd.isPresent() && fields.has(ACROSS_FLATS)) {
      report.complain(
          fields.node(ACROSS_FLATS),
          Complaint.FLATS_ODD,
          Map.of("sides", Integer.toString(odd.get())));
      return false;
    }
    return hasOne(fields, SIZES);
  }

  private static Outline regular(Fields fields) {
    int sides = fields.get(SIDES);
    Key<Length> key = given(fields, SIZES).get(0);
    return new Outline.Regular(sides, acrossCorners(key, fields.get(key), sides));
  }

  private static Length acrossCorners(Key<Length> key, Length size, int sides) {
    double halfAngle = Math.PI / sides;
    if (key.equals(SIDE)) {
      return size.times(1 / StrictMath.sin(halfAngle));
    }
    return key.equals(ACROSS_FLATS) ? size.times(1 / StrictMath.cos(halfAngle)) : size;
  }

  private static boolean leavesSides(Fields fields, Report report) {
    Optional<Length> shorter =
        fields.find(LENGTH).flatMap(length -> fields.find(WIDTH).map(length::min));
    Optional<Length> cuts = fields.find(CUT).map(cut -> cut.times(2));
    if (shorter.isPresent() && cuts.isPresent() && !cuts.get().isLessThan(shorter.get())) {
      report.complain(fields.node(CUT), Complaint.CUT_SWALLOWS, Map.of());
      return false;
    }
    return true;
  }

  private static boolean standsInside(Fields fields, Report report) {
    if (!Corners.makeAFigure(fields, CORNERS, report)) {
      return false;
    }
    Optional<Polygon> outline = fields.find(CORNERS).map(Polygon::new);
    List<Point> supports = fields.find(SUPPORTS).orElse(List.of());
    for (int i = 0; i < supports.size(); i++) {
      Point support = supports.get(i);
      if (outline.isPresent() && !outline.get().contains(support)) {
        Map<String, String> mark = Map.of("mark", "S" + (i + 1));
        report.complain(fields.item(SUPPORTS, i), Complaint.SUPPORT_OUTSIDE, mark);
        return false;
      }
    }
    return true;
  }
}
