package pegbook.calc.bearing;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Bottom;
import pegbook.figures.Finding;
import pegbook.figures.MarkKind;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;

/**
 * The footings against the ground.
 *
 * @param allowable what the ground may carry; absent for soils that no class covers
 * @param footings one for each hole, in the order of the marks
 * @param remedies what to widen, one for supports and one for piers at most
 * @param snowRoom how much snow could still be carried, where the snow is not known
 */
public record Bearing(
    Optional<Allowable> allowable,
    List<Footing> footings,
    List<Remedy> remedies,
    Optional<SnowRoom> snowRoom,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public Bearing {
    footings = List.copyOf(footings);
    remedies = List.copyOf(remedies);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** Every footing on its bottom, for those who ask what a load off the middle does. */
  public List<Bottom> bottoms() {
    return footings.stream()
        .map(
            footing ->
                new Bottom(
                    footing.mark(),
                    footing.standing(),
                    footing.pressure(),
                    allowable.map(Allowable::value)))
        .toList();
  }

  /**
   * A footing against the ground.
   *
   * @param carried load on it at worst: of the floor, or of the instrument
   * @param own weight of its concrete, and of the soil on a bell or a pad
   * @param standing diameter of the concrete on the bottom
   * @param area of it
   * @param pressure on the ground, own weight counted where the allowable pressure counts it
   * @param check against what the ground may carry, where that is known
   */
  public record Footing(
      String mark,
      MarkKind kind,
      Force carried,
      Force own,
      Length standing,
      Area area,
      Pressure pressure,
      Optional<Check> check) {}

  /**
   * A footing held against what the ground may carry.
   *
   * @param mayCarry load beside its own weight at which the ground is fully used
   * @param needed how wide it must be; absent where it carries nothing, or where no width does
   * @param verdict how it stands
   */
  public record Check(Force mayCarry, Optional<Needed> needed, Verdict verdict) {}

  /**
   * How wide a footing must be.
   *
   * @param area exact, own weight taken off the pressure where that counts it
   * @param diameter of that area, set up to a whole step
   * @param byGross diameter by the other published way: own weight left out, set to the nearest
   *     step; for supports only
   */
  public record Needed(Area area, Length diameter, Optional<Length> byGross) {
    /** The larger of both. */
    public Length decided() {
      return byGross.map(diameter::max).orElse(diameter);
    }
  }

  /** How a footing stands. */
  public enum Verdict {
    /** Within the pressure, and as wide as both published ways ask. */
    WITHIN,
    /** Within the pressure, but narrower than the published size set up to a whole step. */
    NARROW,
    /** The ground is pressed harder than it may be. */
    EXCEEDS,
    /** Its own weight alone presses the ground harder than it may be: no width helps. */
    NO_WIDTH
  }

  /**
   * What to widen, and by how much.
   *
   * @param marks the footings that press too hard
   * @param diameter of a wider hole, a bell or a round pad
   * @param side of a square pad
   * @param thickness of the pad, or height of the bell's flare
   */
  public record Remedy(
      MarkKind kind, List<String> marks, Length diameter, Length side, Length thickness) {
    public Remedy {
      marks = List.copyOf(marks);
    }
  }

  /** The least snow on the ground at which a support is fully used. */
  public record SnowRoom(List<String> marks, Pressure snow) {
    public SnowRoom {
      marks = List.copyOf(marks);
    }
  }
}
