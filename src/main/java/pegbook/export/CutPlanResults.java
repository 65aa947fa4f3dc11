package pegbook.export;

import pegbook.calc.cutplan.CutPlan;
import pegbook.calc.cutplan.CutPlan.CutBar;
import pegbook.calc.cutplan.CutPlan.Order;
import pegbook.calc.cutplan.CutPlan.Run;
import pegbook.calc.cutplan.CutPlan.SizePlan;
import pegbook.measure.Money;

/** The cut plan in the results. */
final class CutPlanResults {
  private CutPlanResults() {}

  static void write(JsonFigures json, CutPlan plan) {
    json.quantity("kerfMetres", plan.kerf())
        .quantity("usefulOffcutMetres", plan.usefulOffcut())
        .list("sizes", plan.sizes(), CutPlanResults::size);
  }

  private static void size(JsonFigures json, SizePlan plan) {
    json.text("size", plan.size())
        .list("orders", plan.orders(), CutPlanResults::order)
        .list("bars", plan.bars(), CutPlanResults::bar)
        .flag("cheapest", plan.proof().isCheapest())
        .flag("fewestBars", plan.proof().isBest())
        .number("gap", plan.proof().gap().si())
        .texts("tooLong", plan.tooLong().stream().map(piece -> piece.name()).toList());
  }

  private static void order(JsonFigures json, Order order) {
    json.quantity("stockMetres", order.length())
        .whole("bars", order.bars())
        .whole("beyondListed", order.beyond())
        .text("each", order.each().map(CutPlanResults::money))
        .text("cost", order.cost().map(CutPlanResults::money));
  }

  private static String money(Money money) {
    return money.amount().toPlainString() + " " + money.currency();
  }

  private static void bar(JsonFigures json, CutBar bar) {
    json.text("name", bar.name())
        .quantity("stockMetres", bar.length())
        .flag("fromShed", bar.isFromShed())
        .whole("times", bar.times())
        .list("pieces", bar.runs(), CutPlanResults::run)
        .quantity("leftMetres", bar.left())
        .flag("kept", bar.isKept());
  }

  private static void run(JsonFigures json, Run run) {
    json.text("barMark", run.piece().name())
        .whole("count", run.count())
        .quantity("cutMetres", run.piece().length());
  }
}
