package pegbook.calc.floorframe;

/**
 * Where a joist rests.
 *
 * @param x place along the joist, metres
 * @param on what carries it there
 */
record Node(double x, On on) {
  /** What carries a joist. */
  sealed interface On {}

  /** A beam right over its post. */
  record OnPost(Post post) implements On {}

  /**
   * A beam between two posts.
   *
   * @param bay which, by its place in the layout
   * @param along from the bay's first post, metres
   */
  record OnBay(int bay, double along) implements On {}

  /**
   * A header of an opening.
   *
   * @param gap which opening, by its place in the layout
   * @param far true for the header on the side of larger x
   */
  record OnHeader(int gap, boolean far) implements On {}
}
