package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.floorframe.FloorFrame.Built;
import pegbook.figures.MarkKind;
import pegbook.figures.Need;
import pegbook.figures.PlacedMark;
import pegbook.geometry.Point;
import pegbook.job.Floor;
import pegbook.job.Frame;
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
