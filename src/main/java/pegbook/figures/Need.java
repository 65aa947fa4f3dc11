package pegbook.figures;

import java.util.Map;
import java.util.Optional;
import pegbook.measure.Unit;

/**
 * Something to buy.
 *
 * <p>Its words stand in the text bundle under {@code need.ID}.
 *
 * @param id lower case, hyphens
 * @param arguments values for the words
 * @param amount how much, without any setting to a shop's unit
 * @param order how much to order, in whole shop units, set up
 * @param unit the shop's unit; {@link Unit#NONE} for pieces
 * @param mark the footing it is for, where it is for one
 */
public record Need(
    String id,
    Map<String, Argument> arguments,
    double amount,
    double order,
    Unit unit,
    Optional<String> mark) {
  public Need {
    arguments = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(arguments));
  }
}
