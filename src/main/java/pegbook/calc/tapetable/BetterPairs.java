package pegbook.calc.tapetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.tapetable.TapeTable.BetterPair;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Crossings;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;

/** Finds, for marks that cross too weakly from the baseline, other marks to tape them from. */
final class BetterPairs {
  private final Placement placement;
  private final Taping taping;
  private final Crossings crossings;
  private final List<PlacedMark> firm;

  /** Marks that may serve: those of the baseline and those that cross well from it. */
  BetterPairs(Placement placement, Taping taping, Crossings crossings, List<PlacedMark> firm) {
    this.placement = placement;
    this.taping = taping;
    this.crossings = crossings;
    this.firm = List.copyOf(firm);
  }

  /**
   * The strongest pair for each weak mark; none where no pair of firm marks crosses well enough.
   */
  List<BetterPair> of(List<Row> rows) {
    List<BetterPair> pairs = new ArrayList<>();
    rows.stream()
        .filter(Row::weak)
        .forEach(row -> strongest(placement.mark(row.mark())).ifPresent(pairs::add));
    return pairs;
  }

  private Optional<BetterPair> strongest(PlacedMark mark) {
    Optional<Segment> best = Optional.empty();
    List<PlacedMark> ends = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < firm.size(); i++) {
      for (int j = i + 1; j < firm.size(); j++) {
        Segment line = new Segment(firm.get(i).at(), firm.get(j).at());
        double weakness = crossings.weakness(line.from(), line.to(), mark.at());
        if (!crossings.isOnLine(line, mark.at()) && weakness < least - 1e-9) {
          least = weakness;
          best = Optional.of(line);
          ends = List.of(firm.get(i), firm.get(j));
        }
      }
    }
    if (best.isEmpty() || Crossings.isWeak(least)) {
      return Optional.empty();
    }
    return Optional.of(pair(mark, ends.get(0), ends.get(1), best.get()));
  }

  private BetterPair pair(PlacedMark mark, PlacedMark first, PlacedMark second, Segment line) {
    return new BetterPair(
        mark.id(),
        first.id(),
        second.id(),
        taping.set(taping.distance(first, mark)),
        taping.set(taping.distance(second, mark)),
        line.offsetMetres(mark.at()) > 0,
        Swing.angleAt(mark.at(), first.at(), second.at()));
  }
}
