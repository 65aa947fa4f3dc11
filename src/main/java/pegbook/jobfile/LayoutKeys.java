package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pegbook.job.Layout;
import pegbook.job.Layout.Baseline;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Notation;
import pegbook.measure.TapeDivision;

/** The figure on the ground and how it is taped. */
final class LayoutKeys {
  static final Key<Length> DIVISION =
      Key.orElse(
          "division",
          new CheckedText<>(Complaint.DIVISION, LayoutKeys::division),
          "\"1/16 in\"",
          "\"1 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> TAPE_LENGTH =
      Key.orElse(
          "length",
          Values.length("6 ft", "400 ft", "2 m", "120 m"),
          "\"100 ft\"",
          "\"30 m\"",
          COMMON_PRACTICE);
  static final SectionValue<Layout.Tape> TAPE_PART =
      new SectionValue<>(
          List.of(DIVISION, TAPE_LENGTH, AccuracyKeys.ACCURACY),
          fields ->
              new Layout.Tape(
                  fields.get(DIVISION),
                  fields.get(TAPE_LENGTH),
                  fields.get(AccuracyKeys.ACCURACY)));

  static final ListValue<String> TWO_MARKS = new ListValue<>(Values.MARK, 2, 2);

  static final Key<Outline> OUTLINE =
      Key.required(
          "outline",
          OutlineKeys.OUTLINE,
          "{\"regular\": {\"sides\": 6, \"acrossFlats\": \"12 ft\"}}");
  static final Key<Angle> CENTRE_TO_FIRST_MARK =
      Key.orElseAsked(
          "centreToFirstMark",
          Values.angle("-360 deg", "360 deg"),
          "\"0 deg\"",
          "\"0 deg\"",
          COMMON_PRACTICE);
  static final Key<Length> SUPPORT_INSET =
      Key.orElseAsked(
          "supportInset",
          Values.length("0 in", "20 ft", "0 mm", "6 m"),
          "\"8 in\"",
          "\"200 mm\"",
          COMMON_PRACTICE);
  static final Key<Baseline> BASELINE =
      Key.orElse(
          "baseline",
          new WordOr<>(
              "choose",
              new Baseline.Choose(),
              new MappedValue<>(
                  TWO_MARKS, marks -> new Baseline.Named(marks.get(0), marks.get(1)))),
          "\"choose\"",
          COMMON_PRACTICE);
  static final Key<Layout.Tape> TAPE = Key.part("tape", TAPE_PART);
  static final Key<Length> TOLERANCE =
      Key.orElse(
          "tolerance",
          Values.length("1/16 in", "12 in", "1 mm", "300 mm"),
          "\"1/2 in\"",
          "\"12 mm\"",
          COMMON_PRACTICE);
  static final SectionValue<Layout> LAYOUT =
      new SectionValue<>(
          List.of(OUTLINE, CENTRE_TO_FIRST_MARK, SUPPORT_INSET, BASELINE, TAPE, TOLERANCE),
          fields -> layout(fields));

  private LayoutKeys() {}

  private static Optional<Length> division(String text) {
    return Notation.LENGTHS
        .read(text)
        .taken()
        .flatMap(TapeDivision::ofStep)
        .map(TapeDivision::step);
  }

  /** The divisions as they are written. */
  static List<String> divisions() {
    return Arrays.stream(TapeDivision.values()).map(TapeDivision::text).toList();
  }

  private static Layout layout(Fields fields) {
    return new Layout(
        fields.get(OUTLINE),
        azimuth(fields),
        inset(fields),
        fields.get(BASELINE),
        fields.get(TAPE),
        fields.get(TOLERANCE));
  }

  /** A free outline without an azimuth lies as it is drawn; every other needs one. */
  private static Optional<Angle> azimuth(Fields fields) {
    boolean asDrawn =
        fields.get(OUTLINE) instanceof Outline.Free && !fields.has(CENTRE_TO_FIRST_MARK);
    return asDrawn ? Optional.empty() : Optional.of(fields.getOrAssume(CENTRE_TO_FIRST_MARK));
  }

  /** Supports that are placed one by one have no inset. */
  private static Length inset(Fields fields) {
    boolean placed =
        fields.get(OUTLINE) instanceof Outline.Free free && free.supports().isPresent();
    return placed
        ? fields.find(SUPPORT_INSET).orElse(Length.ZERO)
        : fields.getOrAssume(SUPPORT_INSET);
  }
}
