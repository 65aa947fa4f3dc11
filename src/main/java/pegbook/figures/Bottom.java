package pegbook.figures;

import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Pressure;

/**
 * A footing on its bottom.
 *
 * @param mark the footing
 * @param width diameter of the concrete that stands on the bottom
 * @param pressure on the ground, the load in the middle
 * @param allowable what the ground may carry, where that is known
 */
public record Bottom(String mark, Length width, Pressure pressure, Optional<Pressure> allowable) {}
