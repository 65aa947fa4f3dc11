package pegbook.job;

import java.util.Locale;
import java.util.Optional;
import pegbook.measure.Density;
import pegbook.measure.FreezingIndex;
import pegbook.measure.Ratio;
import pegbook.measure.Temperature;

/**
 * How much frost the air brings here, and what an estimate of the depth of frost needs beside it.
 *
 * @param value of the air, not of the ground's surface
 * @param winter how rare the winter is that it stands for
 * @param from whose figure it is, where the job says so
 * @param surface what the ground's surface is, kept clear of snow; absent: assumed
 * @param moisture water in the soil by its dry weight, where known
 * @param dryDensity of the soil, where known
 * @param season how long that winter freezes, and the mean of the year
 */
public record AirFreezingIndex(
    FreezingIndex value,
    Winter winter,
    Optional<String> from,
    Surface surface,
    Optional<Ratio> moisture,
    Optional<Density> dryDensity,
    Optional<Season> season) {

  /**
   * What the estimate with the ground's own heat needs.
   *
   * @param days from the first to the last frost that counts
   * @param meanYear mean temperature of the air over the year
   */
  public record Season(int days, Temperature meanYear) {}

  /** How rare a winter is. */
  public enum Winter {
    /** As cold as the mean: half of all winters are colder. */
    MEAN,
    /** The coldest in 10 years. */
    TEN_YEARS,
    /** The coldest in 30 years. */
    THIRTY_YEARS,
    /** The coldest in 100 years. */
    HUNDRED_YEARS;

    /** As words name it: lower case, hyphens. */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** What the ground's surface is, without snow on it. */
  public enum Surface {
    SHADED,
    BARE_SOIL,
    TURF,
    TREES,
    CONCRETE,
    ASPHALT;

    /** As tables and words name it: lower case, hyphens. */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
