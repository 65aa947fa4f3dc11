package pegbook.jobfile;

import java.util.List;
import java.util.Optional;
import pegbook.job.GroundStiffness;
import pegbook.measure.Notation;
import pegbook.measure.Pressure;
import pegbook.measure.Speed;

/** How stiff the ground is: a shear modulus or a velocity of shear waves, with its range. */
final class StiffnessKeys {
  private static final QuantityValue<Pressure> MODULUS_VALUE =
      Values.pressure("100 psi", "1000 ksi", "0.5 MPa", "7000 MPa");
  private static final QuantityValue<Speed> VELOCITY_VALUE =
      new QuantityValue<>(
          Notation.SPEEDS, new Range("100 ft/s", "8000 ft/s", "30 m/s", "2500 m/s"));
  private static final Key<String> FROM = Key.free("from", Values.NAME);

  private static final Key<Pressure> LOW_MODULUS =
      Key.required("low", MODULUS_VALUE, "\"3000 psi\"");
  private static final Key<Pressure> HIGH_MODULUS = Key.free("high", MODULUS_VALUE);
  private static final Key<Speed> LOW_VELOCITY =
      Key.required("low", VELOCITY_VALUE, "\"500 ft/s\"");
  private static final Key<Speed> HIGH_VELOCITY = Key.free("high", VELOCITY_VALUE);

  static final Key<GroundStiffness> MODULUS =
      Key.free(
          "shearModulus",
          pair(
              LOW_MODULUS,
              HIGH_MODULUS,
              fields ->
                  new GroundStiffness.ByModulus(
                      fields.get(LOW_MODULUS),
                      fields.find(HIGH_MODULUS).orElse(fields.get(LOW_MODULUS)),
                      fields.find(FROM))));
  static final Key<GroundStiffness> VELOCITY =
      Key.free(
          "shearWaveVelocity",
          pair(
              LOW_VELOCITY,
              HIGH_VELOCITY,
              fields ->
                  new GroundStiffness.ByVelocity(
                      fields.get(LOW_VELOCITY),
                      fields.find(HIGH_VELOCITY).orElse(fields.get(LOW_VELOCITY)),
                      fields.find(FROM))));

  private StiffnessKeys() {}

  private static <Q extends Comparable<Q>> ShortForm<GroundStiffness> pair(
      Key<Q> low, Key<Q> high, java.util.function.Function<Fields, GroundStiffness> build) {
    return new ShortForm<>(
        low,
        new SectionValue<>(
            List.of(low, high, FROM), (fields, report) -> inOrder(fields, low, high), build));
  }

  private static <Q extends Comparable<Q>> boolean inOrder(Fields fields, Key<Q> low, Key<Q> high) {
    boolean inOrder =
        fields
            .find(low)
            .flatMap(least -> fields.find(high).map(most -> least.compareTo(most) <= 0))
            .orElse(true);
    if (!inOrder) {
      fields.complain(high, Complaint.HIGH_BELOW_LOW);
    }
    return inOrder;
  }

  /** One of both, or neither. */
  static boolean isNotTwice(Fields fields, Report report) {
    boolean twice = fields.has(MODULUS) && fields.has(VELOCITY);
    if (twice) {
      fields.complain(VELOCITY, Complaint.STIFFNESS_TWICE);
    }
    return !twice;
  }

  static Optional<GroundStiffness> stiffness(Fields fields) {
    return fields.find(MODULUS).or(() -> fields.find(VELOCITY));
  }
}
