package pegbook.job;

import pegbook.measure.Ratio;
import pegbook.measure.Temperature;

/**
 * The hottest hours that the work days may bring.
 *
 * @param temperature of the air in the shade
 * @param humidity of the air at that time, relative
 */
public record ExpectedHeat(Temperature temperature, Ratio humidity) {}
