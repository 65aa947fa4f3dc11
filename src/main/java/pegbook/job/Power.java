package pegbook.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.measure.Current;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Voltage;

/**
 * A buried power line to the structure.
 *
 * @param route the places it goes by, from the supply on, at least two
 * @param pier the pier into whose sleeve it goes on from the last of them, where it does
 * @param supply what it is fed with and what it feeds
 * @param wiring how it is wired
 * @param trench how its trench is dug
 * @param depth least cover by the authority's word, where it gave one
 */
public record Power(
    List<Stop> route,
    Optional<String> pier,
    Supply supply,
    Wiring wiring,
    Trench trench,
    Optional<Depth> depth) {
  public Power {
    route = List.copyOf(route);
  }

  /** A place on the route, with the name that the job gives it. */
  public record Stop(Optional<String> name, Point at) {}

  /**
   * The circuit.
   *
   * @param voltage of the supply
   * @param running current that the drop is worked for
   * @param breaker rating of the breaker, which the conductors must bear
   * @param powerFactor of the load
   * @param drop share of the voltage that may be lost on the way
   * @param circuit what it is to the code
   * @param groundFault whether a device cuts it off when current leaks to the ground
   */
  public record Supply(
      Voltage voltage,
      Current running,
      Current breaker,
      Ratio powerFactor,
      Ratio drop,
      Circuit circuit,
      boolean groundFault) {}

  /**
   * Conductors and what they lie in.
   *
   * @param sizes names of the sizes that may be taken; empty: any
   * @param dataCable whether a cable for data goes along
   * @param slack conductor left over at each end, beyond its way up to the ground
   */
  public record Wiring(
      Method method,
      Metal metal,
      Strands strands,
      List<String> sizes,
      boolean dataCable,
      Length slack) {
    public Wiring {
      sizes = List.copyOf(sizes);
    }
  }

  /**
   * The trench.
   *
   * @param width across its bottom
   * @param bedding sand under the pipe or cable, and over it
   * @param dug with what
   * @param under stretches with something over them
   */
  public record Trench(Length width, Length bedding, Dug dug, List<Under> under) {
    public Trench {
      under = List.copyOf(under);
    }
  }

  /** A stretch of the route under something. */
  public record Under(Cover what, Length length) {}

  /**
   * Least cover, by the authority.
   *
   * @param from whose word it is
   */
  public record Depth(Length cover, String from) {}

  /** What a circuit is to the code. */
  public enum Circuit {
    /** To outlets and lights of a dwelling. */
    RESIDENTIAL_BRANCH,
    OTHER_BRANCH,
    /** To a further panel. */
    FEEDER,
    /** Lighting of a garden, or control of its watering, at a low voltage. */
    LANDSCAPE_LIGHTING
  }

  /** What the conductors lie in. */
  public enum Method {
    /** Pipe of PVC. */
    CONDUIT,
    /** Rigid or intermediate metal pipe. */
    METAL_CONDUIT,
    /** A cable in the ground itself. */
    DIRECT_BURIAL
  }

  /** What conductors are made of. */
  public enum Metal {
    COPPER,
    ALUMINIUM;

    /** As words name it. */
    public String id() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** How conductors are made. */
  public enum Strands {
    STRANDED,
    SOLID
  }

  /** With what a trench is dug. */
  public enum Dug {
    BY_HAND,
    TRENCHER
  }

  /** What lies over a stretch. */
  public enum Cover {
    DWELLING_DRIVEWAY,
    /** A street, a car park, any other drive. */
    STREET,
    /** At least 4 in of concrete without vehicles, 6 in beyond the line on both sides. */
    EXTERIOR_SLAB,
    /** At least 2 in of concrete in the trench. */
    CONCRETE_CAP;

    /** As tables and words name it. */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
