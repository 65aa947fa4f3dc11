package pegbook.jobfile;

import pegbook.job.Default;
import pegbook.measure.UnitSystem;

/**
 * One key of an object of the job file.
 *
 * @param name as it is written
 * @param value what may stand behind it
 * @param presence what holds when it is left out
 */
record Key<T>(String name, Value<T> value, Presence presence) {

  /** What holds when a key is left out. */
  sealed interface Presence {
    /**
     * A problem.
     *
     * @param example what to write
     */
    record Required(String example) implements Presence {}

    /** Nothing: the job does not say. */
    record Free() implements Presence {}

    /**
     * A default, in JSON.
     *
     * @param imperial for a packet in feet and inches
     * @param metric for a packet in metres
     * @param basis where it is from
     */
    record Fallback(String imperial, String metric, Default.Basis basis) implements Presence {
      String json(UnitSystem units) {
        return units == UnitSystem.IMPERIAL ? imperial : metric;
      }
    }

    /** A default that holds in some jobs only; the object's own builder asks for it. */
    record Sometimes(Fallback fallback) implements Presence {}
  }

  /** Whether a job without this key is whole. */
  boolean mayLack() {
    return presence instanceof Presence.Free || presence instanceof Presence.Sometimes;
  }

  /** The default that holds where there is one, in JSON. */
  String defaultJson(UnitSystem units) {
    if (presence instanceof Presence.Fallback fallback) {
      return fallback.json(units);
    }
    return presence instanceof Presence.Sometimes sometimes ? sometimes.fallback().json(units) : "";
  }

  static <T> Key<T> required(String name, Value<T> value, String example) {
    return new Key<>(name, value, new Presence.Required(example));
  }

  static <T> Key<T> free(String name, Value<T> value) {
    return new Key<>(name, value, new Presence.Free());
  }

  /** With a default that is the same in both systems. */
  static <T> Key<T> orElse(String name, Value<T> value, String json, Default.Basis basis) {
    return new Key<>(name, value, new Presence.Fallback(json, json, basis));
  }

  /** With a default for each system. */
  static <T> Key<T> orElse(
      String name, Value<T> value, String imperial, String metric, Default.Basis basis) {
    return new Key<>(name, value, new Presence.Fallback(imperial, metric, basis));
  }

  /** With a default for each system, for the object's own builder to ask for. */
  static <T> Key<T> orElseAsked(
      String name, Value<T> value, String imperial, String metric, Default.Basis basis) {
    return new Key<>(
        name, value, new Presence.Sometimes(new Presence.Fallback(imperial, metric, basis)));
  }

  /** An object whose own keys have defaults. */
  static <T> Key<T> part(String name, SectionValue<T> value) {
    return new Key<>(name, value, new Presence.Fallback("{}", "{}", Default.Basis.COMMON_PRACTICE));
  }
}
