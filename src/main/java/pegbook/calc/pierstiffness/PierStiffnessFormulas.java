package pegbook.calc.pierstiffness;

import static pegbook.calc.pierstiffness.PierUnits.number;
import static pegbook.calc.pierstiffness.PierUnits.poisson;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Ground, concrete, the base's springs and the sway on them, in the units that the packet prints.
 *
 * <p>The pier is a column as slender as its part above the ground, all the way down, on a rigid
 * round base as wide as the concrete that stands on the bottom; the push acts at its top, the lever
 * L above the base. Springs are those of a rigid disk on an elastic half-space, at the base, where
 * η is 1; soil at the side stiffens them by η. Factors of embedment differ between authors by
 * almost two, so the least and the greatest are printed, and no more than one radius of depth is
 * counted: deeper they were not made for.
 */
final class PierStiffnessFormulas {
  private static final Citation ELSABEE = new Citation("elsabee-kausel", "embedment, sliding");
  private static final Citation ARYA = new Citation("vibrating-machines", "embedment, rocking");
  private static final Citation PAIS = new Citation("pais-kausel", "embedded cylinder");
  private static final Citation BEAM = new Citation("mechanics", "elastic cantilever");

  private final PierUnits units;

  PierStiffnessFormulas(UnitSystem units) {
    this.units = PierUnits.of(units);
  }

  /** Shear modulus of the ground: Young's modulus, Poisson's ratio. */
  Formula modulusFromYoung() {
    return new Formula(
        "pier-stiffness.modulus-from-young",
        "G = Es / (2 · (1 + ν))",
        List.of(units.stress("Es", "soil-young"), poisson()),
        units.soil(),
        new Citation("em-1110-1-1904", "Table D-2"),
        "",
        x -> x[0] / (2 * (1 + x[1])));
  }

  /** Shear modulus of the ground: its density, velocity of shear waves. */
  Formula modulusFromVelocity() {
    boolean imperial = units.imperial();
    return new Formula(
        "pier-stiffness.modulus-from-velocity",
        imperial ? "G = w · V² / (32.174 · 144)" : "G = w · V² / 10⁶",
        List.of(
            new Symbol(
                "w",
                "soil-density",
                imperial ? Unit.POUND_PER_CUBIC_FOOT : Unit.KILOGRAM_PER_CUBIC_METRE),
            new Symbol(
                "V", "wave-velocity", imperial ? Unit.FOOT_PER_SECOND : Unit.METRE_PER_SECOND)),
        units.soil(),
        new Citation("mechanics", "elastic waves"),
        "",
        x -> x[0] * x[1] * x[1] / (imperial ? 32.174 * 144 : 1e6));
  }

  /** Modulus of elasticity of the concrete: strength. */
  Formula concreteModulus() {
    int factor = units.imperial() ? 57000 : 4700;
    return new Formula(
        "pier-stiffness.concrete-modulus",
        "E = " + factor + " · √fc",
        List.of(units.stress("fc", "concrete-strength")),
        units.concrete(),
        new Citation("aci-318-19-memory", "19.2.2.1(b)"),
        "",
        x -> factor * Math.sqrt(x[0]));
  }

  /** Sideways stiffness of the column, held fast at its foot: modulus, diameter, height. */
  Formula columnStiffness() {
    return new Formula(
        "pier-stiffness.column-stiffness",
        "kb = 3 · π · E · d⁴ / (64 · L³ · 1000)",
        List.of(units.concrete(), units.column(), units.lever()),
        new Symbol("kb", "column-stiffness", units.spring()),
        BEAM,
        "",
        x -> 3 * Math.PI * x[0] * fourth(x[1]) / (64 * cube(x[2]) * 1000));
  }

  /** Factor of embedment that the author of the least gives for sliding: depth, radius. */
  Formula leastSlidingFactor() {
    return new Formula(
        "pier-stiffness.least-sliding-factor",
        "η = 1 + 2/3 · min(h / r, 1)",
        List.of(units.depth(), units.radius()),
        number("η", "embedment-factor"),
        ELSABEE,
        "",
        x -> 1 + 2.0 / 3 * Math.min(x[0] / x[1], 1));
  }

