package pegbook.job;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Angle;

/**
 * Where the structure stands and who decides there.
 *
 * @param country ISO 3166 code of two letters; decides whose safety rules are named by section
 * @param latitude degrees north
 * @param longitude degrees east
 * @param timeZone name of the civil time zone
 * @param declination how far a compass points off true north
 * @param authority the local building authority, as the packet names it
 * @param parcel the land it stands on
 * @param permit what is known of the permit, in the owner's words
 * @param utilities the utility service's marking, once it is confirmed
 * @param heat the hottest hours of the work days, where given
 * @param calls whom to call, and how
 */
public record Place(
    String country,
    Optional<Angle> latitude,
    Optional<Angle> longitude,
    Optional<String> timeZone,
    Optional<Declination> declination,
    Optional<String> authority,
    Optional<String> parcel,
    Optional<String> permit,
    Optional<UtilityMarking> utilities,
    Optional<ExpectedHeat> heat,
    List<Call> calls) {
  public Place {
    calls = List.copyOf(calls);
  }

  /** True where the rules of the United States may be named by section. */
  public boolean isUnitedStates() {
    return country.equals("US");
  }
}
