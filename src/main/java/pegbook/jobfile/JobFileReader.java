package pegbook.jobfile;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import pegbook.job.Job;
import pegbook.jobfile.JsonTree.Parsed;
import pegbook.measure.UnitSystem;

/**
 * Reads a job file: bytes to text, text to a tree, tree to records, records against each other; see
 * the package. Every problem that can be told is told in one run.
 */
public final class JobFileReader {
  private JobFileReader() {}

  /**
   * Reads a job.
   *
   * @param fileName as messages name the file; without its folder and ending it is the job's name
   * @param bytes what stands in the file
   */
  public static JobFile read(String fileName, byte[] bytes) {
    Report report = new Report(fileName);
    String name = JobName.of(fileName, report);
    Optional<Parsed> parsed = JobText.of(bytes, report).flatMap(text -> JsonTree.of(text, report));
    if (parsed.isEmpty()) {
      return new JobFile.Refused(report.problems());
    }
    Fields fields = fields(parsed.get().root(), report);
    if (report.hasProblems()) {
      return new JobFile.Refused(report.problems());
    }
    Job job = JobKeys.job(name, fields, report.defaults());
    return new JobFile.Read(job, new LineMap(parsed.get().places()), sha256(bytes));
  }

  private static Fields fields(Node.Section root, Report report) {
    // Units come first: they decide which defaults hold and how limits are told.
    Node.Entry units = root.entries().get(HeadingKeys.UNITS.name());
    if (units != null && units.value() instanceof Node.Text text && text.value().equals("metric")) {
      report.printIn(UnitSystem.METRIC);
    }
    Fields fields = Fields.read(root, JobKeys.ALL, report);
    JobMarks marks = JobMarks.of(report);
    MarkChecks.look(marks, report);
    HoleChecks.look(marks, report);
    DepthChecks.look(marks, report);
    PlanChecks.look(fields, report);
    PriceChecks.look(report);
    return fields;
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
