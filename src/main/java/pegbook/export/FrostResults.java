package pegbook.export;

import pegbook.calc.frostdepth.FrostDepth;
import pegbook.calc.frostgrip.FrostGrip;

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

  static void grip(JsonFigures json, FrostGrip grip) {
    json.text("water", grip.water().name())
        .list("footings", grip.footings(), FrostResults::footing)
        .list("windLifts", grip.lifts(), FrostResults::lift);
  }

  private static void footing(JsonFigures json, FrostGrip.Footing footing) {
    json.text("mark", footing.mark()).quantity("frozenMetres", footing.frozen());
    footing
        .grip()
        .ifPresent(
            grip ->
                json.quantity("typicalNewtons", grip.typical())
                    .quantity("highNewtons", grip.high())
                    .quantity("holdNewtons", footing.hold())
                    .quantity("anchorageNewtons", grip.anchorage())
                    .quantity("deeperMetres", grip.deeper()));
    json.text("verdict", footing.verdict().name());
  }

  private static void lift(JsonFigures json, FrostGrip.WindLift lift) {
    json.text("mark", lift.mark())
        .quantity("upNewtons", lift.up())
        .quantity("holdNewtons", lift.hold())
        .quantity("anchorNewtons", lift.anchor())
        .quantity("netNewtons", lift.net());
  }
}
