package pegbook.testing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;

/**
 * Distances taped between the painted marks of a made-up job: every sixth job has some. In half of
 * those S2 was painted off its place, and the tape errs a little everywhere.
 */
record MadeField(ObjectNode job, int number, Chance chance, Written written) {
  /** Far enough to be found, near enough not to be seen at once. */
  private static final double MOVED_METRES = 0.045;

  private static final double TAPE_MM = 1.5;
  private static final int MOST = 90;

  /** What the usual tape reaches, with something over. */
  private static final double TAPE_METRES = 29;

  private record Pair(String from, String to) {}

  void field() {
    dug();
    if (number % 6 != 4) {
      return;
    }
    Placement placement = placement();
    List<String> marks = placement.marks().stream().map(mark -> mark.id()).toList();
    ArrayNode taped = job.withObjectProperty("field").putArray("marked");
    pairs(marks).stream()
        .filter(pair -> apart(placement, pair) < TAPE_METRES)
        .limit(MOST)
        .forEach(
            pair ->
                taped
                    .addObject()
                    .put("from", pair.from())
                    .put("to", pair.to())
                    .put("tape", written.length(distance(placement, pair))));
  }

  /** Every fifth job was dug at its first holes; told by the number, so that no chance shifts. */
  private void dug() {
    if (number % 5 != 3) {
      return;
    }
    ArrayNode dug = job.withObjectProperty("field").putArray("dug");
    ObjectNode first = dug.addObject().put("hole", "S1").put("depth", "1900 mm");
    first
        .putObject("movedBy")
        .put("east", number % 2 == 0 ? "1/2 in" : "-60 mm")
        .put("north", "-1 in");
    dug.addObject()
        .put("hole", "S2")
        .put("depth", "480 mm")
        .put("water", "400 mm")
        .put("rock", "480 mm");
    dug.addObject().put("hole", "S3").put("diameter", "22 in").put("soil", "silt");
  }

  /** Each mark to its next, its second and its fourth, round the figure. */
  private static Set<Pair> pairs(List<String> marks) {
    Set<Pair> pairs = new LinkedHashSet<>();
    for (int step : List.of(1, 2, 4)) {
      IntStream.range(0, marks.size())
          .mapToObj(i -> new Pair(marks.get(i), marks.get((i + step) % marks.size())))
          .filter(pair -> !pair.from().equals(pair.to()))
          .filter(pair -> !pairs.contains(new Pair(pair.to(), pair.from())))
          .forEach(pairs::add);
    }
    return pairs;
  }

  private double distance(Placement placement, Pair pair) {
    return apart(placement, pair) * 1000 + chance.between(-TAPE_MM, TAPE_MM);
  }

  private double apart(Placement placement, Pair pair) {
    return painted(placement, pair.from()).distanceTo(painted(placement, pair.to())).metres();
  }

  private Point painted(Placement placement, String mark) {
    Point at = placement.mark(mark).at();
    return number % 12 == 4 && mark.equals("S2") ? at.plus(MOVED_METRES, 0) : at;
  }

  private Placement placement() {
    byte[] text = job.toString().getBytes(StandardCharsets.UTF_8);
    if (JobFileReader.read("made-up.json", text) instanceof JobFile.Read read) {
      return PlacementCalculator.calculate(read.job());
    }
    throw new IllegalStateException("job " + number + " is refused");
  }
}
