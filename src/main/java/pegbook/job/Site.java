package pegbook.job;

import java.util.List;
import java.util.Optional;
import pegbook.geometry.Polygon;
import pegbook.measure.Length;

/**
 * The land round the structure; places in metres east and north of the outline's centre.
 *
 * @param boundary lot lines
 * @param setback the distance that the structure keeps from every lot line
 * @param features fixed things: trees, wells, pipes, wires, buildings
 */
public record Site(Optional<Polygon> boundary, Optional<Length> setback, List<Feature> features) {
  public Site {
    features = List.copyOf(features);
  }
}
