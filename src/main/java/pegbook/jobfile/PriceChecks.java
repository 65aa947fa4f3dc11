package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Stock;

/** Prices of bars and timber against all others: a total takes one currency. */
final class PriceChecks {
  private PriceChecks() {}

  static void look(Report report) {
    Optional<Fields> prices = report.object(JobKeys.PRICES.name());
    Optional<Fields> stock = report.object(JobKeys.STOCK.name());
    Optional<String> currency = prices.flatMap(fields -> fields.find(PriceKeys.CURRENCY));
    if (stock.isEmpty() || currency.isEmpty()) {
      return;
    }
    look(stock.get(), StockKeys.BARS, currency.get(), report);
    look(stock.get(), StockKeys.TIMBER, currency.get(), report);
  }

  private static void look(Fields stock, Key<List<Stock.Bar>> key, String currency, Report report) {
    List<Stock.Bar> bars = stock.find(key).orElse(List.of());
    for (int i = 0; i < bars.size(); i++) {
      if (bars.get(i).price().filter(price -> !price.currency().equals(currency)).isPresent()) {
        report.complain(stock.item(key, i), Complaint.PRICE_CURRENCY, Map.of("currency", currency));
      }
    }
  }
}
