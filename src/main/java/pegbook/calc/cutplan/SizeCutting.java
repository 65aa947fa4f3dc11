package pegbook.calc.cutplan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pegbook.calc.cutplan.CutPlan.CutBar;
import pegbook.calc.cutplan.CutPlan.Order;
import pegbook.calc.cutplan.CutPlan.Proof;
import pegbook.calc.cutplan.CutPlan.Run;
import pegbook.calc.cutplan.CutPlan.SizePlan;
import pegbook.calc.cutplan.StockChoice.Row;
import pegbook.cutting.CuttingPlan;
import pegbook.cutting.CuttingPlan.AlikeBars;
import pegbook.cutting.CuttingProblem;
import pegbook.cutting.CuttingSolver;
import pegbook.figures.CutPiece;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.measure.Ratio;

/** Cuts the pieces of one size. */
final class SizeCutting {
  private final Job job;
  private final StockChoice stock;
  private final String size;
  private final List<CutPiece> pieces;
  private final List<CutPiece> tooLong;
  private final CutPlanFormulas formulas;
  private final List<Working> workings = new ArrayList<>();

  /** Pieces of each length, longest first. */
  private final Map<Long, Deque<CutPiece>> byLength = new TreeMap<>(Collections.reverseOrder());

  SizeCutting(Job job, StockChoice stock, List<CutPiece> all) {
    this.job = job;
    this.stock = stock;
    this.size = all.get(0).size();
    this.formulas = new CutPlanFormulas(job.heading().units());
    long longest = CutUnits.of(stock.longest());
    this.pieces = all.stream().filter(p -> CutUnits.of(p.length()) <= longest).toList();
    this.tooLong = all.stream().filter(p -> CutUnits.of(p.length()) > longest).toList();
    for (CutPiece piece : pieces) {
      Deque<CutPiece> alike =
          byLength.computeIfAbsent(CutUnits.of(piece.length()), length -> new ArrayDeque<>());
      alike.addAll(Collections.nCopies(piece.count(), piece));
    }
  }

  /** The steps, once {@link #plan()} was asked. */
  List<Working> workings() {
    return List.copyOf(workings);
  }

  SizePlan plan() {
    if (pieces.isEmpty()) {
      return new SizePlan(
          size,
          pieces,
          List.of(),
          List.of(),
          new Proof(true, true, Ratio.ofPercent(0)),
          tooLong,
          stock.usual());
    }
    int count = pieces.stream().mapToInt(CutPiece::count).sum();
    List<CuttingProblem.Piece> kinds =
        byLength.entrySet().stream()
            .map(kind -> new CuttingProblem.Piece(kind.getKey(), kind.getValue().size()))
            .toList();
    CuttingPlan plan =
        CuttingSolver.solve(
            new CuttingProblem(kinds, stock.forSearch(count))
                .withKerf(CutUnits.of(job.stock().kerf())));
    List<CutBar> bars = bars(plan);
    return new SizePlan(
        size, pieces, orders(plan, bars), bars, proof(plan), tooLong, stock.usual());
  }

  private static Proof proof(CuttingPlan plan) {
    double gap = plan.cost() == 0 ? 0 : (double) (plan.cost() - plan.leastCost()) / plan.cost();
    return new Proof(plan.isCheapest(), plan.isBest(), new Ratio(gap));
  }

  /** A bar before it has a name: which stock, which pieces. */
  private record Filled(int stock, List<Run> runs) {
    Filled {
      runs = List.copyOf(runs);
    }
  }

  private List<CutBar> bars(CuttingPlan plan) {
    List<Deque<CutPiece>> queues = List.copyOf(byLength.values());
    Map<Filled, Integer> filled = new LinkedHashMap<>();
    for (AlikeBars alike : plan.bars()) {
      for (int bar = 0; bar < alike.times(); bar++) {
        Map<CutPiece, Integer> runs = new LinkedHashMap<>();
        for (int kind = 0; kind < queues.size(); kind++) {
          for (int i = 0; i < alike.counts().get(kind); i++) {
            runs.merge(queues.get(kind).remove(), 1, Integer::sum);
          }
        }
        filled.merge(new Filled(alike.stock(), runs(runs)), 1, Integer::sum);
      }
    }
    List<CutBar> bars = new ArrayList<>();
    filled.forEach((bar, times) -> bars.add(cutBar(bar, times, bars.size() + 1)));
    return bars;
  }

  private static List<Run> runs(Map<CutPiece, Integer> counts) {
    List<Run> runs = new ArrayList<>();
    counts.forEach((piece, count) -> runs.add(new Run(piece, count)));
    return runs;
  }

  private CutBar cutBar(Filled bar, int times, int number) {
    Row row = stock.rows().get(bar.stock());
    String name = size + " / " + number;
    Working left =
        Working.of(
            formulas.left(),
            name,
            row.length(),
            together(bar.runs()),
            new Count(bar.runs().stream().mapToInt(Run::count).sum()),
            job.stock().kerf());
    workings.add(left);
    Length over = left.asLength();
    boolean isKept = !over.isLessThan(job.stock().usefulOffcut()) && over.isMoreThan(Length.ZERO);
    return new CutBar(name, row.length(), row.isFromShed(), times, bar.runs(), over, isKept);
  }

  private static Length together(List<Run> runs) {
    return runs.stream()
        .map(run -> run.piece().length().times(run.count()))
        .reduce(Length.ZERO, Length::plus);
  }

  private List<Order> orders(CuttingPlan plan, List<CutBar> bars) {
    List<Order> orders = new ArrayList<>();
    List<Length> lengths =
        stock.rows().stream().filter(row -> !row.isFromShed()).map(Row::length).distinct().toList();
    for (Length length : lengths) {
      int count = 0;
      int beyond = 0;
      for (AlikeBars alike : plan.bars()) {
        Row row = stock.rows().get(alike.stock());
        boolean isOrdered = !row.isFromShed() && row.length().equals(length);
        count += isOrdered ? alike.times() : 0;
        beyond += isOrdered && row.isBeyond() ? alike.times() : 0;
      }
      if (count > 0) {
        orders.add(new Order(length, count, exact(length, bars), price(length), beyond));
      }
    }
    return orders;
  }

  private Optional<Money> price(Length length) {
    return stock.rows().stream()
        .filter(row -> !row.isFromShed() && row.length().equals(length))
        .flatMap(row -> row.price().stream())
        .findFirst();
  }

  private static double exact(Length length, List<CutBar> bars) {
    return bars.stream()
        .filter(bar -> !bar.isFromShed() && bar.length().equals(length))
        .mapToDouble(bar -> bar.times() * together(bar.runs()).dividedBy(length))
        .sum();
  }
}
