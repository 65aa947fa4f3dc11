package pegbook.export;

import pegbook.calc.pierstiffness.PierStiffness;
import pegbook.calc.pierstiffness.PierStiffness.AlikePiers;
import pegbook.calc.pierstiffness.PierStiffness.Case;
import pegbook.calc.pierstiffness.PierStiffness.FloorGap;
import pegbook.calc.pierstiffness.PierStiffness.Other;

/** The figures of the piers. */
final class PierResults {
  private PierResults() {}

  static void write(JsonFigures json, PierStiffness stiffness) {
    json.quantity("shearModulusLowPascals", stiffness.ground().low())
        .quantity("shearModulusHighPascals", stiffness.ground().high())
        .number("poissonRatio", stiffness.ground().poisson())
        .flag("groundGiven", stiffness.ground().given())
        .list("alike", stiffness.piers(), PierResults::piers)
        .list("floorGaps", stiffness.gaps(), PierResults::gap);
  }

  private static void piers(JsonFigures json, AlikePiers piers) {
    json.texts("marks", piers.marks())
        .quantity("pushNewtons", piers.pier().push())
        .quantity("windNewtons", piers.pier().wind())
        .quantity("concreteModulusPascals", piers.concrete())
        .number("overturningFactor", piers.overturning());
    piers.windOverturning().ifPresent(factor -> json.number("windOverturningFactor", factor));
    json.list("cases", piers.cases(), PierResults::oneCase)
        .list("byDiameter", piers.byDiameter(), PierResults::other)
        .list("byDepth", piers.byDepth(), PierResults::other);
  }

  private static void oneCase(JsonFigures json, Case each) {
    json.text("case", each.letter())
        .text("hold", each.hold().name())
        .flag("stiffGround", each.stiff())
        .quantity("bendingMetres", each.bending())
        .quantity("slidingMetres", each.sliding())
        .quantity("rockingMetres", each.rocking())
        .quantity("swayMetres", each.sway())
        .quantity("tiltRadians", each.tilt())
        .number("frequencyHertz", each.hertz());
    each.wind()
        .ifPresent(
            wind ->
                json.quantity("windSwayMetres", wind.sway())
                    .quantity("windTiltRadians", wind.tilt()));
  }

  private static void other(JsonFigures json, Other other) {
    json.quantity("changeMetres", other.change())
        .quantity("tiltBaseAloneRadians", other.alone())
        .quantity("tiltAllDepthRadians", other.held());
  }

  private static void gap(JsonFigures json, FloorGap gap) {
    json.text("mark", gap.mark())
        .flag("insideFloor", gap.inside())
        .quantity("toFloorEdgeMetres", gap.toEdge())
        .quantity("wantedMetres", gap.wanted())
        .quantity("openingMetres", gap.opening())
        .quantity("floorAboveGroundMetres", gap.floor());
  }
}
