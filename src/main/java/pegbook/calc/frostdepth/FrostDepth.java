package pegbook.calc.frostdepth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.job.AirFreezingIndex;
import pegbook.measure.Density;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.published.Citation;
import pegbook.published.FrostExemption;
import pegbook.published.FrostSoil;
import pegbook.published.FrostSurface;

/**
 * How deep frost goes.
 *
 * @param soil what frost makes of the soil named
 * @param rule the authority's depth, where it is known
 * @param estimate beside the rule, where the job gives an index and the soil allows one
 * @param above footings whose concrete ends above the estimate
 * @param questions exemptions to ask the authority about; none where one is recorded
 */
public record FrostDepth(
    FrostSoil soil,
    Optional<Length> rule,
    Optional<Estimate> estimate,
    List<String> above,
    List<FrostExemption> questions,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public FrostDepth {
    above = List.copyOf(above);
    questions = List.copyOf(questions);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /**
   * Estimates of the depth, set up to a whole inch or 10 mm.
   *
   * @param index of the air
   * @param ground what it falls on
   * @param stefan by the heat of the water alone, which overstates
   * @param berggren with the heat of the ground, where the job gives season and year
   */
  public record Estimate(
      AirFreezingIndex index, Ground ground, Length stefan, Optional<Length> berggren) {
    /** The better of both. */
    public Length decided() {
      return berggren.orElse(stefan);
    }
  }

  /** The ground of an estimate: what the job gives, else what the class of soil stands for. */
  public record Ground(FrostSurface surface, boolean coarse, Density dry, Ratio moisture) {}

  @Override
  public List<Citation> sources() {
    List<Citation> sources = new ArrayList<>(List.of(soil.citation(), SUSCEPTIBLE));
    estimate.ifPresent(some -> sources.add(some.ground().surface().citation()));
    questions.forEach(question -> sources.add(question.citation()));
    return sources;
  }

  /** A soil with 3 % and more finer than 0.02 mm counts as susceptible. */
  public static final Citation SUSCEPTIBLE = new Citation("ti-850-02", "paragraph 6");
}
