package pegbook.calc.workestimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.workestimate.WorkEstimate.Part;
import pegbook.calc.workestimate.WorkEstimate.PartTime;
import pegbook.figures.DigWork;
import pegbook.figures.Hole;
import pegbook.figures.ToolStep;
import pegbook.figures.ToolStep.Use;
import pegbook.figures.Working;
import pegbook.job.Tool;
import pegbook.job.Widenings.Bell;
import pegbook.measure.Count;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.published.HandDigRate;
import pegbook.published.WorkRange;

/**
 * Digging one of several holes that are alike, part by part at the published rate.
 *
 * <p>A stretch that a tool digs at full width is dug by hand or cut by an auger; where the auger is
 * narrower, a ring is left to widen by hand. What no tool reaches is counted as dug by hand. A
 * power auger has a range of its own; a hand auger is hand work in a narrow hole.
 *
 * @param work one of the holes
 * @param range how far people may lie from the rate in this hole
 * @param byHand parts by hand, at the rate
 * @param byMachine what a power auger cuts, at the rate by hand; zero where there is none
 */
record DigTime(
    DigWork work,
    WorkRange range,
    Map<Part, Duration> byHand,
    Duration byMachine,
    List<Working> workings) {
  /** Cleaning the bottom, levelling it, measuring, writing down: common practice, no source. */
  static final Duration CLEAR_LEAST = Duration.ofMinutes(10);

  static final Duration CLEAR_MOST = Duration.ofMinutes(25);

  private static final Length TOLERANCE = Length.ofMillimetres(1);

  /** A stretch of a part, as a ring of soil. */
  private record Ring(
      Part part, boolean machine, Length outside, Length inside, Length from, Length to) {
    static Ring of(Part part, boolean machine, Length outside, Length inside, ToolStep step) {
      return new Ring(part, machine, outside, inside, step.from(), step.to());
    }
  }

  /** Digging from the ground down. */
  static DigTime of(DigWork work, String subject, HandDigRate rate, UnitSystem units) {
    return of(work, Length.ZERO, subject, rate, units);
  }

  /** Digging on from a depth. */
  static DigTime of(DigWork work, Length from, String subject, HandDigRate rate, UnitSystem units) {
    Map<Part, Duration> byHand = new EnumMap<>(Part.class);
    List<Working> workings = new ArrayList<>();
    Duration machine = Duration.ZERO;
    for (Ring ring : rings(work, from)) {
      Working time = time(ring, subject, rate, units);
      workings.add(time);
      if (ring.machine()) {
        machine = machine.plus(time.asDuration());
      } else {
        byHand.merge(ring.part(), time.asDuration(), Duration::plus);
      }
    }
    return new DigTime(work, range(work.hole()), byHand, machine, workings);
  }

  /** How far people may lie from the rate in a hole. */
  static WorkRange range(Hole hole) {
    return WorkRange.find(hole.isNarrow() ? "narrow" : "open");
  }

  private static Working time(Ring ring, String subject, HandDigRate rate, UnitSystem units) {
    Length above = ring.to().min(HandDigRate.BAND).minus(ring.from());
    Length upper = above.isLessThan(Length.ZERO) ? Length.ZERO : above;
    return Working.of(
        WorkEstimateFormulas.in(units).partTime(ring.part(), rate.citation()),
        subject,
        ring.outside(),
        ring.inside(),
        upper,
        ring.to().minus(ring.from()).minus(upper),
        rate.upper(),
        rate.lower());
  }

  private static List<Ring> rings(DigWork work, Length from) {
    Hole hole = work.hole();
    List<Ring> rings = new ArrayList<>();
    Length done = from;
    for (ToolStep whole : work.tools()) {
      ToolStep step = part(whole, from, hole.dug());
      if (step.use() == Use.BAR || !step.from().isLessThan(step.to())) {
        continue;
      }
      done = step.to();
      boolean machine = step.tool().kind() == Tool.Kind.POWER_AUGER;
      Length bit = step.tool().diameter().orElse(hole.diameter()).min(hole.diameter());
      switch (step.use()) {
        case START -> rings.add(Ring.of(Part.START, false, hole.diameter(), Length.ZERO, step));
        case BORE -> rings.add(Ring.of(Part.AUGER, machine, hole.diameter(), Length.ZERO, step));
        case PILOT -> {
          rings.add(Ring.of(Part.AUGER, machine, bit, Length.ZERO, step));
          rings.add(Ring.of(Part.WIDEN, false, hole.diameter(), bit, step));
        }
        default -> byHand(rings, hole, step.from(), step.to());
      }
    }
    if (done.plus(TOLERANCE).isLessThan(hole.dug())) {
      byHand(rings, hole, done, hole.dug());
    }
    hole.widenings().bell().ifPresent(bell -> undercut(rings, hole, bell, from));
    return rings;
  }

  /** A bell is cut by hand from above: its flare as a ring of its mean area, and its edge. */
  private static void undercut(List<Ring> rings, Hole hole, Bell bell, Length from) {
    double d = hole.diameter().metres();
    double b = bell.diameter().metres();
    Length mean = new Length(Math.sqrt((d * d + d * b + b * b) / 3));
    Length edge = hole.shaftDepth().plus(bell.flare());
    widen(rings, hole, mean, hole.shaftDepth().max(from), edge);
    widen(rings, hole, bell.diameter(), edge.max(from), hole.dug());
  }

  private static void widen(List<Ring> rings, Hole hole, Length to, Length high, Length low) {
    if (high.isLessThan(low)) {
      rings.add(new Ring(Part.WIDEN, false, to, hole.diameter(), high, low));
    }
  }

  /** What of a stretch lies between two depths. */
  private static ToolStep part(ToolStep step, Length from, Length to) {
    return new ToolStep(step.tool(), step.use(), step.from().max(from), step.to().min(to));
  }

  /** Adds a stretch by hand at full width; stretches that follow one another are one. */
  private static void byHand(List<Ring> rings, Hole hole, Length from, Length to) {
    int last = rings.size() - 1;
    Length begin = from;
    if (last >= 0 && rings.get(last).part() == Part.BY_HAND) {
      begin = rings.remove(last).from();
    }
    rings.add(new Ring(Part.BY_HAND, false, hole.diameter(), Length.ZERO, begin, to));
  }

  boolean hasMachine() {
    return byMachine.compareTo(Duration.ZERO) > 0;
  }

  Duration hand() {
    return byHand.values().stream().reduce(Duration.ZERO, Duration::plus);
  }

  /** All of it at the rate by hand. */
  Duration atRate() {
    return hand().plus(byMachine);
  }

  private static WorkRange auger() {
    return WorkRange.find("power-auger");
  }

  /** The least and the most time, as workings. */
  List<Working> whole(String subject) {
    return List.of(
        whole(subject, true, range.least(), CLEAR_LEAST, auger().least()),
        whole(subject, false, range.most(), CLEAR_MOST, auger().most()));
  }

  private Working whole(String subject, boolean best, double hand, Duration clear, double machine) {
    var formula =
        best ? WorkEstimateFormulas.least(hasMachine()) : WorkEstimateFormulas.most(hasMachine());
    return hasMachine()
        ? Working.of(
            formula, subject, hand(), new Count(hand), clear, byMachine, new Count(machine))
        : Working.of(formula, subject, hand(), new Count(hand), clear);
  }

  /** The parts with their ranges, cleaning last. */
  List<PartTime> parts() {
    Map<Part, PartTime> parts = new EnumMap<>(Part.class);
    byHand.forEach(
        (part, time) ->
            parts.put(
                part, new PartTime(part, time.times(range.least()), time.times(range.most()))));
    if (hasMachine()) {
      Duration least = byMachine.times(auger().least());
      Duration most = byMachine.times(auger().most());
      PartTime hand = parts.get(Part.AUGER);
      parts.put(
          Part.AUGER,
          hand == null
              ? new PartTime(Part.AUGER, least, most)
              : new PartTime(Part.AUGER, least.plus(hand.least()), most.plus(hand.most())));
    }
    parts.put(Part.CLEAR, new PartTime(Part.CLEAR, CLEAR_LEAST, CLEAR_MOST));
    return List.copyOf(parts.values());
  }

  /** What part of the whole a power auger takes, from 0 to 1, in the middle of the ranges. */
  double machineShare() {
    double machine = byMachine.hours() * (auger().least() + auger().most());
    double hand = hand().hours() * (range.least() + range.most());
    return machine / (machine + hand + CLEAR_LEAST.plus(CLEAR_MOST).hours());
  }
}
