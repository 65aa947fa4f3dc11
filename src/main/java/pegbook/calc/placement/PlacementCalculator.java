package pegbook.calc.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.geometry.Figure;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Job;
import pegbook.job.Layout;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.published.Citation;

/**
 * Puts the outline, the supports and the piers on the ground.
 *
 * <p>Regular figures and circles follow from one radius and the azimuth of each mark; other figures
 * are drawn round their centroid and turned as a whole, until S1 lies on its azimuth. Piers stand
 * where the job says, east and north of the centre, and are not turned.
 */
public final class PlacementCalculator {
  /** A centroid nearer to the drawing's own origin than this is not worth a word. */
  private static final Length AT_ORIGIN = Length.ofMillimetres(1);

  private final Job job;
  private final PlacementFormulas formulas;
  private final List<Working> workings = new ArrayList<>();

  private PlacementCalculator(Job job) {
    this.job = job;
    this.formulas = PlacementFormulas.in(job.heading().units());
  }

  /**
   * Places the job's outline and marks.
   *
   * @throws IllegalArgumentException when the inset leaves no room inside the outline, which the
   *     reader of the job file refuses
   */
  public static Placement calculate(Job job) {
    return new PlacementCalculator(job).place();
  }

  private Placement place() {
    Figure figure =
        job.layout()
            .outline()
            .figure(job.layout().supportInset(), job.layout().centreToFirstMark())
            .orElseThrow(() -> new IllegalArgumentException("no room for the supports' inset"));
    List<PlacedMark> marks = new ArrayList<>();
    for (Point at : supports(figure)) {
      marks.add(mark("S" + (marks.size() + 1), MarkKind.SUPPORT, at));
    }
    job.piers().forEach(pier -> marks.add(mark(pier.id(), MarkKind.PIER, pier.at())));
    return new Placement(figure.outline(), figure.round(), marks, findings(), workings);
  }

  private PlacedMark mark(String id, MarkKind kind, Point at) {
    return new PlacedMark(id, kind, at, Optional.ofNullable(job.ground().levels().get(id)));
  }

  private static Angle azimuth(Layout layout) {
    return layout
        .centreToFirstMark()
        .orElseThrow(() -> new IllegalArgumentException("no azimuth of S1"));
  }

  private List<Point> supports(Figure figure) {
    Outline outline = job.layout().outline();
    Length inset = job.layout().supportInset();
    if (outline instanceof Outline.Regular regular) {
      Count sides = new Count(regular.sides());
      Working radius =
          Working.of(formulas.supportRadius(), "", regular.acrossCorners(), inset, sides);
      return onCircle(radius, regular.sides());
    }
    if (outline instanceof Outline.Circle circle) {
      return onCircle(
          Working.of(formulas.postRadius(), "", circle.diameter(), inset), circle.posts());
    }
    return turned(figure);
  }

  private List<Point> onCircle(Working radius, int count) {
    workings.add(radius);
    List<Point> places = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      Working azimuth =
          Working.of(
              formulas.azimuth(), "S" + i, azimuth(job.layout()), new Count(i), new Count(count));
      Working east = Working.of(formulas.east(), "S" + i, radius.asLength(), azimuth.asAngle());
      Working north = Working.of(formulas.north(), "S" + i, radius.asLength(), azimuth.asAngle());
      workings.addAll(List.of(azimuth, east, north));
      places.add(Point.of(east.asLength(), north.asLength()));
    }
    return places;
  }

  private List<Point> turned(Figure figure) {
    List<Point> drawn =
        figure.supports().stream().map(at -> at.turned(figure.turn().negated())).toList();
    if (job.layout().centreToFirstMark().isEmpty()) {
      return drawn;
    }
    Working turn =
        Working.of(
            formulas.turn(),
            "",
            azimuth(job.layout()),
            new Length(drawn.get(0).east()),
            new Length(drawn.get(0).north()));
    workings.add(turn);
    List<Point> places = new ArrayList<>();
    for (Point at : drawn) {
      String mark = "S" + (places.size() + 1);
      Length across = new Length(at.east());
      Length up = new Length(at.north());
      Working east = Working.of(formulas.turnedEast(), mark, across, up, turn.asAngle());
      Working north = Working.of(formulas.turnedNorth(), mark, across, up, turn.asAngle());
      workings.addAll(List.of(east, north));
      places.add(Point.of(east.asLength(), north.asLength()));
    }
    return places;
  }

  private List<Finding> findings() {
    if (!(job.layout().outline() instanceof Outline.Free free)) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    Point centre = new Polygon(free.corners()).centroid();
    if (Point.ORIGIN.distanceTo(centre).isMoreThan(AT_ORIGIN)) {
      findings.add(
          Finding.of(
                  Finding.Kind.NOTE,
                  "placement-centre",
                  "layout.outline.points",
                  Finding.Decider.OWNER,
                  Citation.GEOMETRY)
              .with("across", Argument.of(new Length(centre.east())))
              .with("up", Argument.of(new Length(centre.north()))));
    }
    if (job.layout().centreToFirstMark().isEmpty()) {
      findings.add(
          Finding.of(
              Finding.Kind.ASK,
              "placement-north",
              "layout.centreToFirstMark",
              Finding.Decider.OWNER,
              Citation.COMMON_PRACTICE));
    }
    return findings;
  }
}
