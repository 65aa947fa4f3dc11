package pegbook.export;

import pegbook.calc.buyinglist.BuyingList;
import pegbook.calc.buyinglist.BuyingList.Group;
import pegbook.calc.buyinglist.BuyingList.Line;
import pegbook.measure.Money;

/** The figures of the buying list. */
final class BuyingResults {
  private BuyingResults() {}

  static void write(JsonFigures json, BuyingList list) {
    json.list("suppliers", list.groups(), BuyingResults::group)
        .quantity("loadKilograms", list.load())
        .text("currency", list.total().map(Money::currency))
        .text("total", list.total().map(BuyingResults::amount))
        .whole("linesWithoutPrice", list.withoutPrice());
  }

  private static void group(JsonFigures json, Group group) {
    json.text("letter", group.letter())
        .text("supplier", group.supplier().name())
        .list("lines", group.lines(), BuyingResults::line)
        .quantity("kilograms", group.mass());
    group.trips().ifPresent(trips -> json.whole("trips", trips));
    json.text("sum", group.sum().map(BuyingResults::amount))
        .whole("linesWithoutPrice", group.withoutPrice());
  }

  private static void line(JsonFigures json, Line line) {
    json.text("name", line.name())
        .text("need", line.need().id())
        .number("amount", line.need().amount())
        .number("order", line.need().order())
        .text("unit", line.need().unit().symbol())
        .quantity("kilograms", line.mass());
    line.by().ifPresent(by -> json.whole("neededOnDay", by.day()));
    json.text("each", line.each().map(BuyingResults::amount))
        .text("sum", line.sum().map(BuyingResults::amount));
  }

  /** Money is exact decimals; a text keeps them. */
  private static String amount(Money money) {
    return money.amount().toPlainString();
  }
}
