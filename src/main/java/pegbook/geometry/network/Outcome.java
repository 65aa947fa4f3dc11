package pegbook.geometry.network;

import java.util.List;

/** What an adjustment comes to. */
public sealed interface Outcome permits Adjustment, Outcome.Undetermined, Outcome.Astray {

  /**
   * The distances do not fix every point.
   *
   * @param points names of the points that can still move, in the network's order; all points that
   *     are not fixed when the figure as a whole can be shifted or turned
   */
  record Undetermined(List<String> points) implements Outcome {
    public Undetermined {
      points = List.copyOf(points);
    }
  }

  /**
   * The steps did not come to rest: the distances contradict one another grossly, or the starting
   * places are far off.
   *
   * @param worst name of the point that still moved most
   */
  record Astray(String worst) implements Outcome {}

  /**
   * The adjustment.
   *
   * @throws IllegalStateException when there is none
   */
  default Adjustment adjusted() {
    if (this instanceof Adjustment adjustment) {
      return adjustment;
    }
    throw new IllegalStateException("not adjusted: " + this);
  }
}
