package pegbook.sheet;

import pegbook.figures.Need;
import pegbook.measure.Unit;

/**
 * A line of a list of things to buy.
 *
 * @param what in words
 * @param order how much, in the shop's unit
 */
public record Purchase(String what, String order) {
  /** A need in words. */
  static Purchase of(Need need, Writing writing) {
    Formats formats = writing.formats();
    return new Purchase(
        writing.texts().say("need." + need.id(), formats.arguments(need.arguments())),
        need.unit() == Unit.NONE
            ? formats.count(Math.round(need.order()))
            : formats.number(need.order(), isWhole(need.order()) ? 0 : 2)
                + " "
                + need.unit().symbol());
  }

  private static boolean isWhole(double number) {
    return Math.abs(number - Math.rint(number)) < 1e-6;
  }
}
