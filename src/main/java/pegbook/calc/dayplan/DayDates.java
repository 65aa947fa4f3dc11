package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.job.Crew;
import pegbook.job.DaySpan;
import pegbook.job.Job;
import pegbook.job.Plan;

/**
 * The days on which the crew works, numbered from 0, and moments on one scale: days since 1970
 * where the job names its first day, else numbers of work days.
 */
final class DayDates {
  /** Weeks without a work day cannot be, but years of work are not planned. */
  private static final int MOST_DAYS = 4000;

  private final Job job;
  private final Optional<LocalDate> start;
  private final List<LocalDate> dates = new ArrayList<>();
  private int lost;

  /**
   * The days of a job.
   *
   * @param lost work days that the weather takes, from the second day on
   */
  DayDates(Job job, int lost) {
    this.job = job;
    this.start = start(job);
    this.lost = lost;
  }

  /**
   * The day on which the work begins. Once holes are dug the packet plans what is left, and that is
   * not done before it was issued.
   */
  static Optional<LocalDate> start(Job job) {
    Optional<LocalDate> issued = job.heading().issued().filter(any -> !job.field().dug().isEmpty());
    return job.crew().start().map(first -> issued.filter(first::isBefore).orElse(first));
  }

  boolean isDated() {
    return start.isPresent();
  }

  /** The date of a work day, where there are dates. */
  Optional<LocalDate> date(int day) {
    if (start.isEmpty()) {
      return Optional.empty();
    }
    while (dates.size() <= day) {
      addNext(start.get());
    }
    return Optional.of(dates.get(day));
  }

  private void addNext(LocalDate first) {
    if (dates.size() > MOST_DAYS) {
      throw new IllegalStateException("more than " + MOST_DAYS + " work days");
    }
    LocalDate day = dates.isEmpty() ? first : dates.get(dates.size() - 1).plusDays(1);
    while (!isWorked(day) || isLost(day)) {
      day = day.plusDays(1);
    }
    dates.add(day);
  }

  /** A day of the crew, or that of the machine. */
  private boolean isWorked(LocalDate day) {
    Crew crew = job.crew();
    return crew.workDays().isEmpty()
        || crew.workDays().contains(day.getDayOfWeek())
        || isMachines(day);
  }

  private boolean isMachines(LocalDate day) {
    return job.plan().machine().map(Plan.Machine::date).equals(Optional.of(day));
  }

  private boolean isLost(LocalDate day) {
    boolean rains = lost > 0 && !dates.isEmpty() && !isMachines(day);
    lost -= rains ? 1 : 0;
    return rains;
  }

  /** The moment of a work day. */
  long moment(int day) {
    return date(day).map(LocalDate::toEpochDay).orElse((long) day);
  }

  /** A moment as a date, where there are dates. */
  Optional<LocalDate> dateOf(long moment) {
    return isDated() ? Optional.of(LocalDate.ofEpochDay(moment)) : Optional.empty();
  }

  /** The moment of a date; without dates always past. */
  long moment(LocalDate date) {
    return isDated() ? date.toEpochDay() : Long.MIN_VALUE;
  }

  /**
   * When an office comes after a work day: on its next work day, and not before its notice has run
   * since the packet was issued. After day -1: from the first day on.
   */
  long visit(int day) {
    if (!isDated()) {
      return day + 1L;
    }
    LocalDate next =
        DaySpan.officeDay(day < 0 ? date(0).orElseThrow() : date(day).orElseThrow().plusDays(1));
    Optional<LocalDate> noticed =
        job.heading().issued().map(issued -> job.plan().inspection().notice().after(issued));
    return noticed.filter(next::isBefore).map(DaySpan::officeDay).orElse(next).toEpochDay();
  }

  /** When the utility service has answered a request made after a work day's marks. */
  long answered(int day) {
    if (!isDated()) {
      return day;
    }
    return job.plan().utility().notice().after(request(day)).toEpochDay();
  }

  /**
   * The day on which the utility service can be asked, once the marks of a work day are painted.
   */
  LocalDate request(int day) {
    return DaySpan.officeDay(date(day).orElseThrow());
  }
}
