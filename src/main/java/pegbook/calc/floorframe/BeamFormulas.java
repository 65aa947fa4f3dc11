package pegbook.calc.floorframe;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** What lies on beams, headers, doubled joists and posts, in the units of the sheet. */
final class BeamFormulas {
  static final Citation COLUMNS = new Citation("nds-memory", "3.7.1");

  private final FloorFrameFormulas of;
  private final boolean imperial;
  private final Unit area;

  BeamFormulas(UnitSystem units) {
    of = new FloorFrameFormulas(units);
    imperial = units == UnitSystem.IMPERIAL;
    area = imperial ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
  }

  private Formula formula(
      String id,
      String expression,
      List<Symbol> inputs,
      Symbol result,
      Citation source,
      java.util.function.ToDoubleFunction<double[]> function) {
    return new Formula("floor-frame." + id, expression, inputs, result, source, "", function);
  }

  /** Weight on a part of the floor: area, load. Pounds-force or newtons. */
  Formula onArea() {
    return formula(
        "on-area",
        imperial ? "P = A · q" : "P = A · q · 1000",
        List.of(new Symbol("A", "floor-brought", area), of.pressure("q", "load-on-floor")),
        of.force("P", "load-brought"),
        Citation.GEOMETRY,
        x -> x[0] * x[1] * (imperial ? 1 : 1000));
  }

  /** What the second post bears: all that lies on the beam, its centre, span. */
  Formula reaction() {
    return formula(
        "reaction",
        "R = W · c / L",
        List.of(
            of.force("W", "load-on-beam"),
            of.length("c", "centre-of-load"),
            of.length("L", "span")),
        of.force("R", "end-load"),
        Citation.GEOMETRY,
        x -> x[0] * x[1] / x[2]);
  }

  private List<Symbol> section(List<Symbol> before) {
    List<Symbol> symbols = new java.util.ArrayList<>(before);
    symbols.addAll(
        List.of(
            FloorFrameFormulas.number("n", "plies"),
            of.length("b", "ply-width"),
            of.length("d", "ply-depth")));
    return symbols;
  }

  /**
   * Bending stress of plies side by side: six times the moment over their width and depth squared.
   *
   * @param moment as it is printed, of what stands before the section's symbols
   * @param function the moment from the numbers of these
   */
  private Formula bending(
      String id,
      String moment,
      List<Symbol> before,
      java.util.function.ToDoubleFunction<double[]> function) {
    int at = before.size();
    return formula(
        id,
        "f = 6 · " + moment + " / (n · b · d²)",
        section(before),
        of.stress("f", "bending-stress"),
        FloorFrameFormulas.MECHANICS,
        x -> 6 * function.applyAsDouble(x) / (x[at] * x[at + 1] * x[at + 2] * x[at + 2]));
  }

  /**
   * Bending under joists: end load, way to where bending is worst, loads before that place, way
   * from where these may be thought together; plies, width, depth.
   */
  Formula stress() {
    return bending(
        "beam-stress",
        "(R · x − P · e)",
        List.of(
            of.force("R", "end-load"),
            of.length("x", "way-to-worst"),
            of.force("P", "loads-before"),
            of.length("e", "way-from-loads")),
        x -> x[0] * x[1] - x[2] * x[3]);
  }

  /** Bending under an even load: all of it, span; plies, width, depth. */
  Formula evenStress() {
    return bending(
        "beam-even-stress",
        "W · L / 8",
        List.of(of.force("W", "load-on-beam"), of.length("L", "span")),
        x -> x[0] * x[1] / 8);
  }

  /** Bending of a joist with its own even load and what hangs on it, each at its own worst. */
  Formula hungStress() {
    return bending(
        "hung-stress",
        "(W · L / 8 + P · a · (L − a) / L)",
        List.of(
            of.force("W", "load-on-joist"),
            of.length("L", "span"),
            of.force("P", "load-hung"),
            of.length("a", "way-to-hung")),
        x -> x[0] * x[1] / 8 + x[2] * x[3] * (x[1] - x[3]) / x[1]);
  }

