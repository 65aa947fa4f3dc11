package pegbook.calc.digschedule;

import java.util.Optional;
import pegbook.job.Job;
import pegbook.job.Soil;
import pegbook.job.UnitWeight;
import pegbook.measure.Angle;
import pegbook.measure.Density;
import pegbook.measure.Mass;
import pegbook.measure.Ratio;
import pegbook.measure.Volume;
import pegbook.published.Citation;
import pegbook.published.ReposeAngle;
import pegbook.published.SoilWeight;
import pegbook.published.SwellFactor;

/**
 * What the soil of a job is like once it is dug.
 *
 * @param soil its class
 * @param swell how much more room it takes loose
 * @param swellSource where the swell is from; empty locator and common practice when from the job
 * @param swellFromJob true when the job gives the swell
 * @param weight mass over volume in the ground, with its source; dry where from a table
 * @param weightFrom whose figure the weight is, where the job gives it
 * @param repose slope of a heap, with its source
 * @param cart loose volume of a cart load
 */
public record DugSoil(
    Soil soil,
    Ratio swell,
    Citation swellSource,
    boolean swellFromJob,
    SoilWeight weight,
    Optional<String> weightFrom,
    ReposeAngle repose,
    Volume cart) {

  /** From the job, and from the published tables where the job is silent. */
  static DugSoil of(Job job) {
    Soil soil = job.ground().soil();
    SwellFactor factor = SwellFactor.find(row(soil));
    boolean given = job.spoil().swell().isPresent();
    return new DugSoil(
        soil,
        job.spoil().swell().orElse(factor.swell()),
        given ? Citation.COMMON_PRACTICE : factor.citation(),
        given,
        SoilWeight.find(row(soil), job.ground().unitWeight().map(UnitWeight::value)),
        job.ground().unitWeight().map(UnitWeight::from),
        ReposeAngle.find(row(soil)),
        job.spoil().cart());
  }

  public Angle angle() {
    return repose.angle();
  }

  public Density bank() {
    return weight.bank();
  }

  /** Mass of a full cart load, of soil as it weighs in the ground. */
  public Mass cartLoad() {
    return new Mass(cart.cubicMetres() * bank().kilogramsPerCubicMetre() / (1 + swell.fraction()));
  }

  private static String row(Soil soil) {
    StringBuilder row = new StringBuilder();
    for (char letter : soil.name().toCharArray()) {
      row.append(letter == '_' ? '-' : Character.toLowerCase(letter));
    }
    return row.toString();
  }
}
