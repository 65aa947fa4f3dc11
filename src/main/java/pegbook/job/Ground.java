package pegbook.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import pegbook.measure.Length;

/**
 * The ground.
 *
 * @param soil class of soil at the depth of the footings
 * @param digging how hard it digs
 * @param water where ground water stands
 * @param unitWeight what the soil weighs, where the job says so
 * @param allowablePressure what the soil may carry
 * @param frost the authority's frost depth
 * @param freezing how much frost the air brings, where the job says so
 * @param benchmark the fixed point from which every height is read
 * @param levels height of the ground above the benchmark at marks, up positive; a mark without one
 *     is unknown
 * @param stiffness how stiff it is, where the job says so
 */
public record Ground(
    Soil soil,
    Digging digging,
    Optional<Water> water,
    Optional<UnitWeight> unitWeight,
    Optional<AllowablePressure> allowablePressure,
    Optional<Frost> frost,
    Optional<AirFreezingIndex> freezing,
    Optional<Benchmark> benchmark,
    Map<String, Length> levels,
    Optional<GroundStiffness> stiffness) {
  public Ground {
    levels = Collections.unmodifiableMap(new LinkedHashMap<>(levels));
  }

  /** Depth of ground water below the ground, where known. */
  public Optional<Length> waterDepth() {
    return water.map(Water::depth);
  }
}
