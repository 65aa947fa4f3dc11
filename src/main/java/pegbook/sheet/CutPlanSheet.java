package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pegbook.calc.cutplan.CutPlan;
import pegbook.calc.cutplan.CutPlan.CutBar;
import pegbook.calc.cutplan.CutPlan.Order;
import pegbook.calc.cutplan.CutPlan.Run;
import pegbook.calc.cutplan.CutPlan.SizePlan;
import pegbook.figures.CutPiece;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.packet.Packet;
import pegbook.published.TimberSize;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drawing.Drawing;

/**
 * Cut plan: what to order by length of stock, and each bar drawn with its pieces.
 *
 * @param title the sheet's title
 * @param lead how many bars, in a sentence
 * @param scale of all drawings, in words
 * @param saw what a cut takes and what is kept
 * @param orders what to order, longest first in each size
 * @param isPriced some prices are known
 * @param total what all cost; empty: not known
 * @param sizes how the bars of each size are cut
 */
public record CutPlanSheet(
    String title,
    String lead,
    String scale,
    String saw,
    List<OrderRow> orders,
    boolean isPriced,
    Optional<String> total,
    List<Size> sizes)
    implements Sheet {
  /** What to order of a length. */
  public record OrderRow(String size, String length, String bars, String each, String cost) {}

  /**
   * How a size is cut.
   *
   * @param heading its name
   * @param proof how near to the least it is
   * @param pieces which piece goes where
   * @param first the first kind of bar, kept with the heading
   * @param bars the others
   */
  public record Size(
      String heading, String proof, String pieces, List<Bar> first, List<Bar> bars) {}

  /** Bars cut alike. */
  public record Bar(String what, String cuts, Drawing picture) {}

  @Override
  public List<Drawing> drawings() {
    List<Drawing> drawings = new ArrayList<>();
    for (Size size : sizes) {
      size.first().forEach(bar -> drawings.add(bar.picture()));
      size.bars().forEach(bar -> drawings.add(bar.picture()));
    }
    return List.copyOf(drawings);
  }

  /** Whether anything is cut. */
  public static boolean isWanted(Packet packet) {
    return packet.cutPlan().sizes().stream().anyMatch(plan -> !plan.bars().isEmpty());
  }

  /** Makes the sheet. */
  public static CutPlanSheet of(Packet packet, Writing writing) {
    return new Maker(packet.cutPlan(), writing).sheet();
  }

  /** Puts the plan into words and pictures. */
  private static final class Maker {
    private final CutPlan plan;
    private final Writing writing;
    private final Formats formats;
    private final DrawingScale scale;

    private Maker(CutPlan plan, Writing writing) {
      this.plan = plan;
      this.writing = writing;
      this.formats = writing.formats();
      Length longest =
          plan.sizes().stream()
              .flatMap(size -> size.bars().stream())
              .map(CutBar::length)
              .reduce(Length.ZERO, Length::max);
      this.scale =
          DrawingScale.largestThatFits(
                  formats.units(),
                  new Extent(0, 0, longest.metres(), 0),
                  writing.page().widthMm() - 2,
                  1)
              .orElseThrow();
    }

    private CutPlanSheet sheet() {
      List<OrderRow> orders = new ArrayList<>();
      plan.sizes()
          .forEach(size -> size.orders().forEach(order -> orders.add(order(size.size(), order))));
      return new CutPlanSheet(
          say("title", Map.of()),
          lead(),
          say("scale", Map.of("scale", scale.text())),
          say(
              "saw",
              Map.of(
                  "kerf",
                  formats.length(plan.kerf()),
                  "keep",
                  formats.length(plan.usefulOffcut()))),
          orders,
          orders.stream().anyMatch(order -> !order.each().isEmpty()),
          total(),
          plan.sizes().stream().filter(size -> !size.bars().isEmpty()).map(this::size).toList());
    }

    private String say(String key, Map<String, String> words) {
      return writing.texts().say("cut-plan." + key, words);
    }

    private String lead() {
      int pieces =
          plan.sizes().stream()
              .flatMap(size -> size.pieces().stream())
              .mapToInt(CutPiece::count)
              .sum();
      int bars =
          plan.sizes().stream().flatMap(size -> size.bars().stream()).mapToInt(CutBar::times).sum();
      return say("lead", Map.of("pieces", formats.count(pieces), "bars", formats.count(bars)));
    }

    private OrderRow order(String size, Order order) {
      return new OrderRow(
          size,
          formats.length(order.length()),
          formats.count(order.bars()),
          order.each().map(Maker::money).orElse(""),
          order.cost().map(Maker::money).orElse(""));
    }

    private static String money(Money money) {
      return money.amount().setScale(2).toPlainString() + "\u00a0" + money.currency();
    }

    /** Only where every bar has a price. */
    private Optional<String> total() {
      List<Order> orders = plan.sizes().stream().flatMap(size -> size.orders().stream()).toList();
      if (orders.isEmpty() || orders.stream().anyMatch(order -> order.each().isEmpty())) {
        return Optional.empty();
      }
      return orders.stream()
          .flatMap(order -> order.cost().stream())
          .reduce(Money::plus)
          .map(Maker::money);
    }

    private Size size(SizePlan size) {
      List<Bar> bars = new ArrayList<>();
      for (CutBar bar : size.bars()) {
        bars.add(bar(bar, "cut-" + plan.sizes().indexOf(size) + "-" + (bars.size() + 1)));
      }
      return new Size(
          size.size(),
          proof(size),
          size.pieces().stream()
              .map(
                  piece ->
                      say(
                          piece.marks().isEmpty() ? "piece-unmarked" : "piece",
                          words(
                              "name", piece.name(),
                              "count", formats.count(piece.count()),
                              "length", formats.length(piece.length()),
                              "marks", formats.names(piece.marks()))))
              .collect(Collectors.joining(" ")),
          bars.subList(0, 1),
          bars.subList(1, bars.size()));
    }

    private String proof(SizePlan size) {
      boolean priced = size.orders().stream().anyMatch(order -> order.each().isPresent());
      String of = priced ? "cost" : "length";
      if (size.proof().isBest()) {
        return say("proof." + of + "-best", Map.of());
      }
      return size.proof().isCheapest()
          ? say("proof." + of + "-least", Map.of())
          : say(
              "proof." + of + "-open",
              Map.of("gap", formats.number(100 * size.proof().gap().si() + 0.05, 1)));
    }

    private Bar bar(CutBar bar, String id) {
      Map<String, String> words =
          words(
              "name", bar.name(),
              "times", formats.count(bar.times()),
              "length", formats.length(bar.length()));
      String what = say(kind(bar) + (bar.times() == 1 ? "-one" : "-many"), words);
      String cuts =
          bar.runs().stream().map(this::run).collect(Collectors.joining(", ")) + "; " + left(bar);
      return new Bar(what, cuts, CutBarPicture.of(writing, bar, scale, id, what + ": " + cuts));
    }

    private static String kind(CutBar bar) {
      boolean timber = TimberSize.find(bar.runs().get(0).piece().size()).isPresent();
      return bar.isFromShed() ? "shed" : timber ? "timber" : "bar";
    }

    private String run(Run run) {
      return say(
          "run",
          words(
              "count", formats.count(run.count()),
              "name", run.piece().name(),
              "length", formats.length(run.piece().length())));
    }

    private String left(CutBar bar) {
      if (!bar.left().isMoreThan(Length.ofMillimetres(0.1))) {
        return say("none-left", Map.of());
      }
      return say(bar.isKept() ? "keep" : "left", Map.of("left", formats.length(bar.left())));
    }

    private static Map<String, String> words(String... namesAndValues) {
      Map<String, String> words = new LinkedHashMap<>();
      for (int i = 0; i < namesAndValues.length; i += 2) {
        words.put(namesAndValues[i], namesAndValues[i + 1]);
      }
      return words;
    }
  }
}
