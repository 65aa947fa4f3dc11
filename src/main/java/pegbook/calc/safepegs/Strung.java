package pegbook.calc.safepegs;

import java.util.Optional;
import pegbook.geometry.Point;

/**
 * A line with room for a peg past both ends and nothing in a string's way between.
 *
 * @param line over which marks
 * @param before how far before the first mark its peg stands, metres
 * @param after how far past the last mark its peg stands, metres
 */
record Strung(MarkLine line, double before, double after) {

  /** One end of a string. */
  record End(int string, boolean last) {}

  double pastMetres(boolean last) {
    return last ? after : before;
  }

  /** Finds the nearest pegs for a line. */
  record Finder(PegSite site) {
    Optional<Strung> string(MarkLine line) {
      Optional<Double> before = past(line, false);
      Optional<Double> after = before.isEmpty() ? before : past(line, true);
      return after
          .map(metres -> new Strung(line, before.orElse(0.0), metres))
          .filter(this::isClear);
    }

    /**
     * Past an end by whole steps, as near to the hole as a peg may stand; outside the floor where
     * that works, else under it.
     */
    private Optional<Double> past(MarkLine line, boolean last) {
      Optional<Double> under = Optional.empty();
      double step = site.rules().step().metres();
      double hole = site.holeRadiusMetres(line.end(last)) + site.rules().hole().metres();
      for (int steps = (int) Math.ceil(hole / step - 1e-9);
          steps * step <= site.rules().beyond().metres() + 1e-9;
          steps++) {
        Point place = line.past(last, site.marks(), steps * step);
        if (site.ground().isFreeUnderTheFloor(place)) {
          if (site.ground().isOffTheFloor(place)) {
            return Optional.of(steps * step);
          }
          under = under.isPresent() ? under : Optional.of(steps * step);
        }
      }
      return under;
    }

    boolean isClear(Strung strung) {
      Point first = strung.line().past(false, site.marks(), strung.before());
      Point second = strung.line().past(true, site.marks(), strung.after());
      return !first.distanceTo(second).isMoreThan(site.reach())
          && site.sight().blocked(first, second, site.rules().string()).isEmpty();
    }
  }
}
