package pegbook.published;

import java.util.List;
import java.util.Optional;

/** The sizes of reinforcing bar that a job may name. */
public final class Bars {
  private static final List<Bar> ALL = Table.read("bars").rows().stream().map(Bar::of).toList();

  private Bars() {}

  /** Every size, thinnest first within its system of units. */
  public static List<Bar> all() {
    return ALL;
  }

  /** The size with a name, or none. */
  public static Optional<Bar> find(String name) {
    return ALL.stream().filter(bar -> bar.name().equals(name)).findFirst();
  }

  /**
   * The size with a name that a checked job holds.
   *
   * @throws IllegalArgumentException when there is none
   */
  public static Bar get(String name) {
    return find(name).orElseThrow(() -> new IllegalArgumentException("no bar \"" + name + "\""));
  }
}
