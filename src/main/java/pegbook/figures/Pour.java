package pegbook.figures;

import pegbook.measure.Duration;
import pegbook.measure.Volume;

/**
 * The concrete of one hole, or of one of its two lifts, as it is to be placed in one go.
 *
 * @param mark the hole
 * @param kind {@link Task.Kind#FIRST_LIFT}, or {@link Task.Kind#POUR} for the only or the last
 * @param poured concrete to mix or to order
 * @param batches turns of the mixer or the tub; none from a truck
 * @param bagsInBatch whole bags that are mixed at a time; 0 where the crew mixes its own
 * @param most how long the crew needs to place it, all going badly
 * @param window what the concrete allows from its first batch, or from the truck's arrival
 */
public record Pour(
    String mark,
    Task.Kind kind,
    Volume poured,
    int batches,
    int bagsInBatch,
    Duration most,
    Duration window) {}
