package pegbook.export;

import pegbook.calc.safepegs.SafePegs;
import pegbook.calc.safepegs.SafePegs.Setting;

/** The figures of the safe pegs. */
final class PegResults {
  private PegResults() {}

  static void write(JsonFigures json, SafePegs pegs) {
    json.flag("threeSeeAll", pegs.allSeen())
        .list("pegs", pegs.pegs(), PegResults::peg)
        .list("finds", pegs.finds(), PegResults::find)
        .text("weakest", pegs.weakest().map(SafePegs.Spread::mark))
        .quantity("weakestSpreadMetres", pegs.weakest().map(SafePegs.Spread::length))
        .list("strings", pegs.strings(), PegResults::string)
        .list("crossings", pegs.crossings(), PegResults::crossing);
  }

  private static void peg(JsonFigures json, SafePegs.Peg peg) {
    json.text("id", peg.peg().id()).flag("taped", peg.peg().taped());
    ResultsJson.point(json, peg.peg().at());
    if (peg.setting() instanceof Setting.Swing swing) {
      tape(json, "first", swing.first());
      tape(json, "second", swing.second());
      json.flag("left", swing.left());
    } else if (peg.setting() instanceof Setting.InLine line) {
      line(json, "line", line);
    } else if (peg.setting() instanceof Setting.Meeting meeting) {
      line(json, "line", meeting.one());
      line(json, "otherLine", meeting.other());
    }
    peg.check().ifPresent(check -> tape(json, "check", check));
  }

  private static void line(JsonFigures json, String key, Setting.InLine line) {
    json.text(key + "From", line.from());
    tape(json, key + "Past", line.past());
  }

  private static void tape(JsonFigures json, String key, SafePegs.Tape tape) {
    json.text(key, tape.name()).quantity(key + "Metres", tape.length());
  }

  private static void find(JsonFigures json, SafePegs.Find find) {
    json.text("mark", find.mark());
    tape(json, "first", find.first());
    tape(json, "second", find.second());
    json.flag("left", find.left())
        .quantity("crossingRadians", find.crossing())
        .flag("weak", find.weak());
    find.check().ifPresent(check -> tape(json, "check", check));
  }

  private static void string(JsonFigures json, SafePegs.PegString string) {
    json.text("first", string.first())
        .text("second", string.second())
        .quantity("lengthMetres", string.length())
        .list("over", string.over(), (item, tape) -> tape(item, "mark", tape));
  }

  private static void crossing(JsonFigures json, SafePegs.Crossing crossing) {
    json.text("mark", crossing.mark())
        .whole("one", crossing.one() + 1)
        .whole("other", crossing.other() + 1)
        .quantity("crossingRadians", crossing.angle());
  }
}
