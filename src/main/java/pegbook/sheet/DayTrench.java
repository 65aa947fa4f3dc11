package pegbook.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Leg;
import pegbook.figures.Hole;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The power line's trench in the picture of a day: a broken line, a dot and a name at each of its
 * places.
 *
 * @param window what of the ground there is room for
 * @param holes of the figure; an end at one of them has the hole's name
 * @param legs from the supply on
 */
record DayTrench(Canvas canvas, PlanFrame frame, Extent window, List<Hole> holes, List<Leg> legs) {
  private static final Pen PEN = Pen.HEAVY.dashed();
  private static final double DOT_MM = 0.9;

  /** A little more than half: to the rim of a hole. */
  private static final double AT_RIM = 0.51;

  private Optional<Segment> shown(Leg leg) {
    return window.part(new Segment(leg.start(), leg.end()));
  }

  void draw() {
    for (Leg leg : legs) {
      shown(leg).ifPresent(line -> canvas.line(spot(line.from()), spot(line.to()), PEN));
      List.of(leg.start(), leg.end()).stream()
          .filter(window::contains)
          .forEach(place -> canvas.dot(spot(place), DOT_MM));
    }
  }

  private Spot spot(Point place) {
    return frame.spot(place);
  }

  /** Names the places; where a stretch is cut off on its way to one, the name stands at the cut. */
  void name(LabelPlacer placer) {
    Map<String, Point> names = new LinkedHashMap<>();
    for (Leg leg : legs) {
      Optional<Segment> line = shown(leg);
      place(names, leg.from(), leg.start(), line.map(Segment::from));
      place(names, leg.to(), leg.end(), line.map(Segment::to));
    }
    names.forEach(
        (name, at) ->
            placer.place(
                Wording.bold(name, DayPicture.TYPE), spot(at), DOT_MM + 1, outwards(spot(at))));
  }

  private double outwards(Spot at) {
    return Spots.distanceMm(frame.paper(), at) < 1 ? 0 : Spots.directionDegrees(frame.paper(), at);
  }

  private void place(Map<String, Point> names, String name, Point place, Optional<Point> cut) {
    if (window.contains(place)) {
      if (!isAtHole(place)) {
        names.putIfAbsent(name, place);
      }
    } else {
      cut.ifPresent(at -> names.putIfAbsent("… " + name, at));
    }
  }

  private boolean isAtHole(Point place) {
    return holes.stream()
        .anyMatch(
            hole -> !hole.centre().distanceTo(place).isMoreThan(hole.diameter().times(AT_RIM)));
  }
}
