package pegbook.figures;

import java.util.Optional;
import pegbook.measure.Area;
import pegbook.measure.Force;

/**
 * What a support carries, before any combination. Where nobody knows how much snow falls, the snow
 * is absent; it is never nothing.
 */
public sealed interface SupportLoad {
  String mark();

  /** Floor that it carries. */
  Area area();

  Force dead();

  Force live();

  Optional<Force> snow();

  /** By the area of floor nearest to it. */
  record ByArea(String mark, Area area, Force dead, Force live, Optional<Force> snow)
      implements SupportLoad {}

  /** By the beams of a floor frame: the floor that these bring. */
  record ByBeam(String mark, Area area, Force dead, Force live, Optional<Force> snow)
      implements SupportLoad {}
}
