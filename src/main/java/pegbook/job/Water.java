package pegbook.job;

import java.util.Optional;
import pegbook.measure.Length;

/**
 * Ground water.
 *
 * @param depth below the ground
 * @param from whose word it is, where given
 */
public record Water(Length depth, Optional<String> from) {}
