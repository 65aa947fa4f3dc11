package pegbook.calc.tapecorrections;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.tapecorrections.TapeCorrections.Heat;
import pegbook.calc.tapecorrections.TapeCorrections.Slope;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.MarkPair;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Works out what sloping ground and heat do to the distances that are taped.
 *
 * <p>Distances of the packet are level. A tape laid on the ground is too short by the difference
 * between the way along the ground and the level distance; where that is more than half a division
 * of the tape it shows.
 */
public final class TapeCorrectionsCalculator {
  private final Job job;
  private final Placement placement;
  private final TapeCorrectionsFormulas formulas;
  private final List<Working> workings = new ArrayList<>();

  private TapeCorrectionsCalculator(Job job, Placement placement) {
    this.job = job;
    this.placement = placement;
    this.formulas = TapeCorrectionsFormulas.in(job.heading().units());
  }

  /**
   * Works out the corrections.
   *
   * @param pairs the marks between which a tape is held, in the order of work; at least one
   */
  public static TapeCorrections calculate(Job job, Placement placement, List<MarkPair> pairs) {
    return new TapeCorrectionsCalculator(job, placement).corrections(pairs);
  }

  private TapeCorrections corrections(List<MarkPair> pairs) {
    List<Slope> slopes = new ArrayList<>();
    List<MarkPair> unknown = new ArrayList<>();
    for (MarkPair pair : pairs) {
      slope(pair).ifPresentOrElse(slopes::add, () -> unknown.add(pair));
    }
    Optional<Slope> worst =
        slopes.stream().filter(Slope::matters).max(Comparator.comparing(Slope::excess));
    return new TapeCorrections(
        slopes,
        unknown,
        worst,
        heat(pairs),
        worst.map(some -> List.of(steep(slopes, some))).orElse(List.of()),
        workings);
  }

  private Length distance(MarkPair pair) {
    return placement.mark(pair.first()).at().distanceTo(placement.mark(pair.second()).at());
  }

  private Length halfDivision() {
    return job.layout().tape().division().times(0.5);
  }

  private Optional<Slope> slope(MarkPair pair) {
    PlacedMark first = placement.mark(pair.first());
    PlacedMark second = placement.mark(pair.second());
    return first
        .level()
        .flatMap(from -> second.level().map(to -> slope(pair, distance(pair), to.minus(from))));
  }

  /** Workings are kept only for slopes that matter: the others change nothing. */
  private Slope slope(MarkPair pair, Length level, Length rise) {
    String subject = pair.first() + "–" + pair.second();
    Working along = Working.of(formulas.alongGround(), subject, level, rise);
    Working excess = Working.of(formulas.excess(), subject, level, rise);
    boolean matters = excess.asLength().metres() > halfDivision().metres() * (1 + 1e-6);
    if (matters) {
      workings.addAll(List.of(along, excess));
    }
    return new Slope(pair, level, rise, along.asLength(), excess.asLength(), matters);
  }

  private Heat heat(List<MarkPair> pairs) {
    Length longest = pairs.stream().map(this::distance).reduce(Length.ZERO, Length::max);
    Unit small = job.heading().units() == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE;
    Unit step =
        job.heading().units() == UnitSystem.IMPERIAL ? Unit.FAHRENHEIT_STEP : Unit.CELSIUS_STEP;
    double growth = formulas.steelGrowth();
    Working half =
        new Working(
            formulas.halfDivision(),
            "",
            List.of(small.in(job.layout().tape().division()), growth, small.in(longest)));
    // 20 °C are 36 °F exactly; the sum in floating point is not.
    double degrees = Math.rint(SteelTape.SEASON_KELVINS / step.toSi(1) * 1e9) / 1e9;
    Working season = new Working(formulas.heat(), "", List.of(growth, degrees, small.in(longest)));
    boolean matters = half.si() <= SteelTape.SEASON_KELVINS * (1 + 1e-6);
    workings.add(half);
    if (matters) {
      workings.add(season);
    }
    Length correction = season.asLength();
    return new Heat(
        longest,
        half.si(),
        SteelTape.SEASON_KELVINS,
        correction,
        matters,
        SteelTape.laidOut(longest, correction),
        SteelTape.laidOut(longest, correction.negated()));
  }

  private static Finding steep(List<Slope> slopes, Slope worst) {
    long count = slopes.stream().filter(Slope::matters).count();
    return Finding.of(
            Kind.NOTE, "tape-slope", "ground.levels", Decider.CREW, Citation.COMMON_PRACTICE)
        .with("count", Argument.of(count))
        .with("first", Argument.words(worst.pair().first()))
        .with("second", Argument.words(worst.pair().second()))
        .with("excess", Argument.of(worst.excess()))
        .with("rise", Argument.of(worst.rise().abs()));
  }
}
