package pegbook.export;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import pegbook.calc.buyinglist.BuyingList.Group;
import pegbook.calc.buyinglist.BuyingList.Line;
import pegbook.measure.Mass;
import pegbook.measure.Money;
import pegbook.packet.Packet;
import pegbook.sheet.Purchase;
import pegbook.sheet.Writing;

/**
 * The buying list for a spreadsheet: {@code buying.csv} (RFC 4180, UTF-8), amounts in the unit that
 * the line names, masses in kilograms, an empty cell where there is no value.
 */
public final class BuyingCsv {
  private static final List<String> HEAD =
      List.of(
          "line",
          "supplier",
          "what",
          "needed",
          "order",
          "unit",
          "massKilograms",
          "neededOnDay",
          "neededOnDate",
          "currency",
          "each",
          "sum");

  private BuyingCsv() {}

  /** The list, a line for each thing, in the order of the sheet. */
  public static byte[] of(Packet packet, Writing writing) {
    StringBuilder lines = new StringBuilder(String.join(",", HEAD)).append("\r\n");
    for (Group group : packet.buyingList().groups()) {
      for (Line line : group.lines()) {
        lines.append(line(group, line, writing)).append("\r\n");
      }
    }
    return lines.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String line(Group group, Line line, Writing writing) {
    StringJoiner cells = new StringJoiner(",");
    cells.add(line.name());
    cells.add(group.supplier().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    cells.add(CsvCell.of(Purchase.of(line.need(), writing).what()));
    cells.add(Digits.of(line.need().amount()).toPlainString());
    cells.add(Digits.of(line.need().order()).toPlainString());
    cells.add(line.need().unit().symbol());
    cells.add(line.mass().map(BuyingCsv::kilograms).orElse(""));
    cells.add(line.by().map(by -> Integer.toString(by.day())).orElse(""));
    cells.add(line.by().flatMap(by -> by.date()).map(Object::toString).orElse(""));
    cells.add(line.each().map(Money::currency).orElse(""));
    cells.add(amount(line.each()));
    cells.add(amount(line.sum()));
    return cells.toString();
  }

  private static String kilograms(Mass mass) {
    return Digits.of(mass.kilograms()).toPlainString();
  }

  private static String amount(Optional<Money> money) {
    return money.map(some -> some.amount().toPlainString()).orElse("");
  }
}
