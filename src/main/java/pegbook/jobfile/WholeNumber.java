package pegbook.jobfile;

import java.util.Map;
import java.util.Optional;

/**
 * A whole number whose key says what it counts: people, bars, sides.
 *
 * @param least smallest
 * @param most largest
 * @param complaint about anything else
 */
record WholeNumber(int least, int most, Complaint complaint) implements Value<Integer> {
  /** A number about which there is nothing to say but its range. */
  WholeNumber(int least, int most) {
    this(least, most, Complaint.TYPE);
  }

  @Override
  public Optional<Integer> read(Node node, Report report) {
    if (node instanceof Node.Digits number) {
      double value = Double.parseDouble(number.digits());
      if (value >= least && value <= most && value == StrictMath.rint(value)) {
        return Optional.of((int) value);
      }
    }
    report.complain(node, complaint, Map.of("kind", called()));
    return Optional.empty();
  }

  @Override
  public String called() {
    return Complaint.phrase(
        "kind.whole", Map.of("least", Integer.toString(least), "most", Integer.toString(most)));
  }
}
