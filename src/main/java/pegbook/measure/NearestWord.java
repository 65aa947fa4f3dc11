package pegbook.measure;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class NearestWord {
  private NearestWord() {}

  /**
   * The known word with the fewest single-letter changes from the one written, capitals ignored;
   * none when more than a third of its letters would have to change. The first of equals wins.
   */
  public static Optional<String> among(Collection<String> known, String written) {
    String lower = written.toLowerCase(Locale.ROOT);
    Optional<String> nearest = Optional.empty();
    int fewest = Integer.MAX_VALUE;
    for (String word : known) {
      int changes = changes(word.toLowerCase(Locale.ROOT), lower);
      if (changes < fewest && changes <= Math.max(1, word.length() / 3)) {
        fewest = changes;
        nearest = Optional.of(word);
      }
    }
    return nearest;
  }

  /** Letters to insert, delete, replace or swap with their neighbour (optimal string alignment). */
  private static int changes(String one, String other) {
    if (Math.abs(one.length() - other.length()) > Math.max(1, one.length() / 3)) {
      return Integer.MAX_VALUE;
    }
    int[][] cost = new int[one.length() + 1][other.length() + 1];
    for (int i = 0; i <= one.length(); i++) {
      for (int j = 0; j <= other.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, one, other, i, j);
      }
    }
    return cost[one.length()][other.length()];
  }

  private static int cheapest(int[][] cost, String one, String other, int i, int j) {
    boolean same = one.charAt(i - 1) == other.charAt(j - 1);
    int best = Math.min(cost[i - 1][j], cost[i][j - 1]) + 1;
    best = Math.min(best, cost[i - 1][j - 1] + (same ? 0 : 1));
    boolean swapped =
        i > 1
            && j > 1
            && one.charAt(i - 1) == other.charAt(j - 2)
            && one.charAt(i - 2) == other.charAt(j - 1);
    return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
  }
}
