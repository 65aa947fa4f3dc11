package pegbook.export;

import pegbook.calc.asdug.AsDug.Row;
import pegbook.calc.asdug.DugChecks;
import pegbook.calc.asdug.DugChecks.Between;
import pegbook.calc.asdug.DugChecks.OffCentre;
import pegbook.calc.asdug.DugChecks.Room;
import pegbook.calc.asdug.DugChecks.Tape;
import pegbook.job.Soil;
import pegbook.packet.Packet;

/** The figures of the holes as they were dug. */
final class AsDugResults {
  private AsDugResults() {}

  static void write(JsonFigures json, Packet packet) {
    DugChecks checks = packet.dugChecks();
    json.list("holes", packet.asDug().rows(), AsDugResults::row)
        .list("offCentre", checks.loads(), AsDugResults::load)
        .list("rooms", checks.rooms(), AsDugResults::room)
        .list("betweens", checks.betweens(), AsDugResults::between)
        .list("tapes", checks.tapes(), AsDugResults::tape);
  }

  private static void row(JsonFigures json, Row row) {
    json.text("mark", row.mark())
        .quantity("plannedDugDepthMetres", row.planned().dug())
        .quantity("foundDepthMetres", row.dug().depth())
        .quantity("deeperMetres", row.deeper())
        .text("depth", row.depth().name())
        .quantity("plannedDiameterMetres", row.planned().diameter())
        .quantity("filledDiameterMetres", row.filled().diameter())
        .quantity("filledDepthMetres", row.filled().depth())
        .quantity("filledGravelMetres", row.filled().gravel())
        .quantity("movedMetres", row.moved());
    ResultsJson.point(json, row.filled().centre());
    json.text("soil", row.dug().soil().map(Soil::id))
        .quantity("waterMetres", row.dug().water())
        .quantity("rockMetres", row.dug().rock());
  }

  private static void load(JsonFigures json, OffCentre load) {
    json.text("mark", load.mark())
        .quantity("movedMetres", load.moved())
        .quantity("widthMetres", load.width())
        .quantity("kernMetres", load.kern())
        .quantity("middlePascals", load.pressure())
        .quantity("edgePascals", load.edge())
        .quantity("allowablePascals", load.allowable())
        .text("verdict", load.verdict().name());
  }

  private static void room(JsonFigures json, Room room) {
    json.text("mark", room.mark())
        .quantity("coverMetres", room.cover())
        .quantity("wantedCoverMetres", room.wantedCover())
        .quantity("tubeRoomMetres", room.tube());
  }

  private static void between(JsonFigures json, Between between) {
    json.text("mark", between.mark())
        .text("neighbour", between.neighbour())
        .quantity("soilMetres", between.soil())
        .quantity("plannedMetres", between.planned());
  }

  private static void tape(JsonFigures json, Tape tape) {
    json.text("purpose", tape.purpose().name())
        .text("mark", tape.mark())
        .text("from", tape.from())
        .text("to", tape.to())
        .quantity("readingMetres", tape.reading())
        .quantity("otherMetres", tape.other());
  }
}
