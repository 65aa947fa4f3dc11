package pegbook.jobfile;

import static pegbook.job.Default.Basis.DERIVED;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.job.Feature.Shape;
import pegbook.job.Site;
import pegbook.measure.Length;

/** The land round the structure. */
final class SiteKeys {
  static final Key<String> NAME = Key.required("name", Values.NAME, "\"oak\"");
  static final Key<Feature.Kind> KIND =
      Key.orElseAsked(
          "kind", ChoiceValue.of(Feature.Kind.class), "\"object\"", "\"object\"", DERIVED);
  private static final Key<Feature.Kind> LINE_KIND =
      Key.orElseAsked("kind", KIND.value(), "\"buried line\"", "\"buried line\"", DERIVED);
  static final Key<Point> AT = Key.free("at", Values.PLACE);
  static final Key<Point> FROM = Key.free("from", Values.PLACE);
  static final Key<Point> TO = Key.free("to", Values.PLACE);
  static final Key<List<Point>> CORNERS = Key.free("corners", Values.places(3, 100));
  static final Key<Length> KEEP_CLEAR =
      Key.free("keepClear", Values.length("0 ft", "200 ft", "0 m", "60 m"));
  static final SectionValue<Feature> FEATURE =
      new SectionValue<>(
          List.of(NAME, KIND, AT, FROM, TO, CORNERS, KEEP_CLEAR),
          SiteKeys::hasOneShape,
          SiteKeys::feature);

  static final Key<List<Point>> BOUNDARY = Key.free("boundary", Values.places(3, 100));
  static final Key<Length> SETBACK =
      Key.free("setback", Values.length("0 ft", "500 ft", "0 m", "150 m"));
  static final Key<List<Feature>> FEATURES = Key.free("features", new ListValue<>(FEATURE, 0, 100));
  static final SectionValue<Site> SITE =
      new SectionValue<>(
          List.of(BOUNDARY, SETBACK, FEATURES),
          (fields, report) -> Corners.makeAFigure(fields, BOUNDARY, report),
          SiteKeys::site);

  private SiteKeys() {}

  private static Site site(Fields fields) {
    return new Site(
        fields.find(BOUNDARY).map(Polygon::new).map(Polygon::clockwise),
        fields.find(SETBACK),
        fields.find(FEATURES).orElse(List.of()));
  }

  private static boolean hasOneShape(Fields fields, Report report) {
    boolean line = fields.has(FROM) && fields.has(TO);
    boolean half = fields.has(FROM) != fields.has(TO);
    long shapes = Stream.of(fields.has(AT), line, fields.has(CORNERS)).filter(has -> has).count();
    if (shapes != 1 || half) {
      fields.complain(
          Complaint.KEY_NOT_ONE,
          List.of(AT, FROM, TO, CORNERS),
          "\"at\", \"corners\", or \"from\" with \"to\"");
      return false;
    }
    return Corners.makeAFigure(fields, CORNERS, report) && hasLength(fields);
  }

  private static boolean hasLength(Fields fields) {
    Optional<Length> length =
        fields.find(FROM).flatMap(from -> fields.find(TO).map(from::distanceTo));
    if (length.isPresent() && length.get().millimetres() < 1) {
      fields.complain(TO, Complaint.LINE_SHORT);
      return false;
    }
    return true;
  }

  private static Feature feature(Fields fields) {
    return new Feature(fields.get(NAME), kind(fields), shape(fields), fields.find(KEEP_CLEAR));
  }

  /** A line without a kind is taken for a buried one, the more dangerous reading. */
  private static Feature.Kind kind(Fields fields) {
    return fields.getOrAssume(fields.has(FROM) ? LINE_KIND : KIND);
  }

  private static Shape shape(Fields fields) {
    if (fields.has(AT)) {
      return new Shape.Spot(fields.get(AT));
    } else if (fields.has(FROM)) {
      return new Shape.Line(new Segment(fields.get(FROM), fields.get(TO)));
    }
    return new Shape.Block(new Polygon(fields.get(CORNERS)).clockwise());
  }
}
