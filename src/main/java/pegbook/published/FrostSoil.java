package pegbook.published;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pegbook.measure.Density;
import pegbook.measure.Ratio;

/**
 * What frost makes of a soil.
 *
 * @param soil class of soil, lower case with hyphens
 * @param susceptibility how readily it heaves
 * @param groups its frost groups as published; empty where it has none
 * @param heat how it conducts heat and what it is taken to hold; absent where no formula holds
 * @param citation where the groups stand
 */
public record FrostSoil(
    String soil,
    Susceptibility susceptibility,
    String groups,
    Optional<Heat> heat,
    Citation citation) {
  /** How readily a soil heaves when it freezes wet. */
  public enum Susceptibility {
    /** Sound rock. */
    ROCK,
    LOW,
    MEDIUM,
    HIGH,
    /** Nobody can tell from the class. */
    UNKNOWN;

    /** True when ice can lift what the soil holds. */
    public boolean heaves() {
      return this == MEDIUM || this == HIGH || this == UNKNOWN;
    }

    /** As words name it. */
    public String id() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * How a soil conducts heat, and what it is taken to hold where the job does not say.
   *
   * @param coarse true for sands and gravels, false where more than half is silt and clay
   * @param dry weight without water
   * @param moisture water by dry weight
   */
  public record Heat(boolean coarse, Density dry, Ratio moisture) {}

  private static final List<FrostSoil> ALL =
      Table.read("frost_soils").rows().stream().map(FrostSoil::of).toList();

  /** Every row, in the table's order. */
  public static List<FrostSoil> all() {
    return ALL;
  }

  /**
   * The row of a soil.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static FrostSoil find(String soil) {
    return ALL.stream()
        .filter(row -> row.soil.equals(soil))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("frost_soils has no soil " + soil));
  }

  private static FrostSoil of(Table.Row row) {
    return new FrostSoil(
        row.text("soil"),
        Susceptibility.valueOf(row.text("susceptibility").toUpperCase(Locale.ROOT)),
        row.text("groups"),
        row.text("conductivity").equals("none") ? Optional.empty() : Optional.of(heat(row)),
        row.citation());
  }

  private static Heat heat(Table.Row row) {
    return new Heat(
        row.text("conductivity").equals("coarse"),
        Density.ofPoundsPerCubicFoot(row.number("dry_pcf")),
        Ratio.ofPercent(row.number("moisture_percent")));
  }
}
