package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import pegbook.calc.cutplan.CutPlan.Order;
import pegbook.calc.floorframe.FloorFrame.BoardPlan;
import pegbook.calc.floorframe.FloorFrame.Built;
import pegbook.figures.CutPiece;
import pegbook.figures.MarkKind;
import pegbook.figures.Need;
import pegbook.figures.PlacedMark;
import pegbook.geometry.Compass;
import pegbook.geometry.Point;
import pegbook.job.Floor;
import pegbook.job.Frame;
import pegbook.job.Stock;
import pegbook.measure.Angle;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.FramePicture;
import pegbook.sheet.plan.PlanPicture;

/**
 * Floor frame: plan, sizes with what the next ones would give, pieces, beams and posts.
 *
 * @param title the sheet's title
 * @param lead the sizes in a sentence
 * @param rules how it is laid out
 * @param plan to scale
 * @param caption its scale and what its lines are
 * @param unnamed a sentence on names that found no room; empty when all did
 * @param joists sizes of joists
 * @param beams sizes of beams
 * @param pieces to cut
 * @param bays beam by beam
 * @param posts alike posts in one row
 * @param connectors what holds it together, by count
 * @param boards the boards in sentences
 * @param notes how to read the figures
 */
public record FloorFrameSheet(
    String title,
    String lead,
    List<String> rules,
    Drawing plan,
    String caption,
    String unnamed,
    List<SizeRow> joists,
    List<SizeRow> beams,
    List<PieceRow> pieces,
    List<BeamRow> bays,
    List<PostLine> posts,
    List<String> connectors,
    List<String> boards,
    List<String> notes)
    implements Sheet {
  private static final double MOST_HEIGHT_MM = 140;

  /** A size, what it gives and by what it is limited. */
  public record SizeRow(String size, String gives, String limit, boolean isChosen) {}

  /** Alike pieces. */
  public record PieceRow(String name, String what, String size, String count, String length) {}

  /** A beam, or several alike. */
  public record BeamRow(
      String names, String span, String floor, String from, String to, String bearing) {}

  /** Alike posts. */
  public record PostLine(String marks, String load, String may, String cut) {}

  @Override
  public List<Drawing> drawings() {
    return List.of(plan);
  }

  /** Makes the sheet. */
  public static FloorFrameSheet of(Packet packet, Built built, Writing writing) {
    return new Maker(packet, built, writing).sheet();
  }

  /** Puts the frame into words. */
  private record Maker(Packet packet, Built built, Writing writing) {
    private FloorFrameSheet sheet() {
      PlanPicture picture = picture();
      FloorFrameRows rows = new FloorFrameRows(packet, built, writing);
      return new FloorFrameSheet(
          say("title"),
          say(
              "lead",
              words(
                  "joist", built.joist().size(),
                  "spacing", formats().size(built.spacing()),
                  "beam", built.beam().name(),
                  "post", built.postSize(),
                  "height", formats().length(built.height()))),
          rules(),
          picture.drawing(),
          say("caption", words("scale", picture.scale().text())),
          picture.unnamed().isEmpty()
              ? ""
              : say("unnamed", words("names", formats().names(picture.unnamed()))),
          rows.joists(),
          rows.beams(),
          rows.pieces(),
          rows.bays(),
          rows.posts(),
          connectors(),
          boards(),
          notes());
    }

    private String say(String key) {
      return say(key, Map.of());
    }

    private String say(String key, Map<String, String> values) {
      return writing.texts().say("floor-frame." + key, values);
    }

    private Formats formats() {
      return writing.formats();
    }

    private static Map<String, String> words(String... namesAndValues) {
      Map<String, String> words = new LinkedHashMap<>();
      for (int i = 0; i < namesAndValues.length; i += 2) {
        words.put(namesAndValues[i], namesAndValues[i + 1]);
      }
      return words;
    }

    private Frame frame() {
      return packet.job().floor().flatMap(Floor::frame).orElseThrow();
    }

    private PlanPicture picture() {
      Map<String, Point> posts = new LinkedHashMap<>();
      packet.placement().marks().stream()
          .filter(mark -> mark.kind() == MarkKind.SUPPORT)
          .forEach((PlacedMark mark) -> posts.put(mark.id(), mark.at()));
      return FramePicture.draw(
          new FramePicture.Content(
              formats().units(),
              packet.placement().outline().corners(),
              built.members(),
              posts,
              built.gaps()),
          SitePlanSheet.planWords(packet, writing),
          writing.lettering(),
          writing.page().widthMm(),
          MOST_HEIGHT_MM,
          say("picture", words("beams", formats().count(built.bays().size()))));
    }

    private List<String> rules() {
      List<String> rules = new ArrayList<>();
      rules.add(say("rule.beams"));
      rules.add(
          say(
              "rule.joists",
              words(
                  "azimuth", formats().roundAngle(built.along()),
                  "spacing", formats().size(built.spacing()))));
      if (!built.gaps().isEmpty()) {
        rules.add(
            say(
                "rule.opening",
                words(
                    "piers",
                    formats().names(built.gaps().stream().map(gap -> gap.pier()).toList()))));
      }
      rules.add(timber());
      return rules;
    }

    private String timber() {
      if (frame().timber() instanceof Frame.Timber.Given given) {
        return say("timber.given", words("name", given.name(), "from", given.from()));
      }
      Frame.Timber.Graded graded = (Frame.Timber.Graded) frame().timber();
      boolean incised = graded.incised().orElse(graded.species().isIncised());
      return say(
          "timber.graded",
          words(
              "species", say("species." + graded.species().id()),
              "grade", say("grade." + graded.grade().id()),
              "wet", say(frame().wet() ? "wet" : "dry"),
              "incised", say(incised ? "incised" : "not-incised")));
    }

    private List<String> connectors() {
      return packet.floorFrame().needs().stream().map(this::connector).toList();
    }

    private String connector(Need need) {
      return say(
          "connector",
          words(
              "count",
              formats().count(Math.round(need.order())),
              "what",
              writing.texts().say("need." + need.id(), argumentWords(need))));
    }

    private Map<String, String> argumentWords(Need need) {
      Map<String, String> words = new LinkedHashMap<>();
      need.arguments().forEach((name, value) -> words.put(name, formats().argument(value)));
      return words;
    }

    private List<String> boards() {
      Frame.Boards boards = frame().boards();
      BoardPlan plan = built.boards();
      String laid = boards.diagonal() ? "diagonal" : "square";
      List<String> said = new ArrayList<>();
      said.add(
          say(
              "boards." + laid,
              words(
                  "rows", formats().count(plan.rows()),
                  "width", formats().size(boards.width()),
                  "gap", formats().size(boards.gap()),
                  "edge", writing.texts().say("compass." + edge(plan.first())),
                  "pieces", formats().count(count(plan)))));
      if (plan.joints() > 0) {
        said.add(
            say(
                plan.aligned() == 0 ? "boards.joints" : "boards.joints-aligned",
                words(
                    "joints", formats().count(plan.joints()),
                    "aligned", formats().count(plan.aligned()))));
      }
      said.add(bought(plan));
      double other = plan.other().percent();
      said.add(
          say(
              boards.diagonal() ? "boards.were-square" : "boards.were-diagonal",
              words(
                  "other",
                  say(
                      other < 0 ? "boards.fewer" : "boards.more",
                      words("part", formats().number(Math.abs(other), 0))))));
      return said;
    }

    private static int count(BoardPlan plan) {
      return plan.pieces().stream().mapToInt(CutPiece::count).sum();
    }

    private static String edge(Point towards) {
      Angle azimuth = Point.ORIGIN.azimuthTo(towards);
      return Compass.of(azimuth).name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What the cut plan orders, and what of it is cut off: neither laid nor kept. */
    private String bought(BoardPlan plan) {
      List<Order> orders = packet.cutPlan().orders(Stock.BOARDS);
      String list =
          orders.stream()
              .map(
                  order ->
                      say(
                          "boards.order",
                          words(
                              "count", formats().count(order.bars()),
                              "length", formats().length(order.length()))))
              .collect(Collectors.joining(", "));
      double bought =
          orders.stream().mapToDouble(order -> order.bars() * order.length().metres()).sum();
      double waste = bought > 0 ? Math.max(0, 1 - plan.laid().metres() / bought) : 0;
      return orders.isEmpty()
          ? say("boards.none")
          : say("boards.bought", words("list", list, "waste", formats().number(100 * waste, 0)));
    }

    private List<String> notes() {
      return List.of(
          say("note.spans", words("span", formats().length(built.longestSpan()))),
          say("note.overhang", words("overhang", formats().length(built.longestOverhang()))),
          say("note.beams"),
          say("note.loads"),
          say("note.bracing"));
    }
  }
}
