package pegbook.calc.concreteexposure;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Season;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.published.Citation;
import pegbook.published.ExposureClass;

/**
 * What the concrete must stand, and what weather and age allow.
 *
 * @param freezes whether it freezes at this place
 * @param exposed the footings by their class, in the order of the marks
 * @param needed the class that decides: the hardest of them, as one mix fills all holes
 * @param strength the job's strength
 * @param wanted the strength of the class that decides
 * @param order the larger of both: what to buy
 * @param air the job's air, where it says one
 * @param curing what the weather and the thickness of the concrete ask for
 * @param ages strength at some ages
 */
public record ConcreteExposure(
    Freezing freezes,
    List<Exposed> exposed,
    ExposureClass needed,
    Pressure strength,
    Pressure wanted,
    Pressure order,
    Optional<Ratio> air,
    Curing curing,
    List<Age> ages,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public ConcreteExposure {
    exposed = List.copyOf(exposed);
    ages = List.copyOf(ages);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** Whether it freezes at this place. */
  public enum Freezing {
    /** The authority names a frost depth. */
    FREEZES,
    /** The authority names a frost depth of nothing. */
    NEVER,
    /** Nobody said; it is taken as if it froze. */
    NOT_SAID
  }

  /** Whether concrete that freezes is soaked. */
  public enum Wetness {
    /** Ground water stands in the freezing ground, or water stands on the top. */
    SOAKED,
    /** Ground water is deeper than the frost, and the top stands free. */
    DRAINED,
    /** Nobody said where the ground water is. */
    NOT_SAID
  }

  /**
   * Footings that share a class.
   *
   * @param marks the footings
   * @param wetness whether they are soaked where they freeze
   * @param exposure their class
   */
  public record Exposed(List<String> marks, Wetness wetness, ExposureClass exposure) {
    public Exposed {
      marks = List.copyOf(marks);
    }
  }

  /**
   * What the pour and the days after it need.
   *
   * @param thinnest least dimension of any concrete of the job
   * @param thick true where that is 12 in or more, so that the limits of thick sections hold
   * @param season what the weather may be at the start
   * @param firstFreeze days until the concrete may freeze once, near 70 °F
   * @param repeatedFreeze days until it may freeze wet again and again; absent where it never gets
   *     so strong, or does not freeze
   */
  public record Curing(
      Length thinnest,
      boolean thick,
      Season season,
      int firstFreeze,
      Optional<Integer> repeatedFreeze) {}

  /**
   * Strength at an age, kept moist near 70 °F (20 °C).
   *
   * @param days after the pour
   * @param strength then
   * @param part of the strength at 28 days
   */
  public record Age(int days, Pressure strength, Ratio part) {}

  @Override
  public List<Citation> sources() {
    return ConcreteExposureCalculator.SOURCES;
  }
}
