package pegbook.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pegbook.measure.Duration;

/**
 * What the days must reckon with.
 *
 * @param rainDays work days that may be lost to weather
 * @param machine a machine that comes on one day
 * @param utility the service that marks buried lines
 * @param inspection the inspector
 * @param loadAfter from a pour to the day on which the footing may be loaded
 * @param deadline day by which the last footing is to bear load
 * @param estimates hours that stand in place of the packet's own
 */
public record Plan(
    int rainDays,
    Optional<Machine> machine,
    Utility utility,
    Inspection inspection,
    DaySpan loadAfter,
    Optional<LocalDate> deadline,
    List<Estimate> estimates) {
  /** A job that says nothing about its days. */
  public static final Plan PLAIN =
      new Plan(
          0,
          Optional.empty(),
          new Utility(new DaySpan(3, true), Optional.empty()),
          new Inspection(new DaySpan(2, true), Looks.STEEL),
          new DaySpan(7, false),
          Optional.empty(),
          List.of());

  public Plan {
    estimates = List.copyOf(estimates);
  }

  /**
   * A machine with its date.
   *
   * @param what its name
   * @param purpose what it does
   * @param date the only day on which it is there
   */
  public record Machine(String what, Purpose purpose, LocalDate date) {}

  /** What a machine does. */
  public enum Purpose {
    /** Bores the holes. */
    DIGGING,
    /** Mixes or brings the concrete. */
    POURING
  }

  /**
   * The service that marks buried lines.
   *
   * @param notice from the request to the answer
   * @param valid how long its marks may be dug by; absent: by the published age
   */
  public record Utility(DaySpan notice, Optional<DaySpan> valid) {}

  /**
   * The inspector.
   *
   * @param notice from the call to the visit
   * @param looks what is looked at
   */
  public record Inspection(DaySpan notice, Looks looks) {}

  /** What an inspector looks at. */
  public enum Looks {
    /** The holes with their forms and steel, once, before the pour. */
    STEEL,
    /** The bare holes before any gravel, and again with their steel. */
    OPEN_HOLE_AND_STEEL
  }

  /** Work whose hours a job may set. */
  public enum Work {
    DIG,
    CARRY_SPOIL,
    GRAVEL,
    FORM,
    STEEL,
    POUR,
    STRIP
  }

  /**
   * Person-hours that stand in place of the packet's own.
   *
   * @param work what
   * @param hole at which mark; absent: at each that no other estimate names
   * @param least all going well
   * @param most all going badly
   */
  public record Estimate(Work work, Optional<String> hole, Duration least, Duration most) {}
}
