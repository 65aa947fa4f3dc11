package pegbook.calc.concreteexposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.concreteexposure.ConcreteExposure.Exposed;
import pegbook.calc.concreteexposure.ConcreteExposure.Freezing;
import pegbook.calc.concreteexposure.ConcreteExposure.Wetness;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Job;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.ConcreteLimit;
import pegbook.published.ExposureClass;

/** Where the job's concrete falls short of what it must stand, and what nobody has said. */
record ConcreteExposureFindings(
    Job job, Freezing freezes, List<Exposed> exposed, ExposureClass needed) {
  /** What the code for dwellings asks of concrete in the weather. */
  static final Citation RESIDENTIAL = ConcreteLimit.find("residential").source();

  /** A metric mix of 24 MPa is not quite 3500 psi (24.1 MPa); rounding is not a shortfall. */
  private static final double STRENGTH_TOLERANCE = 0.01;

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    strength().ifPresent(findings::add);
    air().ifPresent(findings::add);
    findings.add(open());
    return findings;
  }

  private Optional<Finding> strength() {
    UnitSystem units = job.heading().units();
    Pressure strength = job.concrete().strength();
    Pressure wanted = needed.strength(units);
    if (strength.dividedBy(wanted) >= 1 - STRENGTH_TOLERANCE) {
      return Optional.empty();
    }
    return Optional.of(
        finding("concrete-too-weak", "concrete.strength", ExposureClass.SOURCE)
            .citing(RESIDENTIAL)
            .about(marks(needed))
            .with("strength", Argument.of(strength))
            .with("wanted", Argument.of(wanted))
            .with("class", Argument.words(needed.name()))
            .with("why", why())
            .with("dwelling", Argument.of(ConcreteLimit.find("residential").strength(units))));
  }

  /** Air that is missing, too little, or not said. */
  private Optional<Finding> air() {
    Optional<Ratio> wanted = needed.airLargeStone();
    if (wanted.isEmpty()) {
      return Optional.empty();
    }
    Ratio least = wanted.get().minus(ExposureClass.AIR_TOLERANCE);
    Optional<Ratio> given = job.concrete().air();
    if (given.isPresent() && !given.get().plus(Ratio.ofPercent(1e-6)).isLessThan(least)) {
      return Optional.empty();
    }
    String id = given.isPresent() ? "air-too-little" : "air-not-said";
    Finding found =
        finding(id, "concrete.air", ExposureClass.AIR)
            .citing(RESIDENTIAL)
            .about(marks(needed))
            .with("wanted", Argument.of(wanted.get()))
            .with("tolerance", Argument.of(ExposureClass.AIR_TOLERANCE))
            .with("class", Argument.words(needed.name()));
    return Optional.of(given.map(air -> found.with("air", Argument.of(air))).orElse(found));
  }

  /** What the job file does not say about the ground and the use. */
  private Finding open() {
    boolean waterOpen =
        freezes != Freezing.NEVER
            && exposed.stream().anyMatch(one -> one.wetness() == Wetness.NOT_SAID);
    return finding(
        waterOpen ? "exposure-open-wet" : "exposure-open", "concrete", ExposureClass.SOURCE);
  }

  private List<String> marks(ExposureClass of) {
    return exposed.stream()
        .filter(one -> one.exposure().equals(of))
        .flatMap(one -> one.marks().stream())
        .toList();
  }

  private Argument why() {
    return Argument.entry(
        switch (needed.name()) {
          case "F0" -> "concrete-exposure.why.never";
          case "F1" -> "concrete-exposure.why.freezes";
          default -> "concrete-exposure.why.soaked";
        });
  }

  private static Finding finding(String id, String place, Citation source) {
    return Finding.of(Kind.ASK, id, place, Decider.BUILDING_AUTHORITY, source);
  }
}
