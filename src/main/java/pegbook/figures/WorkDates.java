package pegbook.figures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import pegbook.job.Crew;

/** Dates of working days. */
public final class WorkDates {
  private WorkDates() {}

  /** The first days from the crew's start on which it works; none without a start. */
  public static List<LocalDate> first(Crew crew, int count) {
    List<LocalDate> dates = new ArrayList<>();
    if (crew.start().isEmpty()) {
      return dates;
    }
    LocalDate day = crew.start().get();
    while (dates.size() < count) {
      if (crew.workDays().isEmpty() || crew.workDays().contains(day.getDayOfWeek())) {
        dates.add(day);
      }
      day = day.plusDays(1);
    }
    return dates;
  }
}
