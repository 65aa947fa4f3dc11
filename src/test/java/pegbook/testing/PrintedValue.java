package pegbook.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbook.measure.Length;
import pegbook.measure.Notation;

/** Values as they are printed, read by a reader that knows nothing of how they were written. */
public final class PrintedValue {
  private static final Pattern NUMBER =
      Pattern.compile("\\d{1,3}(?:\\h\\d{3})+(?:\\.\\d+)?|\\d+(?:\\.\\d+)?");
  private static final Pattern RUN = Pattern.compile("([A-Z]+)(\\d+) to ([A-Z]+)(\\d+)");

  private PrintedValue() {}

  /** The first number of a text: "10 000 lb" is ten thousand. */
  public static double number(String printed) {
    Matcher matcher = NUMBER.matcher(printed);
    if (!matcher.find()) {
      throw new AssertionError("no number in \"" + printed + "\"");
    }
    return Double.parseDouble(matcher.group().replaceAll("\\h", ""));
  }

  /** A length. */
  public static Length length(String printed) {
    return Notation.LENGTHS
        .read(printed)
        .taken()
        .orElseThrow(() -> new AssertionError("no length: \"" + printed + "\""));
  }

  /** Names of marks one by one: "S1 to S3, P1" are four; so are "S1 to S3, P1, each". */
  public static List<String> marks(String printed) {
    List<String> marks = new ArrayList<>();
    for (String part : printed.split(", ", -1)) {
      Matcher run = RUN.matcher(part);
      if (run.matches()) {
        int last = Integer.parseInt(run.group(4));
        for (int number = Integer.parseInt(run.group(2)); number <= last; number++) {
          marks.add(run.group(1) + number);
        }
      } else if (!part.isEmpty() && !part.equals("each")) {
        marks.add(part);
      }
    }
    return marks;
  }
}
