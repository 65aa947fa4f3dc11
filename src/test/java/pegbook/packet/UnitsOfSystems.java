package pegbook.packet;

import java.util.EnumSet;
import java.util.Set;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;

/** Which units a packet may print in. */
final class UnitsOfSystems {
  private static final Set<Unit> METRIC =
      EnumSet.of(
          Unit.METRE,
          Unit.MILLIMETRE,
          Unit.SQUARE_METRE,
          Unit.SQUARE_MILLIMETRE,
          Unit.CUBIC_METRE,
          Unit.LITRE,
          Unit.KILOGRAM,
          Unit.KILOGRAM_PER_METRE,
          Unit.KILOGRAM_PER_CUBIC_METRE,
          Unit.KILOGRAM_SQUARE_METRE,
          Unit.NEWTON,
          Unit.KILONEWTON,
          Unit.PASCAL,
          Unit.KILOPASCAL,
          Unit.MEGAPASCAL,
          Unit.KILONEWTON_METRE,
          Unit.KILONEWTON_PER_MILLIMETRE,
          Unit.MICROMETRE_PER_KILONEWTON,
          Unit.MICRORADIAN_PER_KILONEWTON,
          Unit.MICRORADIAN_PER_KILONEWTON_METRE,
          Unit.MICROMETRE,
          Unit.METRE_PER_SECOND,
          Unit.CELSIUS_STEP,
          Unit.MILLIONTH_PER_KELVIN,
          Unit.CELSIUS_DAY,
          Unit.WATT_PER_METRE_KELVIN,
          Unit.MEGAJOULE_PER_CUBIC_METRE,
          Unit.CUBIC_METRE_PER_HOUR,
          Unit.HOUR_PER_METRE,
          Unit.OHM_PER_METRE,
          Unit.OHM_SQUARE_MILLIMETRE_PER_METRE);

  /** The heat index is defined in degrees Fahrenheit; a metric packet turns its result over. */
  private static final Set<Unit> EITHER =
      EnumSet.of(
          Unit.NONE,
          Unit.PERCENT,
          Unit.DEGREE,
          Unit.ARC_SECOND,
          Unit.HERTZ,
          Unit.DAY,
          Unit.HOUR,
          Unit.MINUTE,
          Unit.AMPERE,
          Unit.VOLT,
          Unit.FAHRENHEIT_STEP);

  private static final Set<Unit> IMPERIAL = imperial();

  private static Set<Unit> imperial() {
    Set<Unit> units = EnumSet.complementOf(EnumSet.copyOf(METRIC));
    units.removeAll(EITHER);
    return units;
  }

  private UnitsOfSystems() {}

  /** Units that a packet in this system may not print. */
  static Set<Unit> foreignTo(UnitSystem system) {
    return system == UnitSystem.METRIC ? IMPERIAL : METRIC;
  }
}
