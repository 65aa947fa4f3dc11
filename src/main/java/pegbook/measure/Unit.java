package pegbook.measure;

/** The units that workings and tables print, with their exact factors to SI. */
public enum Unit {
  NONE("", 1),
  PERCENT("%", 0.01),
  METRE("m", 1),
  MILLIMETRE("mm", 0.001),
  INCH("in", 0.0254),
  FOOT("ft", 0.3048),
  SQUARE_METRE("m²", 1),
  SQUARE_MILLIMETRE("mm²", 1e-6),
  SQUARE_INCH("in²", 0.00064516),
  SQUARE_FOOT("ft²", 0.09290304),
  CUBIC_METRE("m³", 1),
  LITRE("L", 0.001),
  US_PINT("US pt", 0.000473176473),
  CUBIC_FOOT("ft³", 0.028316846592),
  CUBIC_YARD("yd³", 0.764554857984),
  KILOGRAM("kg", 1),
  POUND("lb", 0.45359237),
  KILOGRAM_PER_METRE("kg/m", 1),
  POUND_PER_FOOT("lb/ft", 0.45359237 / 0.3048),
  KILOGRAM_PER_CUBIC_METRE("kg/m³", 1),
  POUND_PER_CUBIC_FOOT("lb/ft³", 0.45359237 / 0.028316846592),
  KILOGRAM_SQUARE_METRE("kg·m²", 1),
  POUND_SQUARE_FOOT("lb·ft²", 0.45359237 * 0.09290304),
  NEWTON("N", 1),
  KILONEWTON("kN", 1000),
  POUND_FORCE("lbf", 4.4482216152605),
  PASCAL("Pa", 1),
  KILOPASCAL("kPa", 1000),
  MEGAPASCAL("MPa", 1e6),
  PSF("psf", 4.4482216152605 / 0.09290304),
  PSI("psi", 4.4482216152605 / 0.00064516),
  KILONEWTON_METRE("kN·m", 1000),
  KIP_FOOT("kip·ft", 4448.2216152605 * 0.3048),
  KILONEWTON_PER_MILLIMETRE("kN/mm", 1e6),
  KIP_PER_INCH("kip/in", 4448.2216152605 / 0.0254),
  MICROMETRE_PER_KILONEWTON("µm/kN", 1e-9),
  MIL_PER_KIP("mil/kip", 0.0000254 / 4448.2216152605),
  MICRORADIAN_PER_KILONEWTON("µrad/kN", 1e-9),
  MICRORADIAN_PER_KIP("µrad/kip", 1e-6 / 4448.2216152605),
  MICRORADIAN_PER_KILONEWTON_METRE("µrad/(kN·m)", 1e-9),
  MICRORADIAN_PER_KIP_FOOT("µrad/(kip·ft)", 1e-6 / (4448.2216152605 * 0.3048)),
  MICROMETRE("µm", 1e-6),
  MIL("mil", 0.0000254),
  METRE_PER_SECOND("m/s", 1),
  FOOT_PER_SECOND("ft/s", 0.3048),
  MILE_PER_HOUR("mph", 1609.344 / 3600),
  HERTZ("Hz", 1),
  ARC_SECOND("arcsec", Math.PI / 648000),
  DEGREE("°", Math.PI / 180),
  /** A difference of temperature. */
  CELSIUS_STEP("°C", 1),
  FAHRENHEIT_STEP("°F", 1 / 1.8),
  MILLIONTH_PER_KELVIN("ppm/°C", 1e-6),
  MILLIONTH_PER_FAHRENHEIT("ppm/°F", 1.8e-6),
  FAHRENHEIT_DAY("°F-days", 86_400 / 1.8),
  CELSIUS_DAY("°C-days", 86_400),
  /** International table. */
  BTU_PER_FOOT_HOUR_FAHRENHEIT("Btu/(ft·h·°F)", 1055.05585262 / 3600 / 0.3048 * 1.8),
  WATT_PER_METRE_KELVIN("W/(m·K)", 1),
  BTU_PER_CUBIC_FOOT("Btu/ft³", 1055.05585262 / 0.028316846592),
  MEGAJOULE_PER_CUBIC_METRE("MJ/m³", 1e6),
  DAY("d", 86_400),
  HOUR("h", 3600),
  MINUTE("min", 60),
  CUBIC_METRE_PER_HOUR("m³/h", 1 / 3600.0),
  CUBIC_FOOT_PER_HOUR("ft³/h", 0.028316846592 / 3600),
  HOUR_PER_METRE("h/m", 3600),
  HOUR_PER_FOOT("h/ft", 3600 / 0.3048),
  AMPERE("A", 1),
  VOLT("V", 1),
  OHM_PER_METRE("Ω/m", 1),
  OHM_PER_THOUSAND_FEET("Ω/kft", 1 / 304.8),
  OHM_SQUARE_MILLIMETRE_PER_METRE("Ω·mm²/m", 1e-6),
  /** The area of a circle of a mil, a thousandth of an inch. */
  CIRCULAR_MIL("cmil", Math.PI / 4 * 0.0000254 * 0.0000254);

  private final String symbol;
  private final double siFactor;

  Unit(String symbol, double siFactor) {
    this.symbol = symbol;
    this.siFactor = siFactor;
  }

  /** As written behind a number. */
  public String symbol() {
    return symbol;
  }

  /** A quantity's value in this unit. */
  public double in(Quantity quantity) {
    return quantity.si() / siFactor;
  }

  /** The SI value of a number in this unit. */
  public double toSi(double number) {
    return number * siFactor;
  }
}
