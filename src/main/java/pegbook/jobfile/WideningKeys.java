package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.job.Widenings;
import pegbook.job.Widenings.Bell;
import pegbook.job.Widenings.Cap;
import pegbook.job.Widenings.Pad;
import pegbook.job.Widenings.Shape;
import pegbook.measure.Length;

/** What makes a footing wider than its shaft, and how it fits hole, tube, steel and top. */
final class WideningKeys {
  private static final QuantityValue<Length> WIDTH =
      Values.length("4 in", "10 ft", "100 mm", "3 m");

  static final Key<Length> BELL_DIAMETER = Key.required("diameter", WIDTH, "\"24 in\"");
  static final Key<Length> FLARE =
      Key.required("height", Values.length("1 in", "5 ft", "25 mm", "1.5 m"), "\"12 in\"");
  static final Key<Length> TOE =
      Key.orElse(
          "toe",
          Values.length("0 in", "2 ft", "0 mm", "600 mm"),
          "\"4 in\"",
          "\"100 mm\"",
          COMMON_PRACTICE);
  static final Key<Bell> BELL =
      Key.free(
          "bell",
          new SectionValue<>(
              List.of(BELL_DIAMETER, FLARE, TOE),
              fields -> new Bell(fields.get(BELL_DIAMETER), fields.get(FLARE), fields.get(TOE))));

  static final Key<Length> THICKNESS =
      Key.required("thickness", Values.length("2 in", "4 ft", "50 mm", "1.2 m"), "\"8 in\"");
  static final Key<Pad> PAD =
      Key.free(
          "pad", new SectionValue<>(List.of(THICKNESS), fields -> new Pad(fields.get(THICKNESS))));

  static final Key<Length> DIAMETER = Key.free("diameter", WIDTH);
  static final Key<Length> SIDE = Key.free("side", WIDTH);
  static final Key<Cap> CAP =
      Key.free(
          "cap",
          new SectionValue<>(
              List.of(DIAMETER, SIDE, THICKNESS), WideningKeys::isOneShape, WideningKeys::cap));

  private WideningKeys() {}

  static Widenings of(Fields footing) {
    return new Widenings(footing.find(BELL), footing.find(PAD), footing.find(CAP));
  }

  private static boolean isOneShape(Fields fields, Report report) {
    if (fields.has(DIAMETER) == fields.has(SIDE)) {
      fields.complainNotOne(List.of(DIAMETER, SIDE));
      return false;
    }
    return true;
  }

  private static Cap cap(Fields fields) {
    return fields.has(DIAMETER)
        ? new Cap(Shape.ROUND, fields.get(DIAMETER), fields.get(THICKNESS))
        : new Cap(Shape.SQUARE, fields.get(SIDE), fields.get(THICKNESS));
  }

  /** Whether bell, pad and cap fit one another, the hole, the tube, the steel and the top. */
  static boolean fit(Fields footing, Key<Length> hole, Key<Length> top, Report report) {
    boolean bell = bellFits(footing, footing.find(hole), report);
    boolean pad = padFits(footing, footing.find(hole));
    boolean cap = capFits(footing, footing.find(hole), footing.find(top), report);
    boolean lift = liftFits(footing, report);
    return bell && pad && cap && lift;
  }

  private static boolean bellFits(Fields footing, Optional<Length> hole, Report report) {
    if (!footing.has(BELL)) {
      return true;
    }
    if (footing.has(PAD)) {
      footing.complain(BELL, Complaint.BELL_AND_PAD);
      return false;
    }
    if (footing.find(FootingKeys.TUBE).filter(WideningKeys::isFromBottom).isPresent()) {
      footing.complain(BELL, Complaint.BELL_ROUND_TUBE);
      return false;
    }
    Optional<Length> width = footing.find(BELL).map(Bell::diameter);
    if (!isWider(width, hole)) {
      inside(footing, BELL, BELL_DIAMETER, Complaint.BELL_NARROW, report);
      return false;
    }
    return true;
  }

  private static boolean padFits(Fields footing, Optional<Length> hole) {
    if (!footing.has(PAD) || footing.isRefused(FootingKeys.TUBE)) {
      return true;
    }
    Optional<Tube> tube = footing.find(FootingKeys.TUBE).filter(WideningKeys::isFromBottom);
    if (tube.isEmpty()) {
      footing.complain(PAD, Complaint.PAD_WITHOUT_TUBE);
      return false;
    }
    if (!isWider(hole, tube.map(Tube::inside))) {
      footing.complain(PAD, Complaint.PAD_NO_WIDER);
      return false;
    }
    return true;
  }

  private static boolean capFits(
      Fields footing, Optional<Length> hole, Optional<Length> top, Report report) {
    Optional<Cap> cap = footing.find(CAP);
    Optional<Length> column =
        footing.has(FootingKeys.TUBE) ? footing.find(FootingKeys.TUBE).map(Tube::inside) : hole;
    if (!isWider(cap.map(Cap::width), column)) {
      Key<Length> width = cap.orElseThrow().shape() == Shape.ROUND ? DIAMETER : SIDE;
      inside(footing, CAP, width, Complaint.CAP_NARROW, report);
      return false;
    }
    if (!isWider(top, cap.map(Cap::thickness))) {
      inside(footing, CAP, THICKNESS, Complaint.CAP_THICK, report);
      return false;
    }
    return true;
  }

  /** A joint across a bell or inside a pad would cut what spreads the load. */
  private static boolean liftFits(Fields footing, Report report) {
    Length bottom = of(footing).bottomHeight();
    Optional<Length> lift = footing.find(FootingKeys.STEEL).flatMap(Steel::firstLift);
    if (lift.filter(bottom::isMoreThan).isPresent()) {
      inside(footing, FootingKeys.STEEL, FootingKeys.FIRST_LIFT, Complaint.LIFT_IN_BOTTOM, report);
      return false;
    }
    return true;
  }

  private static boolean isFromBottom(Tube tube) {
    return tube.from() == Tube.From.BOTTOM;
  }

  /** Whether one is more than the other, as far as both are known. */
  private static boolean isWider(Optional<Length> one, Optional<Length> other) {
    return one.isEmpty() || other.isEmpty() || one.get().isMoreThan(other.get());
  }

  private static void inside(
      Fields footing, Key<?> of, Key<?> key, Complaint complaint, Report report) {
    report.object(footing.node(of).path()).ifPresent(part -> part.complain(key, complaint));
  }

  /**
   * Complains of a bell or a pad that leaves no shaft in the shallowest hole that there may be.
   *
   * @param least depth of the concrete that is dug in any case
   */
  static void hasDepth(Fields footing, Length least, Report report) {
    Length bottom = of(footing).bottomHeight();
    if (bottom.isLessThan(least)) {
      return;
    }
    Key<?> key = footing.has(BELL) ? BELL : PAD;
    report.complain(
        footing.node(key),
        Complaint.BOTTOM_THICK,
        Map.of("depth", report.written(least), "height", report.written(bottom)));
  }
}
