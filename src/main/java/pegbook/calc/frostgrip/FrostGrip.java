package pegbook.calc.frostgrip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.job.Side;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.published.Adfreeze;
import pegbook.published.Citation;

/**
 * What lifts footings, and what holds them.
 *
 * @param footings one for each hole, in the order of the marks
 * @param water how near ground water is to the frost
 * @param lifts what wind lifts; none where the job gives no wind
 * @param sleeves those that the job names, where frost is known of
 * @param needs the same as things to buy
 */
public record FrostGrip(
    List<Footing> footings,
    Water water,
    List<WindLift> lifts,
    List<FrostSleeve> sleeves,
    List<Need> needs,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public FrostGrip {
    footings = List.copyOf(footings);
    lifts = List.copyOf(lifts);
    sleeves = List.copyOf(sleeves);
    needs = List.copyOf(needs);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** A footing's side against uplift. */
  public static final Citation FRICTION = FrostGripFormulas.FRICTION;

  /** What counts against wind that lifts. */
  public static final Citation UPLIFT = FrostGripFormulas.UPLIFT;

  /** Ground water within 5 ft or 1.5 m under the frost feeds it: common practice, no source. */
  public enum Water {
    NEAR,
    DEEP,
    UNKNOWN
  }

  /**
   * A footing in the frost.
   *
   * @param frozen how much of its side freezes
   * @param side how its side is kept from the grip, where it is
   * @param hold load that is always there, and its own weight
   * @param grip of the frost on its side, where the soil heaves and nothing keeps it off
   */
  public record Footing(
      String mark,
      Length frozen,
      Optional<Side> side,
      Force hold,
      Optional<Grip> grip,
      Verdict verdict) {}

  /**
   * The grip of frost, as a range.
   *
   * @param typical at the mean stress that is printed for fine soil on concrete
   * @param high at the stress printed for fine soil on steel
   * @param anchorage friction of the ground below the frost
   * @param deeper how much deeper it would have to go to hold by friction and weight alone; absent
   *     where it holds or nobody knows the friction
   */
  public record Grip(Force typical, Force high, Force anchorage, Optional<Length> deeper) {}

  /** How a footing stands against the grip. */
  public enum Verdict {
    /** No frost is known of, or none is asked for. */
    NO_FROST,
    /** The soil hardly heaves while it drains. */
    DRAINS,
    /** A sleeve or granular backfill keeps the grip off. */
    KEPT_OFF,
    /** Held even at the high end. */
    HELD,
    /** Lifted at the high end only. */
    MAY_LIFT,
    /** Lifted at the typical grip. */
    LIFTS
  }

  /**
   * What wind lifts.
   *
   * @param up force of the wind on it
   * @param hold load that is always there, and the footing's own weight
   * @param anchor what post base or bolts must hold; below zero: nothing
   * @param net what lifts the footing, six tenths of what is always there taken off; below zero: it
   *     stays
   */
  public record WindLift(String mark, Force up, Force hold, Force anchor, Force net) {}

  /** Pressures of the grip: typical, and the high end. */
  public static Pressure typicalStress() {
    return Adfreeze.find("fine-on-concrete").stress();
  }

  /** The high end of the range. */
  public static Pressure highStress() {
    return Adfreeze.find("fine-on-steel").stress();
  }

  @Override
  public List<Citation> sources() {
    List<Citation> sources = new ArrayList<>();
    if (footings.stream().anyMatch(footing -> footing.grip().isPresent())) {
      sources.add(Adfreeze.find("fine-on-concrete").citation());
      sources.add(Adfreeze.find("fine-on-steel").citation());
    }
    return sources;
  }
}
