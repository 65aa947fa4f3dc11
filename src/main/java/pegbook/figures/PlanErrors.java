package pegbook.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.TapeFix;

/**
 * The errors of all marks of a plan of swings, by their causes: two tapes to a mark, the baseline's
 * length, and the errors of the marks that others are taped from. A third tape to a mark can be
 * added: its arcs then make a small triangle, and the mark is set in its middle, which is the least
 * squares solution with all tapes alike.
 */
public final class PlanErrors {
  private final BaselineErrors errors;
  private final Placement placement;
  private final Swings swings;
  private final Segment baseline;
  private final Map<String, ErrorForm> forms = new LinkedHashMap<>();

  /**
   * Carries the errors to every mark.
   *
   * @param swings from which marks each is taped
   */
  public PlanErrors(BaselineErrors errors, Placement placement, Swings swings) {
    this.errors = errors;
    this.placement = placement;
    this.swings = swings;
    this.baseline = new Segment(at(swings.first()), at(swings.second()));
    forms.put(swings.first(), ErrorForm.none());
    forms.put(swings.second(), secondEnd());
    placement.marks().stream()
        .map(PlacedMark::id)
        .filter(mark -> !forms.containsKey(mark) && swings.pairOf(mark).isEmpty())
        .forEach(mark -> forms.put(mark, fromBaseline(mark)));
    swings
        .ownPairs()
        .forEach(
            pair ->
                forms.put(pair.mark(), taped(pair.mark(), List.of(pair.first(), pair.second()))));
  }

  private Point at(String mark) {
    return placement.mark(mark).at();
  }

  /** The error of a mark as the plan sets it. */
  public ErrorForm of(String mark) {
    return Objects.requireNonNull(forms.get(mark), mark);
  }

  /** The error of a mark that is also taped from a third one. */
  public ErrorForm withThird(String mark, String third) {
    List<String> from =
        swings
            .pairOf(mark)
            .map(pair -> List.of(pair.first(), pair.second(), third))
            .orElseGet(() -> List.of(swings.first(), swings.second(), third));
    return taped(mark, from);
  }

  private ErrorForm secondEnd() {
    double base = baseline.length().metres();
    return ErrorForm.of(
        "baseline",
        errors.tape().sigma(baseline.length()).metres(),
        (baseline.to().east() - baseline.from().east()) / base,
        (baseline.to().north() - baseline.from().north()) / base);
  }

  private ErrorForm fromBaseline(String mark) {
    return errors.crossings().isOnLine(baseline, at(mark))
        ? onLine(mark)
        : taped(mark, List.of(swings.first(), swings.second()));
  }

  private ErrorForm onLine(String mark) {
    double base = baseline.length().metres();
    double east = (baseline.to().east() - baseline.from().east()) / base;
    double north = (baseline.to().north() - baseline.from().north()) / base;
    double along = errors.tape().sigma(baseline.from().distanceTo(at(mark))).metres();
    double across = errors.acrossString(baseline, at(mark)).metres();
    return ErrorForm.of(mark + " tape", along, east, north)
        .plus(ErrorForm.of(mark + " string", across, -north, east));
  }

  /** A mark taped from two or more others. */
  private ErrorForm taped(String mark, List<String> from) {
    TapeFix fix = new TapeFix(at(mark), from.stream().map(this::at).toList());
    List<TapeFix.Pull> pulls = fix.pulls();
    ErrorForm sum = ErrorForm.none();
    for (int i = 0; i < from.size(); i++) {
      String other = from.get(i);
      TapeFix.Pull pull = pulls.get(i);
      double sigma = errors.tape().sigma(at(other).distanceTo(at(mark))).metres();
      sum =
          sum.plus(ErrorForm.of(other + " to " + mark, sigma, pull.eastGain(), pull.northGain()))
              .plus(of(other).seen(pull));
    }
    return sum;
  }
}
