package pegbook.calc.pourday;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.measure.Duration;

/**
 * What the days of pouring need to know.
 *
 * @param batchings one for holes that are poured alike; none where a truck brings the concrete
 * @param afters one for each day of pouring
 */
public record PourDay(
    List<Batching> batchings, List<After> afters, List<Finding> findings, List<Working> workings)
    implements Result {
  public PourDay {
    batchings = List.copyOf(batchings);
    afters = List.copyOf(afters);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /**
   * The batches of a hole.
   *
   * @param marks the holes, each of which takes so much
   * @param kind their only or last pour, or the first lift
   * @param bagsOfBatch whole bags in a batch, the last may have fewer; 0 where the crew mixes its
   *     own
   * @param batches how many
   * @param each longest time from batch to batch that the window leaves
   * @param half batches that are in when half the window is over
   */
  public record Batching(
      List<String> marks, Task.Kind kind, int bagsOfBatch, int batches, Duration each, int half) {
    public Batching {
      marks = List.copyOf(marks);
    }
  }

  /**
   * What follows a day of pouring.
   *
   * @param day its number
   * @param strip first day on which forms may come off
   * @param load first day on which its footings may be loaded
   */
  public record After(int day, Optional<LocalDate> strip, Optional<LocalDate> load) {}

  /** The batches of a hole's pour. */
  public Optional<Batching> batching(String mark, Task.Kind kind) {
    return batchings.stream()
        .filter(each -> each.kind() == kind && each.marks().contains(mark))
        .findFirst();
  }

  /** What follows a day. */
  public Optional<After> after(int day) {
    return afters.stream().filter(each -> each.day() == day).findFirst();
  }
}
