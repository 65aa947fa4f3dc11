package pegbook.calc.concreteplan;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.ConcreteBag;

/**
 * The formulas of the subject, in the units that the packet prints.
 *
 * <p>Cylinders are drawn sizes. A hole dug by hand takes more than its drawing (over-break), but
 * only where concrete or gravel touches the soil; what is spilt is a part of all that is mixed.
 */
final class ConcretePlanFormulas {
  /** Loose over bank and compacted over bank volume of sand and gravel, Example 9-3. */
  private static final double SWELL = 1.15;

  private static final double SHRINK = 0.95;
  private static final Citation GRAVEL =
      new Citation("estimating-construction", "Example 9-3, sand and gravel");

  /** Laps and edges folded in: common practice. */
  private static final double FLEECE = 1.3;

  private final boolean imperial;
  private final Unit small;
  private final Unit volume;
  private final Unit mass;

  /**
   * Small units in a unit of volume: cubic inches in a cubic foot, cubic millimetres in a metre.
   */
  private final double smallInVolume;

  private final String smallInVolumeText;

  ConcretePlanFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    volume = imperial ? Unit.CUBIC_FOOT : Unit.CUBIC_METRE;
    mass = imperial ? Unit.POUND : Unit.KILOGRAM;
    smallInVolume = imperial ? 1728 : 1e9;
    smallInVolumeText = imperial ? "1728" : "10⁹";
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  private Symbol volume(String letter, String id) {
    return new Symbol(letter, id, volume);
  }

  private static Symbol percent(String letter, String id) {
    return new Symbol(letter, id, Unit.PERCENT);
  }

  private static Symbol number(String letter, String id) {
    return new Symbol(letter, id, Unit.NONE);
  }

  private Symbol diameter() {
    return length("d", "concrete-diameter");
  }

  private Symbol hole() {
    return length("D", "filled-hole-diameter");
  }

  /** Concrete below the ground: diameter, depth. */
  Formula below() {
    return new Formula(
        "concrete-plan.below",
        "Vb = π · d² / 4 · h / " + smallInVolumeText,
        List.of(diameter(), length("h", "depth-of-concrete")),
        volume("Vb", "concrete-below"),
        Citation.GEOMETRY,
        "",
        x -> Math.PI * x[0] * x[0] / 4 * x[1] / smallInVolume);
  }

  /** Concrete above the ground: diameter, height. */
  Formula above() {
    return new Formula(
        "concrete-plan.above",
        "Va = π · d² / 4 · t / " + smallInVolumeText,
        List.of(diameter(), length("t", "height-of-concrete")),
        volume("Va", "concrete-above"),
        Citation.GEOMETRY,
        "",
        x -> Math.PI * x[0] * x[0] / 4 * x[1] / smallInVolume);
  }

