package pegbook.calc.safetynotes;

import java.util.Arrays;
import java.util.List;
import pegbook.job.Place;
import pegbook.published.Citation;
import pegbook.published.LocalRules;
import pegbook.published.LocalRules.Topic;

/**
 * Whose rules may be named: in the United States its own by section, elsewhere what that country
 * has for the topic, if anything is known.
 */
record Rules(boolean unitedStates, String country) {
  static Rules of(Place place) {
    return new Rules(place.isUnitedStates(), place.country());
  }

  /** Sections of 29 CFR 1926 here, or what the country has on work safety. */
  List<Citation> construction(String... sections) {
    return unitedStates
        ? Arrays.stream(sections)
            .map(section -> new Citation("cfr-1926", "1926." + section))
            .toList()
        : LocalRules.of(country, Topic.WORK_SAFETY);
  }

  /** Sources of the United States here, or what the country has on a topic. */
  List<Citation> on(Topic topic, Citation... here) {
    return unitedStates ? List.of(here) : LocalRules.of(country, topic);
  }

  /** A note's name: one wording for the United States with its figures, one for elsewhere. */
  String id(String id) {
    return unitedStates ? id : id + "-elsewhere";
  }
}
