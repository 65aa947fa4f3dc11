package pegbook.testing;

import java.nio.file.Path;

/** Where tests print to. Each process of tests has its own, for several run at once. */
public final class WorkFolder {
  private static final String PROCESS = System.getProperty("pegbook.test.process", "tests-1");

  private WorkFolder() {}

  /** A folder of this process, which may not exist yet. */
  public static Path of(String name) {
    return Path.of("target", PROCESS, name);
  }
}
