package pegbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.geometry.Gap;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.job.Power;
import pegbook.measure.Length;

/**
 * Where the trench of a power line will run, for what must keep off it: its route as the job gives
 * it, and on to the pier.
 *
 * @param legs straight stretches
 * @param half of the trench's width, of one with a data cable too
 */
public record PowerPath(List<Segment> legs, Length half) {
  /** A data cable beside the power makes a trench so wide at least: common practice. */
  private static final Length WIDE = Length.ofMillimetres(450);

  public PowerPath {
    legs = List.copyOf(legs);
  }

  /** Of a job that has power. */
  public static Optional<PowerPath> of(Job job) {
    return job.power().map(power -> new PowerPath(legs(job, power), half(power)));
  }

  private static Length half(Power power) {
    Length width = power.trench().width();
    return (power.wiring().dataCable() ? width.max(WIDE) : width).times(0.5);
  }

  private static List<Segment> legs(Job job, Power power) {
    Stream<Point> pier =
        job.piers().stream()
            .filter(each -> power.pier().filter(each.id()::equals).isPresent())
            .map(Pier::at);
    List<Point> places =
        Stream.concat(power.route().stream().map(Power.Stop::at), pier).distinct().toList();
    List<Segment> legs = new ArrayList<>();
    for (int i = 1; i < places.size(); i++) {
      legs.add(new Segment(places.get(i - 1), places.get(i)));
    }
    return legs;
  }

  /** From the trench's edge to a place; negative over the trench. */
  public Length from(Point place) {
    return Gap.between(place, legs).length().minus(half);
  }
}
