package pegbook.job;

import pegbook.measure.Density;

/**
 * What the soil weighs as it lies in the ground.
 *
 * @param value mass over volume
 * @param from whose figure it is
 */
public record UnitWeight(Density value, String from) {}
