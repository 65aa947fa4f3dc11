package pegbook.calc.markaccuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.markaccuracy.MarkAccuracy.PegPlace;
import pegbook.calc.markaccuracy.MarkAccuracy.PegTape;
import pegbook.calc.markaccuracy.MarkAccuracy.PeggedBaseline;
import pegbook.figures.BaselineErrors;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/** A baseline between two pegs beside the work. */
final class Pegging {
  private final Job job;
  private final Placement placement;
  private final BaselineErrors errors;

  Pegging(Job job, Placement placement, BaselineErrors errors) {
    this.job = job;
    this.placement = placement;
    this.errors = errors;
  }

  /** The best of all pairs of places; none where no pair has all marks in the tape's reach. */
  Optional<PeggedBaseline> best(List<Point> free) {
    List<Point> marks = placement.marks().stream().map(PlacedMark::at).toList();
    return PairSearch.beside(errors, free, marks, job.layout().tape().length())
        .best()
        .filter(found -> found.beyondReach() == 0 && found.radius().isPresent())
        .map(
            found ->
                pegged(
                    new Segment(free.get(found.first()), free.get(found.second())),
                    placement.marks().get(found.worst()).id(),
                    found.radius().orElseThrow()));
  }

  private PeggedBaseline pegged(Segment line, String worst, Length radius) {
    List<PegTape> tapes = new ArrayList<>();
    for (PlacedMark mark : placement.marks()) {
      tapes.add(
          new PegTape(
              mark.id(),
              set(line.from().distanceTo(mark.at())),
              set(line.to().distanceTo(mark.at())),
              line.offsetMetres(mark.at()) > 0,
              errors.at(line, mark.at()).map(Pegging::radius).orElse(radius)));
    }
    return new PeggedBaseline(
        line.from(),
        line.to(),
        set(line.length()),
        List.of(place(line.from()), place(line.to())),
        tapes,
        worst,
        radius);
  }

  private static Length radius(ErrorEllipse ellipse) {
    return ellipse.radiusHolding(BaselineErrors.SHARE);
  }

  private Length set(Length length) {
    return length.setTo(job.layout().tape().division(), Rounding.NEAREST);
  }

  /** Found from the two marks whose tapes cross nearest to square there. */
  private PegPlace place(Point peg) {
    List<PlacedMark> marks = placement.marks();
    PlacedMark first = marks.get(0);
    PlacedMark second = marks.get(1);
    double strongest = -1;
    for (int i = 0; i < marks.size(); i++) {
      for (int j = i + 1; j < marks.size(); j++) {
        double angle = Swing.angleAt(peg, marks.get(i).at(), marks.get(j).at()).radians();
        double strength = StrictMath.sin(angle);
        if (strength > strongest + 1e-9) {
          strongest = strength;
          first = marks.get(i);
          second = marks.get(j);
        }
      }
    }
    return new PegPlace(
        first.id(),
        set(first.at().distanceTo(peg)),
        second.id(),
        set(second.at().distanceTo(peg)),
        new Segment(first.at(), second.at()).offsetMetres(peg) > 0);
  }
}
