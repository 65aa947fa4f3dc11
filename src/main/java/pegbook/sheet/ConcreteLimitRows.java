package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.concreteexposure.ConcreteExposure;
import pegbook.calc.concreteexposure.ConcreteExposure.Freezing;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.published.ConcreteLimit;
import pegbook.sheet.ConcreteExposurePart.LimitRow;

/**
 * The limits of weather and age that hold for a job's concrete, as rows of a table.
 *
 * @param packet whose concrete
 * @param writing words and formats
 */
record ConcreteLimitRows(Packet packet, Writing writing) {

  List<LimitRow> rows() {
    ConcreteExposure.Curing curing = packet.concreteExposure().curing();
    String section = curing.thick() ? "thick" : "thin";
    String width = writing.formats().size(curing.thinnest());
    boolean freezes = packet.concreteExposure().freezes() != Freezing.NEVER;
    List<LimitRow> rows = new ArrayList<>();
    rows.add(row("cold-begins", "cold-begins", Map.of()));
    rows.add(row("mixed", "mixed-" + section, Map.of()));
    rows.add(
        row(
            "placed",
            "placed-" + section,
            Map.of("width", width, "days", limit(ConcreteLimit.find("protect")))));
    rows.add(row("cooling", "cooling-" + section, Map.of()));
    rows.add(row("first-freeze", "first-freeze", Map.of("days", count(curing.firstFreeze()))));
    if (freezes) {
      rows.add(
          curing
              .repeatedFreeze()
              .map(days -> row("repeated-freeze", "repeated-freeze", Map.of("days", count(days))))
              .orElseGet(() -> row("repeated-freeze-never", "repeated-freeze", Map.of())));
    }
    rows.add(row("hot", "hot", Map.of()));
    rows.add(row("cure", "cure", Map.of("warm", limit(ConcreteLimit.find("cure-warm")))));
    rows.add(row("strip", "strip", Map.of()));
    rows.add(row("first-load", "first-load", Map.of()));
    rows.add(row("full-load", "full-load", Map.of()));
    return rows;
  }

  private String count(int days) {
    return writing.formats().count(days);
  }

  private LimitRow row(String words, String id, Map<String, String> more) {
    ConcreteLimit limit = ConcreteLimit.find(id);
    Map<String, String> values = new LinkedHashMap<>(more);
    values.put("limit", limit(limit));
    return new LimitRow(
        writing.texts().say("concrete-exposure.weather." + words),
        writing.texts().say("concrete-exposure.weather." + words + "-value", values),
        new Sources(writing.texts()).write(limit.source()));
  }

  private String limit(ConcreteLimit limit) {
    UnitSystem units = writing.formats().units();
    return switch (limit.kind()) {
      case COOLING ->
          writing.formats().count(Math.round(limit.in(units)))
              + (units == UnitSystem.IMPERIAL ? " °F" : " °C");
      case DAYS -> writing.formats().count(Math.round(limit.in(units)));
      case TEMPERATURE, STRENGTH, PERCENT -> writing.formats().quantity(limit.quantity(units));
    };
  }
}
