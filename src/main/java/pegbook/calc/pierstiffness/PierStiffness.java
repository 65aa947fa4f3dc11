package pegbook.calc.pierstiffness;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.job.Pier;
import pegbook.measure.Angle;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.published.Citation;

/**
 * How stiff the piers stand, and how far from the floor.
 *
 * @param ground how stiff the ground was taken to be
 * @param piers one for each kind of pier; empty where the job has no pier
 * @param gaps one for each pier, in the order of the marks
 */
public record PierStiffness(
    GroundModulus ground,
    List<AlikePiers> piers,
    List<FloorGap> gaps,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public PierStiffness {
    piers = List.copyOf(piers);
    gaps = List.copyOf(gaps);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  @Override
  public List<Citation> sources() {
    return piers.isEmpty() ? List.of() : List.of(ground.source());
  }

  /**
   * The ground's shear modulus.
   *
   * @param low the softest it may be
   * @param high the stiffest it may be
   * @param poisson Poisson's ratio
   * @param given true where the job gives the stiffness
   * @param from where the job's figure is from, where it says so
   * @param source of an assumed figure
   */
  public record GroundModulus(
      Pressure low,
      Pressure high,
      double poisson,
      boolean given,
      Optional<String> from,
      Citation source) {}

  /**
   * Piers that are alike.
   *
   * @param marks the piers
   * @param hole the first one's hole
   * @param pier the first one's part of the job
   * @param concrete modulus of elasticity of the concrete
   * @param cases sway and frequency, the softest first
   * @param overturning how many times the push could grow before the pier tips over its base's
   *     edge, nothing but weight holding it
   * @param windOverturning the same for the wind, where one is given
   * @param byDiameter what wider and narrower piers of this depth would do
   * @param byDepth what deeper and shallower piers of this diameter would do
   */
  public record AlikePiers(
      List<String> marks,
      Hole hole,
      Pier pier,
      Pressure concrete,
      List<Case> cases,
      double overturning,
      Optional<Double> windOverturning,
      List<Other> byDiameter,
      List<Other> byDepth) {
    public AlikePiers {
      marks = List.copyOf(marks);
      cases = List.copyOf(cases);
      byDiameter = List.copyOf(byDiameter);
      byDepth = List.copyOf(byDepth);
    }

    /** The softest case: the base alone on the softest ground. */
    public Case softest() {
      return cases.get(0);
    }

    /** The stiffest case that could be computed. */
    public Case stiffest() {
      return cases.get(cases.size() - 1);
    }
  }

  /** What of the ground holds the pier. */
  public enum Hold {
    /** Only the base, as if no soil touched the side: the value to rely on. */
    BASE_ALONE,
    /** The base, and soil at the side for one radius of depth. */
    ONE_RADIUS,
    /** Soil tight against the side, all the way down. */
    ALL_DEPTH
  }

  /**
   * One case.
   *
   * @param letter names it in the workings: "a" and so on
   * @param hold what holds the pier
   * @param stiff false for the low end of the range, true for the high end
   * @param bending part of the sway under the push that is the column's own
   * @param sliding part that is the base's, or the ground line's, moving sideways
   * @param rocking part that is the pier's leaning
   * @param sway of the top under the push
   * @param tilt of the top under the push
   * @param hertz first natural frequency
   * @param wind sway and tilt under the wind, where one is given
   */
  public record Case(
      String letter,
      Hold hold,
      boolean stiff,
      Length bending,
      Length sliding,
      Length rocking,
      Length sway,
      Angle tilt,
      double hertz,
      Optional<Moved> wind) {}

  /**
   * How far the top moves.
   *
   * @param force under which
   */
  public record Moved(Force force, Length sway, Angle tilt) {}

  /**
   * A pier that might be built instead.
   *
   * @param change of diameter or depth
   * @param isThis true for the pier as planned
   * @param alone tilt under the push with the base alone, on the softest ground
   * @param held tilt with soil tight all the way down, on the softest ground; absent where the
   *     method does not reach
   */
  public record Other(Length change, boolean isThis, Angle alone, Optional<Angle> held) {}

  /**
   * From a pier to the floor.
   *
   * @param mark the pier
   * @param inside true when it comes up through the floor
   * @param toEdge from the side of the concrete to the floor's edge; negative when the edge cuts
   *     the concrete
   * @param wanted clear distance that the job asks for
   * @param opening diameter of the opening that a floor round it needs
   * @param floor height of the walking surface above the ground at the pier, where it is known
   */
  public record FloorGap(
      String mark,
      boolean inside,
      Length toEdge,
      Length wanted,
      Length opening,
      Optional<Length> floor) {}
}
