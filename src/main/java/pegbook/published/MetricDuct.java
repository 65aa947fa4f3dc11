package pegbook.published;

import java.util.List;
import pegbook.measure.Length;

/**
 * A pipe for a cable in the ground.
 *
 * @param outside diameter, by which it is sold
 * @param inside diameter
 */
public record MetricDuct(Length outside, Length inside) {
  private static final List<MetricDuct> ALL =
      Table.read("metric_ducts").rows().stream()
          .map(
              row ->
                  new MetricDuct(
                      Length.ofMillimetres(row.number("outside_mm")),
                      Length.ofMillimetres(row.number("inside_mm"))))
          .toList();

  /** Every size, the smallest first. */
  public static List<MetricDuct> all() {
    return ALL;
  }
}
