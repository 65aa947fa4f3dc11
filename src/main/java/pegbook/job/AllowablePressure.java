package pegbook.job;

import pegbook.measure.Pressure;

/**
 * What the soil may carry.
 *
 * @param value the pressure
 * @param gross true when the footing's own weight counts against it, false when it is net of it
 * @param from whose word it is
 */
public record AllowablePressure(Pressure value, boolean gross, String from) {}
