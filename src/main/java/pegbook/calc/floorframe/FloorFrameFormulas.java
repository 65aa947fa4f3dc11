package pegbook.calc.floorframe;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * What timber bears and how far it reaches: inches, psi, psf and pounds-force, or millimetres,
 * megapascals, kilopascals and newtons. Sections stand as their width and depth, so that each line
 * can be worked with a pencil.
 */
final class FloorFrameFormulas {
  static final Citation NDS_FACTORS = new Citation("nds", "Table 4.3.1");
  static final Citation MECHANICS = new Citation("mechanics", "simple beam");
  static final Citation DECK_TABLES = new Citation("dca-6", "Table 2");

  /** Floors bend no more than a part of the span under what comes and goes (DCA 6, Table 2). */
  static final double LEAST_DEFLECTION = 360;

  private final boolean imperial;
  private final Unit small;
  private final Unit stress;
  private final Unit pressure;
  private final Unit force;

  /** What a pressure on the floor is divided by to become a stress: psf to psi, kPa to MPa. */
  private final double perStress;

  private final String per;

  FloorFrameFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    stress = imperial ? Unit.PSI : Unit.MEGAPASCAL;
    pressure = imperial ? Unit.PSF : Unit.KILOPASCAL;
    force = imperial ? Unit.POUND_FORCE : Unit.NEWTON;
    perStress = imperial ? 144 : 1000;
    per = imperial ? "144" : "1000";
  }

  boolean isImperial() {
    return imperial;
  }

  Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  Symbol stress(String letter, String id) {
    return new Symbol(letter, id, stress);
  }

  Symbol pressure(String letter, String id) {
    return new Symbol(letter, id, pressure);
  }

  Symbol force(String letter, String id) {
    return new Symbol(letter, id, force);
  }

  static Symbol number(String letter, String id) {
    return new Symbol(letter, id, Unit.NONE);
  }

  private List<Symbol> member(Symbol strength, Symbol load) {
    return List.of(
        strength,
        number("n", "plies"),
        length("b", "ply-width"),
        length("d", "ply-depth"),
        load,
        length("s", "load-width"));
  }

  private Formula span(
      String id,
      String expression,
      Symbol strength,
      Symbol load,
      Citation source,
      java.util.function.ToDoubleFunction<double[]> function) {
    return new Formula(
        "floor-frame." + id,
        expression,
        member(strength, load),
        length("L", "allowed-span"),
        source,
        "",
        function);
  }

  /** Span by bending under an even load: stress, plies, width, depth, load, width carried. */
  Formula bendingSpan() {
    return span(
        "bending-span",
        "L = √(8 · F · n · b · d² / 6 · " + per + " / (q · s))",
        stress("F", "allowed-bending"),
        pressure("q", "bending-load"),
        MECHANICS,
        x -> Math.sqrt(8 * x[0] * x[1] * x[2] * x[3] * x[3] / 6 * perStress / (x[4] * x[5])));
  }

  /** Span by deflection, L/360 under what comes and goes: the same with the modulus. */
  Formula deflectionSpan() {
    return span(
        "deflection-span",
        "L = ∛(384 · E · n · b · d³ / 12 · " + per + " / (5 · 360 · l · s))",
        stress("E", "counted-stiffness"),
        pressure("l", "deflection-load"),
        DECK_TABLES,
        x ->
            StrictMath.cbrt(
                384
                    * x[0]
                    * x[1]
                    * x[2]
                    * x[3]
                    * x[3]
                    * x[3]
                    / 12
                    * perStress
                    / (5 * LEAST_DEFLECTION * x[4] * x[5])));
  }

  /** Span by shear at the end, nothing taken off for what lies near it: the same. */
  Formula shearSpan() {
    return span(
        "shear-span",
        "L = 2 · 2 / 3 · Fv · n · b · d · " + per + " / (q · s)",
        stress("Fv", "allowed-shear"),
        pressure("q", "bending-load"),
        MECHANICS,
        x -> 2 * 2 / 3.0 * x[0] * x[1] * x[2] * x[3] * perStress / (x[4] * x[5]));
  }

  /** Span by bearing on a length of the beam: stress, plies, width, length, load, width carried. */
  Formula bearingSpan() {
    return new Formula(
        "floor-frame.bearing-span",
        "L = 2 · Fc · n · b · a · " + per + " / (p · s)",
        List.of(
            stress("Fc", "allowed-bearing"),
            number("n", "plies"),
            length("b", "ply-width"),
            length("a", "bearing-length"),
            pressure("p", "bearing-load"),
            length("s", "load-width")),
        length("L", "allowed-span"),
        MECHANICS,
        "",
        x -> 2 * x[0] * x[1] * x[2] * x[3] * perStress / (x[4] * x[5]));
  }

  /** Overhang by the sag of its end under a person, twice it over 360: modulus, b, d, span. */
  Formula overhang() {
    double person = imperial ? 220 : 1000;
    return new Formula(
        "floor-frame.overhang",
        "a = (√(L² + 4 · 3 · E · b · d³ / 12 / (180 · "
            + (imperial ? "220" : "1000")
            + ")) − L) / 2",
        List.of(
            stress("E", "counted-stiffness"),
            length("b", "ply-width"),
            length("d", "ply-depth"),
            length("L", "span")),
        length("a", "overhang-by-sag"),
        DECK_TABLES,
        "",
        x ->
            (Math.sqrt(x[3] * x[3] + 4 * 3 * x[0] * x[1] * x[2] * x[2] * x[2] / 12 / (180 * person))
                    - x[3])
                / 2);
  }

  /**
   * Load that bending and shear are held to: dead, live, snow; snow counts less, as it is short.
   */
  Formula load() {
    return load(
        "load",
        "q = max(D + L, (D + S) / 1.15, (D + 0.75 · L + 0.75 · S) / 1.15)",
        pressure("q", "bending-load"),
        NDS_FACTORS,
        x -> Math.max(x[0] + x[1], Math.max(x[0] + x[2], x[0] + 0.75 * (x[1] + x[2])) / 1.15));
  }

  /** Load that bearing is held to: dead, live, snow. */
  Formula wholeLoad() {
    return load(
        "whole-load",
        "p = max(D + L, D + S, D + 0.75 · L + 0.75 · S)",
        pressure("p", "bearing-load"),
        new Citation("asce-7-16", "2.4.1"),
        x -> x[0] + Math.max(x[1], Math.max(x[2], 0.75 * (x[1] + x[2]))));
  }

  /** Load that deflection is held to: dead, live, snow; what lies there always does not count. */
  Formula movingLoad() {
    return load(
        "moving-load",
        "l = max(L, S, 0.75 · L + 0.75 · S)",
        pressure("l", "deflection-load"),
        new Citation("asce-7-16", "2.4.1"),
        x -> Math.max(x[1], Math.max(x[2], 0.75 * (x[1] + x[2]))));
  }

  private Formula load(
      String id,
      String expression,
      Symbol result,
      Citation source,
      java.util.function.ToDoubleFunction<double[]> function) {
    return new Formula(
        "floor-frame." + id,
        expression,
        List.of(
            pressure("D", "floor-dead"), pressure("L", "floor-live"), pressure("S", "floor-snow")),
        result,
        source,
        "",
        function);
  }
}
