package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pegbook.calc.safepegs.SafePegs.Crossing;
import pegbook.calc.safepegs.SafePegs.Find;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.geometry.Crossings;
import pegbook.geometry.Point;
import pegbook.published.Citation;

/** What the reader of the pegs must act on. */
final class SafePegsFindings {
  private final PegSite site;
  private final List<Point> taped;
  private final MarkFinds finds;

  SafePegsFindings(PegSite site, List<Point> taped, MarkFinds finds) {
    this.site = site;
    this.taped = taped;
    this.finds = finds;
  }

  List<Finding> all(List<Find> found, List<Crossing> crossings, int tooMany) {
    List<Finding> findings = new ArrayList<>();
    if (taped.size() < 2) {
      findings.add(finding(Kind.ASK, "safe-pegs-no-room").about(site.names()));
    } else {
      sights().ifPresent(findings::add);
      weak(found).ifPresent(findings::add);
    }
    strings(crossings, tooMany).ifPresent(findings::add);
    return findings;
  }

  private static Finding finding(Kind kind, String id) {
    return Finding.of(kind, id, "site", Decider.CREW, Citation.COMMON_PRACTICE);
  }

  /** Fewer than three pegs see every mark; some marks may even be seen from fewer than three. */
  private Optional<Finding> sights() {
    if (finds.seeingAll() >= PegChoice.WANTED) {
      return Optional.empty();
    }
    List<String> few = new ArrayList<>();
    for (int mark = 0; mark < site.marks().size(); mark++) {
      if (finds.seeing(mark).size() < PegChoice.WANTED) {
        few.add(site.names().get(mark));
      }
    }
    Finding finding =
        few.isEmpty()
            ? finding(Kind.NOTE, "safe-pegs-split")
            : finding(Kind.ASK, "safe-pegs-few").about(few);
    return Optional.of(
        finding
            .with("pegs", Argument.of(taped.size()))
            .with("all", Argument.of(finds.seeingAll()))
            .with("heaps", names(true))
            .with("features", names(false))
            .with("height", Argument.of(site.rules().tape()))
            .with("reach", Argument.of(site.reach())));
  }

  /** What stands between the pegs and the marks; a word for nothing. */
  private Argument names(boolean heaps) {
    Set<String> names = new LinkedHashSet<>();
    for (Point mark : site.marks()) {
      for (Point peg : taped) {
        site.sight()
            .blocked(peg, mark, site.rules().tape())
            .filter(obstacle -> obstacle.heap() == heaps)
            .ifPresent(obstacle -> names.addAll(obstacle.names()));
      }
    }
    List<String> inOrder =
        heaps ? site.names().stream().filter(names::contains).toList() : List.copyOf(names);
    return inOrder.isEmpty() ? Argument.entry("safe-pegs.nothing") : Argument.of(inOrder);
  }

  private static Optional<Finding> weak(List<Find> found) {
    List<String> weak = found.stream().filter(Find::weak).map(Find::mark).toList();
    return weak.isEmpty()
        ? Optional.empty()
        : Optional.of(
            finding(Kind.ASK, "safe-pegs-weak")
                .about(weak)
                .with("least", Argument.of(Crossings.LEAST))
                .with("most", Argument.of(Crossings.MOST)));
  }

  private Optional<Finding> strings(List<Crossing> crossings, int tooMany) {
    List<String> without = new ArrayList<>(site.names());
    crossings.forEach(crossing -> without.remove(crossing.mark()));
    if (without.isEmpty()) {
      return Optional.empty();
    }
    Finding finding =
        tooMany > 0
            ? finding(Kind.NOTE, "safe-pegs-many")
                .with("pegs", Argument.of(tooMany))
                .with("most", Argument.of(StringPlan.MOST_PEGS))
            : finding(Kind.NOTE, "safe-pegs-no-string")
                .with("beyond", Argument.of(site.rules().beyond()))
                .with("height", Argument.of(site.rules().string()));
    return Optional.of(finding.about(without));
  }
}
