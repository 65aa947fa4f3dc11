package pegbook.calc.bearing;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of bearing: inches, square feet, psf and pounds-force, or millimetres, square
 * metres, kilopascals and kilonewtons. Concrete weighs 150 lb/ft³, or 23.54 kN/m³ (2,400 kg/m³).
 */
final class BearingFormulas {
  /** Own weight off the pressure, size set up: the way of this table. */
  static final Citation NET_WAY = new Citation("dca-6", "Table 4");

  /** Own weight left out, size set to the nearest inch: the way of this table. */
  static final Citation GROSS_WAY = new Citation("irc-r507-3", "Table R507.3.1");

  static final Citation PAD = new Citation("irc", "R403.1.1");

  private final boolean imperial;
  private final Unit small;
  private final Unit area;
  private final Unit pressure;
  private final Unit force;
  private final double weight;
  private final String weightText;
  private final double smallInLarge;
  private final String squareText;
  private final String cubeText;

  BearingFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    area = imperial ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
    pressure = imperial ? Unit.PSF : Unit.KILOPASCAL;
    force = imperial ? Unit.POUND_FORCE : Unit.KILONEWTON;
    weight = concreteWeight(units);
    weightText = concreteWeightText(units);
    smallInLarge = imperial ? 12 : 1000;
    squareText = imperial ? "144" : "10⁶";
    cubeText = imperial ? "1728" : "10⁹";
  }

  /** What concrete weighs, lbf to the cubic foot or kN to the cubic metre. */
  static double concreteWeight(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? 150 : 23.54;
  }

  static String concreteWeightText(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? "150" : "23.54";
  }

  private double square() {
    return smallInLarge * smallInLarge;
  }

  private double cube() {
    return smallInLarge * smallInLarge * smallInLarge;
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  private Symbol force(String letter, String id) {
    return new Symbol(letter, id, force);
  }

  private Symbol area(String letter, String id) {
    return new Symbol(letter, id, area);
  }

  private Symbol pressure(String letter, String id) {
    return new Symbol(letter, id, pressure);
  }

  private Symbol carried() {
    return force("P", "footing-load");
  }

  private Symbol own() {
    return force("W", "footing-own-weight");
  }

  private Symbol allowed() {
    return pressure("q", "allowed-pressure");
  }

  private Symbol contact() {
    return area("A", "contact-area");
  }

  private Symbol step() {
    return length("s", "size-step");
  }

  /** Load of an instrument: its mass. */
  Formula instrument() {
    return new Formula(
        "bearing.instrument",
        imperial ? "P = m" : "P = m · 9.80665 / 1000",
        List.of(new Symbol("m", "mass-of-instrument", imperial ? Unit.POUND : Unit.KILOGRAM)),
        carried(),
        Citation.GEOMETRY,
        "",
        x -> imperial ? x[0] : x[0] * 9.80665 / 1000);
  }

  /** Own weight: diameter and depth below the ground, diameter and height above it. */
  Formula ownWeight() {
    return new Formula(
        "bearing.own-weight",
        "W = " + weightText + " · π / 4 · (d² · h + f² · t) / " + cubeText,
        List.of(
            length("d", "standing-diameter"),
            length("h", "depth-of-concrete"),
            length("f", "diameter-above-ground"),
            length("t", "height-of-concrete")),
        own(),
        Citation.COMMON_PRACTICE,
        "",
        x -> weight * Math.PI / 4 * (x[0] * x[0] * x[1] + x[2] * x[2] * x[3]) / cube());
  }

  /** Weight of what stands on the footing and does not widen with it: diameter, height. */
  Formula shaft() {
    return new Formula(
        "bearing.shaft",
        "Wf = " + weightText + " · π / 4 · f² · t / " + cubeText,
        List.of(length("f", "diameter-above-ground"), length("t", "height-of-concrete")),
        force("Wf", "weight-above-ground"),
        Citation.COMMON_PRACTICE,
        "",
        x -> weight * Math.PI / 4 * x[0] * x[0] * x[1] / cube());
  }

  /** Area on the bottom: diameter. */
  Formula contactArea() {
    return new Formula(
        "bearing.contact-area",
        "A = π · d² / 4 / " + squareText,
        List.of(length("d", "standing-diameter")),
        contact(),
        Citation.GEOMETRY,
        "",
        x -> Math.PI * x[0] * x[0] / 4 / square());
  }

  /** Pressure on the ground, own weight counted: load, own weight, area. */
  Formula grossPressure() {
    return new Formula(
        "bearing.gross-pressure",
        "p = (P + W) / A",
        List.of(carried(), own(), contact()),
        pressure("p", "pressure-on-ground"),
        Citation.GEOMETRY,
        "",
        x -> (x[0] + x[1]) / x[2]);
  }

  /** Pressure beside the footing's own weight: load, area. */
  Formula netPressure() {
    return new Formula(
        "bearing.net-pressure",
        "p = P / A",
        List.of(carried(), contact()),
        pressure("p", "pressure-on-ground"),
        Citation.GEOMETRY,
        "",
        x -> x[0] / x[1]);
  }

  /** Load beside its own weight at which the ground is fully used: pressure, area, own weight. */
  Formula grossMayCarry() {
    return new Formula(
        "bearing.gross-may-carry",
        "R = q · A − W",
        List.of(allowed(), contact(), own()),
        force("R", "load-it-may-carry"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1] - x[2]);
  }

  /** Load at which the ground is fully used, the pressure being net: pressure, area. */
  Formula netMayCarry() {
    return new Formula(
        "bearing.net-may-carry",
        "R = q · A",
        List.of(allowed(), contact()),
        force("R", "load-it-may-carry"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1]);
  }

  /**
   * Area needed, own weight taken off the pressure: load, weight that does not widen, pressure,
   * height of the concrete that widens.
   */
  Formula neededArea() {
    return new Formula(
        "bearing.needed-area",
        "An = (P + Wf) / (q − " + weightText + " · H / " + (imperial ? "12" : "1000") + ")",
        List.of(
            carried(),
            force("Wf", "weight-above-ground"),
            allowed(),
            length("H", "height-that-widens")),
        area("An", "needed-area"),
        NET_WAY,
        "q > " + weightText + " · H / " + (imperial ? "12" : "1000"),
        x -> (x[0] + x[1]) / (x[2] - weight * x[3] / smallInLarge));
  }

  /** Area needed where the pressure is net of the footing's own weight: load, pressure. */
  Formula neededNetArea() {
    return new Formula(
        "bearing.needed-net-area",
        "An = P / q",
        List.of(carried(), allowed()),
        area("An", "needed-area"),
        Citation.GEOMETRY,
        "",
        x -> x[0] / x[1]);
  }

  /** Diameter of an area, set up: area, step. */
  Formula round() {
    return new Formula(
        "bearing.round",
        "D₁ = √(4 · " + squareText + " · An / π), set up to the next s",
        List.of(area("An", "needed-area"), step()),
        length("D₁", "needed-diameter"),
        NET_WAY,
        "",
        x -> set(Rounding.UP, diameter(x[0]), x[1]));
  }

  /** Side of a square of an area, set up: area, step. */
  Formula square(Citation source) {
    return new Formula(
        "bearing.square",
        "B = √(" + squareText + " · An), set up to the next s",
        List.of(area("An", "needed-area"), step()),
        length("B", "needed-side"),
        source,
        "",
        x -> set(Rounding.UP, Math.sqrt(square() * x[0]), x[1]));
  }

  /** Diameter by gross pressure, set to the nearest: load, pressure, step, the table's least. */
  Formula roundByGross() {
    return new Formula(
        "bearing.round-by-gross",
        "D₂ = max(m, √(4 · " + squareText + " · P / (π · q)) set to the nearest s)",
        List.of(carried(), allowed(), step(), length("m", "least-diameter")),
        length("D₂", "diameter-by-gross"),
        GROSS_WAY,
        "",
        x -> Math.max(x[3], set(Rounding.NEAREST, diameter(x[0] / x[1]), x[2])));
  }

  /** Thickness of a pad: its diameter or side, what stands on it, the least, step. */
  Formula padThickness() {
    return new Formula(
        "bearing.pad-thickness",
        "T = max(m, (D − c) / 2), set up to the next s",
        List.of(
            length("D", "pad-width"),
            length("c", "width-on-pad"),
            length("m", "least-thickness"),
            step()),
        length("T", "pad-thickness"),
        PAD,
        "",
        x -> set(Rounding.UP, Math.max(x[2], (x[0] - x[1]) / 2), x[3]));
  }

  /**
   * Snow at which a support is fully used: what it may carry, dead, live, its part of the floor.
   */
  Formula snowRoom() {
    return new Formula(
        "bearing.snow-room",
        "s = min((R − D) / Af, (R − D − 0.75 · L) / (0.75 · Af))",
        List.of(
            force("R", "load-it-may-carry"),
            force("D", "support-dead"),
            force("L", "support-live"),
            area("Af", "support-area")),
        pressure("s", "snow-it-may-carry"),
        new Citation("asce-7-16", "2.4.1"),
        "",
        x -> Math.min((x[0] - x[1]) / x[3], (x[0] - x[1] - 0.75 * x[2]) / (0.75 * x[3])));
  }

  /** How far the zones under two footings stay apart: distance, diameters, depths to spread. */
  Formula zones() {
    return new Formula(
        "bearing.zones",
        "u = a − (d₁ + d₂) / 2 − (z₁ + z₂) / 2",
        List.of(
            length("a", "hole-distance"),
            length("d₁", "standing-of-one"),
            length("d₂", "standing-of-other"),
            length("z₁", "spread-depth-of-one"),
            length("z₂", "spread-depth-of-other")),
        length("u", "zones-apart"),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] - (x[1] + x[2]) / 2 - (x[3] + x[4]) / 2);
  }

  /** Ground left between two footings, each as wide as it is or must be: distance, diameters. */
  Formula bottoms() {
    return new Formula(
        "bearing.bottoms",
        "u = a − (d₁ + d₂) / 2",
        List.of(
            length("a", "hole-distance"),
            length("d₁", "width-of-wider"),
            length("d₂", "width-of-neighbour")),
        length("u", "left-between"),
        Citation.GEOMETRY,
        "",
        x -> x[0] - (x[1] + x[2]) / 2);
  }

  private double diameter(double areaInLargeUnits) {
    return Math.sqrt(4 * square() * areaInLargeUnits / Math.PI);
  }

  private static double set(Rounding direction, double value, double step) {
    return direction.steps(value, step) * step;
  }
}
