package pegbook.figures;

import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.job.Widenings;
import pegbook.job.Widenings.Bell;
import pegbook.job.Widenings.Cap;
import pegbook.measure.Length;
import pegbook.measure.Volume;

/**
 * A hole to dig and fill, with the depths that were decided.
 *
 * @param mark the mark it is dug at
 * @param kind what stands in it
 * @param centre where
 * @param diameter dug
 * @param depth depth target: from the lowest ground at its rim to the underside of the concrete,
 *     set up to the tape's division
 * @param gravel thickness under the concrete
 * @param top height of the concrete above the ground at the mark
 * @param rule which rule decided the depth
 * @param tube the form, where there is one
 * @param steel reinforcement, where there is any
 * @param level height of the ground at the mark above the benchmark, where known
 * @param datumToUnderside from the datum line down to the underside of the concrete, where the
 *     level is known
 * @param widenings bell, pad and cap, where there are any
 */
public record Hole(
    String mark,
    MarkKind kind,
    Point centre,
    Length diameter,
    Length depth,
    Length gravel,
    Length top,
    DepthRule rule,
    Optional<Tube> tube,
    Optional<Steel> steel,
    Optional<Length> level,
    Optional<Length> datumToUnderside,
    Widenings widenings) {

  /** Which rule decided a depth. */
  public enum DepthRule {
    /** The code's least depth below undisturbed ground. */
    CODE_MINIMUM,
    /** The authority's frost depth. */
    FROST,
    /** What the job asks for. */
    JOB
  }

  /** A narrower hole has no room to swing a spade in: common practice, no source. */
  private static final Length NARROW_BELOW = Length.ofMillimetres(600);

  /** Whether a spade cannot be swung in it. */
  public boolean isNarrow() {
    return diameter.isLessThan(NARROW_BELOW);
  }

  /** Depth to the bare bottom: what is dug. */
  public Length dug() {
    return depth.plus(gravel);
  }

  /**
   * Height of the joint of two lifts over the underside of the concrete, where it is poured in two;
   * a first lift that ends in the cover of the steel, or above the top, makes none.
   */
  public Optional<Length> joint() {
    return steel.flatMap(
        bars ->
            bars.firstLift()
                .filter(lift -> lift.isMoreThan(bars.cover()))
                .filter(lift -> lift.isLessThan(depth.plus(top).minus(bars.cover()))));
  }

  /** Whether the form is set on the first lift, once that is hard: it begins above the joint. */
  public boolean isFormedOnJoint() {
    boolean stands = widenings.pad().isPresent() && !isHungOverPad();
    return (tubeFromBottom().isEmpty() || stands)
        && joint().filter(height -> !height.isMoreThan(depth)).isPresent();
  }

  /** The same hole with the place, width, depth and gravel that were found or follow from it. */
  public Hole asDug(Point found, Length width, Length underside, Length layer) {
    return new Hole(
        mark,
        kind,
        found,
        width,
        underside,
        layer,
        top,
        rule,
        tube,
        steel,
        level,
        datumToUnderside.map(line -> line.plus(underside.minus(depth))),
        swallowsBell(width) ? widenings.withoutBell() : widenings);
  }

  /** Whether a hole so wide all the way leaves nothing of the bell. */
  private boolean swallowsBell(Length width) {
    return widenings.bell().filter(bell -> !bell.diameter().isMoreThan(width)).isPresent();
  }

  /** Whether a tube hangs over a pad of the same pour, as nothing hard is there to stand on. */
  public boolean isHungOverPad() {
    return widenings
        .pad()
        .filter(pad -> joint().filter(height -> !height.isMoreThan(pad.thickness())).isEmpty())
        .isPresent();
  }

  /** The tube, where it stands on the bottom and soil is filled in round it. */
  public Optional<Tube> tubeFromBottom() {
    return tube.filter(form -> form.from() == Tube.From.BOTTOM);
  }

  /**
   * Diameter of the concrete below the ground, above a bell or a pad: the tube's inside when the
   * tube begins at the bottom, else the whole hole.
   */
  public Length shaft() {
    return tubeFromBottom().map(Tube::inside).orElse(diameter);
  }

  /** Diameter of the concrete that stands on the bottom: of the bell or the pad, else the shaft. */
  public Length standing() {
    return widenings.pad().isPresent()
        ? diameter
        : widenings.bell().map(Bell::diameter).orElse(shaft());
  }

  /** Diameter of the bare bottom: of the bell, else as wide as the hole. */
  public Length bottomWidth() {
    return widenings.bell().map(Bell::diameter).orElse(diameter);
  }

  /** Depth below the ground at which a bell or a pad ends and the shaft begins. */
  public Length shaftDepth() {
    return depth.minus(widenings.bottomHeight());
  }

  /** Height of the concrete above the ground up to the underside of a cap. */
  public Length column() {
    return top.minus(widenings.capThickness());
  }

  /** Width of the concrete at its top: of the cap, across its flats, else as above the ground. */
  public Length headWidth() {
    return widenings.cap().map(Cap::width).orElse(formAbove());
  }

  /** Diameter of the circle round the concrete at its top. */
  public Length headAcross() {
    return widenings.cap().map(Cap::across).orElse(formAbove());
  }

  /** Concrete of the bell or the pad; zero where there is none. */
  public Volume bottomVolume() {
    return widenings.bottomVolume(diameter);
  }

  /** Diameter of the circle round all of it, seen from above. */
  public Length widest() {
    return diameter.max(bottomWidth()).max(headAcross());
  }

  /**
   * Diameter of the concrete above the ground, under a cap: the tube's inside, else as wide as the
   * hole.
   */
  public Length formAbove() {
    return tube.map(Tube::inside).orElse(diameter);
  }

  /** From the datum line down to the bare bottom, where the level is known. */
  public Optional<Length> datumToBottom() {
    return datumToUnderside.map(distance -> distance.plus(gravel));
  }
}
