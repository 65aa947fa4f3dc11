package pegbook.jobfile;

import java.util.Map;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.measure.Notation;

/** Two lengths parted by a comma: how far east and how far north; minus is west and south. */
record PlaceValue() implements Value<Point> {
  private static final QuantityValue<Length> DISTANCE =
      new QuantityValue<>(Notation.LENGTHS, new Range("-3000 ft", "3000 ft", "-1000 m", "1000 m"));

  @Override
  public Optional<Point> read(Node node, Report report) {
    if (node instanceof Node.Text text) {
      String[] parts = text.value().split(",", -1);
      if (parts.length == 2) {
        Optional<Length> east = part(node, parts[0], report);
        Optional<Length> north = part(node, parts[1], report);
        return east.flatMap(e -> north.map(n -> Point.of(e, n)));
      }
    }
    report.complain(node, Complaint.PLACE, Map.of());
    return Optional.empty();
  }

  private static Optional<Length> part(Node node, String text, Report report) {
    return DISTANCE.read(new Node.Text(node.path(), node.at(), text.strip()), report);
  }

  @Override
  public String called() {
    return Complaint.PLACE.expected(Map.of());
  }
}
