package pegbook.sheet;

import java.util.List;
import pegbook.figures.Need;
import pegbook.measure.Unit;

/**
 * A line of a list of things to buy.
 *
 * @param what in words
 * @param order how much, in the shop's unit
 */
public record Purchase(String what, String order) {
  /** All needs of a sheet's subject, in their order. */
  static List<Purchase> of(List<Need> needs, Writing writing) {
    return needs.stream().map(need -> of(need, writing)).toList();
  }

  /** A need in words. */
  public static Purchase of(Need need, Writing writing) {
    Formats formats = writing.formats();
    return new Purchase(
        writing.texts().say("need." + need.id(), formats.arguments(need.arguments())),
        amount(need.order(), need.unit(), writing));
  }

  /** An amount in a shop's unit: whole where it is, else with two decimals. */
  static String amount(double amount, Unit unit, Writing writing) {
    String number = writing.formats().number(amount, isWhole(amount) ? 0 : 2);
    return unit == Unit.NONE ? number : number + "\u00a0" + unit.symbol();
  }

  private static boolean isWhole(double number) {
    return Math.abs(number - Math.rint(number)) < 1e-6;
  }
}
