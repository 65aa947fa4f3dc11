package pegbook.calc.digschedule;

import pegbook.figures.SpoilHeap;
import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * A heap and how to find its place.
 *
 * @param heap the heap
 * @param kind what it is for
 * @param from the mark from which it is found
 * @param distance from that mark to the heap's centre
 * @param direction azimuth from that mark to the heap's centre
 */
public record HeapSpot(SpoilHeap heap, Kind kind, String from, Length distance, Angle direction) {
  /** Kinds of heap. */
  public enum Kind {
    /** All the soil of a hole, beside it. */
    BESIDE,
    /** A tarp or cart beside a hole, holding no more than one load. */
    TARP,
    /** Where the carts tip: the soil of all holes. */
    TIP
  }
}
