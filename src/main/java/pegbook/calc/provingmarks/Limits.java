package pegbook.calc.provingmarks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pegbook.figures.BaselineErrors;
import pegbook.figures.ErrorForm;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.PlanErrors;
import pegbook.figures.Swings;
import pegbook.figures.TapeAccuracy;
import pegbook.figures.Working;
import pegbook.geometry.Covariance;
import pegbook.geometry.Crossings;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.network.Chances;
import pegbook.job.Job;
import pegbook.job.Layout;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;

/**
 * How far a check distance may be off when nothing is wrong.
 *
 * <p>By the error of its reading and by how well its two marks were set out against each other: 99
 * good readings in 100 stay within 2.576 deviations, set up to a division of the tape. Where that
 * is more than the job's tolerance, the tolerance holds the limit down, so that the check asks what
 * the job asks; but only as far as good marks bear it: with three distances for every two marks, no
 * more than every second figure may have one beyond its limit by chance, nor one good distance in
 * twenty. A check that good marks keep failing teaches people to skip it.
 */
final class Limits {
  /** Share of good readings within the limit. */
  private static final double WITHIN = 0.99;

  /** A good reading may never be beyond a limit more often than this; common practice. */
  private static final double MOST_OFTEN = 0.05;

  /** Deviations along any one direction, of a circle that holds 95 % of all places. */
  private static final double CIRCLE = Math.sqrt(-2 * StrictMath.log(0.05));

  private final Placement placement;
  private final Swings swings;
  private final Map<String, Swings.OwnPair> ownPairs = new TreeMap<>();
  private final Layout layout;
  private final TapeAccuracy accuracy;
  private final BaselineErrors errors;
  private final PlanErrors plan;
  private final ProvingMarksFormulas formulas;

  Limits(Job job, Placement placement, Swings swings) {
    this.placement = placement;
    this.swings = swings;
    swings.ownPairs().forEach(pair -> ownPairs.put(pair.mark(), pair));
    this.layout = job.layout();
    this.accuracy = TapeAccuracy.of(layout.tape());
    this.errors = new BaselineErrors(accuracy, Crossings.onTape(layout.tape().division()));
    this.plan = new PlanErrors(errors, placement, swings);
    this.formulas = ProvingMarksFormulas.in(job.heading().units());
  }

  /**
   * A distance and its limit.
   *
   * @param planned as the plan has it
   * @param expected the same, set to the division
   * @param value the limit, whole divisions
   * @param held true when the tolerance holds it down
   * @param alarm chance that a good reading is beyond it
   * @param workings how it is come by
   */
  record Limit(
      Length planned,
      Length expected,
      Length value,
      boolean held,
      double alarm,
      List<Working> workings) {
    Limit {
      workings = List.copyOf(workings);
    }

    double leastMetres() {
      return expected.metres() - value.metres();
    }

    double mostMetres() {
      return expected.metres() + value.metres();
    }

    /** True when a distance is beyond the limit by more than a tie. */
    boolean shows(double metres, double tieMetres) {
      return metres > mostMetres() + tieMetres || metres < leastMetres() - tieMetres;
    }
  }

  /** Distances nearer to a limit than this count as on it. */
  double tieMetres() {
    return division().metres() * Rounding.TIE;
  }

  /** A fixed thing nearer to a mark than this, metres, is no use to measure from. */
  double nearestMetres() {
    return 2 * layout.tolerance().metres();
  }

  private Length division() {
    return layout.tape().division();
  }

  /** Between two marks. */
  Limit between(PlacedMark from, PlacedMark to) {
    Length planned = from.at().distanceTo(to.at());
    Length reading = accuracy.sigma(planned);
    Length places = new Length(Math.sqrt(placeVariance(from, to)));
    String name = from.id() + "–" + to.id();
    Working free =
        Working.of(
            formulas.limit(), name, new Ratio(Chances.normalWithin(WITHIN)), reading, places);
    Length set = free.asLength().setTo(division(), Rounding.UP).max(division());
    Length tolerance = layout.tolerance().setTo(division(), Rounding.DOWN).max(division());
    double sigma = StrictMath.hypot(reading.metres(), places.metres());
    if (set.metres() <= tolerance.metres() + tieMetres()) {
      return limit(planned, set, false, sigma, List.of(free));
    }
    Working held =
        Working.of(
            formulas.held(),
            name,
            tolerance,
            new Ratio(Chances.normalWithin(1 - often())),
            reading,
            places);
    Length down = held.asLength().setTo(division(), Rounding.UP);
    if (down.metres() >= set.metres() - tieMetres()) {
      return limit(planned, set, false, sigma, List.of(free));
    }
    Working alarm = Working.of(formulas.alarm(), name, down, reading, places);
    return limit(planned, down, true, sigma, List.of(free, held, alarm));
  }

