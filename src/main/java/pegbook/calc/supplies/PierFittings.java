package pegbook.calc.supplies;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.figures.Argument;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.Anchors;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.job.Sleeve;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/** What is cast into piers: bolts, the board that holds them, sleeves for cables. */
final class PierFittings {
  private final List<Hole> holes;

  /** How far the board of the template lies over the form on each side. */
  private final Length lap;

  private final SuppliesFormulas formulas;
  private final List<Working> workings = new ArrayList<>();
  private final List<Need> needs = new ArrayList<>();

  PierFittings(Job job, List<Hole> holes) {
    this.holes = holes;
    this.lap =
        job.heading().units() == UnitSystem.IMPERIAL
            ? Length.ofInches(2)
            : Length.ofMillimetres(50);
    this.formulas = new SuppliesFormulas(job.heading().units());
    for (Pier pier : job.piers()) {
      Hole hole = hole(pier);
      pier.anchors().ifPresent(anchors -> bolts(hole, anchors));
      pier.sleeve().ifPresent(sleeve -> sleeve(hole, sleeve));
    }
  }

  List<Need> needs() {
    return List.copyOf(needs);
  }

  List<Working> workings() {
    return List.copyOf(workings);
  }

  private Hole hole(Pier pier) {
    return holes.stream()
        .filter(hole -> hole.mark().equals(pier.id()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no hole for " + pier.id()));
  }

  /** Alike bolts of several piers have the same words, and become one line of the list. */
  private void bolts(Hole hole, Anchors anchors) {
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("size", Argument.of(anchors.size()));
    words.put("length", Argument.of(anchors.above().plus(anchors.embedded())));
    needs.add(ShopNeeds.pieces("anchor-bolts", words, anchors.count()));
    needs.add(ShopNeeds.pieces("bolt-caps", Map.of(), anchors.count()));
    needs.add(
        ShopNeeds.pieces(
            "template-board", Map.of("side", Argument.of(hole.headWidth().plus(lap.times(2)))), 1));
  }

  private void sleeve(Hole hole, Sleeve sleeve) {
    Working length =
        Working.of(formulas.cableSleeve(), hole.mark(), hole.top(), sleeve.depth(), hole.shaft());
    workings.add(length);
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("outside", Argument.of(sleeve.outside()));
    words.put("length", Argument.of(length.asLength()));
    words.put("mark", Argument.of(List.of(hole.mark())));
    needs.add(ShopNeeds.pieces("cable-sleeve", words, 1));
  }
}