  /** Concrete above the ground in a square box: its side, height. */
  Formula boxed() {
    return new Formula(
        "concrete-plan.boxed",
        "Va = d² · t / " + smallInVolumeText,
        List.of(length("d", "box-side"), length("t", "height-of-concrete")),
        volume("Va", "concrete-above"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[0] * x[1] / smallInVolume);
  }

  /** Area of the concrete that stands on the bottom: its diameter. */
  Formula bearing() {
    return new Formula(
        "concrete-plan.bearing",
        "A = π · d² / 4 / " + (imperial ? "144" : "10⁶"),
        List.of(length("d", "standing-diameter")),
        new Symbol("A", "bearing-area", imperial ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE),
        Citation.GEOMETRY,
        "",
        x -> Math.PI * x[0] * x[0] / 4 / (imperial ? 144 : 1e6));
  }

  /** Concrete to mix: below against earth, the rest as drawn, over-break, waste. */
  Formula poured() {
    return new Formula(
        "concrete-plan.poured",
        "V = (Ve · (1 + k / 100) + Vf) · (1 + w / 100)",
        List.of(
            volume("Ve", "concrete-against-earth"),
            percent("k", "over-break"),
            volume("Vf", "concrete-in-forms"),
            percent("w", "waste")),
        volume("V", "concrete-poured"),
        Citation.COMMON_PRACTICE,
        "",
        x -> (x[0] * (1 + x[1] / 100) + x[2]) * (1 + x[3] / 100));
  }

  /** Soil tamped in round a tube: hole, over-break, tube, depth. */
  Formula backfill() {
    return new Formula(
        "concrete-plan.backfill",
        "Vr = π / 4 · (D² · (1 + k / 100) − d²) · h / " + smallInVolumeText,
        List.of(hole(), percent("k", "over-break"), diameter(), length("h", "depth-of-concrete")),
        volume("Vr", "backfill-volume"),
        Citation.GEOMETRY,
        "",
        x -> Math.PI / 4 * (x[0] * x[0] * (1 + x[1] / 100) - x[2] * x[2]) * x[3] / smallInVolume);
  }

  /** Loose gravel filled in round a tube and tamped: hole, over-break, tube, depth. */
  Formula sideGravel() {
    return new Formula(
        "concrete-plan.side-gravel",
        "Vs = π / 4 · (D² · (1 + k / 100) − d²) · h / " + smallInVolumeText + " · 1.15 / 0.95",
        List.of(hole(), percent("k", "over-break"), diameter(), length("h", "depth-of-concrete")),
        volume("Vs", "side-gravel-loose"),
        GRAVEL,
        "",
        x ->
            Math.PI
                / 4
                * (x[0] * x[0] * (1 + x[1] / 100) - x[2] * x[2])
                * x[3]
                / smallInVolume
                * SWELL
                / SHRINK);
  }

  /** Fleece that wraps that gravel: holes, their diameter, depth. */
  Formula fleece() {
    return new Formula(
        "concrete-plan.fleece",
        "F = n · π · D · h · 1.3 / " + (imperial ? "144" : "10⁶"),
        List.of(number("n", "holes-in-gravel"), hole(), length("h", "depth-of-concrete")),
        new Symbol("F", "fleece", imperial ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * Math.PI * x[1] * x[2] * FLEECE / (imperial ? 144 : 1e6));
  }

  /** Loose gravel for a layer tamped to its thickness: hole, thickness, over-break. */
  Formula gravel() {
    return new Formula(
        "concrete-plan.gravel",
        "Vg = π · D² / 4 · g / " + smallInVolumeText + " · (1 + k / 100) · 1.15 / 0.95",
        List.of(hole(), length("g", "tamped-gravel"), percent("k", "over-break")),
        volume("Vg", "gravel-loose"),
        GRAVEL,
        "",
        x -> Math.PI * x[0] * x[0] / 4 * x[1] / smallInVolume * (1 + x[2] / 100) * SWELL / SHRINK);
  }

  /** Bags of gravel, before they are set up to whole bags: loose gravel, a bag's volume. */
  Formula gravelBags() {
    return new Formula(
        "concrete-plan.gravel-bags",
        imperial ? "n = V / b" : "n = 1000 · V / b",
        List.of(
            volume("V", "gravel-loose-in-all"),
            new Symbol("b", "gravel-bag", imperial ? Unit.CUBIC_FOOT : Unit.LITRE)),
        number("n", "gravel-bags"),
        Citation.COMMON_PRACTICE,
        imperial ? "V ≤ 6.75 ft³" : "V ≤ 0.25 m³",
        x -> x[0] / x[1] * (imperial ? 1 : 1000));
  }

  /** Gravel as a truck or a trailer brings it, before it is set up to its step: volume. */
  Formula gravelHeap() {
    return new Formula(
        "concrete-plan.gravel-heap",
        imperial ? "Vy = V / 27" : "Vy = V",
        List.of(volume("V", "gravel-loose-in-all")),
        new Symbol("Vy", "gravel-ordered", imperial ? Unit.CUBIC_YARD : Unit.CUBIC_METRE),
        Citation.GEOMETRY,
        "",
        x -> x[0] / (imperial ? 27 : 1));
  }

  /** Form tubes as they are sold, before they are set up: pieces, length of one, length sold. */
  Formula tubes() {
    return new Formula(
        "concrete-plan.tubes",
        "t = n / ⌊s / l⌋; where l > s: t = n · ⌈l / s⌉",
        List.of(
            number("n", "tube-pieces"), length("l", "tube-length"), length("s", "tube-as-sold")),
        number("t", "tubes"),
        Citation.COMMON_PRACTICE,
        "",
        x -> {
          long pieces = Rounding.DOWN.steps(x[2], x[1]);
          return pieces > 0 ? x[0] / pieces : x[0] * Rounding.UP.steps(x[1], x[2]);
        });
  }

  /** Concrete that a bag makes: its mass. */
  Formula bagYield() {
    double rate =
        imperial
            ? ConcreteBag.CUBIC_FEET_PER_POUND
            : Unit.CUBIC_FOOT.toSi(ConcreteBag.CUBIC_FEET_PER_POUND) / Unit.POUND.toSi(1) * 1000;
    return new Formula(
        "concrete-plan.bag-yield",
        imperial ? "y = 0.0075 · m" : "y = 0.4682 · m",
        List.of(new Symbol("m", "bag-mass", mass)),
        new Symbol("y", "bag-yield", imperial ? Unit.CUBIC_FOOT : Unit.LITRE),
        ConcreteBag.SOURCE,
        imperial ? "40 lb ≤ m ≤ 90 lb" : "18 kg ≤ m ≤ 41 kg",
        x -> rate * x[0]);
  }

  /** Bags for a hole, before they are set up to whole bags: concrete to mix, yield. */
  Formula bags() {
    return new Formula(
        "concrete-plan.bags",
        imperial ? "n = V / y" : "n = 1000 · V / y",
        List.of(
            volume("V", "concrete-poured"),
            new Symbol("y", "bag-yield", imperial ? Unit.CUBIC_FOOT : Unit.LITRE)),
        number("n", "bags"),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] / x[1] * (imperial ? 1 : 1000));
  }

  /** Batches for a hole, before they are set up: bags, bags in a batch. */
  Formula batches() {
    return new Formula(
        "concrete-plan.batches",
        "c = n / e",
        List.of(number("n", "bags-of-hole"), number("e", "bags-in-batch")),
        number("c", "batches"),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] / x[1]);
  }

