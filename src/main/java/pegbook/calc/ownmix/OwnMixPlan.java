package pegbook.calc.ownmix;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.Volume;

/**
 * A mix by weight; none where the job does not ask for one.
 *
 * @param mix what goes into it
 */
public record OwnMixPlan(
    Optional<Mix> mix, List<Finding> findings, List<Working> workings, List<Need> needs)
    implements Result {
  public OwnMixPlan {
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
  }

  /**
   * The mix.
   *
   * @param aim mean strength that it is made for, within the table
   * @param waterCement water to cement, by weight
   * @param stone size of the table that was used
   * @param unit a cubic yard or metre, sand and stone neither dry nor wet
   * @param bag what goes with one bag of cement, sand and stone weighed as they lie
   * @param load what goes into one load of the mixer or tub, weighed as they lie
   * @param all what is bought, weighed as it lies
   * @param loadVolume concrete of that load
   * @param cementBags bags of cement, whole
   */
  public record Mix(
      Pressure aim,
      double waterCement,
      Length stone,
      Weights unit,
      Weights bag,
      Weights load,
      Weights all,
      Volume loadVolume,
      int cementBags) {}

  /** Weights that go together. */
  public record Weights(Mass cement, Mass sand, Mass stone, Mass water) {
    Weights times(double factor) {
      return new Weights(
          cement.times(factor), sand.times(factor), stone.times(factor), water.times(factor));
    }
  }
}
