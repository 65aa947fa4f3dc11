package pegbook.figures;

import java.util.Optional;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Pressure;
import pegbook.published.FloorLoad;

/**
 * What lies on the floor, as the job says or as it is taken.
 *
 * @param dead own weight of the floor
 * @param live load of use
 * @param snow on the ground, taken for that on the floor; nothing where nobody knows it
 */
public record FloorPressures(Pressure dead, Pressure live, Pressure snow) {
  /** Those of a job. */
  public static FloorPressures of(Job job) {
    Optional<Floor> floor = job.floor();
    return new FloorPressures(
        taken(job, floor.flatMap(Floor::dead), "deck-dead"),
        taken(job, floor.flatMap(Floor::live), liveName(job)),
        floor.flatMap(Floor::groundSnow).orElse(Pressure.ZERO));
  }

  /** The table's load of use for what the floor is used for. */
  public static String liveName(Job job) {
    return switch (job.floor().map(Floor::use).orElse(Floor.Use.PRIVATE_DECK)) {
      case PRIVATE_DECK, PRIVATE_PLATFORM, HUT -> "deck-live";
      case PUBLIC, ASSEMBLY, SCHOOL -> "gathering-live";
    };
  }

  private static Pressure taken(Job job, Optional<Pressure> given, String otherwise) {
    return given.orElseGet(() -> FloorLoad.find(otherwise).in(job.heading().units()));
  }
}
