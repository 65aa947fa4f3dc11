package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Unit;

/** The tables by which concrete is proportioned from cement, sand and stone. */
public final class MixTables {
  /** Where they stand. */
  public static final Citation SOURCE = new Citation("aci-211-1", "absolute volumes");

  public static final Citation WATER = new Citation("aci-211-1", "mixing water and air");
  public static final Citation WATER_CEMENT = new Citation("aci-211-1", "water to cement");
  public static final Citation STONE = new Citation("aci-211-1", "volume of coarse aggregate");

  /** A stone this much smaller than a size of the table still is of that size: 20 mm and 3/4 in. */
  private static final double SAME_SIZE = 0.02;

  /** Fineness moduli of the columns, and their step. */
  public static final double FINEST = 2.4;

  public static final double FINENESS_STEP = 0.2;

  private static final List<Stone> STONES = stones();
  private static final List<Ratio> RATIOS =
      Table.read("aci_water_cement").rows().stream()
          .map(
              row ->
                  new Ratio(
                      Pressure.ofPsi(row.number("strength_psi")),
                      row.number("plain"),
                      row.isEmpty("entrained")
                          ? Optional.empty()
                          : Optional.of(row.number("entrained"))))
          .toList();

  private MixTables() {}

  /**
   * A size of stone.
   *
   * @param size largest stone
   * @param water pounds in a cubic yard for a slump of 1 to 2 in, 3 to 4 in, and both with air
   * @param airPercent held without any agent
   * @param shares dry-rodded stone in a unit of concrete, by fineness from 2.4 in steps of 0.2
   */
  public record Stone(Length size, List<Double> water, double airPercent, List<Double> shares) {
    public Stone {
      water = List.copyOf(water);
      shares = List.copyOf(shares);
    }

    /** Pounds of mixing water in a cubic yard; a slump between the two counts as the higher. */
    public double waterPounds(Length slump, boolean entrained) {
      int column = slump.isMoreThan(Length.ofInches(2.01)) ? 1 : 0;
      return water.get(entrained ? column + 2 : column);
    }
  }

  /**
   * Water to cement for a strength.
   *
   * @param strength mean at 28 days
   * @param plain without entrained air
   * @param entrained with it, where given
   */
  public record Ratio(Pressure strength, double plain, Optional<Double> entrained) {}

  private static List<Stone> stones() {
    List<Table.Row> shares = Table.read("aci_stone_volume").rows();
    return Table.read("aci_mix_water").rows().stream()
        .map(
            row -> {
              Table.Row share =
                  shares.stream()
                      .filter(other -> other.text("stone_in").equals(row.text("stone_in")))
                      .findFirst()
                      .orElseThrow();
              return new Stone(
                  Length.ofInches(row.number("stone_in")),
                  numbers(row, "water_1_2", "water_3_4", "entrained_1_2", "entrained_3_4"),
                  row.number("air"),
                  numbers(share, "fm_2_4", "fm_2_6", "fm_2_8", "fm_3_0"));
            })
        .toList();
  }

  private static List<Double> numbers(Table.Row row, String... columns) {
    return List.of(columns).stream().map(row::number).toList();
  }

  /** The largest size of the table that a stone reaches; the smallest for a smaller one. */
  public static Stone stone(Length largest) {
    return STONES.stream()
        .filter(stone -> !stone.size().times(1 - SAME_SIZE).isMoreThan(largest))
        .reduce(STONES.get(0), (smaller, larger) -> larger);
  }

  /** Rows of water to cement that are given for plain or air-entrained concrete, weakest first. */
  public static List<Ratio> ratios(boolean entrained) {
    return RATIOS.stream().filter(row -> !entrained || row.entrained().isPresent()).toList();
  }

  /** Kilograms in a cubic metre for pounds in a cubic yard. */
  public static double metric(double poundsPerCubicYard) {
    return Unit.POUND.toSi(poundsPerCubicYard) / Unit.CUBIC_YARD.toSi(1);
  }
}
