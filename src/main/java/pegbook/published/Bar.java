package pegbook.published;

import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;

/**
 * A size of reinforcing bar.
 *
 * @param name as job files and bar lists write it, such as "#4" or "12 mm"
 * @param diameter nominal
 * @param system in which units the size is made
 * @param source where the diameter is from
 */
public record Bar(String name, Length diameter, UnitSystem system, Citation source) {
  static Bar of(Table.Row row) {
    Unit unit = Unit.valueOf(row.text("unit"));
    return new Bar(
        row.text("name"),
        new Length(unit.toSi(row.number("diameter"))),
        unit == Unit.INCH ? UnitSystem.IMPERIAL : UnitSystem.METRIC,
        new Citation(row.text("publication"), "nominal diameter"));
  }
}
