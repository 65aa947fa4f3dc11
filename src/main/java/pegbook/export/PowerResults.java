package pegbook.export;

import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Conductors;
import pegbook.calc.powerline.PowerLine.Drop;
import pegbook.calc.powerline.PowerLine.Leg;
import pegbook.calc.powerline.PowerLine.Line;
import pegbook.calc.powerline.PowerLine.Metal;
import pegbook.calc.powerline.PowerLine.Pipe;
import pegbook.calc.powerline.PowerLine.Size;
import pegbook.calc.powerline.PowerLine.Stretch;
import pegbook.calc.powerline.PowerLine.Supplied;
import pegbook.calc.powerline.PowerLine.Trench;

/** The figures of the power line. */
final class PowerResults {
  private PowerResults() {}

  static void write(JsonFigures json, Line line) {
    json.list("legs", line.route().legs(), PowerResults::leg)
        .quantity("trenchLengthMetres", line.route().length())
        .quantity("oneWayMetres", line.route().oneWay());
    trench(json, line.trench());
    conductors(json, line.conductors());
  }

  private static void leg(JsonFigures json, Leg leg) {
    json.text("from", leg.from()).text("to", leg.to()).quantity("lengthMetres", leg.length());
    json.object("start", content -> ResultsJson.point(content, leg.start()))
        .object("end", content -> ResultsJson.point(content, leg.end()))
        .flag("toPier", leg.toPier());
  }

  private static void trench(JsonFigures json, Trench trench) {
    json.list("stretches", trench.stretches(), PowerResults::stretch)
        .quantity("widthMetres", trench.width())
        .quantity("tapeDepthMetres", trench.tapeDepth())
        .quantity("bankCubicMetres", trench.bank())
        .quantity("looseCubicMetres", trench.loose())
        .quantity("sandCubicMetres", trench.sand())
        .quantity("leftOverCubicMetres", trench.over())
        .object("pipe", content -> pipe(content, trench.pipe()));
    trench.data().ifPresent(data -> json.object("dataPipe", content -> pipe(content, data)));
  }

  private static void pipe(JsonFigures json, Pipe pipe) {
    json.text("size", pipe.name())
        .quantity("outsideMetres", pipe.outside())
        .quantity("filled", pipe.filled());
  }

  private static void stretch(JsonFigures json, Stretch stretch) {
    json.text("name", stretch.label())
        .text("under", stretch.under().map(Enum::name))
        .quantity("lengthMetres", stretch.length())
        .quantity("coverMetres", stretch.cover())
        .quantity("depthMetres", stretch.depth())
        .text("rule", stretch.rule().name());
  }

  private static void conductors(JsonFigures json, Conductors conductors) {
    conductors
        .chosen()
        .ifPresent(
            chosen -> {
              json.text("conductor", chosen.size())
                  .text("groundingConductor", chosen.earth())
                  .whole("loadedConductors", chosen.loaded());
              drop(json, "dropRunning", Optional.of(chosen.running()));
              drop(json, "dropFullBreaker", Optional.of(chosen.full()));
            });
    json.list("sizes", conductors.sizes(), PowerResults::size)
        .list("otherVoltages", conductors.supplies(), PowerResults::supply);
  }

  private static void size(JsonFigures json, Size size) {
    json.text("size", size.name());
    metal(json, "copper", size.copper());
    metal(json, "aluminium", size.aluminium());
  }

  private static void metal(JsonFigures json, String name, Optional<Metal> metal) {
    metal.ifPresent(
        made ->
            json.object(
                name,
                content -> {
                  content.number("amperes", made.amperes()).flag("bearsBreaker", made.bears());
                  drop(content, "stranded", made.stranded());
                  drop(content, "solid", made.solid());
                }));
  }

  private static void drop(JsonFigures json, String name, Optional<Drop> drop) {
    drop.ifPresent(
        lost ->
            json.object(
                name,
                content ->
                    content
                        .quantity("lostVolts", lost.lost())
                        .quantity("share", lost.share())
                        .flag("kept", lost.kept())));
  }

  private static void supply(JsonFigures json, Supplied supplied) {
    json.quantity("volts", supplied.voltage())
        .flag("threePhase", supplied.threePhase())
        .quantity("amperes", supplied.current())
        .text("smallest", supplied.smallest());
    drop(json, "drop", supplied.drop());
  }
}
