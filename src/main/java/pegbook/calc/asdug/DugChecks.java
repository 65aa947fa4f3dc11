package pegbook.calc.asdug;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Pressure;

/**
 * What holes that were dug beside their marks, or wider or narrower than planned, must be held
 * against.
 *
 * @param loads one for each hole whose middle lies off its mark while its concrete fills the hole
 * @param rooms steel and tubes on the true mark of a hole that is off or has another width
 * @param betweens what is left of the soil to the nearest hole
 * @param tapes readings that lead back to the true marks, and on to those that are not dug yet
 */
public record DugChecks(
    List<OffCentre> loads,
    List<Room> rooms,
    List<Between> betweens,
    List<Tape> tapes,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public DugChecks {
    loads = List.copyOf(loads);
    rooms = List.copyOf(rooms);
    betweens = List.copyOf(betweens);
    tapes = List.copyOf(tapes);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** How a load beside the middle of its bottom stands. */
  public enum Verdict {
    /** The edge is pressed no harder than it may be. */
    WITHIN,
    /** Nobody knows what the ground may carry. */
    UNKNOWN,
    EXCEEDS,
    /** A part of the bottom carries nothing. */
    OUTSIDE_KERN
  }

  /**
   * A load on the true mark over a bottom whose middle lies off it.
   *
   * @param width of the bottom
   * @param kern how far off the load may be and press all of it
   * @param pressure with the load in the middle
   * @param edge pressure at the edge that is pressed most; none outside the kern
   */
  public record OffCentre(
      String mark,
      Length moved,
      Length width,
      Length kern,
      Pressure pressure,
      Optional<Pressure> edge,
      Optional<Pressure> allowable,
      Verdict verdict) {}

  /**
   * Room in the hole for what stands on the true mark.
   *
   * @param cover concrete left beside the steel, where there is steel
   * @param wantedCover that the job asks for
   * @param tube room beside the tube; below zero where it stands over the rim, none without a tube
   */
  public record Room(
      String mark, Optional<Length> cover, Length wantedCover, Optional<Length> tube) {}

  /** Soil left between a hole and its nearest neighbour. */
  public record Between(String mark, String neighbour, Length soil, Length planned) {}

  /** What a tape is held between. */
  public enum Purpose {
    /** From a mark to the true mark of the hole, for form and anchors. */
    TRUE_MARK,
    /** From the middle of the hole to a mark that is not dug yet. */
    ON_TO
  }

  /**
   * A reading.
   *
   * @param from where the tape is held
   * @param to what it leads to
   * @param reading set to the tape's division
   * @param other to the hole's middle as it is, or as the tape table has it from the true mark
   */
  public record Tape(
      Purpose purpose, String mark, String from, String to, Length reading, Length other) {}
}
