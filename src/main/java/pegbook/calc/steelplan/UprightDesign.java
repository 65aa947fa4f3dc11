package pegbook.calc.steelplan;

import java.util.List;
import java.util.Optional;
import pegbook.calc.steelplan.SteelPlan.Embedment;
import pegbook.calc.steelplan.SteelPlan.Hook;
import pegbook.calc.steelplan.SteelPlan.Starters;
import pegbook.calc.steelplan.SteelPlan.Turn;
import pegbook.calc.steelplan.SteelPlan.Uprights;
import pegbook.figures.AlikeHoles;
import pegbook.figures.BarAnchorage;
import pegbook.figures.BarAnchorage.Place;
import pegbook.figures.BarAnchorage.Room;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Steel;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.Rounding;
import pegbook.published.Bars;

/**
 * How the upright bars stand: in one piece, or lapped with starter bars above the joint of two
 * lifts; straight at the foot, or hooked.
 *
 * <p>The lowest bars must reach far enough below the section that pulls them most. That is taken at
 * the joint, or where the concrete leaves the ground: common practice, as loads are not known here.
 * A starter is hooked where it would be too short straight.
 */
final class UprightDesign {
  private final Hole hole;
  private final String subject;
  private final Steel steel;
  private final Length bar;
  private final Between between;
  private final BarAnchorage anchorage;
  private final UprightFormulas formulas;
  private final SteelRules rules;
  private final List<Working> workings;

  /**
   * What lies round the bars.
   *
   * @param bottomCover under them
   * @param circle through their middles
   * @param clear between neighbours; zero for a single bar
   * @param fromBarToBar between their middles
   * @param over from the bar to the nearest surface of the concrete
   */
  record Between(
      Length bottomCover, Length circle, Length clear, Length fromBarToBar, Length over) {}

  UprightDesign(
      AlikeHoles alike, Steel steel, Between between, BarAnchorage anchorage, List<Working> to) {
    this.hole = alike.first();
    this.subject = alike.subject();
    this.steel = steel;
    this.bar = Bars.get(steel.size()).diameter();
    this.between = between;
    this.anchorage = anchorage;
    this.formulas = new UprightFormulas(anchorage.units());
    this.rules = new SteelRules(anchorage.units());
    this.workings = to;
  }

  /** Whether a joint leaves steel below it, and above it at least what can be cut. */
  private boolean fits(Length joint, Length whole) {
    Length above = between.bottomCover().plus(whole).minus(joint);
    return joint.isMoreThan(between.bottomCover()) && !above.isLessThan(rules.cuttingStep());
  }

  /**
   * The upright bars.
   *
   * @param whole from the foot of the steel to its head
   */
  Uprights uprights(Length whole) {
    Optional<Length> joint = steel.firstLift().filter(lift -> fits(lift, whole));
    if (joint.isPresent()) {
      return inTwo(joint.get());
    }
    Optional<Embedment> embedment =
        hole.top().isMoreThan(Length.ZERO)
            ? Optional.of(embedment(false, hole.depth().minus(between.bottomCover()), hookedFoot()))
            : Optional.empty();
    Optional<Hook> hook = hookedFoot() ? Optional.of(hook()) : Optional.empty();
    return new Uprights(
        between.bottomCover(), whole, cut(whole, hook), hook, Optional.empty(), embedment);
  }

  private boolean hookedFoot() {
    return steel.foot() == Steel.Foot.HOOKED;
  }

  private Uprights inTwo(Length joint) {
    Length rise =
        work(formulas.above(), hole.depth(), hole.top(), joint, steel.cover())
            .asLength()
            .setTo(rules.cuttingStep(), Rounding.DOWN);
    Length clear = between.clear().minus(bar);
    Length leastLap =
        keep(anchorage.lap(subject, bar, room(clear), Place.UPRIGHT_OR_LOW))
            .asLength()
            .setTo(rules.lapStep(), Rounding.UP);
    Length lap = leastLap.min(rise);
    Length reach = joint.minus(between.bottomCover());
    Embedment straight = embedment(true, reach, hookedFoot());
    boolean isHooked = straight.isHooked() || straight.isShort();
    Embedment embedment = isHooked ? embedment(true, reach, true) : straight;
    Optional<Hook> hook = isHooked ? Optional.of(hook()) : Optional.empty();
    Length starter = reach.plus(lap).setTo(rules.cuttingStep(), Rounding.DOWN);
    return new Uprights(
        joint,
        rise,
        rise,
        Optional.empty(),
        Optional.of(new Starters(joint, starter, lap, leastLap, cut(starter, hook), hook, clear)),
        Optional.of(embedment));
  }

  /** Bars are well apart with a bar's width over them and one between, two where no ring holds. */
  private Room room(Length clear) {
    Length wanted = bar.times(steel.ties().isPresent() ? 1 : 2);
    boolean isApart = steel.bars() == 1 || !clear.isLessThan(wanted);
    return isApart && !between.over().isLessThan(bar) ? Room.APART : Room.CLOSE;
  }

  private Embedment embedment(boolean atJoint, Length reach, boolean isHooked) {
    Length hooked = anchorage.hook(subject, bar, between.fromBarToBar(), between.over()).asLength();
    Length needed = isHooked ? hooked : straight(reach);
    boolean isShown = isHooked || reach.isLessThan(needed);
    if (isShown) {
      keep(anchorage.hook(subject, bar, between.fromBarToBar(), between.over()));
    }
    return new Embedment(atJoint, reach, needed, hooked, isHooked);
  }

  /** By the table; where that is too long, with what really lies round the bar. */
  private Length straight(Length reach) {
    Length byTable =
        keep(anchorage.development(subject, bar, room(between.clear()), Place.UPRIGHT_OR_LOW))
            .asLength();
    if (!reach.isLessThan(byTable)) {
      return byTable;
    }
    Length round =
        between.over().plus(bar.times(0.5)).min(between.fromBarToBar().times(0.5)).max(bar);
    return keep(anchorage.closely(subject, bar, round, Place.UPRIGHT_OR_LOW))
        .asLength()
        .min(byTable);
  }

  private Hook hook() {
    Length bend = rules.mainBend(bar);
    Length leg = work(formulas.leg(), bend, bar).asLength();
    return new Hook(leg, bend, turn(leg));
  }

  /** Outward where the concrete is wide enough at the foot, else inward. */
  private Turn turn(Length leg) {
    Length edge = hole.standing().times(0.5).minus(between.bottomCover());
    Length middle = steel.bars() == 1 ? Length.ZERO : between.circle().times(0.5);
    Length half = bar.times(0.5);
    if (!middle.minus(half).plus(leg).isMoreThan(edge)) {
      return Turn.OUTWARD;
    }
    return leg.minus(middle).minus(half).isMoreThan(edge) ? Turn.NO_ROOM : Turn.INWARD;
  }

  private Length cut(Length rise, Optional<Hook> hook) {
    return hook.map(Hook::insideBend)
        .map(bend -> work(formulas.hooked(), rise, bend, bar).asLength())
        .map(cut -> cut.setTo(rules.cuttingStep(), Rounding.UP))
        .orElse(rise);
  }

  private Working work(Formula formula, Quantity... quantities) {
    return keep(Working.of(formula, subject, quantities));
  }

  private Working keep(Working working) {
    if (!workings.contains(working)) {
      workings.add(working);
    }
    return working;
  }
}
