package pegbook.export;

import pegbook.calc.concreteexposure.ConcreteExposure;
import pegbook.calc.concreteexposure.ConcreteExposure.Age;
import pegbook.calc.concreteexposure.ConcreteExposure.Exposed;

/** The figures of what the concrete must stand. */
final class ExposureResults {
  private ExposureResults() {}

  static void write(JsonFigures json, ConcreteExposure exposure) {
    json.text("freezes", exposure.freezes().name())
        .list("footings", exposure.exposed(), ExposureResults::exposed)
        .text("class", exposure.needed().name())
        .quantity("strengthGivenPascals", exposure.strength())
        .quantity("strengthWantedPascals", exposure.wanted())
        .quantity("strengthToOrderPascals", exposure.order());
    exposure.needed().waterCement().ifPresent(most -> json.number("waterToCementAtMost", most));
    json.quantity("airGiven", exposure.air())
        .quantity("airWantedSmallStone", exposure.needed().airSmallStone())
        .quantity("airWantedLargeStone", exposure.needed().airLargeStone())
        .quantity("thinnestMetres", exposure.curing().thinnest())
        .flag("thick", exposure.curing().thick())
        .text("season", exposure.curing().season().name())
        .whole("firstFreezeDays", exposure.curing().firstFreeze());
    exposure.curing().repeatedFreeze().ifPresent(days -> json.whole("repeatedFreezeDays", days));
    json.list("ages", exposure.ages(), ExposureResults::age);
  }

  private static void exposed(JsonFigures json, Exposed exposed) {
    json.texts("marks", exposed.marks())
        .text("class", exposed.exposure().name())
        .text("wetness", exposed.wetness().name());
  }

  private static void age(JsonFigures json, Age age) {
    json.whole("days", age.days()).quantity("strengthPascals", age.strength());
  }
}
