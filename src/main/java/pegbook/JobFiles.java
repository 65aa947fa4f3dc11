package pegbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Finds the job files that a command line names. */
final class JobFiles {
  private JobFiles() {}

  /** What a command line names cannot be used; the message says why and what to do. */
  static final class Unusable extends Exception {
    private static final long serialVersionUID = 1;

    Unusable(String message) {
      super(message);
    }
  }

  /**
   * The job files of files and folders, in order; those of a folder by name, its schemas left out.
   *
   * @throws Unusable when a place is not there, a folder holds no job, or two jobs would be printed
   *     into one folder
   */
  static List<Path> find(List<Path> places) throws Unusable {
    List<Path> files = new ArrayList<>();
    for (Path place : places) {
      if (Files.isDirectory(place)) {
        files.addAll(inFolder(place));
      } else if (Files.isRegularFile(place)) {
        files.add(place);
      } else {
        throw new Unusable(
            place
                + ": expected a job file or a folder of them, found nothing there; to begin one:"
                + " pegbook new NAME");
      }
    }
    Map<String, Path> byName = new LinkedHashMap<>();
    for (Path file : files) {
      Path other = byName.putIfAbsent(name(file), file);
      if (other != null && !other.equals(file)) {
        throw new Unusable(
            other + " and " + file + " would be printed into one folder; rename one of them");
      }
    }
    return List.copyOf(byName.values());
  }

  /** Name of a job: its file's name without ".json". */
  static String name(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.endsWith(".json") ? name.substring(0, name.length() - 5) : name;
  }

  private static List<Path> inFolder(Path folder) throws Unusable {
    try (Stream<Path> entries = Files.list(folder)) {
      List<Path> files =
          entries
              .filter(Files::isRegularFile)
              .filter(file -> isJob(String.valueOf(file.getFileName())))
              .sorted()
              .toList();
      if (files.isEmpty()) {
        throw new Unusable(folder + " holds no job file; to begin one: pegbook new NAME");
      }
      return files;
    } catch (IOException e) {
      throw new Unusable(folder + " cannot be read: " + e.getMessage());
    }
  }

  private static boolean isJob(String name) {
    return name.endsWith(".json") && !name.endsWith(".schema.json") && !name.startsWith(".");
  }
}
