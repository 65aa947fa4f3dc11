package pegbook.export;

import pegbook.calc.bearing.Bearing;
import pegbook.calc.footingloads.BasisLine;
import pegbook.calc.footingloads.FootingLoads;
import pegbook.figures.CombinedLoad;
import pegbook.figures.SupportLoad;

/** The figures of loads on footings, and of the footings against the ground. */
final class FootingResults {
  private FootingResults() {}

  static void loads(JsonFigures json, FootingLoads loads) {
    json.quantity("insideEdgeSquareMetres", loads.outline())
        .quantity("openingsSquareMetres", loads.openings())
        .quantity("deadPascals", loads.pressures().dead().value())
        .flag("deadGiven", loads.pressures().dead().given())
        .quantity("livePascals", loads.pressures().live().value())
        .flag("liveGiven", loads.pressures().live().given())
        .quantity("snowPascals", loads.pressures().snow())
        .list("supports", loads.loads(), FootingResults::load)
        .list("basis", loads.basis(), FootingResults::basis);
  }

  private static void basis(JsonFigures json, BasisLine line) {
    json.text("item", line.item()).text("known", line.known().name());
    line.value().ifPresent(value -> ResultsJson.argument(json, "taken", value));
    line.from().ifPresent(from -> json.text("from", from));
  }

  private static void load(JsonFigures json, CombinedLoad load) {
    json.text("mark", load.mark())
        .quantity("squareMetres", load.parts().area())
        .flag("byBeam", load.parts() instanceof SupportLoad.ByBeam)
        .quantity("deadNewtons", load.parts().dead())
        .quantity("liveNewtons", load.parts().live())
        .quantity("snowNewtons", load.parts().snow())
        .text("governs", load.governs().name())
        .quantity("newtons", load.total());
  }

  static void bearing(JsonFigures json, Bearing bearing) {
    bearing
        .allowable()
        .ifPresent(
            allowable ->
                json.quantity("allowablePascals", allowable.value())
                    .flag("ownWeightCounts", allowable.gross())
                    .flag("assumed", allowable.assumed()));
    json.quantity("snowRoomPascals", bearing.snowRoom().map(Bearing.SnowRoom::snow))
        .list("footings", bearing.footings(), FootingResults::footing)
        .list("remedies", bearing.remedies(), FootingResults::remedy);
  }

  private static void footing(JsonFigures json, Bearing.Footing footing) {
    json.text("mark", footing.mark())
        .quantity("carriedNewtons", footing.carried())
        .quantity("ownWeightNewtons", footing.own())
        .quantity("standingDiameterMetres", footing.standing())
        .quantity("bearingSquareMetres", footing.area())
        .quantity("pressurePascals", footing.pressure());
    footing
        .check()
        .ifPresent(
            check ->
                json.quantity("mayCarryNewtons", check.mayCarry())
                    .quantity("neededSquareMetres", check.needed().map(Bearing.Needed::area))
                    .quantity("neededDiameterMetres", check.needed().map(Bearing.Needed::diameter))
                    .quantity(
                        "diameterByGrossMetres", check.needed().flatMap(Bearing.Needed::byGross))
                    .text("verdict", check.verdict().name()));
  }

  private static void remedy(JsonFigures json, Bearing.Remedy remedy) {
    json.texts("marks", remedy.marks())
        .quantity("diameterMetres", remedy.diameter())
        .quantity("sideMetres", remedy.side())
        .quantity("thicknessMetres", remedy.thickness());
  }
}
