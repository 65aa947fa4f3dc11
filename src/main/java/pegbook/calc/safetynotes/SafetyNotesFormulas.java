package pegbook.calc.safetynotes;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.figures.Working;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Quantity;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
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
    Quantity frequency = new Count(SafetyLimit.find("lift-frequency").value());
    Quantity grip = new Count(SafetyLimit.find("lift-grip").value());
    return units == UnitSystem.IMPERIAL
        ? Working.of(
            IMPERIAL,
            "",
            constant("lift-constant-imperial"),
            REACH_IMPERIAL,
            FROM_IMPERIAL,
            UP_IMPERIAL,
            frequency,
            grip)
        : Working.of(
            METRIC,
            "",
            constant("lift-constant-metric"),
            REACH_METRIC,
            FROM_METRIC,
            UP_METRIC,
            frequency,
            grip);
  }

  private static Quantity constant(String id) {
    return SafetyLimit.find(id).quantity();
  }

  /** Step to which the limit is set down. */
  static Mass step(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? Mass.ofPounds(1) : new Mass(1);
  }
}
