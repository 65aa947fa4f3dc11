package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Angle;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.TimberSize;

/**
 * The floor's frame.
 *
 * @param built the frame; absent where the job asks for none, or none can be built
 */
public record FloorFrame(
    Optional<Built> built,
    List<Finding> findings,
    List<Working> workings,
    List<Need> needs,
    List<Task> tasks,
    List<Citation> sources)
    implements Result {
  public FloorFrame {
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
    tasks = List.copyOf(tasks);
    sources = List.copyOf(sources);
  }

  /** Letter of the blocks among the pieces. */
  static final String BLOCKS = "N";

  /** No frame. */
  static FloorFrame none(List<Finding> findings) {
    return new FloorFrame(Optional.empty(), findings, List.of(), List.of(), List.of(), List.of());
  }

  /** Floor that each support carries by its beams; nothing where no frame is built. */
  public Optional<Map<String, Area>> carried() {
    return built.map(Built::carried);
  }

  /** Blocks are sawn from strips of so much at most: 8 ft. */
  private static final Length STRIP = Length.ofInches(96);

  /** What a cut between two blocks takes at most, in steps that all lengths share. */
  private static final Length CUT_INCHES = Length.ofInches(0.25);

  private static final Length CUT = Length.ofMillimetres(5);

  /**
   * Pieces for the cut plan; none where no frame is built. Blocks come as strips of several:
   * hundreds of short pieces would make its search long, and nobody saws them one by one from long
   * timber.
   */
  public List<CutPiece> pieces() {
    List<CutPiece> pieces = new ArrayList<>();
    for (CutPiece piece : built.map(Built::pieces).orElse(List.of())) {
      if (piece.name().startsWith(BLOCKS)) {
        strips(piece, pieces);
      } else {
        pieces.add(piece);
      }
    }
    built.ifPresent(frame -> pieces.addAll(frame.boards().pieces()));
    return pieces;
  }

  private static void strips(CutPiece block, List<CutPiece> pieces) {
    boolean inches =
        TimberSize.find(block.size())
            .filter(size -> size.units() == UnitSystem.IMPERIAL)
            .isPresent();
    Length each = block.length().plus(inches ? CUT_INCHES : CUT);
    int most = (int) Math.max(1, Rounding.DOWN.steps(STRIP.metres(), each.metres()));
    int whole = block.count() / most;
    int rest = block.count() % most;
    if (whole > 0) {
      pieces.add(strip(block, each.times(most), whole));
    }
    if (rest > 0) {
      pieces.add(strip(block, each.times(rest), 1));
    }
  }

  private static CutPiece strip(CutPiece block, Length length, int count) {
    return new CutPiece(block.size(), block.name(), length, count, List.of(), true);
  }

  /** Size of the posts; empty where no frame is built. */
  public String postSize() {
    return built.map(Built::postSize).orElse("");
  }

  /** From the tops of the posts to the walking surface, where a frame is built. */
  public Optional<Length> buildUp() {
    return built.map(Built::height);
  }

  /**
   * A frame.
   *
   * @param along azimuth of the joists, from 0 to under 180 degrees
   * @param spacing of the joists at most
   * @param joists sizes of joists that were held against the spans
   * @param longestSpan from beam to beam
   * @param longestOverhang from a beam to the rim
   * @param beams sizes of beams that were held against the loads
   * @param bays each beam
   * @param posts each post
   * @param postSize of all of them
   * @param height from the tops of the posts to the walking surface
   * @param members lines of the plan
   * @param gaps piers that are framed round
   * @param pieces to cut
   * @param boards the boards
   * @param carried floor that each support carries by its beams
   * @param floor area of the floor less its openings
   */
  public record Built(
      Angle along,
      Length spacing,
      List<JoistSize> joists,
      Length longestSpan,
      Length longestOverhang,
      List<BeamSize> beams,
      List<BayRow> bays,
      List<PostRow> posts,
      String postSize,
      Length height,
      List<Member> members,
      List<Gap> gaps,
      List<CutPiece> pieces,
      BoardPlan boards,
      Map<String, Area> carried,
      Area floor) {
    public Built {
      joists = List.copyOf(joists);
      beams = List.copyOf(beams);
      bays = List.copyOf(bays);
      posts = List.copyOf(posts);
      members = List.copyOf(members);
      gaps = List.copyOf(gaps);
      pieces = List.copyOf(pieces);
      carried = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(carried));
    }

    /** The size of the joists. */
    public JoistSize joist() {
      return joists.stream().filter(JoistSize::isChosen).findFirst().orElseThrow();
    }

    /** The size of the beams. */
    public BeamSize beam() {
      return beams.stream().filter(BeamSize::isChosen).findFirst().orElseThrow();
    }
  }

  /** What limits a member. */
  public enum Limit {
    BENDING,
    DEFLECTION,
    SHEAR,
    BEARING;

    static final List<Limit> IN_ORDER = List.of(BENDING, DEFLECTION, SHEAR, BEARING);
  }

  /**
   * A size held against the joists' spans.
   *
   * @param allowed span at the spacing, set down to the tape's division
   * @param limit what limits it
   * @param isChosen the smallest that is enough
   */
  public record JoistSize(
      String size, Length depth, Length allowed, Limit limit, boolean isChosen) {}

  /**
   * A size held against the beams' loads.
   *
   * @param used part of its strength or stiffness that the worst beam uses
   * @param bay the worst beam
   * @param limit what limits it
   * @param isChosen the least timber that is enough
   */
  public record BeamSize(
      String size, int plies, Length depth, Ratio used, String bay, Limit limit, boolean isChosen) {
    /** As the trade writes it. */
    public String name() {
      return plies + "-" + size;
    }
  }

  /**
   * A beam from post to post.
   *
   * @param name its posts
   * @param span from middle to middle of them
   * @param floor that it brings to both
   * @param from load on its first post
   * @param to load on its other post
   * @param bearing length of its end that must lie on a post
   * @param tail it runs on so far past its second post, under the rim
   */
  public record BayRow(
      String name, Length span, Area floor, Force from, Force to, Length bearing, Length tail) {}

  /**
   * A post.
   *
   * @param load at worst
   * @param mayStand how tall one of this size may be under it
   */
  public record PostRow(String mark, Force load, Length mayStand) {}

  /** What a line of the plan is. */
  public enum MemberKind {
    BEAM,
    JOIST,
    DOUBLED,
    HEADER,
    RIM,
    BLOCK
  }

  /** A line of the plan, on the ground. */
  public record Member(MemberKind kind, Segment at) {}

  /** A pier that is framed round: the round opening with its gap. */
  public record Gap(String pier, pegbook.geometry.Point centre, Length radius) {}

  /**
   * The boards.
   *
   * @param rows how many side by side
   * @param laid length of all of them as laid
   * @param pieces to cut, longest first; their marks are the rows that they lie in
   * @param joints of pieces end to end, each over a joist
   * @param aligned joints over the joist that the row before is joined on
   * @param crossings places where a board is fixed to a joist or the rim
   * @param first a step on the ground towards the first row
   * @param other how many more boards they would take were they laid the other way, roughly
   * @param covered area of the rows with their gaps
   */
  public record BoardPlan(
      int rows,
      Length laid,
      List<CutPiece> pieces,
      int joints,
      int aligned,
      int crossings,
      Point first,
      Ratio other,
      Area covered) {
    public BoardPlan {
      pieces = List.copyOf(pieces);
    }
  }
}
