package pegbook.job;

import java.time.DayOfWeek;
import java.time.LocalDate;

/**
 * A number of days.
 *
 * @param count how many
 * @param workDays true when only days from Monday to Friday count, on which offices work; public
 *     holidays are not known here
 */
public record DaySpan(int count, boolean workDays) {
  public DaySpan {
    if (count < 0) {
      throw new IllegalArgumentException("a span of " + count + " days");
    }
  }

  /** Whether offices work on a day: Monday to Friday. */
  public static boolean isOfficeDay(LocalDate day) {
    return day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0;
  }

  /** The first day on which offices work, the day itself included. */
  public static LocalDate officeDay(LocalDate from) {
    LocalDate day = from;
    while (!isOfficeDay(day)) {
      day = day.plusDays(1);
    }
    return day;
  }

  /** The day that lies so many days after another. */
  public LocalDate after(LocalDate day) {
    return moved(day, 1);
  }

  /** The day that lies so many days before another. */
  public LocalDate before(LocalDate day) {
    return moved(day, -1);
  }

  private LocalDate moved(LocalDate day, int way) {
    if (!workDays) {
      return day.plusDays((long) way * count);
    }
    LocalDate moved = day;
    for (int left = count; left > 0; ) {
      moved = moved.plusDays(way);
      left -= isOfficeDay(moved) ? 1 : 0;
    }
    return moved;
  }
}
