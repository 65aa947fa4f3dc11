package pegbook.jobfile;

import java.io.File;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** The job's name from its file's name; it also names a folder, on any system. */
final class JobName {
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N}\\p{M} ._-]{0,78}[\\p{L}\\p{N}\\p{M}_-])?");
  private static final Pattern RESERVED =
      Pattern.compile("(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\\..*)?");

  private JobName() {}

  /** The name; complains when it could not name a folder. */
  static String of(String fileName, Report report) {
    int slash = Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf(File.separatorChar));
    String last = fileName.substring(slash + 1);
    String name = last.endsWith(".json") ? last.substring(0, last.length() - 5) : last;
    if (!isPlain(name)) {
      report.complain(Location.START, "", Shown.quoted(last), Complaint.FILE_NAME, Map.of());
    }
    return name;
  }

  static boolean isPlain(String name) {
    return PLAIN.matcher(name).matches()
        && !RESERVED.matcher(name.toLowerCase(Locale.ROOT)).matches();
  }
}
