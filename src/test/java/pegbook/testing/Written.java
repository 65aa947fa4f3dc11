package pegbook.testing;

import java.util.Locale;

/** Writes lengths as a builder would write them, in one of several ways. */
final class Written {
  private static final double INCH = 25.4;

  private final boolean imperial;
  private final Chance chance;

  Written(boolean imperial, Chance chance) {
    this.imperial = imperial;
    this.chance = chance;
  }

  /**
   * A length, set to the sixteenth of an inch or the millimetre; now and then in the other system.
   */
  String length(double millimetres) {
    boolean inches = chance.often(0.05) != imperial;
    return inches ? inches(Math.round(millimetres / INCH * 16)) : metric(millimetres);
  }

  private String metric(double millimetres) {
    long whole = Math.round(millimetres);
    return chance.often(0.3) ? String.format(Locale.ROOT, "%.3f m", whole / 1000.0) : whole + " mm";
  }

  private String inches(long sixteenths) {
    long feet = chance.often(0.4) ? sixteenths / (16 * 12) : 0;
    String rest = mixed(sixteenths - feet * 16 * 12);
    if (feet == 0) {
      return chance.often(0.2) ? rest + "\"" : rest + " in";
    }
    return chance.often(0.3) ? feet + "' " + rest + "\"" : feet + " ft " + rest + " in";
  }

  private static String mixed(long sixteenths) {
    long whole = sixteenths / 16;
    long parts = sixteenths % 16;
    if (parts == 0) {
      return Long.toString(whole);
    }
    long divisor = Long.lowestOneBit(parts | 16);
    String fraction = parts / divisor + "/" + 16 / divisor;
    return whole == 0 ? fraction : whole + " " + fraction;
  }

  /** A height, up positive. */
  String level(double millimetres) {
    String size = length(Math.abs(millimetres));
    return millimetres < 0 ? "-" + size : size;
  }

  /** A place east and north of the centre. */
  String place(Position millimetres) {
    double unit = imperial ? 12 * INCH : 1000;
    String name = imperial ? "ft" : "m";
    return String.format(
        Locale.ROOT,
        "%.3f %s, %.3f %s",
        millimetres.x() / unit,
        name,
        millimetres.y() / unit,
        name);
  }
}
