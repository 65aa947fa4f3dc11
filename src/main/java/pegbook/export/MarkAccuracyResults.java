package pegbook.export;

import pegbook.calc.markaccuracy.MarkAccuracy;
import pegbook.calc.markaccuracy.MarkAccuracy.MarkError;
import pegbook.calc.markaccuracy.MarkAccuracy.PairError;
import pegbook.calc.markaccuracy.MarkAccuracy.PegTape;
import pegbook.calc.markaccuracy.MarkAccuracy.PeggedBaseline;
import pegbook.calc.markaccuracy.MarkAccuracy.Remedy;
import pegbook.calc.markaccuracy.MarkAccuracy.ThirdTape;
import pegbook.packet.Packet;

/** The figures of how good each mark is. */
final class MarkAccuracyResults {
  private MarkAccuracyResults() {}

  static void write(JsonFigures json, Packet packet) {
    MarkAccuracy accuracy = packet.markAccuracy();
    json.quantity("toleranceMetres", accuracy.tolerance())
        .quantity("readingSigmaMetres", accuracy.tape().reading())
        .quantity("roundingSigmaMetres", accuracy.tape().roundingSigma())
        .list("marks", accuracy.marks(), MarkAccuracyResults::mark)
        .object("baseline", content -> pair(content, accuracy.asked()))
        .object("bestPair", content -> pair(content, accuracy.bestPair()));
    accuracy.pegged().ifPresent(pegs -> json.object("pegs", content -> pegs(content, pegs)));
    accuracy
        .remedy()
        .ifPresent(remedy -> json.object("remedy", content -> remedy(content, remedy)));
  }

  private static void mark(JsonFigures json, MarkError mark) {
    json.text("mark", mark.mark())
        .text("setting", mark.setting().name())
        .text("first", mark.first())
        .text("second", mark.second())
        .quantity("semiMajorMetres", mark.ellipse().semiMajor())
        .quantity("semiMinorMetres", mark.ellipse().semiMinor())
        .quantity("azimuthRadians", mark.ellipse().azimuth())
        .quantity("radius95Metres", mark.radius())
        .text("verdict", mark.verdict().name());
  }

  private static void pair(JsonFigures json, PairError pair) {
    json.text("first", pair.first())
        .text("second", pair.second())
        .text("worst", pair.worst())
        .quantity("radius95Metres", pair.radius());
  }

  private static void pegs(JsonFigures json, PeggedBaseline pegs) {
    json.object("first", content -> ResultsJson.point(content, pegs.first()))
        .object("second", content -> ResultsJson.point(content, pegs.second()))
        .quantity("lengthMetres", pegs.length())
        .text("worst", pegs.worst())
        .quantity("radius95Metres", pegs.radius())
        .list("marks", pegs.tapes(), MarkAccuracyResults::pegTape);
  }

  private static void pegTape(JsonFigures json, PegTape tape) {
    json.text("mark", tape.mark())
        .quantity("fromFirstMetres", tape.fromFirst())
        .quantity("fromSecondMetres", tape.fromSecond())
        .flag("left", tape.left());
  }

  private static void remedy(JsonFigures json, Remedy remedy) {
    if (remedy instanceof Remedy.ThirdTapes thirds) {
      json.text("kind", "THIRD_TAPES")
          .list("tapes", thirds.tapes(), MarkAccuracyResults::thirdTape);
    } else {
      json.text(
          "kind",
          remedy instanceof Remedy.OtherPair
              ? "OTHER_PAIR"
              : remedy instanceof Remedy.Pegs ? "PEGS" : "NONE");
    }
  }

  private static void thirdTape(JsonFigures json, ThirdTape tape) {
    json.text("mark", tape.mark())
        .text("from", tape.from())
        .quantity("tapeMetres", tape.tape())
        .quantity("radius95Metres", tape.radius());
  }
}
