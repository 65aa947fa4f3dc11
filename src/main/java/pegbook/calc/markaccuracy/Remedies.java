package pegbook.calc.markaccuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.markaccuracy.MarkAccuracy.MarkError;
import pegbook.calc.markaccuracy.MarkAccuracy.PairError;
import pegbook.calc.markaccuracy.MarkAccuracy.PeggedBaseline;
import pegbook.calc.markaccuracy.MarkAccuracy.Remedy;
import pegbook.calc.markaccuracy.MarkAccuracy.Setting;
import pegbook.calc.markaccuracy.MarkAccuracy.ThirdTape;
import pegbook.figures.BaselineErrors;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.PlanErrors;
import pegbook.geometry.ErrorEllipse;
import pegbook.job.Layout;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/** Looks for what brings bad marks inside the tolerance, the cheapest first. */
final class Remedies {
  /** A radius over the tolerance by less than this part of it counts as on it. */
  private static final double TIE = 1e-6;

  /** Radii that differ by less than this, in parts of one, are alike. */
  private static final double ALIKE = 1e-9;

  private final Layout layout;
  private final Placement placement;
  private final PlanErrors plan;
  private final List<MarkError> marks;

  Remedies(Layout layout, Placement placement, PlanErrors plan, List<MarkError> marks) {
    this.layout = layout;
    this.placement = placement;
    this.plan = plan;
    this.marks = marks;
  }

  static boolean isWithin(Length radius, Length tolerance) {
    return radius.metres() <= tolerance.metres() * (1 + TIE);
  }

  /** None where no mark is bad. */
  Optional<Remedy> cheapest(PairError bestPair, Optional<PeggedBaseline> pegged) {
    List<MarkError> bad = marks.stream().filter(MarkError::isBad).toList();
    if (bad.isEmpty()) {
      return Optional.empty();
    }
    if (bestPair.radius().filter(this::isGood).isPresent()) {
      return Optional.of(new Remedy.OtherPair());
    }
    List<ThirdTape> thirds = new ArrayList<>();
    bad.forEach(mark -> third(mark).ifPresent(thirds::add));
    if (thirds.size() == bad.size()) {
      return Optional.of(new Remedy.ThirdTapes(thirds));
    }
    boolean pegs = pegged.map(PeggedBaseline::radius).filter(this::isGood).isPresent();
    return Optional.of(pegs ? new Remedy.Pegs() : new Remedy.None());
  }

  private boolean isGood(Length radius) {
    return isWithin(radius, layout.tolerance());
  }

  /** The third tape that helps a mark most, from a good mark, where it brings it inside. */
  private Optional<ThirdTape> third(MarkError mark) {
    if (mark.setting() != Setting.SWING && mark.setting() != Setting.OWN_PAIR) {
      return Optional.empty();
    }
    Optional<ThirdTape> best = Optional.empty();
    for (MarkError from : marks) {
      boolean serves =
          !from.isBad() && !from.mark().equals(mark.first()) && !from.mark().equals(mark.second());
      Optional<ThirdTape> third = serves ? third(mark, from) : Optional.empty();
      double least = best.map(known -> known.radius().metres()).orElse(Double.POSITIVE_INFINITY);
      if (third.isPresent() && third.get().radius().metres() < least * (1 - ALIKE)) {
        best = third;
      }
    }
    return best.filter(third -> isGood(third.radius()));
  }

  private Optional<ThirdTape> third(MarkError mark, MarkError from) {
    PlacedMark to = placement.mark(mark.mark());
    Length distance = placement.mark(from.mark()).at().distanceTo(to.at());
    if (distance.isMoreThan(layout.tape().length())) {
      return Optional.empty();
    }
    ErrorEllipse ellipse = ErrorEllipse.of(plan.withThird(mark.mark(), from.mark()).covariance());
    return Optional.of(
        new ThirdTape(
            mark.mark(),
            from.mark(),
            distance.setTo(layout.tape().division(), Rounding.NEAREST),
            ellipse.radiusHolding(BaselineErrors.SHARE)));
  }
}
