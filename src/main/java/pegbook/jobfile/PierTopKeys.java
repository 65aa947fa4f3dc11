package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.List;
import java.util.Optional;
import pegbook.job.Anchors;
import pegbook.job.Sleeve;
import pegbook.job.Tube;
import pegbook.job.Widenings;
import pegbook.measure.Angle;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Notation;

/** What is cast into a pier's top, and what pushes there. */
final class PierTopKeys {
  private static final QuantityValue<Angle> AZIMUTH = Values.angle("0 deg", "360 deg");

  static final Key<Integer> COUNT = Key.required("count", new WholeNumber(2, 12), "3");
  static final Key<Length> SIZE =
      Key.required("size", Values.length("1/4 in", "1 1/2 in", "6 mm", "36 mm"), "\"1/2 in\"");
  static final Key<Length> CIRCLE =
      Key.required("circle", Values.length("2 in", "8 ft", "50 mm", "2.5 m"), "\"9 in\"");
  static final Key<Length> ABOVE =
      Key.orElse(
          "above",
          Values.length("1/2 in", "12 in", "12 mm", "300 mm"),
          "\"3 in\"",
          "\"75 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> EMBEDDED =
      Key.orElse(
          "embedded",
          Values.length("2 in", "3 ft", "50 mm", "900 mm"),
          "\"8 in\"",
          "\"200 mm\"",
          COMMON_PRACTICE);
  static final Key<Angle> FIRST =
      Key.orElse("first", AZIMUTH, "\"0 deg\"", "\"0 deg\"", COMMON_PRACTICE);
  static final Key<Anchors> ANCHORS =
      Key.free(
          "anchors",
          new SectionValue<>(
              List.of(COUNT, SIZE, CIRCLE, ABOVE, EMBEDDED, FIRST), PierTopKeys::anchors));

  static final Key<Length> OUTSIDE =
      Key.required("outside", Values.length("1/2 in", "8 in", "12 mm", "200 mm"), "\"2 in\"");
  static final Key<Length> OFFSET =
      Key.orElse(
          "offset",
          Values.length("0 in", "4 ft", "0 mm", "1.2 m"),
          "\"0 in\"",
          "\"0 mm\"",
          COMMON_PRACTICE);
  static final Key<Angle> TOWARDS =
      Key.orElse("towards", AZIMUTH, "\"0 deg\"", "\"0 deg\"", COMMON_PRACTICE);
  static final Key<Length> SLEEVE_DEPTH =
      Key.orElse(
          "depth",
          Values.length("0 in", "10 ft", "0 mm", "3 m"),
          "\"18 in\"",
          "\"450 mm\"",
          COMMON_PRACTICE);
  static final Key<Sleeve> SLEEVE =
      Key.free(
          "sleeve",
          new ShortForm<>(
              OUTSIDE,
              new SectionValue<>(
                  List.of(OUTSIDE, OFFSET, TOWARDS, SLEEVE_DEPTH),
                  fields ->
                      new Sleeve(
                          fields.get(OUTSIDE),
                          fields.get(OFFSET),
                          fields.get(TOWARDS),
                          fields.get(SLEEVE_DEPTH)))));

  private static final QuantityValue<Force> FORCE =
      new QuantityValue<>(Notation.FORCES, new Range("0.1 lbf", "5000 lbf", "0.5 N", "20 kN"));

  /** A hand that leans on an instrument. */
  static final Key<Force> PUSH =
      Key.orElse("push", FORCE, "\"10 lbf\"", "\"45 N\"", COMMON_PRACTICE);

  static final Key<Force> WIND = Key.free("wind", FORCE);

  private PierTopKeys() {}

  private static Anchors anchors(Fields fields) {
    return new Anchors(
        fields.get(COUNT),
        fields.get(SIZE),
        fields.get(CIRCLE),
        fields.get(ABOVE),
        fields.get(EMBEDDED),
        fields.get(FIRST));
  }

  /** Whether bolts and sleeve lie inside the concrete of a pier's top. */
  static boolean fits(Fields pier, Report report) {
    Optional<Length> across =
        pier.find(WideningKeys.CAP).map(Widenings.Cap::width).or(() -> shaft(pier));
    Optional<Length> bolts =
        pier.find(ANCHORS).map(anchors -> anchors.circle().plus(anchors.size()));
    boolean boltsFit = isWithin(bolts, across);
    if (!boltsFit) {
      report
          .object(pier.node(ANCHORS).path())
          .ifPresent(anchors -> anchors.complain(CIRCLE, Complaint.ANCHORS_WIDE));
    }
    Optional<Length> sleeve =
        pier.find(SLEEVE).map(pipe -> pipe.offset().times(2).plus(pipe.outside()));
    boolean sleeveFits = isWithin(sleeve, shaft(pier));
    if (!sleeveFits) {
      pier.complain(SLEEVE, Complaint.SLEEVE_OUTSIDE);
    }
    return boltsFit && sleeveFits;
  }

  private static Optional<Length> shaft(Fields pier) {
    return pier.has(FootingKeys.TUBE)
        ? pier.find(FootingKeys.TUBE).map(Tube::inside)
        : pier.find(PierKeys.HOLE);
  }

  private static boolean isWithin(Optional<Length> wanted, Optional<Length> across) {
    return wanted.isEmpty() || across.isEmpty() || wanted.get().isLessThan(across.get());
  }
}
