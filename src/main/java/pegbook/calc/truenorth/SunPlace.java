package pegbook.calc.truenorth;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.job.Place;

/** What a job says of its place on the earth. */
final class SunPlace {
  private SunPlace() {}

  /** The place's sun clock, where latitude, longitude and time zone are all given. */
  static Optional<SunClock> of(Place place) {
    if (place.latitude().isEmpty() || place.longitude().isEmpty() || place.timeZone().isEmpty()) {
      return Optional.empty();
    }
    Sun.Site site =
        new Sun.Site(place.latitude().get().degrees(), place.longitude().get().degrees());
    return Optional.of(new SunClock(site, ZoneId.of(place.timeZone().get())));
  }

  /** The keys that are missing, where some of the three are given and some are not. */
  static List<String> missing(Place place) {
    List<String> missing = new ArrayList<>();
    if (place.latitude().isEmpty()) {
      missing.add("latitude");
    }
    if (place.longitude().isEmpty()) {
      missing.add("longitude");
    }
    if (place.timeZone().isEmpty()) {
      missing.add("timeZone");
    }
    return missing.size() == 3 ? List.of() : List.copyOf(missing);
  }
}
