package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.Argument;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Lift;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.LiftFrequency;
import pegbook.published.SafetyLimit;

/**
 * The recommended weight limit of the revised NIOSH lifting equation for one person, straight in
 * front, without twisting.
 *
 * <p>Source: NIOSH publication 94-110 (revised 9/2021), pages 7 to 12. The inch and the centimetre
 * variants have rounded constants of their own and differ a little. It holds for lifting with two
 * hands between about 66 and 79 degrees Fahrenheit, not for shovels, wheelbarrows or bad footing
 * (page 6).
 */
final class SafetyNotesFormulas {
  private static final Citation SOURCE = new Citation("niosh-94-110", "pages 7 to 12");

  /** Hands before the ankles with a bag held close; common practice. */
  private static final Length REACH_IMPERIAL = Length.ofInches(12);

  private static final Length REACH_METRIC = Length.ofMillimetres(300);

  /** Hands above the ground where a bag lies on it; common practice. */
  private static final Length FROM_IMPERIAL = Length.ofInches(6);

  private static final Length FROM_METRIC = Length.ofMillimetres(150);

  /** Upwards to a mixer or a barrow; common practice. */
  private static final Length UP_IMPERIAL = Length.ofInches(30);

  private static final Length UP_METRIC = Length.ofMillimetres(750);

  /** Hands above the ground where a bag lies on a tailgate; common practice. */
  private static final Length TAILGATE_IMPERIAL = Length.ofInches(32);

  private static final Length TAILGATE_METRIC = Length.ofMillimetres(800);

  static final Formula IMPERIAL =
      formula(
          Unit.POUND,
          Unit.INCH,
          "L = C · 10/H · (1 − 0.0075 · |V − 30|) · (0.82 + 1.8/D) · F · G",
          "10 in ≤ H ≤ 25 in, 0 ≤ V ≤ 70 in, D ≥ 10 in",
          in ->
              in[0]
                  * (10 / in[1])
                  * (1 - 0.0075 * Math.abs(in[2] - 30))
                  * (0.82 + 1.8 / in[3])
                  * in[4]
                  * in[5]);

  static final Formula METRIC =
      formula(
          Unit.KILOGRAM,
          Unit.MILLIMETRE,
          "L = C · 250/H · (1 − 0.0003 · |V − 750|) · (0.82 + 45/D) · F · G",
          "250 mm ≤ H ≤ 630 mm, 0 ≤ V ≤ 1750 mm, D ≥ 250 mm",
          in ->
              in[0]
                  * (250 / in[1])
                  * (1 - 0.0003 * Math.abs(in[2] - 750))
                  * (0.82 + 45 / in[3])
                  * in[4]
                  * in[5]);

  private SafetyNotesFormulas() {}

  private static Formula formula(
      Unit mass,
      Unit length,
      String expression,
      String valid,
      java.util.function.ToDoubleFunction<double[]> function) {
    return new Formula(
        "safety-notes.lift-limit",
        expression,
        List.of(
            new Symbol("C", "lift-constant", mass),
            new Symbol("H", "lift-reach", length),
            new Symbol("V", "lift-from", length),
            new Symbol("D", "lift-up", length),
            new Symbol("F", "lift-frequency", Unit.NONE),
            new Symbol("G", "lift-grip", Unit.NONE)),
        new Symbol("L", "lift-limit", mass),
        SOURCE,
        valid,
        function);
  }

  /** The limit for one person lifting a bag from the ground into a mixer or a barrow. */
  static Working oneBag(UnitSystem units) {
    return usual(units).get(0).limit();
  }

  /** The limits of a job's lifts; of the usual ones where it names none. */
  static List<Lifting> liftings(Job job) {
    UnitSystem units = job.heading().units();
    Mass bag = job.concrete().bag();
    List<Lifting> liftings =
        job.crew().lifts().isEmpty() ? usual(units) : named(units, job.crew().lifts());
    return liftings.stream().map(lifting -> lifting.with(bag)).toList();
  }

  private static List<Lifting> named(UnitSystem units, List<Lift> lifts) {
    List<Lifting> liftings = new ArrayList<>();
    for (Lift lift : lifts) {
      liftings.add(lifting(units, liftings.size() + 1, Argument.words(lift.name()), lift));
    }
    return liftings;
  }

  /** From the ground and from a tailgate into a mixer: common practice. */
  private static List<Lifting> usual(UnitSystem units) {
    boolean imperial = units == UnitSystem.IMPERIAL;
    Length reach = imperial ? REACH_IMPERIAL : REACH_METRIC;
    Length ground = imperial ? FROM_IMPERIAL : FROM_METRIC;
    Length tailgate = imperial ? TAILGATE_IMPERIAL : TAILGATE_METRIC;
    Length mixer = ground.plus(imperial ? UP_IMPERIAL : UP_METRIC);
    return List.of(
        lifting(units, 1, Argument.entry("lift.ground"), new Lift("", ground, mixer, reach, 1)),
        lifting(
            units, 2, Argument.entry("lift.tailgate"), new Lift("", tailgate, mixer, reach, 1)));
  }

  private static Lifting lifting(UnitSystem units, int number, Argument name, Lift lift) {
    boolean imperial = units == UnitSystem.IMPERIAL;
    Length least = imperial ? Length.ofInches(10) : Length.ofMillimetres(250);
    Length way = lift.to().minus(lift.from()).abs().max(least);
    double frequency = LiftFrequency.factor(lift.perMinute(), lift.from());
    Working limit =
        Working.of(
            imperial ? IMPERIAL : METRIC,
            Integer.toString(number),
            constant(imperial ? "lift-constant-imperial" : "lift-constant-metric"),
            lift.reach(),
            lift.from(),
            way,
            new Count(frequency),
            new Count(SafetyLimit.find("lift-grip").value()));
    return new Lifting(
        name,
        lift.from(),
        lift.to(),
        lift.perMinute(),
        limit,
        byRoundedFactors(limit, imperial),
        Ratio.ofPercent(0));
  }

  /** The factors of a working, each rounded as the publication's examples round them. */
  static Mass byRoundedFactors(Working limit, boolean imperial) {
    List<Double> in = limit.inputs();
    double reach = (imperial ? 10 : 250) / in.get(1);
    double height =
        imperial ? 1 - 0.0075 * Math.abs(in.get(2) - 30) : 1 - 0.0003 * Math.abs(in.get(2) - 750);
    double way = 0.82 + (imperial ? 1.8 : 45) / in.get(3);
    double rounded = Lifting.rounded(in.get(0), List.of(reach, height, way, in.get(4), in.get(5)));
    return imperial ? Mass.ofPounds(rounded) : new Mass(rounded);
  }

  private static Quantity constant(String id) {
    return SafetyLimit.find(id).quantity();
  }

  /** Step to which the limit is set down. */
  static Mass step(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? Mass.ofPounds(1) : new Mass(1);
  }
}
