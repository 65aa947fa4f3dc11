package pegbook.export;

import pegbook.calc.levels.Levels;
import pegbook.calc.levels.Levels.LevelFloor;
import pegbook.calc.levels.LineSag;
import pegbook.calc.tapecorrections.TapeCorrections;

/** The figures of levels, and of slope and heat under the tapes. */
final class LevelResults {
  private LevelResults() {}

  static void levels(JsonFigures json, Levels levels) {
    json.list("rows", levels.rows(), LevelResults::row).texts("unknown", levels.unknown());
    levels.floor().ifPresent(floor -> json.object("floor", content -> floor(content, floor)));
    levels.sag().ifPresent(sag -> json.object("sag", content -> sag(content, sag)));
  }

  private static void row(JsonFigures json, Levels.Row row) {
    json.text("mark", row.mark())
        .quantity("groundMetres", row.ground())
        .quantity("lineToGroundMetres", row.toGround())
        .quantity("lineToTopMetres", row.toTop())
        .quantity("lineToUndersideMetres", row.toUnderside())
        .quantity("lineToBottomMetres", row.toBottom());
  }

  private static void floor(JsonFigures json, LevelFloor floor) {
    json.quantity("heightMetres", floor.height())
        .quantity("overLineMetres", floor.overLine())
        .text("highest", floor.highest())
        .quantity("buildUpMetres", floor.buildUp())
        .list(
            "posts",
            floor.posts(),
            (item, post) ->
                item.text("mark", post.mark())
                    .quantity("toFloorMetres", post.toFloor())
                    .quantity("cutMetres", post.cut()))
        .list(
            "piers",
            floor.piers(),
            (item, pier) ->
                item.text("mark", pier.mark()).quantity("overFloorMetres", pier.overFloor()));
  }

  private static void sag(JsonFigures json, LineSag sag) {
    json.quantity("spanMetres", sag.span())
        .quantity("sagMetres", sag.sag())
        .quantity("longestSpanMetres", sag.longestSpan())
        .whole("spans", sag.spans())
        .quantity("propEveryMetres", sag.propEvery());
  }

  static void corrections(JsonFigures json, TapeCorrections corrections) {
    json.list(
        "slopes",
        corrections.slopes(),
        (item, slope) ->
            item.text("first", slope.pair().first())
                .text("second", slope.pair().second())
                .quantity("levelMetres", slope.level())
                .quantity("riseMetres", slope.rise())
                .quantity("alongGroundMetres", slope.alongGround())
                .quantity("excessMetres", slope.excess())
                .flag("matters", slope.matters()));
    json.number("halfDivisionKelvins", corrections.heat().halfDivisionKelvins())
        .quantity("seasonCorrectionMetres", corrections.heat().season())
        .flag("heatMatters", corrections.heat().matters());
  }
}