  /** How often a good distance may be beyond its limit: half of one in a whole set, shared out. */
  private double often() {
    double share = 0.5 / (1.5 * placement.marks().size());
    return Math.max(1 - WITHIN, Math.min(MOST_OFTEN, share));
  }

  private Limit limit(
      Length planned, Length value, boolean held, double sigma, List<Working> workings) {
    return new Limit(
        planned,
        planned.setTo(division(), Rounding.NEAREST),
        value,
        held,
        Chances.normalBeyond(value.metres() / sigma),
        workings);
  }

  /**
   * From a fixed thing to a mark. The figure lies as well as two such ties place it; the limit is
   * never below the tolerance, for nobody knows a fixed thing's place better.
   */
  Limit tie(Point station, PlacedMark mark, String name) {
    Length planned = station.distanceTo(mark.at());
    Length reading = accuracy.sigma(planned);
    Point along = direction(station, mark.at());
    Length place = new Length(Math.sqrt(ownVariance(mark, along)));
    Working working =
        Working.of(
            formulas.tieLimit(), name, new Ratio(Chances.normalWithin(WITHIN)), reading, place);
    Length value = working.asLength().max(layout.tolerance()).setTo(division(), Rounding.UP);
    double sigma = StrictMath.hypot(Math.sqrt(3) * reading.metres(), place.metres());
    return limit(planned, value, false, sigma, List.of(working));
  }

  /** The working of the mistake that passes furthest off. */
  Working hidden(String mark, HiddenPlaces.Place place) {
    return Working.of(formulas.hidden(), mark, new Length(place.east()), new Length(place.north()));
  }

  /** Variance of the distance as its marks were set out, one against the other. */
  private double placeVariance(PlacedMark from, PlacedMark to) {
    Point along = direction(from.at(), to.at());
    Optional<ErrorForm> one = told(from);
    Optional<ErrorForm> other = told(to);
    if (one.isPresent() && other.isPresent()) {
      return one.get().varianceAgainst(other.get(), along.east(), along.north());
    }
    return ownVariance(from, along) + ownVariance(to, along);
  }

  private double ownVariance(PlacedMark mark, Point along) {
    return told(mark)
        .map(form -> form.varianceAgainst(ErrorForm.none(), along.east(), along.north()))
        .orElseGet(() -> square(layout.tolerance().metres() / CIRCLE));
  }

  /**
   * The error of a mark as it was set out; nothing for one whose tapes cross too weakly to tell. It
   * is then taken to have been set within the tolerance by other means.
   */
  private Optional<ErrorForm> told(PlacedMark mark) {
    ErrorForm form = plan.of(mark.id());
    if (mark.id().equals(swings.first()) || mark.id().equals(swings.second())) {
      return Optional.of(form);
    }
    Optional<Swings.OwnPair> own = Optional.ofNullable(ownPairs.get(mark.id()));
    Segment base =
        new Segment(
            placement.mark(own.map(Swings.OwnPair::first).orElse(swings.first())).at(),
            placement.mark(own.map(Swings.OwnPair::second).orElse(swings.second())).at());
    if (own.isEmpty() && errors.crossings().isOnLine(base, mark.at())) {
      return Optional.of(form);
    }
    Covariance covariance = form.covariance();
    double offset = Math.abs(base.offsetMetres(mark.at()));
    return BaselineErrors.isTold(ErrorEllipse.of(covariance), offset)
        ? Optional.of(form)
        : Optional.empty();
  }

  private static Point direction(Point from, Point to) {
    double metres = from.distanceTo(to).metres();
    return new Point((to.east() - from.east()) / metres, (to.north() - from.north()) / metres);
  }

  private static double square(double value) {
    return value * value;
  }
}
