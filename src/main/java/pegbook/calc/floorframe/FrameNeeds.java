package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.floorframe.BeamSizes.Beam;
import pegbook.calc.floorframe.FloorFrame.BoardPlan;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.measure.Duration;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;

/**
 * Connectors and fasteners by count, and the hours: common practice, no source. Timber and boards
 * are the cut plan's to order.
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

  List<Need> needs(String joist, String post) {
    List<Need> needs = new ArrayList<>();
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
        layout.bays().stream()
            .mapToDouble(bay -> 2 * Rounding.UP.steps(bay.length(), NAIL_EVERY))
            .sum();
    long ends =
        layout.joists().stream().mapToLong(joist -> joist.parts().size()).sum() * 2
            - pieces.tailEnds();
    return (int)
        ((beam.plies() - 1) * beams
            + NAILS_AT_RIM * (ends + 2L * pieces.rimPieces())
            + NAILS_A_BLOCK * (long) pieces.blockCount());
  }

  private int screws() {
    return SCREWS_A_CROSSING * boards.crossings();
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
