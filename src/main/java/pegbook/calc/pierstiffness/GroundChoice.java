package pegbook.calc.pierstiffness;

import java.util.Optional;
import pegbook.calc.pierstiffness.PierStiffness.GroundModulus;
import pegbook.job.GroundStiffness;
import pegbook.job.GroundStiffness.ByModulus;
import pegbook.job.GroundStiffness.ByVelocity;
import pegbook.job.Job;
import pegbook.job.UnitWeight;
import pegbook.measure.Pressure;
import pegbook.measure.Speed;
import pegbook.measure.Unit;
import pegbook.published.SoilStiffness;
import pegbook.published.SoilWeight;

/** How stiff the ground is taken to be: as the job says, else a range by its class of soil. */
final class GroundChoice {
  private final Job job;
  private final SoilStiffness row;
  private final PierStiffnessFormulas formulas;
  private final PierUnits units;
  private final Steps steps;

  GroundChoice(Job job, Steps steps) {
    this.job = job;
    this.row = SoilStiffness.find(soil(job));
    this.formulas = new PierStiffnessFormulas(job.heading().units());
    this.units = PierUnits.of(job.heading().units());
    this.steps = steps;
  }

  /** The name of the job's soil in the published tables. */
  private static String soil(Job job) {
    StringBuilder row = new StringBuilder();
    for (char letter : job.ground().soil().name().toCharArray()) {
      row.append(letter == '_' ? '-' : Character.toLowerCase(letter));
    }
    return row.toString();
  }

  /** True where no range by the class of soil can be trusted. */
  boolean isQuestionable() {
    return row.questionable() && job.ground().stiffness().isEmpty();
  }

  /** The choice; where the job gives nothing, from the table's Young's moduli. */
  GroundModulus choose() {
    Optional<GroundStiffness> given = job.ground().stiffness();
    if (given.isPresent() && given.get() instanceof ByModulus modulus) {
      return chosen(modulus.low(), modulus.high(), given);
    }
    if (given.isPresent() && given.get() instanceof ByVelocity velocity) {
      return chosen(byVelocity(velocity.low()), byVelocity(velocity.high()), given);
    }
    return chosen(byYoung(row.least()), byYoung(row.most()), given);
  }

  private GroundModulus chosen(Pressure low, Pressure high, Optional<GroundStiffness> given) {
    return new GroundModulus(
        low,
        high,
        row.poisson(),
        given.isPresent(),
        given.flatMap(GroundStiffness::from),
        row.citation());
  }

  private Pressure byYoung(Pressure young) {
    return stress(
        steps
            .work(formulas.modulusFromYoung(), "", units.stress().in(young), row.poisson())
            .result());
  }

  private Pressure byVelocity(Speed velocity) {
    var formula = formulas.modulusFromVelocity();
    Unit density = formula.inputs().get(0).unit();
    Unit speed = formula.inputs().get(1).unit();
    return stress(
        steps.work(formula, "", density.in(weight().bank()), speed.in(velocity)).result());
  }

  private SoilWeight weight() {
    return SoilWeight.find(soil(job), job.ground().unitWeight().map(UnitWeight::value));
  }

  private Pressure stress(double number) {
    return new Pressure(units.stress().toSi(number));
  }
}
