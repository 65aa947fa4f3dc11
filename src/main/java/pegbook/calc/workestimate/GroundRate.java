package pegbook.calc.workestimate;

import pegbook.job.Digging;
import pegbook.job.Ground;
import pegbook.job.Soil;
import pegbook.published.HandDigRate;

/** Which published rate of hand digging holds for a job's ground. */
final class GroundRate {
  private GroundRate() {}

  /** The slower of what the soil's class allows and what the digging is like. */
  static HandDigRate of(Ground ground) {
    return byDigging(ground.digging()).slower(bySoil(ground.soil()));
  }

  private static HandDigRate byDigging(Digging digging) {
    return HandDigRate.find(
        switch (digging) {
          case EASY -> "loose";
          case ORDINARY -> "firm";
          case HEAVY -> "heavy";
          case STONY -> "boulder-clay";
        });
  }

  private static HandDigRate bySoil(Soil soil) {
    return HandDigRate.find(
        switch (soil) {
          case ROCK -> "rock";
          case GRAVEL, SANDY_GRAVEL -> "gravel";
          case CLAY -> "heavy";
          case SANDY_CLAY -> "firm";
          case SAND, SILTY_SAND, CLAYEY_SAND, LOAM, SILT, PEAT, FILL -> "loose";
        });
  }
}
