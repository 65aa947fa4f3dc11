package pegbook.job;

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
  FILL
}
