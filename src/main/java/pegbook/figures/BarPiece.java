package pegbook.figures;

import pegbook.measure.Length;
import pegbook.measure.Mass;

/**
 * Bars cut alike for one footing.
 *
 * @param mark the footing
 * @param barMark name of the shape on the bar list, A, B and so on
 * @param size name of the bar
 * @param shape its shape
 * @param count how many for this footing
 * @param cut length cut, hooks and laps included
 * @param each mass of one
 */
public record BarPiece(
    String mark, String barMark, String size, Shape shape, int count, Length cut, Mass each) {
  /** Shapes. */
  public enum Shape {
    STRAIGHT,
    HOOKED_ONE_END,
    RING
  }
}
