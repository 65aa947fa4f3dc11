package pegbook.figures;

import java.time.LocalDate;
import java.util.Optional;
import pegbook.measure.Angle;

/**
 * What the weather may be in the weeks from a start: common practice, no source. Where the place or
 * the start is not known it may be either.
 */
public enum Season {
  HOT,
  COLD,
  EITHER;

  /** Between the tropics it may be hot all year. */
  private static final double TROPIC_DEGREES = 23.4;

  /** Months in the north that may be hot, and with half a year's shift in the south. */
  private static final int FIRST_HOT_MONTH = 5;

  private static final int LAST_HOT_MONTH = 9;
  private static final int LAST_COLD_MONTH = 3;
  private static final int FIRST_COLD_MONTH = 11;

  /**
   * The season of a start.
   *
   * @param latitude degrees north, where known
   * @param start first work day, where known
   */
  public static Season of(Optional<Angle> latitude, Optional<LocalDate> start) {
    if (latitude.isPresent() && Math.abs(latitude.get().degrees()) <= TROPIC_DEGREES) {
      return HOT;
    }
    if (latitude.isEmpty() || start.isEmpty()) {
      return EITHER;
    }
    int month = start.get().getMonthValue();
    int northern = latitude.get().degrees() > 0 ? month : (month + 5) % 12 + 1;
    if (northern >= FIRST_HOT_MONTH && northern <= LAST_HOT_MONTH) {
      return HOT;
    }
    return northern <= LAST_COLD_MONTH || northern >= FIRST_COLD_MONTH ? COLD : EITHER;
  }

  public boolean mayBeHot() {
    return this != COLD;
  }

  public boolean mayBeCold() {
    return this != HOT;
  }
}
