package pegbook.job;

import java.time.LocalDate;
import pegbook.measure.Angle;

/**
 * How far magnetic north lies from true north; given, never computed.
 *
 * @param value east of true north is positive
 * @param from whose word it is
 * @param date for which day it holds: it changes from year to year
 */
public record Declination(Angle value, String from, LocalDate date) {}
