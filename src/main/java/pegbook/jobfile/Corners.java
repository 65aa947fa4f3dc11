package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.measure.Length;

/**
 * Checks the corners of a closed figure: no two neighbours in one place, no side across another.
 */
final class Corners {
  /** Places nearer to each other than this are one place. */
  static final Length APART = Length.ofMillimetres(5);

  private Corners() {}

  /** Whether the corners behind a key, as far as they were read, make a figure. */
  static boolean makeAFigure(Fields fields, Key<List<Point>> key, Report report) {
    Optional<Polygon> polygon = fields.find(key).map(Polygon::new);
    if (polygon.isEmpty()) {
      return true;
    }
    List<Segment> sides = polygon.get().sides();
    for (int i = 0; i < sides.size(); i++) {
      if (sides.get(i).length().isLessThan(APART)) {
        int other = (i + 1) % sides.size();
        Map<String, String> words =
            Map.of("one", "corner " + (i + 1), "other", "corner " + (other + 1));
        Node at = fields.item(key, other);
        String found = Complaint.MARKS_COINCIDE.word("found", words);
        report.complain(at.at(), at.path(), found, Complaint.MARKS_COINCIDE, words);
        return false;
      }
    }
    if (!polygon.get().isSimple()) {
      Node at = fields.node(key);
      report.complain(at.at(), at.path(), crossing(sides), Complaint.OUTLINE_CROSSES, Map.of());
      return false;
    }
    return true;
  }

  /** The first two sides that meet without being neighbours, in words. */
  private static String crossing(List<Segment> sides) {
    for (int i = 0; i < sides.size(); i++) {
      for (int j = i + 2; j < sides.size(); j++) {
        boolean neighbours = i == 0 && j == sides.size() - 1;
        if (!neighbours && meet(sides.get(i), sides.get(j))) {
          return Complaint.OUTLINE_CROSSES.word(
              "found", Map.of("one", side(i, sides.size()), "other", side(j, sides.size())));
        }
      }
    }
    return Complaint.OUTLINE_CROSSES.word("foundFlat", Map.of());
  }

  private static String side(int index, int count) {
    return (index + 1) + "-" + ((index + 1) % count + 1);
  }

  private static boolean meet(Segment one, Segment other) {
    return one.sideOf(other.from()) != one.sideOf(other.to())
        && other.sideOf(one.from()) != other.sideOf(one.to());
  }
}
