package pegbook.figures;

import java.util.List;
import pegbook.measure.Length;

/**
 * Pieces that are cut alike from lengths of stock.
 *
 * @param size what they are cut from, such as "#4"
 * @param name as it stands on their list and is written on the piece
 * @param length cut
 * @param count in the whole job
 * @param marks the footings they go to
 * @param isStraight left straight: two may be lapped where one is too long
 */
public record CutPiece(
    String size, String name, Length length, int count, List<String> marks, boolean isStraight) {
  public CutPiece {
    marks = List.copyOf(marks);
  }
}
