package pegbook.figures;

import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbook.published.Citation;

/**
 * A formula as data.
 *
 * <p>Its name in words stands in the text bundle under {@code formula.ID}.
 *
 * @param id name: the subject, a dot, lower case with hyphens, such as "dig-schedule.bank-volume"
 * @param expression as printed, in the symbols' letters, such as "V = π · d² / 4 · h / 1728"
 * @param inputs the symbols put in, in the order the function takes them
 * @param result the symbol it gives
 * @param source where it is from
 * @param valid where it holds, in symbols, such as "30° ≤ γ ≤ 150°"; empty: everywhere
 * @param function numbers in the inputs' units to the number in the result's unit
 */
public record Formula(
    String id,
    String expression,
    List<Symbol> inputs,
    Symbol result,
    Citation source,
    String valid,
    ToDoubleFunction<double[]> function) {
  public Formula {
    inputs = List.copyOf(inputs);
  }
}
