package pegbook.testing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Made-up stock; told by the job's number, so that no chance shifts. */
final class MadeStock {
  private final ObjectNode job;
  private final int number;
  private final boolean imperial;

  MadeStock(ObjectNode job, int number, boolean imperial) {
    this.job = job;
    this.number = number;
    this.imperial = imperial;
  }

  /** Two jobs in three list something. */
  void stock() {
    if (number % 3 == 0) {
      return;
    }
    ObjectNode stock = job.putObject("stock");
    List<String> sizes = imperial ? List.of("#4", "#3") : List.of("12 mm", "8 mm");
    if (number % 3 == 1) {
      ArrayNode bars = stock.putArray("bars");
      for (String size : sizes) {
        boolean priced = number % 2 == 0;
        bar(bars.addObject(), size, imperial ? "20 ft" : "6 m", priced ? "11.4" + number % 10 : "");
        bar(bars.addObject(), size, imperial ? "10 ft" : "3 m", priced ? "6.10" : "");
      }
      if (number % 4 == 1) {
        ((ObjectNode) bars.get(0)).put("count", 2);
      }
    } else {
      stock.put("length", imperial ? "40 ft" : "12 m");
      stock.put("kerf", imperial ? "1/16 in" : "0 mm");
      stock.put("usefulOffcut", imperial ? "3 ft 6 in" : "1 m");
    }
    if (number % 5 == 1) {
      stock.put("yield", imperial ? "80000 psi" : "420 MPa");
      stock.put("coating", number % 2 == 0 ? "epoxy" : "zinc");
    }
    if (number % 3 == 2 || number % 4 == 1) {
      pipesAndBoards(stock);
    }
    ArrayNode offcuts = stock.putArray("offcuts");
    if (number % 4 == 1) {
      offcuts.addObject().put("size", "boards").put("length", imperial ? "5 ft" : "1.5 m");
    }
    offcuts
        .addObject()
        .put("size", sizes.get(0))
        .put("length", imperial ? "7 ft 3 5/16 in" : "2.3 m")
        .put("count", 1 + number % 3);
  }

  /** Pipe and boards, in two lengths, one of them short or dear. */
  private void pipesAndBoards(ObjectNode stock) {
    ArrayNode conduit = stock.putArray("conduit");
    for (String size : imperial ? List.of("PVC 1/2 in", "PVC 1 in") : List.of("duct 50 mm")) {
      bar(conduit.addObject(), size, imperial ? "20 ft" : "6 m", number % 2 == 0 ? "14.20" : "");
      bar(conduit.addObject(), size, imperial ? "10 ft" : "3 m", number % 2 == 0 ? "5.80" : "");
    }
    ArrayNode boards = stock.putArray("boards");
    boards.addObject().put("length", imperial ? "8 ft" : "2.4 m");
    boards.addObject().put("length", imperial ? "10 ft" : "3 m").put("count", 4 + number % 7);
  }

  private void bar(ObjectNode bar, String size, String length, String price) {
    bar.put("size", size).put("length", length);
    if (!price.isEmpty()) {
      bar.put("price", price + " " + job.at("/prices/currency").asText("EUR"));
    }
  }
}
