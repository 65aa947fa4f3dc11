package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pegbook.calc.floorframe.FloorFrame.BayRow;
import pegbook.calc.floorframe.FloorFrame.BeamSize;
import pegbook.calc.floorframe.FloorFrame.Built;
import pegbook.calc.floorframe.FloorFrame.JoistSize;
import pegbook.calc.floorframe.FloorFrame.Limit;
import pegbook.calc.floorframe.FloorFrame.PostRow;
import pegbook.figures.CutPiece;
import pegbook.figures.MarkKind;
import pegbook.figures.MarkRuns;
import pegbook.figures.Need;
import pegbook.figures.PlacedMark;
import pegbook.geometry.Point;
import pegbook.job.Floor;
import pegbook.job.Frame;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
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
 * @param boards the boards in a sentence
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
    String boards,
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
          built.joists().stream().map(this::joist).toList(),
          beams(),
          built.pieces().stream().map(this::piece).toList(),
          bays(),
          posts(),
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

    private SizeRow joist(JoistSize size) {
      return new SizeRow(
          size.size(), formats().length(size.allowed()), limit(size.limit()), size.isChosen());
    }

    private String limit(Limit limit) {
      return say("limit." + limit.name().toLowerCase(Locale.ROOT));
    }

    /** From the size before the chosen one on: what is less is not enough either. */
    private List<SizeRow> beams() {
      int chosen = built.beams().indexOf(built.beam());
      return built.beams().stream().skip(Math.max(0, chosen - 1)).limit(4).map(this::beam).toList();
    }

    private SizeRow beam(BeamSize size) {
      return new SizeRow(
          size.name(),
          say("used", words("part", formats().number(size.used().percent(), 0))),
          size.bay() + ", " + limit(size.limit()),
          size.isChosen());
    }

    private PieceRow piece(CutPiece piece) {
      return new PieceRow(
          piece.name(),
          say("piece." + piece.name().substring(0, 1).toLowerCase(Locale.ROOT)),
          piece.size(),
          formats().count(piece.count()),
          formats().length(piece.length()));
    }

    private List<BeamRow> bays() {
      Map<BeamRow, List<String>> alike = new LinkedHashMap<>();
      for (BayRow bay : built.bays()) {
        BeamRow row =
            new BeamRow(
                "",
                formats().length(bay.span()),
                formats().area(bay.floor()),
                formats().force(bay.from()),
                formats().force(bay.to()),
                formats().in(bay.bearing(), small(), metric() ? 0 : 1));
        alike.computeIfAbsent(row, any -> new ArrayList<>()).add(bay.name());
      }
      List<BeamRow> rows = new ArrayList<>();
      alike.forEach(
          (row, names) ->
              rows.add(
                  new BeamRow(
                      String.join(", ", names),
                      row.span(),
                      row.floor(),
                      row.from(),
                      row.to(),
                      row.bearing())));
      return rows;
    }

    private boolean metric() {
      return formats().units() == UnitSystem.METRIC;
    }

    private Unit small() {
      return metric() ? Unit.MILLIMETRE : Unit.INCH;
    }

    private List<PostLine> posts() {
      Map<PostLine, List<String>> alike = new LinkedHashMap<>();
      for (PostRow post : built.posts()) {
        alike.computeIfAbsent(line(post), any -> new ArrayList<>()).add(post.mark());
      }
      List<PostLine> lines = new ArrayList<>();
      alike.forEach(
          (line, marks) ->
              lines.add(new PostLine(MarkRuns.brief(marks), line.load(), line.may(), line.cut())));
      return lines;
    }

    private PostLine line(PostRow post) {
      String cut =
          packet.levels().floor().stream()
              .flatMap(floor -> floor.posts().stream())
              .filter(each -> each.mark().equals(post.mark()))
              .flatMap(each -> each.cut().stream())
              .findFirst()
              .map(formats()::length)
              .orElseGet(() -> say("post.open"));
      return new PostLine(
          "", formats().force(post.load()), formats().length(down(post.mayStand())), cut);
    }

    private Length down(Length height) {
      Length step = metric() ? Length.ofMillimetres(100) : Length.ofInches(3);
      return height.setTo(step, pegbook.measure.Rounding.DOWN);
    }

    private List<String> connectors() {
      return packet.floorFrame().needs().stream()
          .filter(need -> !need.id().equals("floor-boards"))
          .map(this::connector)
          .toList();
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

    private String boards() {
      Frame.Boards boards = frame().boards();
      return say(
          boards.diagonal() ? "boards.diagonal" : "boards.square",
          words(
              "rows", formats().count(built.boards().rows()),
              "width", formats().size(boards.width()),
              "gap", formats().size(boards.gap()),
              "stock", formats().count(built.boards().stock()),
              "sold", formats().length(built.boards().sold()),
              "waste", formats().number(built.boards().waste().percent(), 0),
              "other", formats().count(built.boards().otherStock()),
              "otherWaste", formats().number(built.boards().otherWaste().percent(), 0)));
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
