package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Leg;
import pegbook.calc.powerline.PowerLine.Route;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Power;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * The legs of the route, the last one to the edge of a pier's hole where the line goes on to it.
 *
 * @param route the route
 * @param workings its length, leg by leg
 */
record RoutePlan(Route route, List<Working> workings) {
  static RoutePlan of(Power power, UnitSystem units, List<Hole> holes, Length cover) {
    PowerLineFormulas formulas = PowerLineFormulas.in(units);
    List<Leg> legs = legs(power, holes);
    List<Working> workings = new ArrayList<>();
    Length length = Length.ZERO;
    for (Leg leg : legs) {
      Working soFar =
          Working.of(
              formulas.route(),
              leg.from() + "–" + leg.to(),
              length,
              new Length(leg.start().east()),
              new Length(leg.start().north()),
              new Length(leg.end().east()),
              new Length(leg.end().north()));
      workings.add(soFar);
      length = soFar.asLength();
    }
    Working oneWay = Working.of(formulas.oneWay(), "", length, cover, power.wiring().slack());
    workings.add(oneWay);
    return new RoutePlan(new Route(legs, length, oneWay.asLength()), workings);
  }

  private static List<Leg> legs(Power power, List<Hole> holes) {
    List<Leg> legs = new ArrayList<>();
    List<Power.Stop> stops = power.route();
    for (int i = 1; i < stops.size(); i++) {
      Power.Stop from = stops.get(i - 1);
      Power.Stop to = stops.get(i);
      legs.add(leg("R" + i, "R" + (i + 1), from.name(), to.name(), from.at(), to.at(), false));
    }
    Power.Stop last = stops.get(stops.size() - 1);
    power
        .pier()
        .flatMap(id -> holes.stream().filter(hole -> hole.mark().equals(id)).findFirst())
        .filter(hole -> hole.centre().distanceTo(last.at()).isMoreThan(radius(hole)))
        .ifPresent(
            hole ->
                legs.add(
                    leg(
                        "R" + stops.size(),
                        hole.mark(),
                        last.name(),
                        Optional.empty(),
                        last.at(),
                        edge(last.at(), hole),
                        true)));
    return legs;
  }

  private static Length radius(Hole hole) {
    return hole.diameter().times(0.5).plus(Length.ofMillimetres(1));
  }

  /** Where a straight line to a hole's centre meets its edge. */
  private static Point edge(Point from, Hole hole) {
    Segment whole = new Segment(from, hole.centre());
    return whole.at(whole.length().metres() - hole.diameter().metres() / 2, 0);
  }

  private static Leg leg(
      String from,
      String to,
      Optional<String> fromName,
      Optional<String> toName,
      Point start,
      Point end,
      boolean toPier) {
    return new Leg(
        from,
        to,
        fromName,
        toName,
        start,
        end,
        start.distanceTo(end),
        Compass.of(start.azimuthTo(end)),
        toPier);
  }
}
