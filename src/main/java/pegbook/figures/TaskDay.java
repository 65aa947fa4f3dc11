package pegbook.figures;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A working day on which a kind of work is done.
 *
 * @param kind the work
 * @param day number of the working day, from 1
 * @param date where the job names its first day
 */
public record TaskDay(Task.Kind kind, int day, Optional<LocalDate> date) {}
