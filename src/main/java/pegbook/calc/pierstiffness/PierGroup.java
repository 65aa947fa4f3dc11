package pegbook.calc.pierstiffness;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.geometry.Point;
import pegbook.job.Pier;

/**
 * Piers that are dug, filled and loaded alike.
 *
 * @param holes at least one, in the order of the marks
 * @param pier the first one's part of the job
 */
record PierGroup(List<Hole> holes, Pier pier) {
  PierGroup {
    holes = List.copyOf(holes);
  }

  /** Groups the piers, in the order in which each kind first comes. */
  static List<PierGroup> of(List<Hole> holes, List<Pier> piers) {
    List<PierGroup> groups = new ArrayList<>();
    List<Hole> ofPiers = holes.stream().filter(hole -> hole.kind() == MarkKind.PIER).toList();
    for (AlikeHoles alike : AlikeHoles.of(ofPiers)) {
      Map<Pier, List<Hole>> byLoad = new LinkedHashMap<>();
      for (Hole hole : alike.holes()) {
        find(piers, hole.mark())
            .ifPresent(
                pier -> byLoad.computeIfAbsent(nameless(pier), key -> new ArrayList<>()).add(hole));
      }
      byLoad.forEach((pier, same) -> groups.add(new PierGroup(same, pier)));
    }
    return List.copyOf(groups);
  }

  private static Optional<Pier> find(List<Pier> piers, String mark) {
    return piers.stream().filter(pier -> pier.id().equals(mark)).findFirst();
  }

  /** A pier without what tells it from others of its kind: its name and its place. */
  private static Pier nameless(Pier pier) {
    return new Pier(
        "",
        Point.ORIGIN,
        pier.hole(),
        pier.depth(),
        pier.gravel(),
        pier.top(),
        pier.tube(),
        pier.steel(),
        pier.instrument(),
        pier.gap(),
        pier.push(),
        pier.wind(),
        pier.anchors(),
        pier.sleeve(),
        pier.uplift(),
        pier.side(),
        pier.widenings());
  }

  List<String> marks() {
    return holes.stream().map(Hole::mark).toList();
  }
}
