package pegbook.measure;

/** In which units the packet prints. */
public enum UnitSystem {
  IMPERIAL,
  METRIC
}
