package pegbook.job;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The utility service has marked the ground.
 *
 * @param confirmed the day on which every service had answered and the marks were seen
 * @param ticket the service's number for it
 */
public record UtilityMarking(LocalDate confirmed, Optional<String> ticket) {}
