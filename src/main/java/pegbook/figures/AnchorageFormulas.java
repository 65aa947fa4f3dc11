package pegbook.figures;

import java.util.List;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * How far a deformed bar must reach into concrete of normal weight, in the units that the packet
 * prints: ACI 318-19 in inches, ACI 318M-19 in millimetres.
 *
 * <p>y is the yield strength of the steel, f that of the concrete at 28 days; its root counts up to
 * 100 psi (8.3 MPa). Steps are those of a bar in tension.
 */
public final class AnchorageFormulas {
  /** Straight bars. */
  public static final Citation DEVELOPMENT =
      new Citation("aci-318-19", "25.4.2.3, 25.4.2.5, 25.4.1.4");

  private static final Citation GENERAL =
      new Citation("aci-318-19", "25.4.2.4, 25.4.2.5, 25.4.1.4");

  /** Hooked bars. */
  public static final Citation HOOK = new Citation("aci-318-19-memory", "25.4.3.1, 25.4.3.2");

  /** The lap of bars in tension. */
  public static final Citation LAP = new Citation("aci-318-19", "25.4.2.3, 25.5.1.1, 25.5.2.1");

  private static final double LAP_FACTOR = 1.3;

  /** Greatest product of the factors for place and coating. */
  private static final double GREATEST_FACTORS = 1.7;

  /** Beyond it bars pull out instead of splitting the concrete. */
  private static final double GREATEST_CONFINEMENT = 2.5;

  private final boolean imperial;
  private final Unit small;
  private final Unit stress;
  private final double greatestRoot;

  /** In a packet's units. */
  public AnchorageFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    stress = imperial ? Unit.PSI : Unit.MEGAPASCAL;
    greatestRoot = imperial ? 100 : 8.3;
  }

  private static Symbol number(String letter, String id) {
    return new Symbol(letter, id, Unit.NONE);
  }

  private Symbol steel() {
    return new Symbol("y", "steel-yield", stress);
  }

  private Symbol concrete() {
    return new Symbol("f", "concrete-strength", stress);
  }

  private Symbol bar() {
    return new Symbol("d", "bar-diameter", small);
  }

  private double root(double strength) {
    return Math.min(greatestRoot, StrictMath.sqrt(strength));
  }

  private String rootWords() {
    return imperial ? "min(100, √f)" : "min(8.3, √f)";
  }

  private double least() {
    return imperial ? 12 : 300;
  }

  private String leastWords() {
    return imperial ? "12" : "300";
  }

  private String range() {
    return imperial ? "y ≤ 100000, f ≥ 2500" : "y ≤ 690, f ≥ 17";
  }

  private List<Symbol> simpleInputs() {
    return List.of(
        number("q", "bond-numerator"),
        number("K", "bond-divisor"),
        steel(),
        concrete(),
        number("ψₜ", "factor-place"),
        number("ψₑ", "factor-coating"),
        number("ψ", "factor-grade"),
        bar());
  }

  private double simple(double[] x) {
    double factors = Math.min(GREATEST_FACTORS, x[4] * x[5]) * x[6];
    return x[0] * factors * x[2] / (x[1] * root(x[3])) * x[7];
  }

  private String simpleWords() {
    return "q · min(1.7, ψₜ · ψₑ) · ψ · y / (K · " + rootWords() + ") · d";
  }

  /**
   * Development length by the table: numerator and divisor of its row, yield, concrete, factors for
   * place, coating and grade, bar.
   */
  public Formula development() {
    return new Formula(
        "anchorage.development",
        "l = max(" + leastWords() + ", " + simpleWords() + ")",
        simpleInputs(),
        new Symbol("l", "development-length", small),
        DEVELOPMENT,
        range(),
        x -> Math.max(least(), simple(x)));
  }

  /** Lap of class B; the same numbers. */
  public Formula lap() {
    return new Formula(
        "anchorage.lap",
        "s = max(" + leastWords() + ", 1.3 · " + simpleWords() + ")",
        simpleInputs(),
        new Symbol("s", "lap", small),
        LAP,
        range(),
        x -> Math.max(least(), LAP_FACTOR * simple(x)));
  }

  /**
   * Development length with what really lies round the bar, no steel across counted: distance from
   * the bar's middle to the nearest surface or half-way to the next bar, yield, concrete, factors
   * for place, coating, size and grade, bar.
   */
  public Formula closely() {
    return new Formula(
        "anchorage.development-closely",
        "l = max("
            + leastWords()
            + ", y / ("
            + (imperial ? "40/3" : "1.1")
            + " · "
            + rootWords()
            + ") · min(1.7, ψₜ · ψₑ) · ψₛ · ψ / min(2.5, b / d) · d)",
        List.of(
            new Symbol("b", "concrete-round-bar", small),
            steel(),
            concrete(),
            number("ψₜ", "factor-place"),
            number("ψₑ", "factor-coating"),
            number("ψₛ", "factor-size"),
            number("ψ", "factor-grade"),
            bar()),
        new Symbol("l", "development-length", small),
        GENERAL,
        range(),
        x -> {
          double factors = Math.min(GREATEST_FACTORS, x[3] * x[4]) * x[5] * x[6];
          double confinement = Math.min(GREATEST_CONFINEMENT, x[0] / x[7]);
          double divisor = imperial ? 40.0 / 3 : 1.1;
          return Math.max(least(), x[1] / (divisor * root(x[2])) * factors / confinement * x[7]);
        });
  }

  /**
   * Development length of a standard hook, from the back of its bend: yield, concrete, factors for
   * coating, steel round the hook, place and concrete, bar.
   */
  public Formula hook() {
    double floor = imperial ? 6 : 150;
    double divisor = imperial ? 55 : 23;
    return new Formula(
        "anchorage.hook",
        "l = max("
            + (imperial ? "6" : "150")
            + ", 8 · d, y · ψₑ · ψᵣ · ψₒ · ψ / ("
            + (imperial ? "55" : "23")
            + " · "
            + rootWords()
            + ") · d^1.5)",
        List.of(
            steel(),
            concrete(),
            number("ψₑ", "factor-coating"),
            number("ψᵣ", "factor-hooks-near"),
            number("ψₒ", "factor-hook-cover"),
            number("ψ", "factor-concrete"),
            bar()),
        new Symbol("l", "hook-development", small),
        HOOK,
        range(),
        x ->
            Math.max(
                Math.max(floor, 8 * x[6]),
                x[0] * x[2] * x[3] * x[4] * x[5] / (divisor * root(x[1])) * power(x[6])));
  }

  /** To the power of one and a half. */
  private static double power(double bar) {
    return bar * StrictMath.sqrt(bar);
  }
}
