package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.floorframe.BeamSizes.Beam;
import pegbook.calc.floorframe.FloorFrame.BoardPlan;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.job.Frame.Boards;
import pegbook.measure.Duration;
import pegbook.measure.Unit;

/**
 * Boards, connectors and fasteners by count, and the hours: common practice, no source. Timber for
 * the frame is the cut plan's to order.
 */
final class FrameNeeds {
  /** Two rows of nails along a beam, each at 16 in, through every joint of two plies. */
  private static final double NAIL_EVERY = 0.4064;

  private static final int NAILS_AT_RIM = 3;
  private static final int NAILS_A_BLOCK = 4;
  private static final int SCREWS_A_CROSSING = 2;

  /** One in ten more: some are bent, some fall into the grass. */
  private static final double SPARE = 1.1;

  private static final double BOX = 100;

  private final JoistLayout layout;
  private final LoadPath path;
  private final FramePieces pieces;
  private final Beam beam;
  private final BoardPlan boards;

  FrameNeeds(JoistLayout layout, LoadPath path, FramePieces pieces, Beam beam, BoardPlan boards) {
    this.layout = layout;
    this.path = path;
    this.pieces = pieces;
    this.beam = beam;
    this.boards = boards;
  }

  List<Need> needs(Boards wanted, String joist, String post) {
    List<Need> needs = new ArrayList<>();
    Map<String, Argument> board = new LinkedHashMap<>();
    board.put("width", Argument.of(wanted.width()));
    board.put("thick", Argument.of(wanted.thickness()));
    board.put("stock", Argument.of(wanted.sold()));
    needs.add(
        new Need(
            "floor-boards",
            board,
            boards.laid().dividedBy(boards.sold()),
            boards.stock(),
            Unit.NONE,
            Optional.empty()));
    needs.add(count("post-bases", "size", post, layout.posts().size()));
    needs.add(count("post-caps", "size", post, layout.posts().size()));
    needs.add(count("joist-ties", "size", joist, pieces.restings()));
    if (!path.headers().isEmpty()) {
      needs.add(count("joist-hangers", "size", joist, pieces.tailEnds()));
      needs.add(count("header-hangers", "size", joist, 2 * path.headers().size()));
    }
    needs.add(box("frame-nails", nails()));
    needs.add(box("board-screws", screws()));
    return needs;
  }

  private static Need count(String id, String word, String size, int count) {
    return new Need(
        id, Map.of(word, Argument.words(size)), count, count, Unit.NONE, Optional.empty());
  }

  /** With its spare, set up to whole hundreds. */
  private static Need box(String id, int count) {
    return new Need(
        id,
        Map.of(),
        count,
        Math.ceil(count * SPARE / BOX - 1e-9) * BOX,
        Unit.NONE,
        Optional.empty());
  }

  private int nails() {
    double beams =
        layout.bays().stream().mapToDouble(bay -> 2 * Math.ceil(bay.length() / NAIL_EVERY)).sum();
    long ends =
        layout.joists().stream().mapToLong(joist -> joist.parts().size()).sum() * 2
            - pieces.tailEnds();
    return (int)
        ((beam.plies() - 1) * beams
            + NAILS_AT_RIM * (ends + 2L * pieces.rimPieces())
            + NAILS_A_BLOCK * (long) pieces.blockCount());
  }

  /** Every board over every joist under it, and at the rim at both ends. */
  private int screws() {
    double spacing = boards.laid().metres() / Math.max(1, boards.rows());
    double wide =
        layout.joists().stream().mapToDouble(Joist::y).max().orElse(0)
            - layout.joists().stream().mapToDouble(Joist::y).min().orElse(0);
    double lines =
        layout.joists().isEmpty()
            ? 0
            : layout.joists().get(layout.joists().size() - 1).line() + 1 + 2;
    double part = wide > 0 ? Math.min(1, spacing / wide) : 1;
    return (int) Math.ceil(SCREWS_A_CROSSING * boards.rows() * lines * part);
  }

  /** Hours for each piece of the frame, each post, each square metre of boards. */
  List<Task> tasks(int pieceCount) {
    double square = boards.covered().squareMetres();
    double posts = layout.posts().size();
    return List.of(
        new Task(
            Task.Kind.FRAME,
            Optional.empty(),
            new Duration(pieceCount * 0.12 + posts * 0.3),
            new Duration(pieceCount * 0.3 + posts * 0.8)),
        new Task(
            Task.Kind.BOARDS,
            Optional.empty(),
            new Duration(square * 0.25),
            new Duration(square * 0.6)));
  }
}
