package pegbook.calc.pierstiffness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.pierstiffness.PierStiffness.Case;
import pegbook.calc.pierstiffness.PierStiffness.GroundModulus;
import pegbook.calc.pierstiffness.PierStiffness.Hold;
import pegbook.calc.pierstiffness.PierStiffness.Moved;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Angle;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;

/**
 * Sway, tilt and frequency of one pier, case by case: the base alone; with soil at the side for one
 * radius; with soil tight against all of the side. Each on soft and on stiff ground.
 *
 * <p>All numbers are in the units that the packet prints.
 */
final class PierOnGround {
  private final PierStiffnessFormulas formulas;
  private final ShaftFormulas shaftFormulas;
  private final FrequencyFormulas frequencies;
  private final PierUnits units;
  private final GroundModulus ground;
  private final PierShape shape;
  private final Force push;
  private final Optional<Force> wind;
  private final String marks;
  private final Steps steps;

  private final double concrete;
  private final double column;
  private final double base;
  private final double depth;
  private final double top;
  private final double instrument;
  private final double above;
  private final double below;
  private final double mass;

  /** Column of a height: its stiffness and its own frequency. */
  private record Column(double lever, double stiffness, double hertz) {}

  PierOnGround(
      Job job, GroundModulus ground, PierShape shape, Forces forces, String marks, Steps steps) {
    UnitSystem system = job.heading().units();
    this.formulas = new PierStiffnessFormulas(system);
    this.shaftFormulas = new ShaftFormulas(system);
    this.frequencies = new FrequencyFormulas(system);
    this.units = PierUnits.of(system);
    this.ground = ground;
    this.shape = shape;
    this.push = forces.push();
    this.wind = forces.wind();
    this.marks = marks;
    this.steps = steps;
    double strength = units.stress().in(job.concrete().strength());
    this.concrete = work(formulas.concreteModulus(), strength);
    this.column = units.small().in(shape.column());
    this.base = units.small().in(shape.base());
    this.depth = units.small().in(shape.depth());
    this.top = units.small().in(shape.top());
    this.instrument = units.mass().in(shape.instrument());
    this.above = work(frequencies.massAbove(), column, top);
    this.below = work(frequencies.massBelow(), base, depth);
    this.mass = work(frequencies.mass(), instrument, above, below);
  }

  /**
   * What pushes at a pier's top.
   *
   * @param push a hand
   * @param wind on the instrument, where given
   */
  record Forces(Force push, Optional<Force> wind) {}

  private double work(Formula formula, double... numbers) {
    return steps.work(formula, marks, numbers).result();
  }

  private double work(String letter, Formula formula, double... numbers) {
    return step(letter, formula, numbers).result();
  }

  private Working step(String letter, Formula formula, double... numbers) {
    return steps.work(formula, marks + " " + letter, numbers);
  }

  Pressure concreteModulus() {
    return new Pressure(units.stress().toSi(concrete));
  }

