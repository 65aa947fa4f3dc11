package pegbook.jobfile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pegbook.job.Prices;
import pegbook.job.Prices.FittingPrice;
import pegbook.job.Prices.Item;
import pegbook.job.Prices.TubePrice;
import pegbook.measure.Length;
import pegbook.measure.Money;

/** What things cost. */
final class PriceKeys {
  private static final Pattern PRICE =
      Pattern.compile("(\\d{1,9}(?:\\.\\d{1,4})?)(?: ([A-Z]{3}))?");

  /** A price as it is written: the currency may stand behind it. */
  record Written(BigDecimal amount, Optional<String> currency) {
    Money in(String known) {
      return new Money(amount, known);
    }

    boolean isOther(String known) {
      return currency.filter(code -> !code.equals(known)).isPresent();
    }
  }

  private record TubeWritten(Length inside, Written each) {}

  private static final CheckedText<Written> AMOUNT =
      new CheckedText<>(Complaint.PRICE, PriceKeys::written);

  static final Key<String> CURRENCY =
      Key.required(
          "currency", new CheckedText<>(Complaint.CURRENCY, PriceKeys::currency), "\"USD\"");
  static final Key<Written> EACH = Key.required("each", AMOUNT, "\"9.80\"");
  static final Key<List<TubeWritten>> TUBES =
      Key.free(
          "tubes",
          new ListValue<>(
              new SectionValue<>(
                  List.of(FootingKeys.INSIDE, EACH),
                  fields -> new TubeWritten(fields.get(FootingKeys.INSIDE), fields.get(EACH))),
              1,
              50));

  private record FittingWritten(String size, Optional<Written> bend, Optional<Written> coupling) {
    List<Written> prices() {
      return Stream.of(bend, coupling).flatMap(Optional::stream).toList();
    }
  }

  static final Key<Written> BEND = Key.free("bend", AMOUNT);
  static final Key<Written> COUPLING = Key.free("coupling", AMOUNT);
  static final Key<List<FittingWritten>> FITTINGS =
      Key.free(
          "fittings",
          new ListValue<>(
              new SectionValue<>(
                  List.of(StockKeys.CONDUIT_SIZE, BEND, COUPLING),
                  fields ->
                      new FittingWritten(
                          fields.get(StockKeys.CONDUIT_SIZE),
                          fields.find(BEND),
                          fields.find(COUPLING))),
              1,
              20));
  private static final SortedMap<Item, Key<Written>> ITEMS = items();

  static final SectionValue<Prices> PRICES =
      new SectionValue<>(all(), PriceKeys::fits, PriceKeys::prices);

  private PriceKeys() {}

  private static SortedMap<Item, Key<Written>> items() {
    SortedMap<Item, Key<Written>> keys = new TreeMap<>();
    for (Item item : Item.values()) {
      keys.put(item, Key.free(name(item), AMOUNT));
    }
    return keys;
  }

  /** A name of a constant as a key: GRAVEL_BAG is "gravelBag". */
  private static String name(Item item) {
    String[] words = item.name().toLowerCase(Locale.ROOT).split("_", -1);
    StringBuilder name = new StringBuilder(words[0]);
    for (int i = 1; i < words.length; i++) {
      name.append(words[i].substring(0, 1).toUpperCase(Locale.ROOT)).append(words[i].substring(1));
    }
    return name.toString();
  }

  private static List<Key<?>> all() {
    List<Key<?>> all = new ArrayList<>(List.of(CURRENCY));
    all.addAll(ITEMS.values());
    all.add(TUBES);
    all.add(FITTINGS);
    return List.copyOf(all);
  }

  private static Optional<Written> written(String text) {
    Matcher matcher = PRICE.matcher(text.strip());
    return matcher.matches() && new BigDecimal(matcher.group(1)).signum() > 0
        ? Optional.of(
            new Written(new BigDecimal(matcher.group(1)), Optional.ofNullable(matcher.group(2))))
        : Optional.empty();
  }

  private static Optional<String> currency(String text) {
    return Currency.getAvailableCurrencies().stream()
        .map(Currency::getCurrencyCode)
        .filter(text::equals)
        .findFirst();
  }

  /** One currency in all prices, one price for each size. */
  private static boolean fits(Fields fields, Report report) {
    Optional<String> currency = fields.find(CURRENCY);
    boolean fits = true;
    for (Key<Written> key : ITEMS.values()) {
      fits &= isIn(currency, fields.find(key), fields.node(key), report);
    }
    List<Long> tubes = new ArrayList<>();
    for (TubeWritten tube : fields.find(TUBES).orElse(List.of())) {
      Node node = fields.item(TUBES, tubes.size());
      fits &= isIn(currency, Optional.of(tube.each()), node, report);
      fits &= isNew(tubes, micrometres(tube.inside()), node, report);
    }
    List<String> sizes = new ArrayList<>();
    for (FittingWritten fitting : fields.find(FITTINGS).orElse(List.of())) {
      Node node = fields.item(FITTINGS, sizes.size());
      for (Written price : fitting.prices()) {
        fits &= isIn(currency, Optional.of(price), node, report);
      }
      fits &= isNew(sizes, fitting.size(), node, report);
    }
    return fits;
  }

  /** A foot and twelve inches are one size. */
  private static long micrometres(Length length) {
    return Math.round(length.metres() * 1e6);
  }

  private static boolean isIn(
      Optional<String> currency, Optional<Written> price, Node node, Report report) {
    boolean other =
        Stream.of(price)
            .flatMap(Optional::stream)
            .anyMatch(written -> currency.filter(written::isOther).isPresent());
    if (other) {
      report.complain(node, Complaint.PRICE_CURRENCY, Map.of("currency", currency.orElseThrow()));
    }
    return !other;
  }

  private static <T> boolean isNew(List<T> seen, T size, Node node, Report report) {
    boolean isNew = !seen.contains(size);
    seen.add(size);
    if (!isNew) {
      report.complain(node, Complaint.PRICE_TWICE, Map.of());
    }
    return isNew;
  }

  private static Prices prices(Fields fields) {
    String currency = fields.get(CURRENCY);
    SortedMap<Item, Money> items = new TreeMap<>();
    ITEMS.forEach(
        (item, key) ->
            fields.find(key).ifPresent(written -> items.put(item, written.in(currency))));
    return new Prices(
        currency,
        items,
        fields.find(TUBES).orElse(List.of()).stream()
            .map(tube -> new TubePrice(tube.inside(), tube.each().in(currency)))
            .toList(),
        fields.find(FITTINGS).orElse(List.of()).stream()
            .map(
                fitting ->
                    new FittingPrice(
                        fitting.size(),
                        fitting.bend().map(price -> price.in(currency)),
                        fitting.coupling().map(price -> price.in(currency))))
            .toList());
  }
}
