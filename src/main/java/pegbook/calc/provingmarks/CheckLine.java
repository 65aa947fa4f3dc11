package pegbook.calc.provingmarks;

import pegbook.calc.provingmarks.Limits.Limit;

/**
 * A distance between two marks that could be taped.
 *
 * @param number its place among all of them, from 0
 * @param from index of its first mark
 * @param to index of its second, larger
 * @param limit what it reads, and how far it may be off
 * @param atFrom its place among the distances of its first mark
 * @param atTo the same at its second
 */
record CheckLine(int number, int from, int to, Limit limit, int atFrom, int atTo) {
  /** The mark at the other end. */
  int other(int mark) {
    return mark == from ? to : from;
  }

  /** It alone, as a bit among the distances of one of its marks. */
  long bit(int mark) {
    return 1L << (mark == from ? atFrom : atTo);
  }

  /** Its length in whole millionths of a millimetre, so that like lengths count as equal. */
  long nanometres() {
    return Math.round(limit.planned().metres() * 1e9);
  }
}
