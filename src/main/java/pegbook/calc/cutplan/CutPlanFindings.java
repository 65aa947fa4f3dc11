package pegbook.calc.cutplan;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.cutplan.CutPlan.Order;
import pegbook.calc.cutplan.CutPlan.SizePlan;
import pegbook.figures.AnchorageFormulas;
import pegbook.figures.Argument;
import pegbook.figures.BarAnchorage;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.StockKind;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.published.Bars;
import pegbook.published.Citation;

/** What the reader must know of a plan. */
final class CutPlanFindings {
  private final CutPlanFormulas formulas;
  private final BarAnchorage anchorage;

  /** Laps are told in whole inches or centimetres. */
  private final Length lapStep;

  private final List<Working> workings = new ArrayList<>();

  CutPlanFindings(Job job) {
    UnitSystem units = job.heading().units();
    this.formulas = new CutPlanFormulas(units);
    this.anchorage =
        new BarAnchorage(
            units, job.concrete().strength(), job.stock().yield(), job.stock().coating());
    this.lapStep = units == UnitSystem.IMPERIAL ? Length.ofInches(1) : Length.ofMillimetres(10);
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
    StockKind kind = StockKind.of(piece.size());
    if (kind == StockKind.BOARD) {
      return tooLong("board-longer-than-stock", piece, longest, Citation.COMMON_PRACTICE);
    }
    if (kind != StockKind.BAR) {
      return tooLong("timber-longer-than-stock", piece, longest, Citation.COMMON_PRACTICE);
    }
    if (!piece.isStraight()) {
      return tooLong("bent-piece-longer-than-stock", piece, longest, Citation.COMMON_PRACTICE);
    }
    Working lap =
        anchorage.lap(
            piece.name(),
            Bars.get(piece.size()).diameter(),
            BarAnchorage.Room.APART,
            BarAnchorage.Place.UPRIGHT_OR_LOW);
    Length length = lap.asLength().setTo(lapStep, Rounding.UP);
    if (!length.isLessThan(longest)) {
      return tooLong("piece-longer-than-lap", piece, longest, AnchorageFormulas.LAP)
          .with("lap", Argument.of(length));
    }
    Working parts = Working.of(formulas.parts(), piece.name(), piece.length(), longest, length);
    workings.add(lap);
    workings.add(parts);
    return tooLong("piece-longer-than-stock", piece, longest, AnchorageFormulas.LAP)
        .with("lap", Argument.of(length))
        .with("parts", Argument.of(Rounding.UP.steps(parts.result(), 1)));
  }

  /** Where the job lists what is sold. */
  private static String place(StockKind kind) {
    return switch (kind) {
      case BAR -> "stock.bars";
      case TIMBER -> "stock.timber";
      case BOARD -> "stock.boards";
      case CONDUIT -> "stock.conduit";
    };
  }

  private static Finding tooLong(String id, CutPiece piece, Length longest, Citation source) {
    StockKind kind = StockKind.of(piece.size());
    Decider decider = kind == StockKind.BOARD ? Decider.OWNER : Decider.ENGINEER;
    return Finding.of(Kind.ASK, id, place(kind), decider, source)
        .about(kind == StockKind.BOARD ? List.of() : piece.marks())
        .with("piece", Argument.words(piece.name()))
        .with("count", Argument.of(piece.count()))
        .with("size", Argument.words(piece.size()))
        .with("cut", Argument.of(piece.length()))
        .with("stock", Argument.of(longest));
  }

  private static Finding shortOf(String size, Order order) {
    return Finding.of(
            Kind.ASK,
            "stock-runs-short",
            place(StockKind.of(size)),
            Decider.OWNER,
            Citation.COMMON_PRACTICE)
        .with("size", Argument.words(size))
        .with("bars", Argument.of(order.beyond()))
        .with("stock", Argument.of(order.length()));
  }
}
