package pegbook.figures;

import pegbook.measure.Area;
import pegbook.measure.Force;

/** What a support carries, before any combination. */
public sealed interface SupportLoad {
  String mark();

  Force dead();

  Force live();

  Force snow();

  /** By the area of floor nearest to it. */
  record ByArea(String mark, Area area, Force dead, Force live, Force snow)
      implements SupportLoad {}

  /** By the beams of a floor frame. */
  record ByBeam(String mark, Force dead, Force live, Force snow) implements SupportLoad {}
}
