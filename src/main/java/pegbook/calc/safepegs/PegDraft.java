package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Rounding;

/**
 * A peg that was chosen, before it has its name.
 *
 * @param at where it stands
 * @param swing the tapes that set it, where tapes do
 * @param ends the ends of strings that it carries
 * @param taped true when marks are taped from it
 */
record PegDraft(Point at, Optional<PegSwing> swing, List<Strung.End> ends, boolean taped) {
  PegDraft {
    ends = List.copyOf(ends);
  }

  static PegDraft swung(PegSwing swing, List<Strung.End> ends) {
    return new PegDraft(swing.at(), Optional.of(swing), ends, false);
  }

  PegDraft fromHere() {
    return new PegDraft(at, swing, ends, true);
  }

  /** The pegs that strings are tied to. */
  static List<PegDraft> ofStrings(PegSite site, LinePegs pegs) {
    List<PegDraft> drafts = new ArrayList<>();
    for (LinePegs.Carrier carrier : pegs.carriers()) {
      Strung.End end = carrier.ends().get(0);
      Strung string = pegs.strings().get(end.string());
      if (string.line().isShared()) {
        drafts.add(new PegDraft(carrier.at(), Optional.empty(), carrier.ends(), false));
      } else if (!end.last()) {
        PegSwing swing = PegSwing.of(site, carrier.at());
        drafts.add(swung(swing, carrier.ends()));
        drafts.add(opposite(site, swing.at(), string, end));
      }
    }
    return drafts;
  }

  /** The second peg of a string over one mark: in line from the first, as that one stands. */
  private static PegDraft opposite(PegSite site, Point first, Strung string, Strung.End end) {
    Segment way = new Segment(first, site.marks().get(string.line().end(true)));
    Point at = way.at(way.length().metres() + string.after(), 0);
    return new PegDraft(at, Optional.empty(), List.of(new Strung.End(end.string(), true)), false);
  }

  /** Those that are taped from first, then clockwise about the centre from the first mark on. */
  static List<PegDraft> inOrder(List<PegDraft> drafts, PegSite site) {
    List<PegDraft> sorted = new ArrayList<>(drafts);
    sorted.sort(
        Comparator.comparingInt((PegDraft draft) -> draft.taped() ? 0 : 1)
            .thenComparingLong(draft -> round(draft.at(), site)));
    return sorted;
  }

  private static long round(Point at, PegSite site) {
    double turn =
        Point.ORIGIN.azimuthTo(at).radians()
            - Point.ORIGIN.azimuthTo(site.axis().to()).radians()
            + 1e-6;
    double whole = turn < 0 ? turn + 2 * Math.PI : turn;
    return Rounding.NEAREST.steps(whole, 1e-6);
  }
}