  /** Bending of a header with all that hangs on it in its middle. */
  Formula headerStress() {
    return bending(
        "header-stress",
        "P · L / 4",
        List.of(of.force("P", "load-hung"), of.length("L", "span")),
        x -> x[0] * x[1] / 4);
  }

  /** Shear at an end: end load; plies, width, depth. */
  Formula shearStress() {
    return formula(
        "shear-stress",
        "f = 3 / 2 · R / (n · b · d)",
        section(List.of(of.force("R", "end-load"))),
        of.stress("f", "shear-stress"),
        FloorFrameFormulas.MECHANICS,
        x -> 1.5 * x[0] / (x[1] * x[2] * x[3]));
  }

  /**
   * Sag at most, whatever the loads' places: bending stress, part of the load that comes and goes,
   * span, modulus, depth. No load pointing down bends a beam more than its worst moment all along.
   */
  Formula sag() {
    return formula(
        "beam-sag",
        "s = f · r · L² / (4 · E · d)",
        List.of(
            of.stress("f", "bending-stress"),
            FloorFrameFormulas.number("r", "moving-part"),
            of.length("L", "span"),
            of.stress("E", "counted-stiffness"),
            of.length("d", "ply-depth")),
        of.length("s", "sag"),
        FloorFrameFormulas.MECHANICS,
        x -> x[0] * x[1] * x[2] * x[2] / (4 * x[3] * x[4]));
  }

  /** Length of a beam's end that must lie on its post: end load, stress, plies, width. */
  Formula bearingLength() {
    return formula(
        "bearing-length",
        "a = R / (Fc · n · b)",
        List.of(
            of.force("R", "end-load"),
            of.stress("Fc", "allowed-bearing"),
            FloorFrameFormulas.number("n", "plies"),
            of.length("b", "ply-width")),
        of.length("a", "bearing-needed"),
        FloorFrameFormulas.MECHANICS,
        x -> x[0] / (x[1] * x[2] * x[3]));
  }

  /** How much of its short strength a post needs: load, strength, side. */
  Formula postPart() {
    return formula(
        "post-part",
        "k = P / (Fp · d²)",
        List.of(
            of.force("P", "post-load"),
            of.stress("Fp", "allowed-compression"),
            of.length("d", "post-side")),
        FloorFrameFormulas.number("k", "post-part"),
        COLUMNS,
        x -> x[0] / (x[1] * x[2] * x[2]));
  }

  /** How tall a post may stand: part needed, strength, least modulus, side; 50 sides at most. */
  Formula postHeight() {
    return formula(
        "post-height",
        "h = min(50 · d, d · √(0.822 · Em · (1 − k) / (Fp · k · (1 − 0.8 · k))))",
        List.of(
            FloorFrameFormulas.number("k", "post-part"),
            of.stress("Fp", "allowed-compression"),
            of.stress("Em", "least-stiffness"),
            of.length("d", "post-side")),
        of.length("h", "post-height"),
        COLUMNS,
        x ->
            x[0] >= 1
                ? 0
                : Math.min(
                    50 * x[3],
                    x[3]
                        * Math.sqrt(0.822 * x[2] * (1 - x[0]) / (x[1] * x[0] * (1 - 0.8 * x[0])))));
  }

  /** How high the floor stands over the lowest ground near its edge: floor, ground. */
  Formula fall() {
    return formula(
        "fall",
        "h = f − g",
        List.of(of.length("f", "floor-height"), of.length("g", "lowest-ground")),
        of.length("h", "fall"),
        Citation.GEOMETRY,
        x -> x[0] - x[1]);
  }

  /** What lies over the posts: beam, joist, board. */
  Formula frameHeight() {
    return formula(
        "frame-height",
        "u = d + j + b",
        List.of(
            of.length("d", "beam-depth"),
            of.length("j", "joist-depth"),
            of.length("b", "board-thickness")),
        of.length("u", "frame-height"),
        Citation.GEOMETRY,
        x -> x[0] + x[1] + x[2]);
  }
}