  /** The greatest for sliding: depth, radius. */
  Formula greatestSlidingFactor() {
    return new Formula(
        "pier-stiffness.greatest-sliding-factor",
        "η = 1 + min(h / r, 1)",
        List.of(units.depth(), units.radius()),
        number("η", "embedment-factor"),
        PAIS,
        "",
        x -> 1 + Math.min(x[0] / x[1], 1));
  }

  /** The least for rocking: depth, radius, Poisson's ratio. */
  Formula leastRockingFactor() {
    return new Formula(
        "pier-stiffness.least-rocking-factor",
        "η = 1 + 1.2 · (1 − ν) · x + 0.2 · (2 − ν) · x³, x = min(h / r, 1)",
        List.of(units.depth(), units.radius(), poisson()),
        number("η", "embedment-factor"),
        ARYA,
        "",
        x -> {
          double share = Math.min(x[0] / x[1], 1);
          return 1 + 1.2 * (1 - x[2]) * share + 0.2 * (2 - x[2]) * cube(share);
        });
  }

  /** The greatest for rocking: depth, radius. */
  Formula greatestRockingFactor() {
    return new Formula(
        "pier-stiffness.greatest-rocking-factor",
        "η = 1 + 2.3 · x + 0.58 · x³, x = min(h / r, 1)",
        List.of(units.depth(), units.radius()),
        number("η", "embedment-factor"),
        PAIS,
        "",
        x -> {
          double share = Math.min(x[0] / x[1], 1);
          return 1 + 2.3 * share + 0.58 * cube(share);
        });
  }

  /** Spring of the base against sliding: factor, modulus, radius, Poisson's ratio. */
  Formula slidingSpring() {
    return new Formula(
        "pier-stiffness.sliding-spring",
        "Kh = η · 8 · G · r / ((2 − ν) · 1000)",
        List.of(number("η", "embedment-factor"), units.soil(), units.radius(), poisson()),
        slidingSpringSymbol(),
        new Citation("disk-sliding", ""),
        "",
        x -> x[0] * 8 * x[1] * x[2] / ((2 - x[3]) * 1000));
  }

  /** Spring of the base against rocking: factor, modulus, radius, Poisson's ratio. */
  Formula rockingSpring() {
    double scale = units.imperial() ? 12000 : 1e6;
    return new Formula(
        "pier-stiffness.rocking-spring",
        "Kr = η · 8 · G · r³ / (3 · (1 − ν) · " + (units.imperial() ? "12000" : "10⁶") + ")",
        List.of(number("η", "embedment-factor"), units.soil(), units.radius(), poisson()),
        rockingSpringSymbol(),
        new Citation("vibrating-machines", "circular base, rocking"),
        "",
        x -> x[0] * 8 * x[1] * cube(x[2]) / (3 * (1 - x[3]) * scale));
  }

  Symbol slidingSpringSymbol() {
    return new Symbol("Kh", "sliding-spring", units.spring());
  }

  Symbol rockingSpringSymbol() {
    return new Symbol("Kr", "rocking-spring", units.turningSpring());
  }

  /** Sway by bending: push, column's stiffness. */
  Formula bendingSway() {
    return new Formula(
        "pier-stiffness.bending-sway",
        "y1 = P / kb",
        List.of(units.push(), new Symbol("kb", "column-stiffness", units.spring())),
        units.sway("y1", "bending-sway"),
        BEAM,
        "",
        x -> x[0] / x[1]);
  }

  /** Sway by sliding: push, spring. */
  Formula slidingSway() {
    return new Formula(
        "pier-stiffness.sliding-sway",
        "y2 = P / Kh",
        List.of(units.push(), slidingSpringSymbol()),
        units.sway("y2", "sliding-sway"),
        Citation.GEOMETRY,
        "",
        x -> x[0] / x[1]);
  }

