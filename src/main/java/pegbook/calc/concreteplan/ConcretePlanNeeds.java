package pegbook.calc.concreteplan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.concreteplan.ConcretePlan.Totals;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Argument;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.Concrete.Mixing;
import pegbook.job.Job;
import pegbook.job.Tube;
import pegbook.job.Widenings.Shape;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;

/** What must be bought to fill the holes, as shops sell it. What trucks bring, their loads say. */
final class ConcretePlanNeeds {
  private final Job job;
  private final List<Hole> holes;
  private final List<Working> workings;
  private final ConcretePlanFormulas formulas;

  /**
   * For a job.
   *
   * @param workings takes the steps
   */
  ConcretePlanNeeds(Job job, List<Hole> holes, List<Working> workings) {
    this.job = job;
    this.holes = holes;
    this.workings = workings;
    this.formulas = new ConcretePlanFormulas(job.heading().units());
  }

  List<Need> of(Totals totals, Optional<GravelOrder> gravel, Optional<GravelOrder> sideGravel) {
    List<Need> needs = new ArrayList<>();
    boolean bagged = job.concrete().ownMix().isEmpty();
    if (bagged && job.concrete().mixing() != Mixing.READY_MIX) {
      needs.add(bags(totals));
    }
    gravel.ifPresent(order -> needs.add(order.need()));
    sideGravel.ifPresent(order -> needs.add(order.need()));
    sideGravel.ifPresent(order -> needs.add(fleece()));
    for (AlikeHoles alike : AlikeHoles.of(holes)) {
      alike
          .first()
          .tube()
          .filter(tube -> tubeLength(alike.first(), tube).isMoreThan(Length.ZERO))
          .ifPresent(
              tube -> needs.add(tube(alike, tube.inside(), tubeLength(alike.first(), tube))));
      alike
          .first()
          .widenings()
          .cap()
          .filter(cap -> cap.shape() == Shape.ROUND)
          .ifPresent(cap -> needs.add(tube(alike, cap.width(), cap.thickness())));
    }
    return needs;
  }

  private Need bags(Totals totals) {
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("bag", Argument.of(job.concrete().bag()));
    words.put("strength", Argument.of(job.concrete().strength()));
    return new Need(
        "concrete-bags", words, totals.bags(), totals.bags(), Unit.NONE, Optional.empty());
  }

  /** Fleece round the gravel of all tubes, in whole square feet or metres. */
  private Need fleece() {
    double area = 0;
    for (AlikeHoles alike : AlikeHoles.of(inGravel())) {
      Hole hole = alike.first();
      Working working =
          Working.of(
              formulas.fleece(),
              alike.subject(),
              new Count(alike.count()),
              hole.diameter(),
              hole.shaftDepth());
      workings.add(working);
      area += working.result();
    }
    return new Need(
        "side-fleece",
        Map.of(),
        area,
        Rounding.UP.steps(area, 1),
        formulas.fleece().result().unit(),
        Optional.empty());
  }

  private List<Hole> inGravel() {
    return holes.stream().filter(hole -> Filling.isInGravel(job, hole)).toList();
  }

  /** Form tubes as they are sold, each cut to the pieces that it holds. */
  private Need tube(AlikeHoles alike, Length inside, Length length) {
    Length stock = job.shop().tube();
    Working tubes =
        Working.of(formulas.tubes(), alike.subject(), new Count(alike.count()), length, stock);
    workings.add(tubes);
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("inside", Argument.of(inside));
    words.put("stock", Argument.of(stock));
    words.put("pieces", Argument.of(alike.count()));
    words.put("length", Argument.of(length));
    words.put("marks", Argument.of(alike.marks()));
    return pieces("form-tube", words, tubes);
  }

  /** Whole pieces, set up. */
  private static Need pieces(String id, Map<String, Argument> words, Working working) {
    return new Need(
        id,
        words,
        working.result(),
        Rounding.UP.steps(working.result(), 1),
        Unit.NONE,
        Optional.empty());
  }

  private static Length tubeLength(Hole hole, Tube tube) {
    return tube.from() == Tube.From.BOTTOM ? hole.shaftDepth().plus(hole.column()) : hole.column();
  }
}
