package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lists of names in few words. */
final class NameList {
  private static final Pattern NUMBERED = Pattern.compile("(\\D*)(\\d{1,6})");

  private NameList() {}

  /** Names joined with commas; three or more in a numbered run become "first to last". */
  static String join(List<String> names, String to) {
    List<String> parts = new ArrayList<>();
    int at = 0;
    while (at < names.size()) {
      int end = at;
      while (end + 1 < names.size() && follows(names.get(end), names.get(end + 1))) {
        end++;
      }
      if (end - at >= 2) {
        parts.add(names.get(at) + " " + to + " " + names.get(end));
        at = end + 1;
      } else {
        parts.add(names.get(at));
        at++;
      }
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
