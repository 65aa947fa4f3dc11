package pegbook.calc.safepegs;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import pegbook.calc.depthtargets.DepthTargetsCalculator;
import pegbook.calc.digschedule.DigScheduleCalculator;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.safepegs.SafePegs.Setting;
import pegbook.calc.safepegs.SafePegs.Tape;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.job.Widenings;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.measure.Length;
import pegbook.measure.Volume;
import pegbook.testing.JobMaker;
import pegbook.testing.LayoutJob;

/** A job with its pegs, and the second road by which tests look at them: JTS. */
record PegScene(
    Job job, Placement placement, List<Hole> holes, List<SpoilHeap> heaps, SafePegs pegs) {
  static final GeometryFactory JTS = new GeometryFactory();

  static PegScene of(Job job, Placement placement, List<Hole> holes, List<SpoilHeap> heaps) {
    return new PegScene(
        job, placement, holes, heaps, SafePegsCalculator.calculate(job, placement, holes, heaps));
  }

  /** A made-up job with the heaps of its own dig schedule. */
  static PegScene made(int number) {
    byte[] text = JobMaker.text(number).getBytes(StandardCharsets.UTF_8);
    Job job = ((JobFile.Read) JobFileReader.read("made", text)).job();
    Placement placement = PlacementCalculator.calculate(job);
    List<Hole> holes = DepthTargetsCalculator.calculate(job, placement).holes();
    return of(
        job, placement, holes, DigScheduleCalculator.calculate(job, placement, holes).heaps());
  }

  /** Holes of 0.45 m without heaps, or with one straight outwards of each. */
  static PegScene of(LayoutJob layout, Optional<Double> heapHeight) {
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    List<Hole> holes =
        placement.marks().stream().map(mark -> hole(mark.id(), mark.kind(), mark.at())).toList();
    List<SpoilHeap> heaps = new ArrayList<>();
    for (Hole hole : holes) {
      double metres = Point.ORIGIN.distanceTo(hole.centre()).metres();
      if (heapHeight.isPresent() && metres > 0.1) {
        double part = (metres + 1.6) / metres;
        Point at = new Point(hole.centre().east() * part, hole.centre().north() * part);
        heaps.add(
            new SpoilHeap(
                List.of(hole.mark()),
                at,
                new Length(0.7),
                new Length(heapHeight.get()),
                new Volume(0.2)));
      }
    }
    return of(job, placement, holes, heaps);
  }

  private static Hole hole(String mark, MarkKind kind, Point at) {
    return new Hole(
        mark,
        kind,
        at,
        new Length(0.45),
        new Length(1),
        new Length(0.1),
        new Length(0.15),
        Hole.DepthRule.JOB,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Widenings.NONE);
  }

  Point mark(String id) {
    return placement.mark(id).at();
  }

  Point peg(String id) {
    return pegs.peg(id).at();
  }

  /** A peg or a mark. */
  Point place(String id) {
    return id.startsWith("K") ? peg(id) : mark(id);
  }

  double halfDivisionMetres() {
    return job.layout().tape().division().metres() / 2 + 1e-7;
  }

  /** Where a peg's readings alone put it, taken step by step as the sheet says. */
  Point set(Setting setting) {
    if (setting instanceof Setting.Swing swing) {
      return swung(swing.first(), swing.second(), swing.left());
    }
    if (setting instanceof Setting.InLine line) {
      Segment way = new Segment(place(line.from()), place(line.past().name()));
      return way.at(way.length().metres() + line.past().length().metres(), 0);
    }
    Setting.Meeting meeting = (Setting.Meeting) setting;
    LineString one = drawnOut(meeting.one());
    LineString other = drawnOut(meeting.other());
    Coordinate at = one.intersection(other).getCoordinate();
    return new Point(at.x, at.y);
  }

  private LineString drawnOut(Setting.InLine line) {
    Segment way = new Segment(place(line.from()), place(line.past().name()));
    double further = way.length().metres() + line.past().length().metres() + 0.5;
    return line(way.from(), way.at(further, 0));
  }

  /** Two circles, on one side. */
  Point swung(Tape first, Tape second, boolean left) {
    Segment line = new Segment(place(first.name()), place(second.name()));
    Swing.Crossing crossing = (Swing.Crossing) Swing.of(line, first.length(), second.length());
    return left ? crossing.left() : crossing.right();
  }

  static LineString line(Point from, Point to) {
    return JTS.createLineString(new Coordinate[] {at(from), at(to)});
  }

  static Coordinate at(Point place) {
    return new Coordinate(place.east(), place.north());
  }

  static Geometry point(Point place) {
    return JTS.createPoint(at(place));
  }

  static Geometry shape(Polygon polygon) {
    List<Coordinate> ring = new ArrayList<>();
    polygon.corners().forEach(corner -> ring.add(at(corner)));
    ring.add(ring.get(0));
    return JTS.createPolygon(ring.toArray(Coordinate[]::new));
  }

  static Geometry shape(Feature feature) {
    if (feature.shape() instanceof Feature.Shape.Spot spot) {
      return point(spot.at());
    }
    if (feature.shape() instanceof Feature.Shape.Line line) {
      return line(line.along().from(), line.along().to());
    }
    return shape(((Feature.Shape.Block) feature.shape()).corners());
  }
}
