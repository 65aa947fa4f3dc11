package pegbook.measure;

/** The kinds of value that can be read from text. */
public enum QuantityKind {
  LENGTH,
  AREA,
  VOLUME,
  MASS,
  FORCE,
  PRESSURE,
  DENSITY,
  ANGLE,
  TEMPERATURE,
  RATIO,
  DURATION,
  SPEED,
  FREEZING_INDEX,
  CURRENT,
  VOLTAGE
}
