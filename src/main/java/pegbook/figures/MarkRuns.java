package pegbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names the subject of a working that holds for several marks at once. */
public final class MarkRuns {
  private static final Pattern NUMBERED = Pattern.compile("(\\D*)(\\d{1,6})");

  private MarkRuns() {}

  /** Names joined with commas; three or more in a row such as S1, S2, S3 become "S1–S3". */
  public static String brief(List<String> names) {
    List<String> parts = new ArrayList<>();
    int start = 0;
    while (start < names.size()) {
      int end = start;
      while (end + 1 < names.size() && follows(names.get(end), names.get(end + 1))) {
        end++;
      }
      if (end - start >= 2) {
        parts.add(names.get(start) + "–" + names.get(end));
      } else {
        parts.addAll(names.subList(start, end + 1));
      }
      start = end + 1;
    }
    return String.join(", ", parts);
  }

  private static boolean follows(String one, String next) {
    Matcher first = NUMBERED.matcher(one);
    Matcher second = NUMBERED.matcher(next);
    return first.matches()
        && second.matches()
        && first.group(1).equals(second.group(1))
        && Integer.parseInt(second.group(2)) == Integer.parseInt(first.group(2)) + 1;
  }
}