  /** Loads of the mixer for a hole, before they are set up: concrete, concrete of a load. */
  Formula loads() {
    return new Formula(
        "concrete-plan.loads",
        imperial ? "c = V / B" : "c = 1000 · V / B",
        List.of(
            volume("V", "concrete-poured"),
            new Symbol("B", "batch-volume", imperial ? Unit.CUBIC_FOOT : Unit.LITRE)),
        number("c", "batches"),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] / x[1] * (imperial ? 1 : 1000));
  }

  /** Whole bags that are mixed at a time, one at least: concrete of a batch, yield of a bag. */
  Formula bagsInBatch() {
    return new Formula(
        "concrete-plan.bags-in-batch",
        "e = ⌊B / y⌋, one at least",
        List.of(
            new Symbol("B", "batch-volume", imperial ? Unit.CUBIC_FOOT : Unit.LITRE),
            new Symbol("y", "bag-yield", imperial ? Unit.CUBIC_FOOT : Unit.LITRE)),
        number("e", "bags-in-batch"),
        Citation.COMMON_PRACTICE,
        "",
        x -> Math.max(1, Rounding.DOWN.steps(x[0], x[1])));
  }

  /** Mass of concrete as drawn: volume. */
  Formula mass() {
    return new Formula(
        "concrete-plan.mass",
        imperial ? "m = V · 150" : "m = V · 2400",
        List.of(volume("V", "concrete-drawn")),
        new Symbol("m", "concrete-mass", mass),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * (imperial ? 150 : 2400));
  }

  /** Time that a pour takes at best or at worst: volume, minutes for a unit of volume, gangs. */
  Formula pourTime(boolean best) {
    String per = imperial ? "minutes-per-cubic-foot" : "minutes-per-cubic-metre";
    return new Formula(
        best ? "concrete-plan.pour-least" : "concrete-plan.pour-most",
        "t = V · r / p",
        List.of(volume("V", "concrete-poured"), number("r", per), number("p", "pairs-of-people")),
        new Symbol("t", "pour-time", Unit.MINUTE),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * x[1] / x[2]);
  }

  /** What a truck brings for the whole job, before it is set up to its step: volume. */
  Formula readyMix() {
    return new Formula(
        "concrete-plan.ready-mix",
        imperial ? "Vt = V / 27" : "Vt = V",
        List.of(volume("V", "concrete-poured-in-all")),
        new Symbol("Vt", "ready-mix", imperial ? Unit.CUBIC_YARD : Unit.CUBIC_METRE),
        Citation.GEOMETRY,
        "",
        x -> x[0] / (imperial ? 27 : 1));
  }
}
