package pegbook.job;

import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Volume;

/**
 * How things are sold and fetched here.
 *
 * @param load the most that is fetched at a time, where it is known
 * @param tube length in which form tubes are sold
 * @param gravelBag gravel in a bag, where little is bought
 */
public record Shop(Optional<Mass> load, Length tube, Volume gravelBag) {}
