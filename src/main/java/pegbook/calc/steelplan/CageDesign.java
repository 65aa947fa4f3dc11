package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Hook;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.calc.steelplan.SteelPlan.Uprights;
import pegbook.calc.steelplan.UprightDesign.Between;
import pegbook.figures.AlikeHoles;
import pegbook.figures.BarAnchorage;
import pegbook.figures.BarPiece;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.published.Bars;
import pegbook.published.CoverRule;

/** Fits the steel that the job asks for into footings that are alike, and keeps the steps. */
final class CageDesign {
  private final AlikeHoles alike;
  private final Steel steel;
  private final UnitSystem units;
  private final BarAnchorage anchorage;
  private final SteelPlanFormulas formulas;
  private final SteelRules rules;
  private final BarList barList;
  private final List<Working> workings = new ArrayList<>();

  CageDesign(AlikeHoles alike, Steel steel, BarAnchorage anchorage, BarList barList) {
    this.barList = barList;
    this.anchorage = anchorage;
    this.alike = alike;
    this.steel = steel;
    this.units = anchorage.units();
    this.formulas = new SteelPlanFormulas(units);
    this.rules = new SteelRules(units);
  }

  /** The steps, once {@link #cage()} was asked. */
  List<Working> workings() {
    return List.copyOf(workings);
  }

  /** The narrowest concrete that the steel runs through. */
  static Length narrowest(Hole hole) {
    return hole.tube()
        .filter(tube -> tube.from() == Tube.From.BOTTOM || hole.top().isMoreThan(Length.ZERO))
        .map(Tube::inside)
        .map(hole.diameter()::min)
        .orElse(hole.diameter());
  }

  /** The cage, or none where the steel does not fit; its pieces go on the bar list. */
  Optional<Cage> cage() {
    Hole hole = alike.first();
    Length concrete = narrowest(hole);
    Length bar = Bars.get(steel.size()).diameter();
    Length ring = ringBar();
    Length bottomCover =
        steel.cover().max(CoverRule.least(CoverRule.Exposure.CAST_AGAINST_GROUND, bar, units));
    Length vertical =
        work(formulas.vertical(), hole.depth(), hole.top(), bottomCover, steel.cover())
            .asLength()
            .setTo(rules.cuttingStep(), Rounding.DOWN);
    Length circle = work(formulas.barCircle(), concrete, steel.cover(), ring, bar).asLength();
    Length clear =
        steel.bars() < 2 ? Length.ZERO : work(formulas.clear(), circle, count(), bar).asLength();
    if (circle.isLessThan(Length.ZERO)
        || clear.isLessThan(Length.ZERO)
        || !vertical.minus(rules.firstRing().times(2)).isMoreThan(Length.ZERO)) {
      return Optional.empty();
    }
    Ratio ratio = new Ratio(work(formulas.ratio(), count(), bar, concrete).si());
    Optional<Rings> rings = steel.ties().map(ties -> rings(ties, concrete, vertical));
    Length fromBarToBar = steel.bars() > 1 ? clear.plus(bar) : concrete;
    Uprights uprights =
        new UprightDesign(
                alike,
                steel,
                new Between(bottomCover, circle, clear, fromBarToBar, steel.cover().plus(ring)),
                anchorage,
                workings)
            .uprights(vertical);
    return Optional.of(
        new Cage(
            alike.marks(),
            steel.bars(),
            steel.size(),
            bar,
            uprights,
            rings,
            concrete,
            hole.depth().plus(hole.top()),
            circle.plus(bar).plus(ring.times(2)),
            circle,
            clear,
            work(formulas.leastClear(), bar, rules.greatestStone()).asLength(),
            steel.cover(),
            bottomCover,
            ratio,
            pieces(uprights, rings)));
  }

  private Length ringBar() {
    return steel.ties().map(ties -> Bars.get(ties.size()).diameter()).orElse(Length.ZERO);
  }

  private Count count() {
    return new Count(steel.bars());
  }

  private Rings rings(Steel.Ties ties, Length concrete, Length vertical) {
    Length bar = Bars.get(ties.size()).diameter();
    Length greatest =
        work(formulas.greatestSpacing(), Bars.get(steel.size()).diameter(), bar, concrete)
            .asLength();
    double exact = work(formulas.rings(), vertical, rules.firstRing(), ties.spacing()).result();
    int count = (int) Math.max(2, Rounding.UP.steps(exact, 1));
    Length centreline = work(formulas.ringCentreline(), concrete, steel.cover(), bar).asLength();
    Length extension = work(formulas.hookExtension(), bar).asLength();
    Length hook = work(formulas.hook(), rules.insideBend(bar), bar, extension).asLength();
    Length cut = work(formulas.ringCut(), centreline, rules.overlap(), hook).asLength();
    return new Rings(
        ties.size(),
        bar,
        count,
        vertical.minus(rules.firstRing().times(2)).times(1.0 / (count - 1)),
        greatest,
        rules.firstRing(),
        centreline.plus(bar),
        rules.overlap(),
        rules.insideBend(bar),
        extension,
        cut.setTo(rules.cuttingStep(), Rounding.UP));
  }

  /** Upright bars first, then rings, then starters. */
  private List<BarPiece> pieces(Uprights uprights, Optional<Rings> rings) {
    List<BarPiece> pieces = new ArrayList<>();
    pieces.add(upright(uprights.hook(), uprights.cut()));
    rings.ifPresent(
        ring ->
            pieces.add(
                barList.piece(alike, ring.size(), BarPiece.Shape.RING, ring.count(), ring.cut())));
    uprights.starters().ifPresent(starters -> pieces.add(upright(starters.hook(), starters.cut())));
    return pieces;
  }

  private BarPiece upright(Optional<Hook> hook, Length cut) {
    BarPiece.Shape shape =
        hook.isPresent() ? BarPiece.Shape.HOOKED_ONE_END : BarPiece.Shape.STRAIGHT;
    return barList.piece(alike, steel.size(), shape, steel.bars(), cut);
  }

  private Working work(Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, alike.subject(), quantities);
    workings.add(working);
    return working;
  }
}
