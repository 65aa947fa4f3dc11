package pegbook.calc.pierstiffness;

import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;

/**
 * The units of the subject's formulas, those that the packet prints, and the letters of lengths,
 * forces and masses that several formulas share.
 *
 * @param imperial true for feet and inches
 */
record PierUnits(boolean imperial) {
  static PierUnits of(UnitSystem units) {
    return new PierUnits(units == UnitSystem.IMPERIAL);
  }

  private Unit either(Unit ofImperial, Unit ofMetric) {
    return imperial ? ofImperial : ofMetric;
  }

  Unit small() {
    return either(Unit.INCH, Unit.MILLIMETRE);
  }

  Unit force() {
    return either(Unit.POUND_FORCE, Unit.NEWTON);
  }

  Unit mass() {
    return either(Unit.POUND, Unit.KILOGRAM);
  }

  Unit stress() {
    return either(Unit.PSI, Unit.MEGAPASCAL);
  }

  Unit spring() {
    return either(Unit.KIP_PER_INCH, Unit.KILONEWTON_PER_MILLIMETRE);
  }

  Unit turningSpring() {
    return either(Unit.KIP_FOOT, Unit.KILONEWTON_METRE);
  }

  /** A thousandth of the small unit: sways are that small. */
  Unit sway() {
    return either(Unit.MIL, Unit.MICROMETRE);
  }

  Unit inertia() {
    return either(Unit.POUND_SQUARE_FOOT, Unit.KILOGRAM_SQUARE_METRE);
  }

  Unit yielding() {
    return either(Unit.MIL_PER_KIP, Unit.MICROMETRE_PER_KILONEWTON);
  }

  Unit turning() {
    return either(Unit.MICRORADIAN_PER_KIP, Unit.MICRORADIAN_PER_KILONEWTON);
  }

  Unit turningByMoment() {
    return either(Unit.MICRORADIAN_PER_KIP_FOOT, Unit.MICRORADIAN_PER_KILONEWTON_METRE);
  }

  Symbol length(String letter, String id) {
    return new Symbol(letter, id, small());
  }

  Symbol stress(String letter, String id) {
    return new Symbol(letter, id, stress());
  }

  Symbol mass(String letter, String id) {
    return new Symbol(letter, id, mass());
  }

  Symbol sway(String letter, String id) {
    return new Symbol(letter, id, sway());
  }

  Symbol push() {
    return new Symbol("P", "push", force());
  }

  Symbol lever() {
    return length("L", "lever");
  }

  Symbol depth() {
    return length("h", "shaft-depth");
  }

  Symbol top() {
    return length("t", "pier-top");
  }

  Symbol column() {
    return length("d", "column-diameter");
  }

  Symbol base() {
    return length("D", "base-diameter");
  }

  Symbol radius() {
    return length("r", "base-radius");
  }

  Symbol soil() {
    return stress("G", "shear-modulus");
  }

  Symbol concrete() {
    return stress("E", "concrete-modulus");
  }

  static Symbol poisson() {
    return new Symbol("ν", "poisson", Unit.NONE);
  }

  static Symbol number(String letter, String id) {
    return new Symbol(letter, id, Unit.NONE);
  }
}
