package pegbook;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import pegbook.jobfile.NewJob;

/** Writes a small job file to start from; never over a file that is there. */
final class StartJob {
  private StartJob() {}

  /**
   * Writes {@code folder/name.json}.
   *
   * @return the exit code
   */
  static int write(Path folder, String name, PrintWriter out, PrintWriter err) {
    String stem = name.endsWith(".json") ? name.substring(0, name.length() - 5) : name;
    if (!NewJob.isName(stem)) {
      err.println(
          "new: expected a name of letters, digits, hyphens and underscores, found \""
              + name
              + "\"; try: pegbook new my-deck");
      return ExitCode.WRONG_USE;
    }
    Path file = folder.resolve(stem + ".json");
    try {
      Files.createDirectories(folder);
      Files.writeString(file, NewJob.text(stem), StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      err.println("new: " + file + " is there already; choose another name or move it away");
      return ExitCode.WRONG_USE;
    } catch (IOException e) {
      err.println("new: cannot write " + file + ": " + e);
      return ExitCode.WRONG_USE;
    }
    out.println(file + " is written. Edit it, then: pegbook print " + file);
    return ExitCode.DONE;
  }
}
