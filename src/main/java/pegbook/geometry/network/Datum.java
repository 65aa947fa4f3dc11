package pegbook.geometry.network;

import java.util.List;

/** What holds the frame, as distances alone do not. */
public sealed interface Datum {
  /** The fixed and expected points of the network hold it; when they do not, that is a fault. */
  record Held() implements Datum {}

  /**
   * A free network: what the fixed and expected points leave open (shift, turn) is chosen so that
   * the squares of the changes from the starting places are least over some points (inner
   * constraints).
   *
   * @param over names of those points; empty: all that are not fixed
   */
  record Inner(List<String> over) implements Datum {
    public Inner {
      over = List.copyOf(over);
    }
  }

  static Datum held() {
    return new Held();
  }

  /** Free over all points. */
  static Datum free() {
    return new Inner(List.of());
  }

  /** Free over the named points. */
  static Datum freeOver(List<String> names) {
    return new Inner(names);
  }
}
