package pegbook.sheet.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.sheet.plan.PartPictures.Pictured;

/** All plans of a site. */
public final class SitePlans {
  private final PlanPicture site;
  private final Optional<PlanPicture> marking;
  private final List<Pictured> parts;

  SitePlans(PlanPicture site, Optional<PlanPicture> marking, List<Pictured> parts) {
    this.site = site;
    this.marking = marking;
    this.parts = List.copyOf(parts);
  }

  /** The plan of the whole site. */
  public PlanPicture site() {
    return site;
  }

  /** The plan of the figure, where it gets one of its own. */
  public Optional<PlanPicture> marking() {
    return marking;
  }

  /** Plans of the figure's parts, where its marks stand too close: A, B and so on. */
  public List<PlanPicture> parts() {
    return parts.stream().map(Pictured::picture).toList();
  }

  /** Letters of the parts. */
  public List<String> letters() {
    return parts.stream().map(part -> part.part().letter()).toList();
  }

  /** Names that stand on none of them. */
  public List<String> unnamed() {
    return Stream.concat(
            site.unnamed().stream(), marking.stream().flatMap(plan -> plan.unnamed().stream()))
        .distinct()
        .toList();
  }
}
