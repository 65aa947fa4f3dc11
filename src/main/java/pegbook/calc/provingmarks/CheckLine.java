package pegbook.calc.provingmarks;

import pegbook.calc.provingmarks.Limits.Limit;

/**
 * A distance between two marks that could be taped.
 *
 * @param number its place among all of them, from 0
 * @param from index of its first mark
 * @param to index of its second, larger
 * @param limit what it reads, and how far it may be off
 */
record CheckLine(int number, int from, int to, Limit limit) {
  /** The mark at the other end. */
  int other(int mark) {
    return mark == from ? to : from;
  }

  /** Its length in whole millionths of a millimetre, so that like lengths count as equal. */
  long nanometres() {
    return Math.round(limit.planned().metres() * 1e9);
  }
}
