package pegbook.job;

import java.util.Optional;
import pegbook.measure.Length;

/**
 * The footings that carry the floor, all alike.
 *
 * @param hole diameter dug
 * @param depth what the job asks for; absent: as the frost and the code say
 * @param gravel thickness after compaction, under the concrete
 * @param top height of the concrete above the ground at the mark; zero is flush
 * @param tube the form, where there is one
 * @param steel reinforcement, where there is any
 * @param side what keeps the grip of frost off; absent: the concrete stands against the soil
 * @param widenings bell, pad and cap, where there are any
 */
public record Supports(
    Length hole,
    Optional<Length> depth,
    Length gravel,
    Length top,
    Optional<Tube> tube,
    Optional<Steel> steel,
    Optional<Side> side,
    Widenings widenings) {}
