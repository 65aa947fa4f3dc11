package pegbook.job;

import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * Bolts cast into the top of a pier, evenly round a circle about its centre.
 *
 * @param count how many
 * @param size diameter of a bolt
 * @param circle diameter of the circle through the middles of the bolts
 * @param above how far a bolt stands over the concrete
 * @param embedded how far it goes into the concrete
 * @param first direction of the first bolt from the centre, clockwise from true north
 */
public record Anchors(
    int count, Length size, Length circle, Length above, Length embedded, Angle first) {}