  /** Every case that can be computed, the softest first. */
  List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    Column free = column("", units.small().in(shape.lever()));
    double inertia = work(frequencies.inertia(), instrument, above, below, free.lever(), depth);
    double radius = base / 2;
    double leastSliding = work(formulas.leastSlidingFactor(), depth, radius);
    double mostSliding = work(formulas.greatestSlidingFactor(), depth, radius);
    double leastRocking = work(formulas.leastRockingFactor(), depth, radius, ground.poisson());
    double mostRocking = work(formulas.greatestRockingFactor(), depth, radius);
    cases.add(onBase("a", Hold.BASE_ALONE, false, free, inertia, 1, 1));
    cases.add(onBase("b", Hold.BASE_ALONE, true, free, inertia, 1, 1));
    cases.add(onBase("c", Hold.ONE_RADIUS, false, free, inertia, leastSliding, leastRocking));
    cases.add(onBase("d", Hold.ONE_RADIUS, true, free, inertia, mostSliding, mostRocking));
    if (shape.isShaft()) {
      Column standing = column("e–f", top);
      cases.add(held("e", false, standing));
      cases.add(held("f", true, standing));
    }
    return List.copyOf(cases);
  }

  /** Tilt under the push on soft ground with the base alone, and with the side held. */
  Angle softTilt(Hold hold) {
    return cases().stream()
        .filter(each -> each.hold() == hold && !each.stiff())
        .findFirst()
        .orElseThrow()
        .tilt();
  }

  private Column column(String letters, double lever) {
    String subject = letters.isEmpty() ? marks + " a–d" : marks + " " + letters;
    double stiffness =
        steps.work(formulas.columnStiffness(), subject, concrete, column, lever).result();
    double own = steps.work(frequencies.massOfColumn(), subject, column, lever).result();
    double root = steps.work(frequencies.columnRoot(), subject, instrument, own).result();
    double hertz =
        steps.work(frequencies.columnFrequency(), subject, root, stiffness, own).result();
    return new Column(lever, stiffness, hertz);
  }

  private double modulus(boolean stiff) {
    return units.stress().in(stiff ? ground.high() : ground.low());
  }

  private Case onBase(
      String letter,
      Hold hold,
      boolean stiff,
      Column free,
      double inertia,
      double slidingFactor,
      double rockingFactor) {
    double radius = base / 2;
    double soil = modulus(stiff);
    double sliding =
        work(letter, formulas.slidingSpring(), slidingFactor, soil, radius, ground.poisson());
    double rocking =
        work(letter, formulas.rockingSpring(), rockingFactor, soil, radius, ground.poisson());
    double force = units.force().in(push);
    Working slid = step(letter, formulas.slidingSway(), force, sliding);
    Working rocked = step(letter, formulas.rockingSway(), force, free.lever(), rocking);
    double hertz = work(letter, frequencies.groundFrequency(), mass, inertia, sliding, rocking);
    return moved(letter, hold, stiff, free, slid, rocked, hertz);
  }

  private Case held(String letter, boolean stiff, Column standing) {
    double soil = work(letter, shaftFormulas.shaftModulus(), modulus(stiff), ground.poisson());
    double yield = work(letter, shaftFormulas.groundYield(), soil, depth, base, concrete);
    double turn = work(letter, shaftFormulas.groundTurn(), soil, depth, base, concrete);
    double byMoment = work(letter, shaftFormulas.groundTurnByMoment(), soil, depth, base, concrete);
    double force = units.force().in(push);
    Working slid = step(letter, shaftFormulas.slidingSway(), force, top, yield, turn);
    Working rocked = step(letter, shaftFormulas.rockingSway(), force, top, turn, byMoment);
    double hertz =
        work(
            letter,
            shaftFormulas.groundFrequency(),
            instrument,
            above,
            below,
            top,
            yield,
            turn,
            byMoment);
    return moved(letter, Hold.ALL_DEPTH, stiff, standing, slid, rocked, hertz);
  }

  /** Puts the parts of a case together. */
  private Case moved(
      String letter,
      Hold hold,
      boolean stiff,
      Column standing,
      Working slid,
      Working rocked,
      double groundHertz) {
    double force = units.force().in(push);
    Working bent = step(letter, formulas.bendingSway(), force, standing.stiffness());
    Working sway = step(letter, formulas.sway(), bent.result(), slid.result(), rocked.result());
    Working tilt = step(letter, formulas.tilt(), bent.result(), rocked.result(), standing.lever());
    double hertz = work(letter, frequencies.frequency(), standing.hertz(), groundHertz);
    return new Case(
        letter,
        hold,
        stiff,
        bent.asLength(),
        slid.asLength(),
        rocked.asLength(),
        sway.asLength(),
        tilt.asAngle(),
        hertz,
        wind.map(blowing -> blown(letter, blowing, sway, tilt)));
  }

  private Moved blown(String letter, Force blowing, Working sway, Working tilt) {
    double force = units.force().in(blowing);
    double pushed = units.force().in(push);
    Length windSway = step(letter, formulas.windSway(), sway.result(), force, pushed).asLength();
    Angle windTilt = step(letter, formulas.windTilt(), tilt.result(), force, pushed).asAngle();
    return new Moved(blowing, windSway, windTilt);
  }

  /** How many times a force could grow before the pier tips over the edge of its base. */
  double overturning(Force force) {
    return work(formulas.overturning(), mass, base, units.force().in(force), lever(shape.lever()));
  }

  /** How many times a force could grow before the column cracks at the base. */
  double cracking(Job job, Force force) {
    return work(
        formulas.cracking(),
        units.stress().in(job.concrete().strength()),
        column,
        units.force().in(force),
        lever(shape.lever()));
  }

  private double lever(Length lever) {
    Unit small = units.small();
    return small.in(lever);
  }
}
