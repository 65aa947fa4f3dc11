package pegbook.calc.cutplan;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.cutplan.CutPlan.Order;
import pegbook.calc.cutplan.CutPlan.SizePlan;
import pegbook.figures.Argument;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.published.Bars;
import pegbook.published.Citation;

/** What the reader must know of a plan. */
final class CutPlanFindings {
  private final Job job;
  private final CutPlanFormulas formulas;
  private final List<Working> workings = new ArrayList<>();

  CutPlanFindings(Job job) {
    this.job = job;
    this.formulas = new CutPlanFormulas(job.heading().units());
  }

  /** The laps that were offered. */
  List<Working> workings() {
    return List.copyOf(workings);
  }

  List<Finding> of(SizePlan plan, StockChoice stock) {
    List<Finding> findings = new ArrayList<>();
    plan.tooLong().forEach(piece -> findings.add(tooLong(piece, stock.longest())));
    plan.orders().stream()
        .filter(order -> order.beyond() > 0)
        .forEach(order -> findings.add(shortOf(plan.size(), order)));
    if (!plan.proof().isCheapest()) {
      findings.add(
          Finding.of(Kind.NOTE, "cut-plan-open", "stock", Decider.OWNER, Citation.COMMON_PRACTICE)
              .with("size", Argument.words(plan.size()))
              .with("gap", Argument.of(plan.proof().gap())));
    }
    return findings;
  }

  private Finding tooLong(CutPiece piece, Length longest) {
    Finding finding =
        Finding.of(
                Kind.ASK,
                piece.isStraight() ? "piece-longer-than-stock" : "bent-piece-longer-than-stock",
                "stock.bars",
                Decider.ENGINEER,
                piece.isStraight() ? CutPlanFormulas.LAP : Citation.COMMON_PRACTICE)
            .about(piece.marks())
            .with("piece", Argument.words(piece.name()))
            .with("count", Argument.of(piece.count()))
            .with("size", Argument.words(piece.size()))
            .with("cut", Argument.of(piece.length()))
            .with("stock", Argument.of(longest));
    if (!piece.isStraight()) {
      return finding;
    }
    Length bar = Bars.get(piece.size()).diameter();
    Working lap =
        Working.of(formulas.lap(bar.millimetres()), piece.name(), job.concrete().strength(), bar);
    workings.add(lap);
    return finding.with("lap", Argument.of(lap.asLength()));
  }

  private static Finding shortOf(String size, Order order) {
    return Finding.of(
            Kind.ASK, "stock-runs-short", "stock.bars", Decider.OWNER, Citation.COMMON_PRACTICE)
        .with("size", Argument.words(size))
        .with("bars", Argument.of(order.beyond()))
        .with("stock", Argument.of(order.length()));
  }
}
