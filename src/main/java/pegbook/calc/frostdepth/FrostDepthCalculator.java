package pegbook.calc.frostdepth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.frostdepth.FrostDepth.Estimate;
import pegbook.calc.frostdepth.FrostDepth.Ground;
import pegbook.figures.Finding;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.AirFreezingIndex;
import pegbook.job.AirFreezingIndex.Season;
import pegbook.job.Frost;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.measure.Temperature;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.FrostExemption;
import pegbook.published.FrostSoil;
import pegbook.published.FrostSurface;

/**
 * Sets estimates of the depth of frost beside the authority's figure. The figure rules; an estimate
 * that goes deeper than it is told, and changes no depth.
 *
 * <p>Two estimates: Stefan's, by the heat of the water alone, which overstates; and the modified
 * Berggren formula, where the job gives the season and the mean of the year.
 */
public final class FrostDepthCalculator {
  /** Undersides this little above the estimate lie on it. */
  private static final Length TOLERANCE = Length.ofMillimetres(0.1);

  private final Job job;
  private final FrostSoil soil;
  private final FrostDepthFormulas formulas;
  private final Length step;
  private final List<Working> workings = new ArrayList<>();

  private FrostDepthCalculator(Job job) {
    this.job = job;
    this.soil = FrostSoil.find(job.ground().soil().id());
    UnitSystem units = job.heading().units();
    this.formulas = new FrostDepthFormulas(units);
    this.step = units == UnitSystem.IMPERIAL ? Length.ofInches(1) : Length.ofMillimetres(10);
  }

  /**
   * Sets the estimates beside the rule.
   *
   * @param job the job: soil, frost, index
   * @param holes every hole with its depth
   */
  public static FrostDepth calculate(Job job, List<Hole> holes) {
    return new FrostDepthCalculator(job).set(holes);
  }

  private FrostDepth set(List<Hole> holes) {
    Optional<Length> rule = job.ground().frost().map(Frost::depth);
    Optional<Ground> ground = job.ground().freezing().flatMap(this::ground);
    Optional<Working> most = ground.map(this::tooWet).orElse(Optional.empty());
    Optional<Estimate> estimate =
        ground
            .filter(some -> most.isEmpty() && !isTooDry(some))
            .map(some -> estimate(job.ground().freezing().orElseThrow(), some));
    List<String> above =
        estimate
            .map(
                some ->
                    holes.stream()
                        .filter(hole -> hole.depth().isLessThan(some.decided().minus(TOLERANCE)))
                        .map(Hole::mark)
                        .toList())
            .orElse(List.of());
    List<Finding> findings =
        new FrostDepthFindings(job, rule, estimate, above)
            .of(ground, most.map(working -> new Ratio(working.si())));
    return new FrostDepth(soil, rule, estimate, above, questions(), findings, workings);
  }

  private Optional<Ground> ground(AirFreezingIndex index) {
    return soil.heat()
        .map(
            heat ->
                new Ground(
                    FrostSurface.find(index.surface().id()),
                    heat.coarse(),
                    index.dryDensity().orElse(heat.dry()),
                    index.moisture().orElse(heat.moisture())));
  }

  /** The most water that the ground can hold, where the job gives more than that. */
  private Optional<Working> tooWet(Ground ground) {
    Working most = Working.of(formulas.mostWater(), "", ground.dry());
    if (ground.moisture().fraction() <= most.si() * (1 + 1e-6)) {
      return Optional.empty();
    }
    workings.add(most);
    return Optional.of(most);
  }

  /** The formulas of conductivity begin at some water. */
  private static boolean isTooDry(Ground ground) {
    return ground.moisture().isLessThan(leastMoisture(ground));
  }

  static Ratio leastMoisture(Ground ground) {
    return Ratio.ofPercent((ground.coarse() ? 1 : 7) * (1 - 1e-9));
  }

  private Estimate estimate(AirFreezingIndex index, Ground ground) {
    Quantity latent = work(formulas.latentHeat(), ground.dry(), ground.moisture());
    Quantity frozen = work(formulas.frozen(ground.coarse()), ground.dry(), ground.moisture());
    Ratio n = ground.surface().n();
    Length stefan =
        new Length(work(formulas.stefan(), frozen, n, index.value(), latent, step).si());
    return new Estimate(
        index,
        ground,
        stefan,
        index.season().map(season -> berggren(index, ground, season, frozen, latent)));
  }

  private Length berggren(
      AirFreezingIndex index, Ground ground, Season season, Quantity frozen, Quantity latent) {
    Ratio n = ground.surface().n();
    Quantity unfrozen = work(formulas.unfrozen(ground.coarse()), ground.dry(), ground.moisture());
    Quantity frost =
        work(formulas.surfaceFrost(), n, index.value(), () -> Unit.DAY.toSi(season.days()));
    double above = season.meanYear().kelvins() - Temperature.ofCelsius(0).kelvins();
    Quantity warmth = work(formulas.warmth(), () -> above, frost);
    Quantity stored = work(formulas.stored(), ground.dry(), ground.moisture(), frost, latent);
    Quantity coefficient = work(formulas.coefficient(), warmth, stored);
    return new Length(
        work(formulas.berggren(), coefficient, frozen, unfrozen, n, index.value(), latent, step)
            .si());
  }

  private Quantity work(Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, "", quantities);
    workings.add(working);
    return working::si;
  }

  /** Asked only where the code named is in force and nobody has answered. */
  private List<FrostExemption> questions() {
    boolean answered = job.ground().frost().flatMap(Frost::exemption).isPresent();
    return answered || !job.place().isUnitedStates() ? List.of() : FrostExemption.all();
  }
}
