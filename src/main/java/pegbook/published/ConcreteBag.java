package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Mass;
import pegbook.measure.Unit;
import pegbook.measure.Volume;

/**
 * A bag of dry concrete mix.
 *
 * @param mass of the dry mix
 * @param yield concrete that it makes
 * @param water mixing water, where a range was found
 */
public record ConcreteBag(Mass mass, Volume yield, Optional<Water> water) {
  /** Where the rate and the table stand. */
  public static final Citation SOURCE = new Citation("concrete-bags", "");

  /** Concrete that a pound of dry mix makes, cubic feet: the rate behind every row. */
  public static final double CUBIC_FEET_PER_POUND = 0.0075;

  private static final double SAME_BAG = 0.01;

  private static final List<ConcreteBag> TABLE =
      Table.read("concrete_bags").rows().stream().map(ConcreteBag::of).toList();

  /** Mixing water of one bag. */
  public record Water(Volume least, Volume most) {}

  private static ConcreteBag of(Table.Row row) {
    Optional<Water> water =
        row.isEmpty("water_least_pt")
            ? Optional.empty()
            : Optional.of(
                new Water(pints(row.number("water_least_pt")), pints(row.number("water_most_pt"))));
    return new ConcreteBag(
        Mass.ofPounds(row.number("mass_lb")), Volume.ofCubicFeet(row.number("yield_ft3")), water);
  }

  private static Volume pints(double number) {
    return new Volume(Unit.US_PINT.toSi(number));
  }

  /** Every row, lightest first. */
  public static List<ConcreteBag> all() {
    return TABLE;
  }

  /** The row of a bag's mass, within one part in a hundred. */
  public static Optional<ConcreteBag> find(Mass mass) {
    return TABLE.stream()
        .filter(row -> Math.abs(mass.dividedBy(row.mass) - 1) <= SAME_BAG)
        .findFirst();
  }

  /** True when a mass lies between the lightest and the heaviest bag of the table. */
  public static boolean covers(Mass mass) {
    return mass.dividedBy(TABLE.get(0).mass) >= 1 - SAME_BAG
        && mass.dividedBy(TABLE.get(TABLE.size() - 1).mass) <= 1 + SAME_BAG;
  }
}
