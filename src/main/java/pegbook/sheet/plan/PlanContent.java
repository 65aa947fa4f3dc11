package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.siteplan.SitePlan;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.job.Benchmark;
import pegbook.job.Feature;
import pegbook.job.Site;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.sheet.drafting.Extent;

/**
 * What a plan shows.
 *
 * @param units in which scales are named
 * @param site lot lines, setback, features
 * @param benchmark where heights are read from
 * @param placement the floor's edge and the marks
 * @param sitePlan clearances, ties, sizes
 * @param holes the holes at their true size
 * @param heaps the spoil
 * @param baselineFirst the baseline's first mark
 * @param baselineSecond its second
 * @param route the power line, from place to place; empty where there is none
 */
public record PlanContent(
    UnitSystem units,
    Site site,
    Optional<Benchmark> benchmark,
    Placement placement,
    SitePlan sitePlan,
    List<Hole> holes,
    List<SpoilHeap> heaps,
    Point baselineFirst,
    Point baselineSecond,
    List<Point> route) {
  public PlanContent {
    holes = List.copyOf(holes);
    heaps = List.copyOf(heaps);
    route = List.copyOf(route);
  }

  /** All of a packet. */
  public static PlanContent of(Packet packet) {
    Placement placement = packet.placement();
    return new PlanContent(
        packet.job().heading().units(),
        packet.job().site(),
        packet.job().ground().benchmark(),
        placement,
        packet.sitePlan(),
        packet.depthTargets().holes(),
        packet.digSchedule().heaps(),
        placement.mark(packet.tapeTable().baseline().first()).at(),
        placement.mark(packet.tapeTable().baseline().second()).at(),
        packet.powerLine().line().map(line -> line.route().places()).orElse(List.of()));
  }

  /** The same with some of the holes alone, and no heap. */
  PlanContent only(List<Hole> some) {
    return new PlanContent(
        units,
        site,
        benchmark,
        placement,
        sitePlan,
        some,
        List.of(),
        baselineFirst,
        baselineSecond,
        List.of());
  }

  /** How far floor, holes and heaps reach. */
  Extent figure() {
    List<Point> places = new ArrayList<>();
    heaps.forEach(heap -> addRound(places, heap.centre(), heap.radius().metres()));
    return places.isEmpty() ? marks() : Extent.of(places).with(marks());
  }

  /** How far floor and holes reach. */
  Extent marks() {
    List<Point> places = new ArrayList<>(placement.outline().corners());
    holes.forEach(hole -> addRound(places, hole.centre(), hole.diameter().metres() / 2));
    return Extent.of(places);
  }

  /** How far everything reaches. */
  Extent all() {
    List<Point> places = new ArrayList<>();
    site.boundary().ifPresent(lot -> places.addAll(lot.corners()));
    site.features().forEach(feature -> places.addAll(places(feature.shape())));
    benchmark.ifPresent(mark -> places.add(mark.at()));
    places.addAll(route);
    Extent figure = figure();
    return places.isEmpty() ? figure : Extent.of(places).with(figure);
  }

  static List<Point> places(Feature.Shape shape) {
    if (shape instanceof Feature.Shape.Spot spot) {
      return List.of(spot.at());
    }
    if (shape instanceof Feature.Shape.Line line) {
      return List.of(line.along().from(), line.along().to());
    }
    return ((Feature.Shape.Block) shape).corners().corners();
  }

  private static void addRound(List<Point> places, Point centre, double radiusMetres) {
    places.add(centre.plus(-radiusMetres, -radiusMetres));
    places.add(centre.plus(radiusMetres, radiusMetres));
  }
}
