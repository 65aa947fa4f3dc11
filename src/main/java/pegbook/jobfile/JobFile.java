package pegbook.jobfile;

import java.util.List;
import pegbook.job.Job;

/** What came of reading a job file: the job, or every problem in it. */
public sealed interface JobFile {

  /**
   * The file holds a job.
   *
   * @param job the job
   * @param lines where its values stand in the file
   * @param sha256 of the file's bytes, in lower-case hexadecimal
   */
  record Read(Job job, LineMap lines, String sha256) implements JobFile {}

  /**
   * The file holds no job that can be printed.
   *
   * @param problems at least one, in the order of the file
   */
  record Refused(List<Problem> problems) implements JobFile {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
