package pegbook.testing;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.geometry.Point;
import pegbook.job.Anchors;
import pegbook.job.Concrete;
import pegbook.job.Concrete.Mixing;
import pegbook.job.Crew;
import pegbook.job.Job;
import pegbook.job.Language;
import pegbook.job.OwnMix;
import pegbook.job.Pier;
import pegbook.job.Plan;
import pegbook.job.Power;
import pegbook.job.Side;
import pegbook.job.Sleeve;
import pegbook.job.Steel;
import pegbook.job.Stock;
import pegbook.job.Supports;
import pegbook.job.Tube;
import pegbook.job.Widenings;
import pegbook.job.Widenings.Bell;
import pegbook.job.Widenings.Cap;
import pegbook.job.Widenings.Pad;
import pegbook.job.Widenings.Shape;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/**
 * A job and its holes for tests of filling. Fields may be changed before {@link #job()} is taken;
 * lengths are inches, or millimetres when the job is metric.
 */
public final class FillJob {
  public final DigJob dig = new DigJob();
  public Mass bag = Mass.ofPounds(80);
  public Optional<Volume> yield = Optional.empty();
  public Pressure strength = Pressure.ofPsi(4000);
  public Ratio waste = Ratio.ofPercent(10);
  public Optional<Ratio> overBreak = Optional.of(Ratio.ofPercent(5));
  public Optional<Ratio> air = Optional.empty();
  public Mixing mixing = Mixing.MIXER;
  public Optional<Volume> truckMinimum = Optional.empty();
  public Optional<Volume> batch = Optional.empty();
  public Optional<OwnMix> ownMix = Optional.empty();
  public Stock stock = DigJob.STOCK;
  public int people = 2;
  public Duration hoursPerDay = new Duration(6);
  public Optional<LocalDate> start = Optional.empty();
  public List<DayOfWeek> workDays = List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
  public Plan plan = Plan.PLAIN;

  /** What keeps frost off the sides of all its footings. */
  public Optional<Side> side = Optional.empty();

  public Optional<Power> power = Optional.empty();

  public final List<Hole> holes = new ArrayList<>();

  /** Prints in millimetres and litres, and reads lengths in millimetres. */
  public FillJob metric() {
    dig.units = UnitSystem.METRIC;
    return this;
  }

  public Length length(double number) {
    return dig.units == UnitSystem.METRIC ? Length.ofMillimetres(number) : Length.ofInches(number);
  }

  /** A plain hole: diameter, depth to the underside, gravel, top. */
  public Hole hole(String mark, double diameter, double depth, double gravel, double top) {
    return new Hole(
        mark,
        mark.startsWith("P") ? MarkKind.PIER : MarkKind.SUPPORT,
        Point.ORIGIN,
        length(diameter),
        length(depth),
        length(gravel),
        length(top),
        Hole.DepthRule.JOB,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Widenings.NONE);
  }

  /** The same hole with a tube. */
  public Hole tube(Hole hole, double inside, Tube.From from) {
    return new Hole(
        hole.mark(),
        hole.kind(),
        hole.centre(),
        hole.diameter(),
        hole.depth(),
        hole.gravel(),
        hole.top(),
        hole.rule(),
        Optional.of(new Tube(length(inside), from)),
        hole.steel(),
        hole.level(),
        hole.datumToUnderside(),
        hole.widenings());
  }

  /** The same hole with vertical bars and, where a spacing is given, ties. */
  public Hole steel(Hole hole, int bars, String size, double cover, Optional<Steel.Ties> ties) {
    return with(
        hole,
        new Steel(bars, size, ties, length(cover), Steel.Foot.STRAIGHT, Optional.<Length>empty()));
  }

  /** The same hole with another foot of its bars, poured in two lifts where a first is given. */
  public Hole starters(Hole hole, Steel.Foot foot, Optional<Length> firstLift) {
    Steel steel = hole.steel().orElseThrow();
    return with(
        hole, new Steel(steel.bars(), steel.size(), steel.ties(), steel.cover(), foot, firstLift));
  }

  private static Hole with(Hole hole, Steel steel) {
    return with(hole, Optional.of(steel), hole.widenings());
  }

  /** The same hole with a bell, a pad or a cap. */
  public Hole widened(Hole hole, Widenings widenings) {
    return with(hole, hole.steel(), widenings);
  }

  private static Hole with(Hole hole, Optional<Steel> steel, Widenings widenings) {
    return new Hole(
        hole.mark(),
        hole.kind(),
        hole.centre(),
        hole.diameter(),
        hole.depth(),
        hole.gravel(),
        hole.top(),
        hole.rule(),
        hole.tube(),
        steel,
        hole.level(),
        hole.datumToUnderside(),
        widenings);
  }

  /** A bell: its diameter, flare, toe. */
  public Widenings bell(double diameter, double flare, double toe) {
    return new Widenings(
        Optional.of(new Bell(length(diameter), length(flare), length(toe))),
        Optional.empty(),
        Optional.empty());
  }

  /** A pad of a thickness. */
  public Widenings pad(double thickness) {
    return new Widenings(
        Optional.empty(), Optional.of(new Pad(length(thickness))), Optional.empty());
  }

  /** A cap: its shape, width, thickness. */
  public Widenings cap(Shape shape, double width, double thickness) {
    return new Widenings(
        Optional.empty(),
        Optional.empty(),
        Optional.of(new Cap(shape, length(width), length(thickness))));
  }

  /** Ties of a size at a spacing. */
  public Optional<Steel.Ties> ties(String size, double spacing) {
    return Optional.of(new Steel.Ties(size, length(spacing)));
  }

  public FillJob with(Hole hole) {
    holes.add(hole);
    return this;
  }

  private Supports supports(Supports plain) {
    return new Supports(
        plain.hole(),
        plain.depth(),
        plain.gravel(),
        plain.top(),
        plain.tube(),
        plain.steel(),
        side.or(plain::side),
        plain.widenings());
  }

  /** The checked job. */
  public Job job() {
    Job plain = dig.job();
    return new Job(
        plain.name(),
        plain.heading(),
        plain.place(),
        plain.site(),
        plain.ground(),
        plain.layout(),
        supports(plain.supports()),
        plain.piers(),
        plain.floor(),
        plain.wind(),
        plain.design(),
        new Crew(
            people,
            hoursPerDay,
            start,
            new TreeSet<>(workDays),
            new TreeSet<>(List.of(Language.ENGLISH)),
            List.of()),
        plan,
        plain.tools(),
        plain.spoil(),
        new Concrete(
            bag, yield, strength, waste, overBreak, air, mixing, truckMinimum, batch, ownMix),
        stock,
        plain.shop(),
        plain.prices(),
        plain.field(),
        power.or(plain::power),
        plain.defaults());
  }

  /** A pier as {@link DigJob} makes it, with bolts and a pipe where they are given. */
  public static Pier fitted(String id, Optional<Anchors> anchors, Optional<Sleeve> sleeve) {
    FillJob some = new FillJob();
    some.dig.pier(id, Point.ORIGIN, Optional.empty());
    Pier plain = some.dig.piers.get(0);
    return new Pier(
        plain.id(),
        plain.at(),
        plain.hole(),
        plain.depth(),
        plain.gravel(),
        plain.top(),
        plain.tube(),
        plain.steel(),
        plain.instrument(),
        plain.gap(),
        plain.push(),
        plain.wind(),
        anchors,
        sleeve,
        plain.uplift(),
        plain.side(),
        plain.widenings());
  }
}
