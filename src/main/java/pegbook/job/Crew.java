package pegbook.job;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
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
 * @param lifts how bags are lifted; none: as is usual
 */
public record Crew(
    int people,
    Duration hoursPerDay,
    Optional<LocalDate> start,
    SortedSet<DayOfWeek> workDays,
    SortedSet<Language> daySheets,
    List<Lift> lifts) {
  public Crew {
    lifts = List.copyOf(lifts);
    daySheets = java.util.Collections.unmodifiableSortedSet(new java.util.TreeSet<>(daySheets));
    workDays = java.util.Collections.unmodifiableSortedSet(new java.util.TreeSet<>(workDays));
  }
}
