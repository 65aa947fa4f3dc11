package pegbook.calc.bearing;

import java.util.List;
import java.util.Optional;
import pegbook.job.AllowablePressure;
import pegbook.job.Ground;
import pegbook.measure.Pressure;
import pegbook.published.Citation;
import pegbook.published.SoilBearing;

/**
 * What the ground may carry.
 *
 * @param value the pressure
 * @param gross true when the footing's own weight counts against it
 * @param from whose word it is; absent when it is the published value for the soil named
 * @param sources where a published value is from
 */
public record Allowable(
    Pressure value, boolean gross, Optional<String> from, List<Citation> sources) {
  /** The same vertical values as those of the International Building Code. */
  static final Citation IRC_TABLE = new Citation("irc", "Table R401.4.1");

  public Allowable {
    sources = List.copyOf(sources);
  }

  /** True when it is the published value for the soil, which nobody has confirmed here. */
  public boolean assumed() {
    return from.isEmpty();
  }

  /**
   * What the job gives; else the published value of the soil, the footing's own weight counted
   * against it; nothing for soils that no class covers.
   */
  static Optional<Allowable> of(Ground ground) {
    return ground
        .allowablePressure()
        .map(Allowable::given)
        .or(() -> published(ground).map(Allowable::presumed));
  }

  /** The published value of the soil that the job names. */
  static Optional<SoilBearing> published(Ground ground) {
    return SoilBearing.find(ground.soil().id());
  }

  private static Allowable given(AllowablePressure given) {
    return new Allowable(given.value(), given.gross(), Optional.of(given.from()), List.of());
  }

  private static Allowable presumed(SoilBearing row) {
    return new Allowable(
        row.pressure(), true, Optional.empty(), List.of(row.citation(), IRC_TABLE));
  }
}
