package pegbook.job;

import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Mass;

/**
 * An isolated footing that carries an instrument.
 *
 * @param id its name, P1 and so on
 * @param at where it stands, east and north of the outline's centre
 * @param hole diameter dug
 * @param depth what the job asks for; absent: as the frost and the code say
 * @param gravel thickness after compaction; zero is none
 * @param top height of the concrete above the ground at the mark
 * @param tube the form, where there is one
 * @param steel reinforcement, where there is any
 * @param instrument mass it carries, where given
 * @param gap clear distance kept between the pier and the floor all round
 * @param push sideways force of a hand at its top, for which the sway is asked
 * @param wind sideways force of wind on the instrument, where given
 * @param anchors bolts cast into its top, where there are any
 * @param sleeve for cables, where there is one
 * @param uplift upward force of wind on what stands on it, where given
 * @param side what keeps the grip of frost off; absent: the concrete stands against the soil
 * @param widenings bell, pad and cap, where there are any
 */
public record Pier(
    String id,
    Point at,
    Length hole,
    Optional<Length> depth,
    Length gravel,
    Length top,
    Optional<Tube> tube,
    Optional<Steel> steel,
    Optional<Mass> instrument,
    Length gap,
    Force push,
    Optional<Force> wind,
    Optional<Anchors> anchors,
    Optional<Sleeve> sleeve,
    Optional<Force> uplift,
    Optional<Side> side,
    Widenings widenings) {}
