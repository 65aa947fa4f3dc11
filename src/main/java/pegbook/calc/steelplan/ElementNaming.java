package pegbook.calc.steelplan;

import java.util.List;
import java.util.Optional;
import pegbook.calc.steelplan.Element.Kind;
import pegbook.calc.steelplan.Element.Verdict;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;

/**
 * Names what footings count as before any rule is laid on them, and holds their upright steel to
 * the rule of that element and of no other.
 *
 * <p>Only what stands above the ground counts as free: soil holds the rest, also the soil tamped in
 * round a tube. A pad and a pedestal may be plain concrete, and no least steel is known for their
 * own bars. A shaft in the ground must have 0.5 % and four bars where earthquakes are strong, which
 * the job file does not say; elsewhere it needs steel where frost, wind or bending pulls. A column
 * must have 1 %.
 */
final class ElementNaming {
  /** Widths up to which a pedestal goes. */
  private static final double PEDESTAL_WIDTHS = 3;

  /** Nobody builds a height or a width to a thousandth of the other. */
  private static final double TOLERANCE = 0.001;

  static final Ratio PIER_RATIO = Ratio.ofPercent(0.5);
  static final Ratio OVERSIZE_RATIO = Ratio.ofPercent(0.5);
  static final Ratio COLUMN_RATIO = Ratio.ofPercent(1);
  static final Ratio GREATEST_RATIO = Ratio.ofPercent(8);
  static final int FEWEST_BARS = 4;

  private final AlikeHoles alike;
  private final Optional<Cage> cage;
  private final SteelPlanFormulas formulas;
  private final List<Working> workings;

  ElementNaming(AlikeHoles alike, Optional<Cage> cage, UnitSystem units, List<Working> workings) {
    this.alike = alike;
    this.cage = cage;
    this.formulas = new SteelPlanFormulas(units);
    this.workings = workings;
  }

  Element element() {
    Hole hole = alike.first();
    Length width = CageDesign.narrowest(hole);
    double whole = work(formulas.slenderness(), hole.depth(), hole.top(), width).result();
    double free = work(formulas.freeSlenderness(), hole.top(), width).result();
    Kind kind = kind(whole, free);
    Optional<Ratio> asked = asked(kind);
    Verdict verdict = verdict(kind);
    boolean wanted = verdict == Verdict.LESS || verdict == Verdict.ENGINEER;
    return new Element(
        alike.marks(),
        kind,
        width,
        whole,
        free,
        cage.map(Cage::bars).orElse(0),
        cage.map(Cage::ratio),
        asked,
        wanted ? asked.flatMap(this::barsFor) : Optional.empty(),
        verdict);
  }

  private static Kind kind(double whole, double free) {
    if (free > PEDESTAL_WIDTHS + TOLERANCE) {
      return Kind.COLUMN;
    }
    if (whole > PEDESTAL_WIDTHS + TOLERANCE) {
      return Kind.PIER;
    }
    return whole > 1 + TOLERANCE ? Kind.PEDESTAL : Kind.FOOTING;
  }

  private static Optional<Ratio> asked(Kind kind) {
    return switch (kind) {
      case FOOTING, PEDESTAL -> Optional.empty();
      case PIER -> Optional.of(PIER_RATIO);
      case COLUMN -> Optional.of(COLUMN_RATIO);
    };
  }

  private Verdict verdict(Kind kind) {
    return switch (kind) {
      case FOOTING, PEDESTAL -> Verdict.NOT_ASKED;
      case PIER -> reaches(PIER_RATIO) && hasFourBars() ? Verdict.WITHIN : Verdict.ENGINEER;
      case COLUMN -> column();
    };
  }

  private Verdict column() {
    if (!reaches(COLUMN_RATIO)) {
      return Verdict.LESS;
    }
    return reaches(GREATEST_RATIO.plus(tolerance())) ? Verdict.MORE : Verdict.WITHIN;
  }

  private boolean hasFourBars() {
    return cage.filter(some -> some.bars() >= FEWEST_BARS).isPresent();
  }

  private boolean reaches(Ratio least) {
    return cage.filter(some -> !some.ratio().plus(tolerance()).isLessThan(least)).isPresent();
  }

  private static Ratio tolerance() {
    return Ratio.ofPercent(TOLERANCE);
  }

  /** Bars of the size given that make a ratio, four at least. */
  private Optional<Integer> barsFor(Ratio ratio) {
    return cage.map(
        some ->
            Math.max(
                FEWEST_BARS,
                (int)
                    Rounding.UP.steps(
                        work(formulas.barsForRatio(), ratio, some.concrete(), some.diameter())
                            .result(),
                        1)));
  }

  private Working work(Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, alike.subject(), quantities);
    workings.add(working);
    return working;
  }
}
