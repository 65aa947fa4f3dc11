package pegbook.jobfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A small job to start from: it can be printed as it is, and every value in it is to be edited. */
public final class NewJob {
  private NewJob() {}

  /** Whether a name can be a job's: it names the file and the packet's folder. */
  public static boolean isName(String name) {
    return JobName.isPlain(name);
  }

  /**
   * The text of a new job file.
   *
   * @param name the job's name, at first also its title
   * @throws IllegalArgumentException when it cannot be a job's name
   */
  public static String text(String name) {
    if (!isName(name)) {
      throw new IllegalArgumentException("no name for a job: " + Shown.quoted(name));
    }
    // A job's name holds nothing that JSON would have to escape.
    return template().replace("{title}", "\"" + name + "\"");
  }

  private static String template() {
    try (InputStream in = NewJob.class.getResourceAsStream("new-job.json")) {
      if (in == null) {
        throw new IllegalStateException("new-job.json is not in the jar");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
