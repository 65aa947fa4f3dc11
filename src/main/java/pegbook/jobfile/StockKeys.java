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
import pegbook.job.Stock;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.measure.Pressure;
import pegbook.published.ConduitSize;
import pegbook.published.TimberSize;

/** What pieces are cut from: lengths sold, what they cost, offcuts in the shed. */
final class StockKeys {
  private static final Pattern PRICE = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,2})?) ([A-Z]{3})");
  private static final QuantityValue<Length> SOLD =
      Values.length("2 ft", "60 ft", "600 mm", "18 m");
  private static final WholeNumber COUNT = new WholeNumber(1, 1000, Complaint.STOCK_COUNT);
  private static final int MOST = 60;

  static final Key<String> SIZE = Key.required("size", FootingKeys.BAR, "\"#4\"");
  static final Key<Length> LENGTH = Key.required("length", SOLD, "\"20 ft\"");
  static final Key<Money> PRICE_OF_ONE =
      Key.free("price", new CheckedText<>(Complaint.PRICE_OF_BAR, StockKeys::price));
  static final Key<Integer> LIMIT = Key.free("count", COUNT);
  static final Key<List<Stock.Bar>> BARS = sold("bars", SIZE);
  static final Key<List<Stock.Bar>> TIMBER =
      sold("timber", Key.required("size", new ChoiceValue<>(timberSizes()), "\"2x8\""));
  static final Key<String> CONDUIT_SIZE =
      Key.required("size", new ChoiceValue<>(conduitSizes()), "\"PVC 1 in\"");
  static final Key<List<Stock.Bar>> CONDUIT = sold("conduit", CONDUIT_SIZE);
  static final Key<List<Stock.Bar>> BOARDS =
      Key.free(
          "boards",
          new ListValue<>(
              new SectionValue<>(
                  List.of(LENGTH, PRICE_OF_ONE, LIMIT), fields -> bar(Stock.BOARDS, fields)),
              1,
              MOST));

  /** What is sold by the length. */
  static final List<Key<List<Stock.Bar>>> SOLD_BY_LENGTH = List.of(BARS, TIMBER, CONDUIT, BOARDS);

  /** A list of what is sold of sizes. */
  private static Key<List<Stock.Bar>> sold(String name, Key<String> size) {
    return Key.free(
        name,
        new ListValue<>(
            new SectionValue<>(
                List.of(size, LENGTH, PRICE_OF_ONE, LIMIT),
                fields -> bar(fields.get(size), fields)),
            1,
            MOST));
  }

  private static Stock.Bar bar(String size, Fields fields) {
    return new Stock.Bar(size, fields.get(LENGTH), fields.find(PRICE_OF_ONE), fields.find(LIMIT));
  }

  static final Key<String> LEFT_SIZE =
      Key.required("size", new ChoiceValue<>(allSizes()), "\"#4\"");

  static final Key<Length> LEFT_LENGTH =
      Key.required("length", Values.length("2 in", "60 ft", "50 mm", "18 m"), "\"7 ft\"");
  static final Key<Integer> LEFT_COUNT = Key.free("count", COUNT);
  static final SectionValue<Stock.Offcut> OFFCUT =
      new SectionValue<>(
          List.of(LEFT_SIZE, LEFT_LENGTH, LEFT_COUNT),
          fields ->
              new Stock.Offcut(
                  fields.get(LEFT_SIZE),
                  fields.get(LEFT_LENGTH),
                  fields.find(LEFT_COUNT).orElse(1)));

  static final Key<Length> USUAL =
      Key.orElse("length", SOLD, "\"20 ft\"", "\"6 m\"", COMMON_PRACTICE);
  static final Key<List<Stock.Offcut>> OFFCUTS =
      Key.free("offcuts", new ListValue<>(OFFCUT, 1, MOST));
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
  static final SectionValue<Stock> STOCK =
      new SectionValue<>(
          List.of(USUAL, BARS, OFFCUTS, KERF, USEFUL, YIELD, COATING, TIMBER, CONDUIT, BOARDS),
          StockKeys::pricesFit,
          fields ->
              new Stock(
                  fields.get(USUAL),
                  fields.find(BARS).orElse(List.of()),
                  fields.find(OFFCUTS).orElse(List.of()),
                  fields.get(KERF),
                  fields.get(USEFUL),
                  fields.get(YIELD),
                  fields.get(COATING),
                  fields.find(TIMBER).orElse(List.of()),
                  fields.find(CONDUIT).orElse(List.of()),
                  fields.find(BOARDS).orElse(List.of())));

  private StockKeys() {}

  private static Map<String, String> timberSizes() {
    Map<String, String> sizes = new LinkedHashMap<>();
    TimberSize.all().forEach(size -> sizes.put(size.size(), size.size()));
    return sizes;
  }

  private static Map<String, String> conduitSizes() {
    Map<String, String> sizes = new LinkedHashMap<>();
    ConduitSize.all().forEach(size -> sizes.put(size.size(), size.size()));
    return sizes;
  }

  /** Whatever may lie in the shed. */
  private static Map<String, String> allSizes() {
    Map<String, String> sizes = new LinkedHashMap<>(FootingKeys.BAR.byWord());
    sizes.putAll(timberSizes());
    sizes.putAll(conduitSizes());
    sizes.put(Stock.BOARDS, Stock.BOARDS);
    return sizes;
  }

  private static Optional<Money> price(String text) {
    Matcher matcher = PRICE.matcher(text.strip());
    return matcher.matches()
        ? Optional.of(new Money(new BigDecimal(matcher.group(1)), matcher.group(2)))
        : Optional.empty();
  }

  /** The currency of most prices, the first of several: one slip is told once. */
  static Optional<String> currency(Fields fields) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    SOLD_BY_LENGTH.stream()
        .flatMap(list -> fields.find(list).orElse(List.of()).stream())
        .flatMap(bar -> bar.price().stream())
        .forEach(price -> counts.merge(price.currency(), 1, Integer::sum));
    return counts.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(most -> first(counts, most.getValue()));
  }

  private static String first(Map<String, Integer> counts, int most) {
    return counts.keySet().stream()
        .filter(currency -> counts.getOrDefault(currency, 0) == most)
        .findFirst()
        .orElseThrow();
  }

  private static boolean pricesFit(Fields fields, Report report) {
    boolean fits = true;
    for (Key<List<Stock.Bar>> key : SOLD_BY_LENGTH) {
      fits &= pricesFit(fields, key, report);
    }
    return fits;
  }

  /** Prices are compared: in one currency, and for every length of a size or for none of them. */
  private static boolean pricesFit(Fields fields, Key<List<Stock.Bar>> key, Report report) {
    List<Stock.Bar> bars = fields.find(key).orElse(List.of());
    Optional<String> currency = currency(fields);
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
