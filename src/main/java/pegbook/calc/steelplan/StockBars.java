package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pegbook.calc.steelplan.SteelPlan.BarLine;
import pegbook.measure.Length;

/**
 * How many bars of a stock length give the pieces: the longest pieces first, each from the first
 * bar that still holds it. It is enough, not always the fewest. A bar cutter loses nothing; nor
 * does this.
 */
final class StockBars {
  private StockBars() {}

  /**
   * Pieces longer than the stock take as many whole bars as they span, lapped; see the findings.
   */
  static int count(List<BarLine> lines, Length stock) {
    List<Double> left = new ArrayList<>();
    int whole = 0;
    for (BarLine line : longestFirst(lines)) {
      for (int i = 0; i < line.count(); i++) {
        double cut = line.cut().metres();
        while (cut > stock.metres() + TIE_METRES) {
          whole++;
          cut -= stock.metres();
        }
        place(cut, left, stock.metres());
      }
    }
    return whole + left.size();
  }

  private static final double TIE_METRES = 1e-6;

  private static List<BarLine> longestFirst(List<BarLine> lines) {
    return lines.stream().sorted(Comparator.comparing(BarLine::cut).reversed()).toList();
  }

  private static void place(double cutMetres, List<Double> leftMetres, double stockMetres) {
    for (int i = 0; i < leftMetres.size(); i++) {
      if (leftMetres.get(i) + TIE_METRES >= cutMetres) {
        leftMetres.set(i, leftMetres.get(i) - cutMetres);
        return;
      }
    }
    leftMetres.add(stockMetres - cutMetres);
  }
}
