package pegbook.calc.floorframe;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Follows the floor down to its posts, in square metres of floor: an even load is the same times
 * its pressure. Each joist carries the strip halfway to its neighbours, the outermost all beyond
 * them. Joists and beams end over what carries them (no member runs on over a middle support), so
 * that every reaction follows from the lever alone. What an opening cuts hangs on headers, these on
 * the joists beside the opening.
 *
 * @param floor the floor less its openings
 * @param carried what reaches the posts, by their names; all of the floor where the frame is whole
 * @param bays what lies on each beam, in the order of the layout
 * @param trimmers joists that headers hang on
 * @param headers what hangs on each header
 * @param faults what cannot be built
 */
record LoadPath(
    double floor,
    Map<String, Double> carried,
    List<BayLoad> bays,
    List<Trimmer> trimmers,
    List<Header> headers,
    List<Fault> faults) {
  LoadPath {
    carried = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(carried));
    bays = List.copyOf(bays);
    trimmers = List.copyOf(trimmers);
    headers = List.copyOf(headers);
    faults = List.copyOf(faults);
  }

  /** A load at a place along a member. */
  record At(double along, double area) {}

  /**
   * What lies on a beam.
   *
   * @param loads from joists across it
   * @param even spread over its length, from a joist along it
   */
  record BayLoad(int bay, double length, List<At> loads, double even) {
    BayLoad {
      loads = List.copyOf(loads);
    }

    double total() {
      return even + loads.stream().mapToDouble(At::area).sum();
    }

    /** From the first post to where all of it may be thought together. */
    double centre() {
      double moment =
          even * length / 2 + loads.stream().mapToDouble(at -> at.area() * at.along()).sum();
      return total() > 0 ? moment / total() : length / 2;
    }
  }

  /**
   * A joist beside an opening.
   *
   * @param joist which
   * @param span from beam to beam, where the headers hang
   * @param width of floor that it carries itself
   * @param hung from its first beam to each header, and what hangs there
   */
  record Trimmer(Joist joist, double span, double width, List<At> hung) {
    Trimmer {
      hung = List.copyOf(hung);
    }
  }

  /**
   * A header.
   *
   * @param gap which opening
   * @param x where along the joists
   * @param low joist at one end, across
   * @param high joist at its other end
   * @param area that hangs on it
   * @param tails joists that end at it
   */
  record Header(int gap, double x, double low, double high, double area, int tails) {}

  /** What cannot be built, and where. */
  record Fault(Kind kind, String subject) {
    /** Kinds. */
    enum Kind {
      /** An opening reaches a beam. */
      GAP_ON_BEAM,
      /** No whole joist stands beside an opening. */
      GAP_AT_EDGE,
      /** A piece of a joist has nothing to rest on. */
      JOIST_LOOSE,
      /** A part of the floor is not reached. */
      FLOOR_LOST
    }
  }

  /** Follows the loads. */
  static LoadPath of(FrameSite site, JoistLayout layout) {
    return new LoadTracing(site, layout).path();
  }
}
