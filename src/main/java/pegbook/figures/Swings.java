package pegbook.figures;

import java.util.List;
import java.util.Optional;

/**
 * From which two marks every mark is taped.
 *
 * @param first the baseline's first mark
 * @param second its second mark
 * @param ownPairs marks that are taped from two others than the baseline's
 */
public record Swings(String first, String second, List<OwnPair> ownPairs) {
  public Swings {
    ownPairs = List.copyOf(ownPairs);
  }

  /** A mark that is taped from two others; both are taped from the baseline. */
  public record OwnPair(String mark, String first, String second) {}

  /** The pair of a mark that has one of its own. */
  public Optional<OwnPair> pairOf(String mark) {
    return ownPairs.stream().filter(pair -> pair.mark().equals(mark)).findFirst();
  }
}
