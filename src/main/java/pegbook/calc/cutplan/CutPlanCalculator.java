package pegbook.calc.cutplan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.cutplan.CutPlan.Order;
import pegbook.calc.cutplan.CutPlan.SizePlan;
import pegbook.figures.Argument;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.StockKind;
import pegbook.figures.Working;
import pegbook.job.Frame;
import pegbook.job.Job;
import pegbook.measure.Unit;

/**
 * Puts pieces onto the lengths of stock that the job lists, size by size: least cost, then fewest
 * bars. Where no prices are listed, the least length is bought. The search and its proofs stand in
 * {@link pegbook.cutting.CuttingSolver}.
 *
 * <p>Offcuts from the shed cost nothing. What is left over is no cost and no gain. A piece longer
 * than every stock is in no bar: a finding says so.
 */
public final class CutPlanCalculator {
  private CutPlanCalculator() {}

  /**
   * The cut plan of a job.
   *
   * @param job for its stock and units
   * @param pieces to cut, of all sizes
   */
  public static CutPlan calculate(Job job, List<CutPiece> pieces) {
    Map<String, List<CutPiece>> bySize = new LinkedHashMap<>();
    pieces.forEach(
        piece -> bySize.computeIfAbsent(piece.size(), size -> new ArrayList<>()).add(piece));
    List<SizePlan> plans = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    List<Working> workings = new ArrayList<>();
    List<Need> needs = new ArrayList<>();
    CutPlanFindings judge = new CutPlanFindings(job);
    bySize.forEach(
        (size, of) -> {
          StockChoice stock = StockChoice.of(job, size);
          SizeCutting cutting = new SizeCutting(job, stock, of);
          SizePlan plan = cutting.plan();
          plans.add(plan);
          workings.addAll(cutting.workings());
          findings.addAll(judge.of(plan, stock));
          plan.orders().forEach(order -> needs.add(need(job, size, order)));
        });
    workings.addAll(judge.workings());
    return new CutPlan(
        plans, job.stock().kerf(), job.stock().usefulOffcut(), findings, workings, needs);
  }

  private static Need need(Job job, String size, Order order) {
    StockKind kind = StockKind.of(size);
    Map<String, Argument> words = new LinkedHashMap<>();
    if (kind == StockKind.BOARD) {
      Frame.Boards boards = job.boards().orElseThrow();
      words.put("width", Argument.of(boards.width()));
      words.put("thick", Argument.of(boards.thickness()));
    } else {
      words.put("size", Argument.words(size));
    }
    words.put("stock", Argument.of(order.length()));
    return new Need(id(kind), words, order.exact(), order.bars(), Unit.NONE, Optional.empty());
  }

  private static String id(StockKind kind) {
    return switch (kind) {
      case BAR -> "bars";
      case TIMBER -> "timber";
      case BOARD -> "floor-boards";
      case CONDUIT -> "conduit";
    };
  }
}
