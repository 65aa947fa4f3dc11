package pegbook.packet;

import java.util.List;
import pegbook.figures.Finding;
import pegbook.figures.Placement;
import pegbook.figures.Result;
import pegbook.job.Job;

/**
 * All figures of one packet.
 *
 * @param job the checked job
 * @param jobHash SHA-256 of the job file, hexadecimal
 * @param placement the figure on the ground
 */
public record Packet(Job job, String jobHash, Placement placement) {

  /** Every calculator's result, in the order of the packet's sheets. */
  public List<Result> results() {
    return List.of(placement);
  }

  /**
   * All findings: stops first, then questions, then notes; each kind in the order of the sheets.
   */
  public List<Finding> findings() {
    return results().stream()
        .flatMap(result -> result.findings().stream())
        .sorted(java.util.Comparator.comparing(Finding::kind))
        .toList();
  }

  /** All workings with their numbers. */
  public NumberedWorkings workings() {
    return NumberedWorkings.of(results());
  }
}