  /** Sway by rocking: push, lever, spring. */
  Formula rockingSway() {
    double scale = units.imperial() ? 12 : 1000;
    return new Formula(
        "pier-stiffness.rocking-sway",
        "y3 = P · L² / (" + (units.imperial() ? "12" : "1000") + " · Kr)",
        List.of(units.push(), units.lever(), rockingSpringSymbol()),
        units.sway("y3", "rocking-sway"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1] * x[1] / (scale * x[2]));
  }

  /** Sway, all parts together: bending, sliding, rocking. */
  Formula sway() {
    return new Formula(
        "pier-stiffness.sway",
        "y = y1 + y2 + y3",
        List.of(
            units.sway("y1", "bending-sway"),
            units.sway("y2", "sliding-sway"),
            units.sway("y3", "rocking-sway")),
        units.sway("y", "sway"),
        Citation.GEOMETRY,
        "",
        x -> x[0] + x[1] + x[2]);
  }

  /** Tilt of the top; a cantilever's end turns 1.5 y/L: bending, rocking, lever. */
  Formula tilt() {
    return new Formula(
        "pier-stiffness.tilt",
        "θ = 206.265 · (1.5 · y1 + y3) / L",
        List.of(units.sway("y1", "bending-sway"), units.sway("y3", "rocking-sway"), units.lever()),
        new Symbol("θ", "tilt", Unit.ARC_SECOND),
        BEAM,
        "",
        x -> 206.265 * (1.5 * x[0] + x[1]) / x[2]);
  }

  /** The same under the wind, for sway is in proportion: sway, wind, push. */
  Formula windSway() {
    return new Formula(
        "pier-stiffness.wind-sway",
        "yw = y · F / P",
        List.of(units.sway("y", "sway"), wind(), units.push()),
        units.sway("yw", "wind-sway"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1] / x[2]);
  }

  /** Tilt under the wind: tilt, wind, push. */
  Formula windTilt() {
    return new Formula(
        "pier-stiffness.wind-tilt",
        "θw = θ · F / P",
        List.of(new Symbol("θ", "tilt", Unit.ARC_SECOND), wind(), units.push()),
        new Symbol("θw", "wind-tilt", Unit.ARC_SECOND),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1] / x[2]);
  }

  private Symbol wind() {
    return new Symbol("F", "wind", units.force());
  }

  /** Weight's moment about the base's edge over the force's: mass, base, force, lever. */
  Formula overturning() {
    boolean imperial = units.imperial();
    return new Formula(
        "pier-stiffness.overturning",
        imperial ? "n = m · D / (2 · F · L)" : "n = 9.80665 · m · D / (2 · F · L)",
        List.of(
            units.mass("m", "pier-mass"),
            units.base(),
            new Symbol("F", "sideways-force", units.force()),
            units.lever()),
        number("n", "overturning-factor"),
        Citation.GEOMETRY,
        "",
        x -> (imperial ? 1 : 9.80665) * x[0] * x[1] / (2 * x[2] * x[3]));
  }

  /** Moment that cracks the column over the force's: strength, column, force, lever. */
  Formula cracking() {
    double factor = units.imperial() ? 7.5 : 0.62;
    return new Formula(
        "pier-stiffness.cracking",
        "c = " + factor + " · √fc · π · d³ / (32 · F · L)",
        List.of(
            units.stress("fc", "concrete-strength"),
            units.column(),
            new Symbol("F", "sideways-force", units.force()),
            units.lever()),
        number("c", "cracking-factor"),
        new Citation("aci-318-19-memory", "19.2.3.1"),
        "",
        x -> factor * Math.sqrt(x[0]) * Math.PI * cube(x[1]) / (32 * x[2] * x[3]));
  }

  private static double cube(double number) {
    return number * number * number;
  }

  private static double fourth(double number) {
    return number * number * number * number;
  }
}
