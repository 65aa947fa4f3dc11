package pegbook.job;

import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.measure.Ratio;
import pegbook.measure.Volume;

/**
 * What happens to dug soil.
 *
 * @param cart loose volume of one cart load
 * @param swell how much more room loose soil takes than in the ground; absent: by soil
 * @param place where the carts tip, where there is such a place
 */
public record Spoil(Volume cart, Optional<Ratio> swell, Optional<Point> place) {}
