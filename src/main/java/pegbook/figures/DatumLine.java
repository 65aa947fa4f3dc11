package pegbook.figures;

import java.util.List;
import pegbook.measure.Length;

/**
 * The level line from which depths are read.
 *
 * @param height above the benchmark
 * @param highest the mark with the highest ground
 * @param clearance from that ground up to the line
 * @param readings one for each mark whose level is known, in the order of the marks
 */
public record DatumLine(Length height, String highest, Length clearance, List<Reading> readings) {
  public DatumLine {
    readings = List.copyOf(readings);
  }

  /**
   * What a rod held at a mark reads from the line downwards.
   *
   * @param mark the mark
   * @param level height of its ground above the benchmark
   * @param toGround down to the ground
   * @param toUnderside down to the underside of the concrete
   * @param toBottom down to the bare bottom
   * @param toTop down to the top of the concrete; negative when that stands above the line
   * @param topLevel height of the top of the concrete above the benchmark
   */
  public record Reading(
      String mark,
      Length level,
      Length toGround,
      Length toUnderside,
      Length toBottom,
      Length toTop,
      Length topLevel) {}
}
