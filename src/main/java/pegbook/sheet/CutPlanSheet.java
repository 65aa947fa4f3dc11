package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pegbook.calc.cutplan.CutPlan;
import pegbook.calc.cutplan.CutPlan.CutBar;
import pegbook.calc.cutplan.CutPlan.Order;
import pegbook.calc.cutplan.CutPlan.Run;
import pegbook.calc.cutplan.CutPlan.SizePlan;
import pegbook.figures.CutPiece;
import pegbook.figures.MarkRuns;
import pegbook.figures.StockKind;
import pegbook.measure.Length;
import pegbook.measure.Money;
import pegbook.packet.Packet;
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
 * @param each head of the column of prices, with their currency
 * @param cost head of the column of costs
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
    String each,
    String cost,
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
   * @param pieces which piece goes where, in sentences; empty where they stand in a grid
   * @param grid which piece goes where, row by row
   * @param plain boards from which one piece is cut, without a picture
   * @param first the first kind of bar that is drawn, kept with the heading; none where plain ones
   *     stand there
   * @param bars the others
   */
  public record Size(
      String heading,
      String proof,
      String pieces,
      List<List<String>> grid,
      List<Plain> plain,
      List<Bar> first,
      List<Bar> bars) {}

  /** Boards of one length from which one piece each is cut: a box to tick for each kind. */
  public record Plain(String lead, List<List<String>> cuts) {}

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
    /** So many kinds of boards are no longer drawn one by one. */
    private static final int MANY = 4;

    /** Short texts side by side. */
    private static final int ACROSS = 4;

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
          say("column.each", Map.of("currency", currency())),
          say("column.cost", Map.of("currency", currency())),
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
          order.each().map(formats::amount).orElse(""),
          order.cost().map(formats::amount).orElse(""));
    }

    /** All prices of a job are in one currency. */
    private String currency() {
      return plan.sizes().stream()
          .flatMap(size -> size.orders().stream())
          .flatMap(order -> order.each().stream())
          .map(Money::currency)
          .findFirst()
          .orElse("");
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
          .map(formats::amount);
    }

    private Size size(SizePlan size) {
      List<Plain> plain = plain(size);
      List<Bar> bars = new ArrayList<>();
      for (int i = 0; i < size.bars().size(); i++) {
        if (plain.isEmpty() || !isPlain(size.bars().get(i))) {
          String id = "cut-" + plan.sizes().indexOf(size) + "-" + (i + 1);
          bars.add(bar(size.bars().get(i), id));
        }
      }
      int first = plain.isEmpty() ? 1 : 0;
      List<String> pieces = size.pieces().stream().map(this::piece).toList();
      boolean inGrid = StockKind.of(size.size()) == StockKind.BOARD && pieces.size() > 2 * ACROSS;
      return new Size(
          heading(size.size()),
          proof(size),
          inGrid ? "" : String.join(" ", pieces),
          inGrid ? grid(pieces) : List.of(),
          plain,
          bars.subList(0, first),
          bars.subList(first, bars.size()));
    }

    /** A picture of one piece says no more than its words; a floor may have dozens of them. */
    private List<Plain> plain(SizePlan size) {
      Map<Length, List<String>> byLength = new LinkedHashMap<>();
      for (int i = 0; i < size.bars().size(); i++) {
        CutBar bar = size.bars().get(i);
        if (StockKind.of(size.size()) == StockKind.BOARD && isPlain(bar)) {
          byLength
              .computeIfAbsent(bar.length(), any -> new ArrayList<>())
              .add(
                  say(
                      bar.isKept() ? "plain-cut-keep" : "plain-cut",
                      words(
                          "number", formats.count(i + 1),
                          "count", formats.count(bar.times()),
                          "name", bar.runs().get(0).piece().name(),
                          "length", formats.length(bar.runs().get(0).piece().length()),
                          "left", formats.length(bar.left()))));
        }
      }
      if (byLength.values().stream().mapToInt(List::size).sum() < MANY) {
        return List.of();
      }
      List<Plain> plain = new ArrayList<>();
      byLength.forEach(
          (length, cuts) ->
              plain.add(
                  new Plain(say("plain", Map.of("length", formats.length(length))), grid(cuts))));
      return plain;
    }

    /** Side by side, the last row filled up with empty cells. */
    private static List<List<String>> grid(List<String> cells) {
      List<List<String>> rows = new ArrayList<>();
      for (int i = 0; i < cells.size(); i += ACROSS) {
        List<String> row = new ArrayList<>(cells.subList(i, Math.min(cells.size(), i + ACROSS)));
        while (row.size() < ACROSS) {
          row.add("");
        }
        rows.add(row);
      }
      return rows;
    }

    private static boolean isPlain(CutBar bar) {
      return !bar.isFromShed() && bar.runs().size() == 1 && bar.runs().get(0).count() == 1;
    }

    private static String word(StockKind kind) {
      return kind.name().toLowerCase(Locale.ROOT);
    }

    private String heading(String size) {
      return say("heading." + word(StockKind.of(size)), Map.of("size", size));
    }

    private String piece(CutPiece piece) {
      boolean board = StockKind.of(piece.size()) == StockKind.BOARD;
      return say(
          piece.marks().isEmpty() ? "piece-unmarked" : board ? "piece-board" : "piece",
          words(
              "name", piece.name(),
              "count", formats.count(piece.count()),
              "length", formats.length(piece.length()),
              "marks", board ? MarkRuns.brief(piece.marks()) : formats.names(piece.marks())));
    }

    /** How good the plan is, and which lengths were taken as the job lists none. */
    private String proof(SizePlan size) {
      String proved = proved(size);
      return size.usual().isEmpty()
          ? proved
          : say(
                  "unlisted",
                  Map.of(
                      "lengths",
                      formats.names(size.usual().stream().map(formats::length).toList())))
              + " "
              + proved;
    }

    private String proved(SizePlan size) {
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
      return bar.isFromShed() ? "shed" : word(StockKind.of(bar.runs().get(0).piece().size()));
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
