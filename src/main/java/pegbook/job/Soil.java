package pegbook.job;

import java.util.Locale;

/** Classes of soil, as a spade and a hand tell them apart. */
public enum Soil {
  ROCK,
  GRAVEL,
  SANDY_GRAVEL,
  SAND,
  SILTY_SAND,
  CLAYEY_SAND,
  LOAM,
  SILT,
  SANDY_CLAY,
  CLAY,
  PEAT,
  FILL;

  /** As tables and words name it: lower case, hyphens. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
