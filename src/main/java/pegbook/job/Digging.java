package pegbook.job;

/** How the ground digs by hand. */
public enum Digging {
  /** Loose: a spade goes in without a foot. */
  EASY,
  /** Firm: a foot on the spade. */
  ORDINARY,
  /** Heavy or sticky: clay that needs a pick or a mattock. */
  HEAVY,
  /** Stones that must be barred out. */
  STONY
}
