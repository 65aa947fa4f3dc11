package pegbook.job;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SortedSet;
import pegbook.measure.Duration;

/**
 * Who works and when.
 *
 * @param people number of people digging and pouring
 * @param hoursPerDay working time of each on a work day
 * @param start first work day
 * @param workDays days of the week on which they work
 * @param daySheets languages in which each day sheet prints
 */
public record Crew(
    int people,
    Duration hoursPerDay,
    Optional<LocalDate> start,
    SortedSet<DayOfWeek> workDays,
    SortedSet<Language> daySheets) {
  public Crew {
    daySheets = java.util.Collections.unmodifiableSortedSet(new java.util.TreeSet<>(daySheets));
    workDays = java.util.Collections.unmodifiableSortedSet(new java.util.TreeSet<>(workDays));
  }
}
