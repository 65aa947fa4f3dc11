package pegbook.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.measure.Length;

/**
 * A size of pipe for wires and cables, as shops sell it in straight lengths.
 *
 * @param size its name in the shop, such as "PVC 1 in"
 * @param isMetal of steel, else of plastic
 * @param inside diameter
 * @param outside diameter
 */
public record ConduitSize(String size, boolean isMetal, Length inside, Length outside) {
  private static final String PLASTIC = "PVC ";
  private static final String METAL = "metal ";
  private static final List<ConduitSize> ALL = sizes();

  /** Every size: plastic, metal, then those sold by millimetres. */
  public static List<ConduitSize> all() {
    return ALL;
  }

  /** The size of a name, where it is known. */
  public static Optional<ConduitSize> find(String size) {
    return ALL.stream().filter(each -> each.size.equals(size)).findFirst();
  }

  /** A pipe of a trade size. */
  public static ConduitSize of(Raceway raceway) {
    boolean metal = raceway.kind().equals("metal");
    return new ConduitSize(
        (metal ? METAL : PLASTIC) + raceway.trade() + " in",
        metal,
        raceway.inside(),
        raceway.outside());
  }

  /** A pipe that is sold by its outside. */
  public static ConduitSize of(MetricDuct duct) {
    return new ConduitSize(
        "duct " + Math.round(duct.outside().millimetres()) + " mm",
        false,
        duct.inside(),
        duct.outside());
  }

  private static List<ConduitSize> sizes() {
    List<ConduitSize> sizes = new ArrayList<>();
    Raceway.of("pvc-40").forEach(each -> sizes.add(of(each)));
    Raceway.of("metal").forEach(each -> sizes.add(of(each)));
    MetricDuct.all().forEach(each -> sizes.add(of(each)));
    return List.copyOf(sizes);
  }
}
