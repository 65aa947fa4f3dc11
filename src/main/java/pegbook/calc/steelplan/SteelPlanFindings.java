package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.job.Steel;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** Holds cages to the rules named, and says where they miss them. Cover has its own class. */
final class SteelPlanFindings {
  /** Lengths closer than this count as equal: bars are not placed to a tenth of a millimetre. */
  static final Length TOLERANCE = Length.ofMillimetres(0.1);

  private static final Citation BARS_IN_RINGS = new Citation("aci-318-19-memory", "10.7.3.1");

  private final UnitSystem units;
  private final List<Finding> findings = new ArrayList<>();

  SteelPlanFindings(UnitSystem units) {
    this.units = units;
  }

  List<Finding> all() {
    return List.copyOf(findings);
  }

  /** The steel does not go in. */
  void doesNotFit(AlikeHoles alike, Steel steel) {
    findings.add(
        finding(Kind.STOP, "steel-does-not-fit", alike, "steel", Citation.GEOMETRY)
            .with("concrete", Argument.of(CageDesign.narrowest(alike.first())))
            .with("cover", Argument.of(steel.cover()))
            .with("bars", Argument.of(steel.bars()))
            .with("size", Argument.words(steel.size())));
  }

  /** Checks the steel of footings that are alike. */
  void check(AlikeHoles alike, Cage cage, Element.Kind element) {
    findings.addAll(new CoverCheck(alike, cage, units).findings());
    clearSpacing(alike, cage);
    findings.addAll(UprightFindings.of(alike, cage));
    cage.rings()
        .ifPresentOrElse(
            rings -> rings(alike, cage, rings, element),
            () ->
                findings.add(
                    finding(
                        Kind.ASK,
                        "bars-without-rings",
                        alike,
                        "steel.ties",
                        Citation.COMMON_PRACTICE)));
  }

  private void clearSpacing(AlikeHoles alike, Cage cage) {
    if (cage.bars() > 1 && cage.clear().plus(TOLERANCE).isLessThan(cage.leastClear())) {
      findings.add(
          finding(Kind.ASK, "bars-too-close", alike, "steel.bars", SteelPlanFormulas.CLEAR_SPACING)
              .with("clear", Argument.of(cage.clear()))
              .with("wanted", Argument.of(cage.leastClear())));
    }
  }

  private void rings(AlikeHoles alike, Cage cage, Rings rings, Element.Kind element) {
    if (element == Element.Kind.COLUMN) {
      ringsOfColumn(alike, cage, rings);
    }
    Length core = rings.outside().minus(rings.diameter().times(2));
    if (core.isLessThan(rings.hookExtension().times(2))) {
      findings.add(
          finding(Kind.NOTE, "hooks-crowd-core", alike, "steel.ties", SteelPlanFormulas.HOOKS)
              .with("core", Argument.of(core))
              .with("hook", Argument.of(rings.hookExtension())));
    }
  }

  /** Rules of columns, which hold for columns alone. */
  private void ringsOfColumn(AlikeHoles alike, Cage cage, Rings rings) {
    if (rings.spacing().isMoreThan(rings.greatestSpacing().plus(TOLERANCE))) {
      findings.add(
          finding(
                  Kind.ASK,
                  "rings-too-far-apart",
                  alike,
                  "steel.ties.spacing",
                  SteelPlanFormulas.TIE_SPACING)
              .with("spacing", Argument.of(rings.spacing()))
              .with("wanted", Argument.of(rings.greatestSpacing())));
    }
    if (cage.bars() < ElementNaming.FEWEST_BARS) {
      findings.add(
          finding(Kind.ASK, "few-bars-in-rings", alike, "steel.bars", BARS_IN_RINGS)
              .with("bars", Argument.of(cage.bars()))
              .with("wanted", Argument.of(ElementNaming.FEWEST_BARS)));
    }
  }

  static Finding finding(Kind kind, String id, AlikeHoles alike, String key, Citation source) {
    Hole hole = alike.first();
    String place = hole.kind() == MarkKind.PIER ? "piers." + hole.mark() + "." : "supports.";
    return Finding.of(kind, id, place + key, Decider.ENGINEER, source).about(alike.marks());
  }
}
