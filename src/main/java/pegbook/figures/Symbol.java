package pegbook.figures;

import pegbook.measure.Unit;

/**
 * A letter of a formula.
 *
 * <p>Its meaning in words stands in the text bundle under {@code symbol.ID}.
 *
 * @param letter as printed, such as "d"
 * @param id name of its meaning: lower case, hyphens
 * @param unit the unit its number is put in with
 */
public record Symbol(String letter, String id, Unit unit) {}
