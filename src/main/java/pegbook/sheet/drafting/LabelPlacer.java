package pegbook.sheet.drafting;

import java.util.List;
import java.util.Optional;
import pegbook.sheet.drawing.Spot;

/**
 * Finds a place for a label near what it names.
 *
 * <p>Places are tried in a fixed order: sixteen directions at growing distances. Those over other
 * text, outside the canvas, or whose leader would run through text, are out; of the rest the one
 * that covers the fewest drawn lines, then the nearest, is taken. A label that stands away from its
 * place, or as near to another place that has a name, gets a leader line, which later text keeps
 * off.
 */
public final class LabelPlacer {
  /** Distances tried, in millimetres beyond the nearest that clears what is named. */
  private static final double[] DISTANCES = {0, 2, 4, 7, 10, 14, 18, 23, 29, 36, 44, 55, 70};

  /** East first, then as a writer looks: upper right, lower right, above, below, left. */
  private static final double[] DIRECTIONS = {
    0, 45, -45, 90, -90, 180, 135, -135, 22.5, -22.5, 67.5, -67.5, 112.5, -112.5, 157.5, -157.5
  };

  /** From this distance on a label needs a leader. */
  private static final double LEADER_FROM_MM = 3;

  /** A line under the text weighs as much as this distance. */
  private static final double LINE_WEIGHT_MM = 6;

  /** A label must be this much nearer to its own place than to others, or have a leader. */
  private static final double NEARER_MM = 1;

  /** A leader shorter than this would not be seen. */
  private static final double LEAST_LEADER_MM = 2;

  /** A leader where none is needed for the distance weighs as much as this distance. */
  private static final double LEADER_WEIGHT_MM = 1;

  private final Canvas canvas;
  private final List<Spot> places;

  public LabelPlacer(Canvas canvas) {
    this(canvas, List.of());
  }

  private LabelPlacer(Canvas canvas, List<Spot> places) {
    this.canvas = canvas;
    this.places = List.copyOf(places);
  }

  /** The same for one of several places that all get names, so that none reads as another's. */
  public LabelPlacer among(List<Spot> all) {
    return new LabelPlacer(canvas, all);
  }

  /** In any direction but the wanted one a place costs this much more. */
  private static final double UNWANTED_MM = 0.5;

  private record Candidate(Spot middle, Plate plate, Optional<Canvas.Stroke> leader) {}

  /**
   * Places a label beside a spot.
   *
   * @param target the place it names
   * @param clearMm how far from it the label keeps at least
   * @return whether there was room
   */
  public boolean place(Wording wording, Spot target, double clearMm) {
    return place(wording, target, clearMm, DIRECTIONS[0]);
  }

  /** What is to be placed, measured once. */
  private record Block(Wording wording, double halfWidthMm, double halfHeightMm) {
    Plate at(Spot middle) {
      return new Plate(middle, halfWidthMm, halfHeightMm, 0);
    }
  }

  private Block block(Wording wording) {
    return new Block(wording, wording.widthMm(canvas.lettering()) / 2, wording.heightMm() / 2);
  }

  /**
   * Places a label over the middle of an area, where no line runs, else beside it.
   *
   * @param middle the middle of what it names
   */
  public boolean placeOver(Wording wording, Spot middle, double clearMm, double firstDegrees) {
    Plate plate = block(wording).at(middle);
    if (canvas.isFree(plate) && canvas.strokesThrough(plate) == 0) {
      canvas.write(wording.centredOn(middle), plate);
      return true;
    }
    return place(wording, middle, clearMm, firstDegrees);
  }

  /** Beside a spot, trying one direction (degrees anticlockwise from x) before all others. */
  public boolean place(Wording wording, Spot target, double clearMm, double firstDegrees) {
    Search search = new Search(block(wording), target, clearMm);
    for (double distance : DISTANCES) {
      search.look(distance, firstDegrees, 0);
      for (double degrees : DIRECTIONS) {
        search.look(distance, degrees, UNWANTED_MM);
      }
    }
    search.best.ifPresent(candidate -> write(wording, candidate));
    return search.best.isPresent();
  }

  /** The search for one label's place; what cannot be better than the best is not looked into. */
  private final class Search {
    private final Block block;
    private final Spot target;
    private final double clearMm;
    private Optional<Candidate> best = Optional.empty();
    private double least = Double.POSITIVE_INFINITY;

    private Search(Block block, Spot target, double clearMm) {
      this.block = block;
      this.target = target;
      this.clearMm = clearMm;
    }

    /**
     * Looks at one place.
     *
     * @param extra what it costs besides
     */
    private void look(double distance, double degrees, double extra) {
      if (distance + extra >= least) {
        return;
      }
      Spot edge = Spots.towards(target, degrees, clearMm + distance);
      double right = StrictMath.cos(StrictMath.toRadians(degrees));
      double up = StrictMath.sin(StrictMath.toRadians(degrees));
      Spot middle =
          Spots.shifted(
              edge, block.halfWidthMm() * softSign(right), block.halfHeightMm() * softSign(up));
      Plate plate = block.at(middle);
      if (!canvas.isFree(plate) || !canvas.hasRoomToClear(plate)) {
        return;
      }
      boolean doubtful = distance < LEADER_FROM_MM && isDoubtful(plate, target);
      if (doubtful && distance < LEAST_LEADER_MM) {
        return;
      }
      Optional<Canvas.Stroke> leader =
          distance < LEADER_FROM_MM && !doubtful
              ? Optional.empty()
              : Optional.of(
                  new Canvas.Stroke(start(target, clearMm, degrees), nearest(plate, edge)));
      if (leader.isPresent() && !canvas.isClear(leader.get().from(), leader.get().to())) {
        return;
      }
      double cost =
          distance
              + extra
              + (doubtful ? LEADER_WEIGHT_MM : 0)
              + LINE_WEIGHT_MM * canvas.strokesThrough(plate.grown(0.3));
      if (cost < least) {
        least = cost;
        best = Optional.of(new Candidate(middle, plate, leader));
      }
    }
  }

  /** Whether a label there could be read as the name of another place. */
  private boolean isDoubtful(Plate plate, Spot target) {
    double own = plate.distanceMm(target);
    return places.stream()
        .filter(place -> !place.equals(target))
        .anyMatch(place -> plate.distanceMm(place) < own + NEARER_MM);
  }

  /** From -1 to 1: the plate is shifted by its whole half beside, by nothing above or below. */
  private static double softSign(double share) {
    return Math.max(-1, Math.min(1, share * 1.5));
  }

  /** Where a leader begins: at the edge of what is named. */
  private static Spot start(Spot target, double clearMm, double degrees) {
    return Spots.towards(target, degrees, Math.max(0, clearMm - Canvas.TEXT_GAP_MM));
  }

  /** Where a leader ends: on the plate's edge, nearest to where it comes from. */
  private static Spot nearest(Plate plate, Spot from) {
    double x = plate.centre().x();
    double y = plate.centre().y();
    double margin = Canvas.TEXT_GAP_MM;
    return new Spot(
        Math.max(
            x - plate.halfWidthMm() - margin, Math.min(x + plate.halfWidthMm() + margin, from.x())),
        Math.max(
            y - plate.halfHeightMm() - margin,
            Math.min(y + plate.halfHeightMm() + margin, from.y())));
  }

  private void write(Wording wording, Candidate candidate) {
    canvas.write(wording.centredOn(candidate.middle()), candidate.plate());
    candidate.leader().ifPresent(canvas::leader);
  }
}
