package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Stock;

/**
 * Prices of what is sold by the length against all others: a total takes one currency. What differs
 * from most of the stock is told of there.
 */
final class PriceChecks {
  private PriceChecks() {}

  static void look(Report report) {
    Optional<Fields> prices = report.object(JobKeys.PRICES.name());
    Optional<Fields> stock = report.object(JobKeys.STOCK.name());
    Optional<String> currency = prices.flatMap(fields -> fields.find(PriceKeys.CURRENCY));
    if (stock.isEmpty() || currency.isEmpty()) {
      return;
    }
    for (Key<List<Stock.Bar>> key : StockKeys.SOLD_BY_LENGTH) {
      look(stock.get(), key, currency.get(), report);
    }
  }

  private static void look(Fields stock, Key<List<Stock.Bar>> key, String currency, Report report) {
    Optional<String> most = StockKeys.currency(stock);
    List<Stock.Bar> bars = stock.find(key).orElse(List.of());
    for (int i = 0; i < bars.size(); i++) {
      boolean isOther =
          bars.get(i)
              .price()
              .filter(price -> !price.currency().equals(currency))
              .filter(price -> Optional.of(price.currency()).equals(most))
              .isPresent();
      if (isOther) {
        report.complain(stock.item(key, i), Complaint.PRICE_CURRENCY, Map.of("currency", currency));
      }
    }
  }
}
