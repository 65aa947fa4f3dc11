package pegbook.export;

import pegbook.calc.frostdepth.FrostDepth;

/** The figures of frost. */
final class FrostResults {
  private FrostResults() {}

  static void depth(JsonFigures json, FrostDepth frost) {
    json.quantity("ruleMetres", frost.rule())
        .text("susceptibility", frost.soil().susceptibility().name());
    frost.estimate().ifPresent(estimate -> estimate(json, estimate));
    json.texts("aboveEstimate", frost.above());
  }

  private static void estimate(JsonFigures json, FrostDepth.Estimate estimate) {
    json.quantity("airFreezingIndexKelvinSeconds", estimate.index().value())
        .text("winter", estimate.index().winter().name())
        .text("surface", estimate.index().surface().name())
        .quantity("surfaceFactor", estimate.ground().surface().n())
        .quantity("dryKilogramsPerCubicMetre", estimate.ground().dry())
        .quantity("moisture", estimate.ground().moisture())
        .quantity("stefanMetres", estimate.stefan())
        .quantity("berggrenMetres", estimate.berggren());
  }
}
