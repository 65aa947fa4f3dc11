package pegbook.job;

import java.util.Locale;

/** What keeps the side of a footing's concrete from the grip of frost. */
public enum Side {
  /** A smooth sleeve that the soil can slide on, down through the frozen ground. */
  SMOOTH_SLEEVE,
  /** Clean gravel filled in round a tube, with a way out for its water. */
  GRANULAR_BACKFILL;

  /** As words name it: lower case, hyphens. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
