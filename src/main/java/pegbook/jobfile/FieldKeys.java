package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Field;
import pegbook.job.Field.Dug;
import pegbook.job.Field.Moved;
import pegbook.job.Field.Taped;
import pegbook.job.Soil;
import pegbook.measure.Duration;
import pegbook.measure.Length;

/** What was really marked and dug. */
final class FieldKeys {
  /** More readings than this are refused: every pair of sixty marks, or ten to each of hundreds. */
  static final int MOST = 2000;

  static final Key<String> FROM = Key.required("from", Values.MARK, "\"S1\"");
  static final Key<String> TO = Key.required("to", Values.MARK, "\"S4\"");
  static final Key<Length> TAPE =
      Key.required("tape", Values.length("2 in", "600 ft", "50 mm", "180 m"), "\"12 ft 4 in\"");
  static final SectionValue<Taped> TAPED =
      new SectionValue<>(
          List.of(FROM, TO, TAPE),
          FieldKeys::endsDiffer,
          fields -> new Taped(fields.get(FROM), fields.get(TO), fields.get(TAPE)));

  static final Key<List<Taped>> MARKED = Key.free("marked", new ListValue<>(TAPED, 0, MOST));
  static final Key<String> HOLE = Key.required("hole", Values.MARK, "\"S3\"");
  static final Key<Duration> HOURS = Key.free("hours", PlanKeys.PERSON_HOURS);
  static final Key<Length> DEPTH =
      Key.free("depth", Values.length("1 in", "40 ft", "20 mm", "12 m"));
  static final Key<Length> DIAMETER =
      Key.free("diameter", Values.length("4 in", "12 ft", "100 mm", "4 m"));
  private static final QuantityValue<Length> OFFSET = Values.length("-3 ft", "3 ft", "-1 m", "1 m");
  static final Key<Length> EAST = Key.free("east", OFFSET);
  static final Key<Length> NORTH = Key.free("north", OFFSET);
  static final Key<Moved> MOVED_BY =
      Key.free(
          "movedBy",
          new SectionValue<>(
              List.of(EAST, NORTH),
              fields ->
                  new Moved(
                      fields.find(EAST).orElse(Length.ZERO),
                      fields.find(NORTH).orElse(Length.ZERO))));
  static final Key<Soil> SOIL = Key.free("soil", ChoiceValue.of(Soil.class));
  static final Key<Length> WATER =
      Key.free("water", Values.length("0 in", "40 ft", "0 mm", "12 m"));
  static final Key<Length> ROCK = Key.free("rock", Values.length("0 in", "40 ft", "0 mm", "12 m"));
  static final SectionValue<Dug> ONE_DUG =
      new SectionValue<>(
          List.of(HOLE, DEPTH, DIAMETER, MOVED_BY, SOIL, WATER, ROCK, HOURS),
          fields ->
              new Dug(
                  fields.get(HOLE),
                  fields.find(HOURS),
                  fields.find(DEPTH),
                  fields.find(DIAMETER),
                  fields.find(MOVED_BY),
                  fields.find(SOIL),
                  fields.find(WATER),
                  fields.find(ROCK)));
  static final Key<List<Dug>> DUG = Key.free("dug", new ListValue<>(ONE_DUG, 0, 500));
  static final SectionValue<Field> FIELD =
      new SectionValue<>(
          List.of(MARKED, DUG),
          fields ->
              new Field(fields.find(MARKED).orElse(List.of()), fields.find(DUG).orElse(List.of())));

  private FieldKeys() {}

  private static boolean endsDiffer(Fields fields, Report report) {
    Optional<String> from = fields.find(FROM);
    boolean same = from.isPresent() && from.equals(fields.find(TO));
    if (same) {
      report.complain(fields.node(TO), Complaint.MARK_TWICE, Map.of());
    }
    return !same;
  }
}
