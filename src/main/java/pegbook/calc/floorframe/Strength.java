package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.job.Frame;
import pegbook.job.Frame.Timber;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.UnitSystem;
import pegbook.published.TimberFactor;
import pegbook.published.TimberValue;

/**
 * What timber of a depth bears, all factors in.
 *
 * @param bending stress allowed on its narrow side
 * @param shear stress allowed along the grain
 * @param bearing stress allowed across the grain
 * @param stiffness modulus of elasticity
 * @param workings the steps
 */
record Strength(
    Pressure bending,
    Pressure shear,
    Pressure bearing,
    Pressure stiffness,
    List<Working> workings) {
  Strength {
    workings = List.copyOf(workings);
  }

  /**
   * The strength of a member.
   *
   * @param subject its size, for the workings
   * @param depth of one ply
   * @param shared factor for members that share a load; one where none do
   * @return nothing where the table has no such timber
   */
  static Optional<Strength> of(
      Frame frame, UnitSystem units, String subject, Length depth, double shared) {
    if (frame.timber() instanceof Timber.Given given) {
      return Optional.of(
          new Strength(
              given.bending(), given.shear(), given.bearing(), given.stiffness(), List.of()));
    }
    Timber.Graded graded = (Timber.Graded) frame.timber();
    return TimberValue.find(graded.species().id(), graded.grade().id(), depth)
        .map(value -> new Factors(frame.wet(), isIncised(graded), units, subject, shared))
        .flatMap(
            factors ->
                TimberValue.find(graded.species().id(), graded.grade().id(), depth)
                    .map(value -> factors.on(value, depth)));
  }

  static boolean isIncised(Timber.Graded graded) {
    return graded.incised().orElse(graded.species().isIncised());
  }

  /** The factors of one member. */
  private record Factors(
      boolean wet,
      boolean incised,
      StrengthFormulas formulas,
      String subject,
      double shared,
      List<Working> workings) {
    Factors(boolean wet, boolean incised, UnitSystem units, String subject, double shared) {
      this(wet, incised, new StrengthFormulas(units), subject, shared, new ArrayList<>());
    }

    private Strength on(TimberValue value, Length depth) {
      double size = value.depth().isPresent() ? 1 : TimberFactor.size(depth).value();
      double bendingWet = wet("wet-bending", value.bending().times(size));
      return new Strength(
          work(
                  formulas.bending(),
                  value.bending(),
                  new Count(size),
                  new Count(bendingWet),
                  new Count(shared),
                  strength())
              .asPressure(),
          work(formulas.shear(), value.shear(), new Count(wet("wet-shear")), strength())
              .asPressure(),
          work(formulas.bearing(), value.bearing(), new Count(wet("wet-bearing"))).asPressure(),
          work(formulas.stiffness(), value.stiffness(), new Count(wet("wet-stiffness")), stiff())
              .asPressure(),
          workings);
    }

    private double wet(String factor, Pressure sized) {
      return wet ? TimberFactor.find(factor).on(sized) : 1;
    }

    private double wet(String factor) {
      return wet ? TimberFactor.find(factor).value() : 1;
    }

    private Count strength() {
      return new Count(incised ? TimberFactor.find("incised-strength").value() : 1);
    }

    private Count stiff() {
      return new Count(incised ? TimberFactor.find("incised-stiffness").value() : 1);
    }

    private Working work(Formula formula, pegbook.measure.Quantity... quantities) {
      Working working = Working.of(formula, subject, quantities);
      workings.add(working);
      return working;
    }
  }
}
