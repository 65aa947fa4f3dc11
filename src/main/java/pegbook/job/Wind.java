package pegbook.job;

import java.util.Optional;
import pegbook.measure.Area;
import pegbook.measure.Pressure;

/**
 * What wind lifts: a roof or a dome over the floor.
 *
 * @param uplift net upward pressure, for allowable stresses
 * @param area of the roof; absent: as large as the floor
 * @param from whose figure it is
 */
public record Wind(Pressure uplift, Optional<Area> area, String from) {}
