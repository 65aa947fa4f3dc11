package pegbook.sheet.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All plans of a site.
 *
 * @param site the plan of the whole site
 * @param marking the plan of the figure, where it gets one of its own
 * @param parts plans of the figure's parts, where its marks stand too close
 */
public record SitePlans(PlanPicture site, Optional<PlanPicture> marking, List<Part> parts) {
  public SitePlans {
    parts = List.copyOf(parts);
  }

  /**
   * A part of the figure.
   *
   * @param letter as it stands on the plan of the whole
   * @param picture its plan
   */
  public record Part(String letter, PlanPicture picture) {}

  /** Names that stand on none of them. */
  public List<String> unnamed() {
    return Stream.concat(
            site.unnamed().stream(), marking.stream().flatMap(plan -> plan.unnamed().stream()))
        .distinct()
        .toList();
  }
}
