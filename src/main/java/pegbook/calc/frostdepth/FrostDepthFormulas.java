package pegbook.calc.frostdepth;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of frost depth: inches, pounds and Btu, or millimetres, kilograms and megajoules. A
 * pound of water sets 144 Btu free when it freezes, a kilogram 0.335 MJ. Depths are set up to a
 * whole step.
 */
final class FrostDepthFormulas {
  static final Citation STEFAN = new Citation("handy-spangler", "Example 11.7");
  static final Citation BERGGREN = new Citation("berggren-modified", "");
  private static final Citation KERSTEN = new Citation("kersten-1949", "");
  private static final Citation LATENT = new Citation("ufc-3-130-05", "chapter 12");

  /** Btu·in/(ft²·h·°F) in W/(m·K), and a pound a cubic foot in kg/m³. */
  private static final double KERSTEN_WATTS = 0.14423;

  private static final double PCF = 16.018;

  private final boolean imperial;

  FrostDepthFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, imperial ? Unit.INCH : Unit.MILLIMETRE);
  }

  private Symbol degrees(String letter, String id) {
    return new Symbol(letter, id, imperial ? Unit.FAHRENHEIT_STEP : Unit.CELSIUS_STEP);
  }

  private Symbol conductivity(String letter, String id) {
    Unit unit = imperial ? Unit.BTU_PER_FOOT_HOUR_FAHRENHEIT : Unit.WATT_PER_METRE_KELVIN;
    return new Symbol(letter, id, unit);
  }

  private Symbol dry() {
    Unit unit = imperial ? Unit.POUND_PER_CUBIC_FOOT : Unit.KILOGRAM_PER_CUBIC_METRE;
    return new Symbol("g", "dry-density", unit);
  }

  private static Symbol water() {
    return new Symbol("w", "moisture", Unit.PERCENT);
  }

  private Symbol latent() {
    Unit unit = imperial ? Unit.BTU_PER_CUBIC_FOOT : Unit.MEGAJOULE_PER_CUBIC_METRE;
    return new Symbol("L", "latent-heat", unit);
  }

  private static Symbol surface() {
    return new Symbol("n", "surface-factor", Unit.NONE);
  }

  private Symbol index() {
    return new Symbol("F", "freezing-index", imperial ? Unit.FAHRENHEIT_DAY : Unit.CELSIUS_DAY);
  }

  /** Heat that the water in the ground sets free: dry density, moisture. */
  Formula latentHeat() {
    double heat = imperial ? 144 : 0.335;
    return new Formula(
        "frost-depth.latent-heat",
        "L = " + (imperial ? "144" : "0.335") + " · g · w / 100",
        List.of(dry(), water()),
        latent(),
        LATENT,
        "",
        x -> heat * x[0] * x[1] / 100);
  }

  /** Conductivity of frozen ground: dry density, moisture. */
  Formula frozen(boolean coarse) {
    String grows = coarse ? "0.013" : "0.022";
    String wets = coarse ? "0.0146" : "0.008";
    String inner =
        "("
            + (coarse ? "0.076" : "0.01")
            + power(grows)
            + (coarse ? " + 0.032" : " + 0.085")
            + power(wets)
            + " · w)";
    return new Formula(
        "frost-depth.frozen-conductivity",
        "kf = " + kersten(inner),
        List.of(dry(), water()),
        conductivity("kf", "frozen-conductivity"),
        KERSTEN,
        valid(coarse),
        x -> {
          double pcf = pcf(x[0]);
          double dryPart =
              (coarse ? 0.076 : 0.01) * StrictMath.pow(10, (coarse ? 0.013 : 0.022) * pcf);
          double wetPart =
              (coarse ? 0.032 : 0.085) * StrictMath.pow(10, (coarse ? 0.0146 : 0.008) * pcf);
          return kersten(dryPart + wetPart * x[1]);
        });
  }

  /** Conductivity of unfrozen ground: dry density, moisture. */
  Formula unfrozen(boolean coarse) {
    String inner = "(" + (coarse ? "0.7 · lg w + 0.4" : "0.9 · lg w − 0.2") + ")" + power("0.01");
    return new Formula(
        "frost-depth.unfrozen-conductivity",
        "ku = " + kersten(inner),
        List.of(dry(), water()),
        conductivity("ku", "unfrozen-conductivity"),
        KERSTEN,
        valid(coarse),
        x -> {
          double lg = StrictMath.log10(x[1]);
          double wet = coarse ? 0.7 * lg + 0.4 : 0.9 * lg - 0.2;
          return kersten(wet * StrictMath.pow(10, 0.01 * pcf(x[0])));
        });
  }

  private String power(String factor) {
    return " · 10^(" + factor + " · g" + (imperial ? ")" : " / 16.018)");
  }

  private String kersten(String inner) {
    return imperial ? inner + " / 12" : "0.14423 · " + inner;
  }

  private double kersten(double btuInches) {
    return imperial ? btuInches / 12 : KERSTEN_WATTS * btuInches;
  }

  private double pcf(double dry) {
    return imperial ? dry : dry / PCF;
  }

  private static String valid(boolean coarse) {
    return coarse ? "w ≥ 1" : "w ≥ 7";
  }

  /** Depth by the heat of the water alone: conductivity, factor, index, latent heat, step. */
  Formula stefan() {
    double scale = imperial ? 48 : 0.1728;
    return new Formula(
        "frost-depth.stefan",
        "x = "
            + (imperial ? "12 · √(48" : "1000 · √(0.1728")
            + " · kf · n · F / L), set up to the next s",
        List.of(
            conductivity("kf", "frozen-conductivity"),
            surface(),
            index(),
            latent(),
            length("s", "depth-step")),
        length("x", "stefan-depth"),
        STEFAN,
        "",
        x -> setUp(large() * Math.sqrt(scale * x[0] * x[1] * x[2] / x[3]), x[4]));
  }

  /** Frost at the surface over the season, a day's mean: factor, index, days. */
  Formula surfaceFrost() {
    return new Formula(
        "frost-depth.surface-frost",
        "v = n · F / t",
        List.of(surface(), index(), new Symbol("t", "frost-days", Unit.DAY)),
        degrees("v", "surface-frost"),
        BERGGREN,
        "",
        x -> x[0] * x[1] / x[2]);
  }

  /** The ground's warmth over the frost: mean of the year above freezing, frost at the surface. */
  Formula warmth() {
    return new Formula(
        "frost-depth.warmth",
        "α = m / v",
        List.of(degrees("m", "year-above-freezing"), degrees("v", "surface-frost")),
        new Symbol("α", "warmth-ratio", Unit.NONE),
        BERGGREN,
        "",
        x -> x[0] / x[1]);
  }

  /** Heat stored over heat set free: dry density, moisture, frost at the surface, latent heat. */
  Formula stored() {
    double soil = imperial ? 0.17 : 0.712;
    double wet = imperial ? 0.75 : 3.14;
    double scale = imperial ? 1 : 1000;
    return new Formula(
        "frost-depth.stored",
        imperial
            ? "μ = g · (0.17 + 0.75 · w / 100) · v / L"
            : "μ = g · (0.712 + 3.14 · w / 100) · v / (1000 · L)",
        List.of(dry(), water(), degrees("v", "surface-frost"), latent()),
        new Symbol("μ", "heat-ratio", Unit.NONE),
        BERGGREN,
        "",
        x -> x[0] * (soil + wet * x[1] / 100) * x[2] / (scale * x[3]));
  }

  /** The coefficient: warmth ratio, heat ratio. */
  Formula coefficient() {
    return new Formula(
        "frost-depth.coefficient",
        "λ = c · √(2 / μ), c from e^(−c²) / erf c − α · e^(−c²) / erfc c = √π · c / μ",
        List.of(
            new Symbol("α", "warmth-ratio", Unit.NONE), new Symbol("μ", "heat-ratio", Unit.NONE)),
        new Symbol("λ", "berggren-coefficient", Unit.NONE),
        BERGGREN,
        "α ≥ 0, 0 < μ ≤ 5",
        x -> Neumann.lambda(x[0], x[1]));
  }

  /** Depth with the ground's heat: coefficient, both conductivities, factor, index, heat, step. */
  Formula berggren() {
    double scale = imperial ? 24 : 0.0864;
    return new Formula(
        "frost-depth.berggren",
        "z = "
            + (imperial ? "12 · λ · √(24" : "1000 · λ · √(0.0864")
            + " · (kf + ku) · n · F / L), set up to the next s",
        List.of(
            new Symbol("λ", "berggren-coefficient", Unit.NONE),
            conductivity("kf", "frozen-conductivity"),
            conductivity("ku", "unfrozen-conductivity"),
            surface(),
            index(),
            latent(),
            length("s", "depth-step")),
        length("z", "berggren-depth"),
        BERGGREN,
        "",
        x -> setUp(large() * x[0] * Math.sqrt(scale * (x[1] + x[2]) * x[3] * x[4] / x[5]), x[6]));
  }

  /** Water that fills every pore of soil grains of 2.7: dry density. */
  Formula mostWater() {
    double water = imperial ? 62.4 : 1000;
    return new Formula(
        "frost-depth.most-water",
        "w = 100 · (" + (imperial ? "62.4" : "1000") + " / g − 1 / 2.7)",
        List.of(dry()),
        new Symbol("w", "most-moisture", Unit.PERCENT),
        Citation.COMMON_PRACTICE,
        "",
        x -> 100 * (water / x[0] - 1 / 2.7));
  }

  private double large() {
    return imperial ? 12 : 1000;
  }

  private static double setUp(double value, double step) {
    return Rounding.UP.steps(value, step) * step;
  }
}
