package pegbook.figures;

import pegbook.job.Stock;
import pegbook.published.ConduitSize;
import pegbook.published.TimberSize;

/** What pieces are cut from; the name of a size tells, as no two kinds share one. */
public enum StockKind {
  BAR,
  TIMBER,
  BOARD,
  CONDUIT;

  /** The kind of a size. */
  public static StockKind of(String size) {
    if (size.equals(Stock.BOARDS)) {
      return BOARD;
    }
    if (TimberSize.find(size).isPresent()) {
      return TIMBER;
    }
    return ConduitSize.find(size).isPresent() ? CONDUIT : BAR;
  }
}
