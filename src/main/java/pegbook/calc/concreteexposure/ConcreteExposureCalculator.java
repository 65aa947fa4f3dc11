package pegbook.calc.concreteexposure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.concreteexposure.ConcreteExposure.Age;
import pegbook.calc.concreteexposure.ConcreteExposure.Curing;
import pegbook.calc.concreteexposure.ConcreteExposure.Exposed;
import pegbook.calc.concreteexposure.ConcreteExposure.Freezing;
import pegbook.calc.concreteexposure.ConcreteExposure.Wetness;
import pegbook.figures.Hole;
import pegbook.figures.Season;
import pegbook.figures.Working;
import pegbook.job.Frost;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.ConcreteLimit;
import pegbook.published.ExposureClass;

/**
 * Finds what the concrete must stand.
 *
 * <p>Where it never freezes, nothing is asked for frost. Where it freezes, concrete is of class F1,
 * and of F2 where it is soaked: ground water stands in the ground that freezes, or its top is no
 * higher than the ground, so that snow and water lie on it. Salt on it (F3), sulfate and chloride
 * in the ground are not in the job file and stay questions. One mix fills all holes, so the hardest
 * class decides.
 */
public final class ConcreteExposureCalculator {
  static final List<Citation> SOURCES =
      List.of(
          ExposureClass.SOURCE,
          ExposureClass.AIR,
          ConcreteLimit.find("cold-begins").source(),
          ConcreteLimit.find("placed-thin").source(),
          ConcreteLimit.find("protect").source(),
          ConcreteLimit.find("repeated-freeze").source(),
          ConcreteLimit.find("hot").source(),
          ConcreteLimit.find("cure").source(),
          ConcreteExposureFindings.RESIDENTIAL);

  /** Nobody knows ground water closer than this. */
  private static final Length WATER_TOLERANCE = Length.ofMillimetres(25);

  /** Where sections count as thick: 12 in, 300 mm; a hair less is a form's tolerance. */
  private static final Length THICK = Length.ofMillimetres(299);

  private static final List<Integer> AGES = List.of(3, 7, 14, 21);

  private ConcreteExposureCalculator() {}

  /**
   * What the concrete of a job must stand.
   *
   * @param job frost, ground water, concrete, season
   * @param holes with the depths that were decided
   */
  public static ConcreteExposure calculate(Job job, List<Hole> holes) {
    UnitSystem units = job.heading().units();
    ConcreteExposureFormulas formulas = new ConcreteExposureFormulas(units);
    List<Working> workings = new ArrayList<>();
    Freezing freezes = freezes(job);
    List<Exposed> exposed = exposed(job, holes, freezes);
    ExposureClass needed =
        exposed.stream()
            .map(Exposed::exposure)
            .max(Comparator.comparing(ExposureClass::name))
            .orElseGet(() -> ExposureClass.find("F0"));
    Pressure strength = job.concrete().strength();
    List<Age> ages = ages(strength, formulas, workings);
    Curing curing = curing(job, holes, freezes, workings);
    ConcreteExposureFindings findings = new ConcreteExposureFindings(job, freezes, exposed, needed);
    return new ConcreteExposure(
        freezes,
        exposed,
        needed,
        strength,
        needed.strength(units),
        strength.max(needed.strength(units)),
        job.concrete().air(),
        curing,
        ages,
        findings.all(),
        workings);
  }

  private static Freezing freezes(Job job) {
    return job.ground()
        .frost()
        .map(Frost::depth)
        .map(depth -> depth.isMoreThan(Length.ZERO) ? Freezing.FREEZES : Freezing.NEVER)
        .orElse(Freezing.NOT_SAID);
  }

  private static List<Exposed> exposed(Job job, List<Hole> holes, Freezing freezes) {
    Map<Wetness, List<String>> byWetness = new LinkedHashMap<>();
    for (Hole hole : holes) {
      byWetness.computeIfAbsent(wetness(job, hole), wetness -> new ArrayList<>()).add(hole.mark());
    }
    return byWetness.entrySet().stream()
        .map(same -> new Exposed(same.getValue(), same.getKey(), of(freezes, same.getKey())))
        .toList();
  }

  private static ExposureClass of(Freezing freezes, Wetness wetness) {
    if (freezes == Freezing.NEVER) {
      return ExposureClass.find("F0");
    }
    return ExposureClass.find(wetness == Wetness.SOAKED ? "F2" : "F1");
  }

  private static Wetness wetness(Job job, Hole hole) {
    if (!hole.top().isMoreThan(Length.ZERO)) {
      return Wetness.SOAKED;
    }
    Optional<Length> water = job.ground().waterDepth();
    if (water.isEmpty()) {
      return Wetness.NOT_SAID;
    }
    Length freezing =
        job.ground().frost().map(Frost::depth).map(hole.depth()::min).orElse(hole.depth());
    return water.get().isMoreThan(freezing.plus(WATER_TOLERANCE))
        ? Wetness.DRAINED
        : Wetness.SOAKED;
  }

  private static List<Age> ages(
      Pressure strength, ConcreteExposureFormulas formulas, List<Working> workings) {
    List<Age> ages = new ArrayList<>();
    for (int days : AGES) {
      Working working = Working.of(formulas.strengthAtAge(), "", strength, new Count(days));
      workings.add(working);
      ages.add(
          new Age(days, working.asPressure(), new Ratio(working.asPressure().dividedBy(strength))));
    }
    return ages;
  }

  private static Curing curing(
      Job job, List<Hole> holes, Freezing freezes, List<Working> workings) {
    Length thinnest =
        holes.stream()
            .map(hole -> hole.shaft().min(hole.formAbove()).min(hole.diameter()))
            .min(Comparator.naturalOrder())
            .orElse(Length.ZERO);
    Optional<Integer> repeated =
        freezes == Freezing.NEVER ? Optional.empty() : days(job, "repeated-freeze", workings);
    return new Curing(
        thinnest,
        !thinnest.isLessThan(THICK),
        Season.of(job.place().latitude(), job.crew().start()),
        days(job, "first-freeze", workings).orElseThrow(),
        repeated);
  }

  /** Whole days until a strength is reached, none where 28 days do not bring it. */
  private static Optional<Integer> days(Job job, String limit, List<Working> workings) {
    UnitSystem units = job.heading().units();
    Pressure wanted = ConcreteLimit.find(limit).strength(units);
    Pressure strength = job.concrete().strength();
    if (wanted.isMoreThan(strength)) {
      return Optional.empty();
    }
    Working working =
        Working.of(new ConcreteExposureFormulas(units).ageAtStrength(), "", strength, wanted);
    workings.add(working);
    return Optional.of((int) Math.max(1, Rounding.UP.steps(working.result(), 1)));
  }
}
