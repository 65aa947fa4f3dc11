package pegbook.sheet;

import java.util.List;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.section.GroundProfile;

/**
 * Levels: the datum line, what a stick reads from it, the posts of a level floor.
 *
 * @param title the sheet's title
 * @param lead where the line stands
 * @param steps how it is set, in order
 * @param pictures sections along the marks
 * @param caption their scale, and what is not to scale
 * @param rows readings, in the order of the marks
 * @param working numbers of the workings behind the columns
 * @param unknown what to measure at marks without a level; empty: all are known
 * @param floor where the floor stands; empty: nothing follows
 * @param hasPosts true where posts are given
 * @param hasCut true where the build-up is known, and with it what posts are cut to
 * @param buildUp what a post must be cut less by, or how it was taken off
 * @param posts lengths of the posts
 * @param postWorking numbers of the workings behind them
 * @param piers how far piers stand over the floor
 * @param cutting how to cut, in order
 * @param sag how far the line sags, and where to prop it
 * @param slope what taping on the slope does; empty where it does nothing
 * @param slopes the pairs that it changes
 */
public record LevelsSheet(
    String title,
    String lead,
    List<String> steps,
    List<Drawing> pictures,
    String caption,
    List<Row> rows,
    Row working,
    String unknown,
    String floor,
    boolean hasPosts,
    boolean hasCut,
    String buildUp,
    List<PostRow> posts,
    PostRow postWorking,
    List<String> piers,
    List<String> cutting,
    String sag,
    List<String> slope,
    List<SlopeRow> slopes)
    implements Sheet {

  /** Readings at a mark; cells in the order of the columns. */
  public record Row(
      String mark,
      String ground,
      String toGround,
      String toTop,
      String toUnderside,
      String toBottom) {}

  /** A post; cells in the order of the columns. */
  public record PostRow(String mark, String toTop, String toFloor, String cut) {}

  /** A taped distance on a slope. */
  public record SlopeRow(
      String pair, String level, String rise, String alongGround, String excess) {}

  public LevelsSheet {
    steps = List.copyOf(steps);
    pictures = List.copyOf(pictures);
    rows = List.copyOf(rows);
    posts = List.copyOf(posts);
    piers = List.copyOf(piers);
    cutting = List.copyOf(cutting);
    slope = List.copyOf(slope);
    slopes = List.copyOf(slopes);
  }

  @Override
  public List<Drawing> drawings() {
    return pictures;
  }

  /** True where any level is known: without one there is nothing to read. */
  public static boolean isWanted(Packet packet) {
    return packet.levels().line().isPresent();
  }

  /** Makes the sheet. */
  public static LevelsSheet of(Packet packet, Writing writing) {
    LevelsWords words = new LevelsWords(packet, packet.levels(), writing);
    LevelsTables tables = new LevelsTables(packet, packet.levels(), writing);
    GroundProfile.Pictures pictures = tables.pictures();
    SlopeWords slope = new SlopeWords(packet, packet.tapeCorrections(), writing);
    return new LevelsSheet(
        writing.texts().say("levels.title"),
        words.lead(),
        words.steps(),
        pictures.drawings(),
        words.caption(pictures),
        tables.rows(),
        tables.working(),
        words.unknown(),
        words.floor(),
        packet.levels().floor().isPresent(),
        packet.levels().floor().flatMap(floor -> floor.buildUp()).isPresent(),
        words.buildUp(),
        tables.posts(),
        tables.postWorking(),
        words.piers(),
        words.cutting(),
        words.sag(),
        slope.sentences(),
        slope.rows());
  }
}
