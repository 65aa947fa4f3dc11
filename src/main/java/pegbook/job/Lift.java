package pegbook.job;

import pegbook.measure.Length;

/**
 * A way in which bags are lifted on this job.
 *
 * @param name what is lifted whereto, as the packet calls it
 * @param from height of the hands above the ground at its start
 * @param to the same at its end
 * @param reach from the ankles forward to the hands, where they are furthest
 * @param perMinute how often, for an hour at most
 */
public record Lift(String name, Length from, Length to, Length reach, int perMinute) {}
