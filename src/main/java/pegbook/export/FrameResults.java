package pegbook.export;

import java.util.List;
import pegbook.calc.floorframe.FloorFrame;
import pegbook.figures.CutPiece;
import pegbook.measure.Area;

/** The floor's frame in the results. */
final class FrameResults {
  private FrameResults() {}

  static void write(JsonFigures json, FloorFrame.Built built) {
    json.quantity("joistsAlongRadians", built.along())
        .quantity("joistSpacingMetres", built.spacing())
        .text("joist", built.joist().size())
        .text("beam", built.beam().name())
        .text("post", built.postSize())
        .quantity("longestSpanMetres", built.longestSpan())
        .quantity("longestOverhangMetres", built.longestOverhang())
        .quantity("heightMetres", built.height())
        .quantity("floorSquareMetres", built.floor())
        .list("joistSizes", built.joists(), FrameResults::joist)
        .list("beamSizes", built.beams(), FrameResults::beam)
        .list("beams", built.bays(), FrameResults::bay)
        .list("posts", built.posts(), FrameResults::post)
        .list("pieces", built.pieces(), FrameResults::piece)
        .list("carried", List.copyOf(built.carried().entrySet()), FrameResults::carried)
        .object("boards", boards -> boards(boards, built.boards()));
  }

  private static void joist(JsonFigures json, FloorFrame.JoistSize size) {
    json.text("size", size.size())
        .quantity("allowedMetres", size.allowed())
        .text("limit", size.limit().name())
        .flag("chosen", size.isChosen());
  }

  private static void beam(JsonFigures json, FloorFrame.BeamSize size) {
    json.text("size", size.name())
        .number("used", size.used().fraction())
        .text("bay", size.bay())
        .text("limit", size.limit().name())
        .flag("chosen", size.isChosen());
  }

  private static void bay(JsonFigures json, FloorFrame.BayRow row) {
    json.text("name", row.name())
        .quantity("spanMetres", row.span())
        .quantity("floorSquareMetres", row.floor())
        .quantity("fromNewtons", row.from())
        .quantity("toNewtons", row.to())
        .quantity("bearingMetres", row.bearing())
        .quantity("tailMetres", row.tail());
  }

  private static void post(JsonFigures json, FloorFrame.PostRow row) {
    json.text("mark", row.mark())
        .quantity("loadNewtons", row.load())
        .quantity("mayStandMetres", row.mayStand());
  }

  private static void piece(JsonFigures json, CutPiece piece) {
    json.text("name", piece.name())
        .text("size", piece.size())
        .quantity("lengthMetres", piece.length())
        .whole("count", piece.count());
  }

  private static void carried(JsonFigures json, java.util.Map.Entry<String, Area> entry) {
    json.text("mark", entry.getKey()).quantity("squareMetres", entry.getValue());
  }

  private static void boards(JsonFigures json, FloorFrame.BoardPlan plan) {
    json.whole("rows", plan.rows())
        .quantity("laidMetres", plan.laid())
        .list("pieces", plan.pieces(), FrameResults::piece)
        .whole("joints", plan.joints())
        .whole("jointsInLine", plan.aligned())
        .number("otherWayMore", plan.other().fraction());
  }
}
