package pegbook.calc.asdug;

import java.util.List;
import pegbook.figures.BearingPair;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** The formulas of the subject, in the units that the packet prints. */
final class AsDugFormulas {
  /** Of a round section the middle quarter: a load inside it presses the whole bottom. */
  static final Citation KERN =
      new Citation("mechanics", "kern of a circle, stress of an off-centre load");

  private final Unit small;
  private final Unit pressure;

  AsDugFormulas(UnitSystem units) {
    boolean imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    pressure = imperial ? Unit.PSF : Unit.KILOPASCAL;
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  /** How much deeper a hole is than planned: found, planned. */
  Formula deeper() {
    return new Formula(
        "as-dug.deeper",
        "Δ = f − H",
        List.of(length("f", "found-depth"), length("H", "planned-depth")),
        length("Δ", "dug-deeper"),
        Citation.GEOMETRY,
        "",
        x -> x[0] - x[1]);
  }

  /** How far the middle of the bottom lies from the mark: east, north. */
  Formula moved() {
    return new Formula(
        "as-dug.moved",
        "m = √(e² + n²)",
        List.of(length("e", "moved-east"), length("n", "moved-north")),
        length("m", "moved"),
        Citation.GEOMETRY,
        "",
        x -> StrictMath.hypot(x[0], x[1]));
  }

  /** How far off the middle a load may be and press the whole of a round bottom: its width. */
  Formula kern() {
    return new Formula(
        "as-dug.kern",
        "c = B / 8",
        List.of(length("B", "bottom-width")),
        length("c", "kern"),
        KERN,
        "",
        x -> x[0] / 8);
  }

  /** Pressure at the edge that is pressed most: pressure in the middle, moved, width. */
  Formula edgePressure() {
    return new Formula(
        "as-dug.edge-pressure",
        "q = p · (1 + 8 · m / B)",
        List.of(
            new Symbol("p", "middle-pressure", pressure),
            length("m", "moved"),
            length("B", "bottom-width")),
        new Symbol("q", "edge-pressure", pressure),
        KERN,
        "m ≤ B / 8",
        x -> x[0] * (1 + 8 * x[1] / x[2]));
  }

  /** Over all of the steel: concrete it was made for, cover. */
  Formula cage() {
    return new Formula(
        "as-dug.cage",
        "O = a − 2 · k",
        List.of(length("a", "planned-across"), length("k", "planned-cover")),
        length("O", "cage-over-all"),
        Citation.GEOMETRY,
        "",
        x -> x[0] - 2 * x[1]);
  }

  /** Concrete left beside the steel on its mark: found width, steel over all, moved. */
  Formula cover() {
    return new Formula(
        "as-dug.cover",
        "k = (d − O) / 2 − m",
        List.of(length("d", "found-diameter"), length("O", "cage-over-all"), length("m", "moved")),
        length("k", "cover-left"),
        Citation.GEOMETRY,
        "",
        x -> (x[0] - x[1]) / 2 - x[2]);
  }

  /** Room beside a tube on its mark: found width, tube, moved. */
  Formula room() {
    return new Formula(
        "as-dug.room",
        "r = (d − t) / 2 − m",
        List.of(length("d", "found-diameter"), length("t", "tube-inside"), length("m", "moved")),
        length("r", "room-beside-tube"),
        Citation.GEOMETRY,
        "",
        x -> (x[0] - x[1]) / 2 - x[2]);
  }

  /** Soil left between two holes: from middle to middle, both widths. */
  Formula between() {
    return new Formula(
        "as-dug.between",
        "s = a − (d₁ + d₂) / 2",
        List.of(
            length("a", "middle-to-middle"),
            length("d₁", "found-diameter"),
            length("d₂", "neighbour-diameter")),
        length("s", "soil-between"),
        Citation.GEOMETRY,
        "",
        x -> x[0] - (x[1] + x[2]) / 2);
  }

  /** How far a hole's bottom stays above the line that spreads from a footing beside it. */
  Formula bearingLine() {
    return BearingPair.formula("as-dug.bearing-line", small);
  }

  /** A tape's reading between two places: how far east, how far north. */
  Formula tape() {
    return new Formula(
        "as-dug.tape",
        "t = √(e² + n²)",
        List.of(length("e", "tape-east"), length("n", "tape-north")),
        length("t", "tape-new"),
        Citation.GEOMETRY,
        "",
        x -> StrictMath.hypot(x[0], x[1]));
  }
}
