package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pegbook.job.Stock;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.measure.Pressure;
import pegbook.published.TimberSize;

/** What pieces are cut from: lengths sold, what they cost, offcuts in the shed. */
final class StockKeys {
  private static final Pattern PRICE = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,2})?) ([A-Z]{3})");
  private static final QuantityValue<Length> SOLD =
      Values.length("2 ft", "60 ft", "600 mm", "18 m");
  private static final WholeNumber COUNT = new WholeNumber(1, 1000);

  static final Key<String> SIZE = Key.required("size", FootingKeys.BAR, "\"#4\"");
  static final Key<Length> LENGTH = Key.required("length", SOLD, "\"20 ft\"");
  static final Key<Money> PRICE_OF_ONE =
      Key.free("price", new CheckedText<>(Complaint.PRICE_OF_BAR, StockKeys::price));
  static final Key<Integer> LIMIT = Key.free("count", COUNT);
  static final SectionValue<Stock.Bar> BAR =
      new SectionValue<>(
          List.of(SIZE, LENGTH, PRICE_OF_ONE, LIMIT),
          fields ->
              new Stock.Bar(
                  fields.get(SIZE),
                  fields.get(LENGTH),
                  fields.find(PRICE_OF_ONE),
                  fields.find(LIMIT)));

  static final Key<Length> LEFT_LENGTH =
      Key.required("length", Values.length("2 in", "60 ft", "50 mm", "18 m"), "\"7 ft\"");
  static final Key<Integer> LEFT_COUNT = Key.free("count", COUNT);
  static final SectionValue<Stock.Offcut> OFFCUT =
      new SectionValue<>(
          List.of(SIZE, LEFT_LENGTH, LEFT_COUNT),
          fields ->
              new Stock.Offcut(
                  fields.get(SIZE), fields.get(LEFT_LENGTH), fields.find(LEFT_COUNT).orElse(1)));

  static final Key<Length> USUAL =
      Key.orElse("length", SOLD, "\"20 ft\"", "\"6 m\"", COMMON_PRACTICE);
  static final Key<List<Stock.Bar>> BARS = Key.free("bars", new ListValue<>(BAR, 1, 60));
  static final Key<List<Stock.Offcut>> OFFCUTS =
      Key.free("offcuts", new ListValue<>(OFFCUT, 1, 60));
  static final Key<Length> KERF =
      Key.orElse(
          "kerf",
          Values.length("0 in", "1/2 in", "0 mm", "12 mm"),
          "\"1/8 in\"",
          "\"3 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> USEFUL =
      Key.orElse(
          "usefulOffcut",
          Values.length("0 in", "20 ft", "0 mm", "6 m"),
          "\"2 ft\"",
          "\"600 mm\"",
          COMMON_PRACTICE);
  static final Key<Pressure> YIELD =
      Key.orElse(
          "yield",
          Values.pressure("40000 psi", "100000 psi", "275 MPa", "690 MPa"),
          "\"60000 psi\"",
          "\"500 MPa\"",
          COMMON_PRACTICE);
  static final Key<Stock.Coating> COATING =
      Key.orElse("coating", ChoiceValue.of(Stock.Coating.class), "\"none\"", COMMON_PRACTICE);
  static final Key<String> TIMBER_SIZE =
      Key.required("size", new ChoiceValue<>(timberSizes()), "\"2x8\"");
  static final Key<Length> TIMBER_LENGTH = Key.required("length", SOLD, "\"12 ft\"");
  static final Key<List<Stock.Bar>> TIMBER =
      Key.free(
          "timber",
          new ListValue<>(
              new SectionValue<>(
                  List.of(TIMBER_SIZE, TIMBER_LENGTH, PRICE_OF_ONE, LIMIT),
                  fields ->
                      new Stock.Bar(
                          fields.get(TIMBER_SIZE),
                          fields.get(TIMBER_LENGTH),
                          fields.find(PRICE_OF_ONE),
                          fields.find(LIMIT))),
              1,
              60));
  static final SectionValue<Stock> STOCK =
      new SectionValue<>(
          List.of(USUAL, BARS, OFFCUTS, KERF, USEFUL, YIELD, COATING, TIMBER),
          (fields, report) -> pricesFit(fields, BARS, report) && pricesFit(fields, TIMBER, report),
          fields ->
              new Stock(
                  fields.get(USUAL),
                  fields.find(BARS).orElse(List.of()),
                  fields.find(OFFCUTS).orElse(List.of()),
                  fields.get(KERF),
                  fields.get(USEFUL),
                  fields.get(YIELD),
                  fields.get(COATING),
                  fields.find(TIMBER).orElse(List.of())));

  private StockKeys() {}

  private static Map<String, String> timberSizes() {
    Map<String, String> sizes = new LinkedHashMap<>();
    TimberSize.all().forEach(size -> sizes.put(size.size(), size.size()));
    return sizes;
  }

  private static Optional<Money> price(String text) {
    Matcher matcher = PRICE.matcher(text.strip());
    return matcher.matches()
        ? Optional.of(new Money(new BigDecimal(matcher.group(1)), matcher.group(2)))
        : Optional.empty();
  }

  /** Prices are compared: in one currency, and for every length of a size or for none of them. */
  private static boolean pricesFit(Fields fields, Key<List<Stock.Bar>> key, Report report) {
    List<Stock.Bar> bars = fields.find(key).orElse(List.of());
    Optional<String> currency =
        Stream.of(BARS, TIMBER)
            .flatMap(list -> fields.find(list).orElse(List.of()).stream())
            .flatMap(bar -> bar.price().stream())
            .map(Money::currency)
            .findFirst();
    Map<String, Boolean> priced = new LinkedHashMap<>();
    Set<String> seen = new LinkedHashSet<>();
    boolean fits = true;
    for (int i = 0; i < bars.size(); i++) {
      Stock.Bar bar = bars.get(i);
      Node node = fields.item(key, i);
      boolean isPriced = bar.price().isPresent();
      boolean asFirst = priced.computeIfAbsent(bar.size(), size -> isPriced) == isPriced;
      boolean sameMoney = bar.price().map(Money::currency).equals(currency) || !isPriced;
      boolean isNew = seen.add(bar.size() + " " + Math.round(bar.length().metres() * 1e6));
      if (!sameMoney) {
        report.complain(node, Complaint.TWO_CURRENCIES, Map.of("currency", currency.orElse("")));
      } else if (!asFirst) {
        report.complain(node, Complaint.PRICE_MISSING, Map.of("size", bar.size()));
      } else if (!isNew) {
        report.complain(node, Complaint.STOCK_TWICE, Map.of("size", bar.size()));
      }
      fits &= sameMoney && asFirst && isNew;
    }
    return fits;
  }
}
