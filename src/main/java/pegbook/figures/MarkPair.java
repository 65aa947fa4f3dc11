package pegbook.figures;

/**
 * Two marks between which a tape is held.
 *
 * @param first where its zero is held
 * @param second where it is read
 */
public record MarkPair(String first, String second) {
  /** True when both name the same two marks, whichever is first. */
  public boolean joinsTheSame(MarkPair other) {
    return equals(other) || (first.equals(other.second) && second.equals(other.first));
  }
}
