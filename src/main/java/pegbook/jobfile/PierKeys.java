package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;
import static pegbook.jobfile.FootingKeys.DEPTH;
import static pegbook.jobfile.FootingKeys.STEEL;
import static pegbook.jobfile.FootingKeys.TUBE;
import static pegbook.jobfile.PierTopKeys.ANCHORS;
import static pegbook.jobfile.PierTopKeys.PUSH;
import static pegbook.jobfile.PierTopKeys.SLEEVE;
import static pegbook.jobfile.PierTopKeys.WIND;

import java.util.List;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.job.Pier;
import pegbook.measure.Length;
import pegbook.measure.Mass;

/** A pier: an isolated footing that carries an instrument. */
final class PierKeys {
  static final Key<String> ID =
      Key.required("id", new CheckedText<>(Complaint.NAME_OF_PIER, PierKeys::id), "\"P1\"");
  static final Key<Point> AT =
      Key.required("at", new WordOr<>("centre", Point.ORIGIN, Values.PLACE), "\"centre\"");
  static final Key<Length> HOLE =
      Key.required("hole", Values.length("4 in", "10 ft", "100 mm", "3 m"), "\"20 in\"");
  static final Key<Length> GRAVEL =
      Key.orElse(
          "gravel",
          Values.length("0 in", "3 ft", "0 mm", "1 m"),
          "\"0 in\"",
          "\"0 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> TOP =
      Key.orElse(
          "top",
          Values.length("0 in", "15 ft", "0 mm", "4.5 m"),
          "\"6 in\"",
          "\"150 mm\"",
          COMMON_PRACTICE);
  static final Key<Mass> INSTRUMENT =
      Key.free("instrument", Values.mass("0 lb", "10000 lb", "0 kg", "5000 kg"));
  static final Key<Length> GAP =
      Key.orElse(
          "gap",
          Values.length("1/4 in", "3 ft", "5 mm", "1 m"),
          "\"1 in\"",
          "\"25 mm\"",
          COMMON_PRACTICE);
  static final SectionValue<Pier> PIER =
      new SectionValue<>(
          List.of(
              ID,
              AT,
              HOLE,
              DEPTH,
              GRAVEL,
              TOP,
              TUBE,
              STEEL,
              INSTRUMENT,
              GAP,
              PUSH,
              WIND,
              ANCHORS,
              SLEEVE,
              WindKeys.PIER_UPLIFT,
              WindKeys.SIDE,
              WideningKeys.BELL,
              WideningKeys.PAD,
              WideningKeys.CAP),
          PierKeys::fits,
          PierKeys::pier);

  private PierKeys() {}

  private static boolean fits(Fields fields, Report report) {
    boolean holeFits = FootingKeys.fits(fields, HOLE, TOP, report);
    boolean topFits = PierTopKeys.fits(fields, report);
    return holeFits && topFits;
  }

  private static Optional<String> id(String text) {
    return text.matches("P[1-9][0-9]{0,2}") ? Optional.of(text) : Optional.empty();
  }

  private static Pier pier(Fields fields) {
    return new Pier(
        fields.get(ID),
        fields.get(AT),
        fields.get(HOLE),
        fields.get(DEPTH),
        fields.get(GRAVEL),
        fields.get(TOP),
        fields.find(TUBE),
        fields.find(STEEL),
        fields.find(INSTRUMENT),
        fields.get(GAP),
        fields.get(PUSH),
        fields.find(WIND),
        fields.find(ANCHORS),
        fields.find(SLEEVE),
        fields.find(WindKeys.PIER_UPLIFT),
        fields.find(WindKeys.SIDE),
        WideningKeys.of(fields));
  }
}
