package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Stock;

/** Prices of bars against all others: a total takes one currency. */
final class PriceChecks {
  private PriceChecks() {}

  static void look(Report report) {
    Optional<Fields> prices = report.object(JobKeys.PRICES.name());
    Optional<Fields> stock = report.object(JobKeys.STOCK.name());
    Optional<String> currency = prices.flatMap(fields -> fields.find(PriceKeys.CURRENCY));
    if (stock.isEmpty() || currency.isEmpty()) {
      return;
    }
    List<Stock.Bar> bars = stock.get().find(StockKeys.BARS).orElse(List.of());
    for (int i = 0; i < bars.size(); i++) {
      if (bars.get(i)
          .price()
          .filter(price -> !price.currency().equals(currency.get()))
          .isPresent()) {
        report.complain(
            stock.get().item(StockKeys.BARS, i),
            Complaint.PRICE_CURRENCY,
            Map.of("currency", currency.get()));
      }
    }
  }
}
