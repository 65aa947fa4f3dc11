package pegbook.calc.floorframe;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** What timber bears: a published value times its factors, all printed, one where none counts. */
final class StrengthFormulas {
  static final Citation VALUES = new Citation("nds", "Supplement, Tables 4A and 4B");

  private final FloorFrameFormulas of;

  StrengthFormulas(UnitSystem units) {
    of = new FloorFrameFormulas(units);
  }

  private Formula strength(
      String id, String expression, List<Symbol> inputs, String result, Citation source) {
    return new Formula(
        "floor-frame." + id,
        expression,
        inputs,
        of.stress(expression.substring(0, expression.indexOf(' ')), result),
        source,
        "",
        x -> {
          double product = 1;
          for (double factor : x) {
            product *= factor;
          }
          return product;
        });
  }

  /** Bending: value, size, wet, shared, incised. */
  Formula bending() {
    return strength(
        "bending",
        "F = f · CF · CM · Cr · Ci",
        List.of(
            of.stress("f", "table-bending"),
            FloorFrameFormulas.number("CF", "size-factor"),
            FloorFrameFormulas.number("CM", "wet-factor"),
            FloorFrameFormulas.number("Cr", "shared-factor"),
            FloorFrameFormulas.number("Ci", "incised-factor")),
        "allowed-bending",
        FloorFrameFormulas.NDS_FACTORS);
  }

  /** Shear: value, wet, incised. */
  Formula shear() {
    return strength(
        "shear",
        "Fv = f · CM · Ci",
        List.of(
            of.stress("f", "table-shear"),
            FloorFrameFormulas.number("CM", "wet-factor"),
            FloorFrameFormulas.number("Ci", "incised-factor")),
        "allowed-shear",
        FloorFrameFormulas.NDS_FACTORS);
  }

  /** Bearing across the grain: value, wet. */
  Formula bearing() {
    return strength(
        "bearing",
        "Fc = f · CM",
        List.of(of.stress("f", "table-bearing"), FloorFrameFormulas.number("CM", "wet-factor")),
        "allowed-bearing",
        FloorFrameFormulas.NDS_FACTORS);
  }

  /** Compression along the grain, of a short post: value, wet. Cuts count on planks alone. */
  Formula compression() {
    return strength(
        "compression",
        "Fp = f · CM",
        List.of(of.stress("f", "table-compression"), FloorFrameFormulas.number("CM", "wet-factor")),
        "allowed-compression",
        new Citation("nds-memory", "Supplement Table 4D"));
  }

  /** Stiffness: value, wet, incised. */
  Formula stiffness() {
    return strength(
        "stiffness",
        "E = e · CM · Ci",
        List.of(
            of.stress("e", "table-stiffness"),
            FloorFrameFormulas.number("CM", "wet-factor"),
            FloorFrameFormulas.number("Ci", "incised-factor")),
        "counted-stiffness",
        FloorFrameFormulas.NDS_FACTORS);
  }
}
