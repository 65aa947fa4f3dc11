package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Power.Stop;
import pegbook.job.Power.Under;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/** Values of the power line against each other. */
final class PowerChecks {
  private PowerChecks() {}

  /** Whether its own values fit each other as far as they were read. */
  static boolean hold(Fields fields, Report report) {
    boolean apart = isApart(fields, report);
    boolean bears = bearsLoad(fields);
    boolean onTheRoute = isOnTheRoute(fields, report);
    boolean ofOneSeries = isOfOneSeries(fields, report);
    // All of them first, so that every problem is told at once.
    return apart && bears && onTheRoute && ofOneSeries;
  }

  private static boolean isApart(Fields fields, Report report) {
    List<Stop> route = fields.find(PowerKeys.ROUTE).orElse(List.of());
    boolean apart = true;
    for (int i = 1; i < route.size(); i++) {
      if (route.get(i - 1).at().distanceTo(route.get(i).at()).isLessThan(Corners.APART)) {
        report.complain(fields.item(PowerKeys.ROUTE, i), Complaint.ROUTE_STANDS, Map.of());
        apart = false;
      }
    }
    return apart;
  }

  private static boolean bearsLoad(Fields fields) {
    boolean overloaded =
        fields
            .find(PowerKeys.RUNNING)
            .flatMap(
                running ->
                    fields
                        .find(PowerKeys.BREAKER)
                        .filter(breaker -> running.amperes() > breaker.amperes() + 1e-9))
            .isPresent();
    if (overloaded) {
      fields.complain(PowerKeys.BREAKER, Complaint.BREAKER_SMALL);
    }
    return !overloaded;
  }

  private static boolean isOnTheRoute(Fields fields, Report report) {
    Optional<List<Stop>> route = fields.find(PowerKeys.ROUTE);
    List<Under> under = fields.find(PowerKeys.UNDER).orElse(List.of());
    if (route.isEmpty()) {
      return true;
    }
    Length length = Length.ZERO;
    for (int i = 1; i < route.get().size(); i++) {
      length = length.plus(route.get().get(i - 1).at().distanceTo(route.get().get(i).at()));
    }
    Length covered = under.stream().map(Under::length).reduce(Length.ZERO, Length::plus);
    if (covered.isMoreThan(length.plus(Length.ofMillimetres(1)))) {
      report.complain(
          fields.node(PowerKeys.UNDER),
          Complaint.UNDER_LONG,
          Map.of("length", report.written(length)));
      return false;
    }
    return true;
  }

  private static boolean isOfOneSeries(Fields fields, Report report) {
    List<String> sizes = fields.find(PowerKeys.SIZES).orElse(List.of());
    boolean imperial = report.units() == UnitSystem.IMPERIAL;
    boolean fits = true;
    for (int i = 0; i < sizes.size(); i++) {
      if (sizes.get(i).endsWith("AWG") != imperial) {
        report.complain(
            fields.item(PowerKeys.SIZES, i),
            Complaint.SIZE_OF_OTHER_UNITS,
            Map.of("units", imperial ? "imperial" : "metric", "series", imperial ? "AWG" : "mm2"));
        fits = false;
      }
    }
    return fits;
  }
}
