package pegbook.published;

import java.util.List;
import pegbook.measure.Pressure;

/**
 * How stiff a soil may be.
 *
 * @param soil class of soil, lower case with hyphens
 * @param least Young's modulus, the softest of the class
 * @param most Young's modulus, the stiffest of the class
 * @param poisson Poisson's ratio
 * @param questionable true where no range can be trusted and an engineer must say
 * @param citation where the moduli stand
 */
public record SoilStiffness(
    String soil,
    Pressure least,
    Pressure most,
    double poisson,
    boolean questionable,
    Citation citation) {
  /** A US ton is 2000 pounds. */
  private static final double PSF_PER_TSF = 2000;

  private static final List<SoilStiffness> ALL =
      Table.read("soil_stiffness").rows().stream().map(SoilStiffness::of).toList();

  /** Every row, in the table's order. */
  public static List<SoilStiffness> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static SoilStiffness find(String soil) {
    return ALL.stream()
        .filter(row -> row.soil.equals(soil))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("soil_stiffness has no soil " + soil));
  }

  private static SoilStiffness of(Table.Row row) {
    return new SoilStiffness(
        row.text("soil"),
        Pressure.ofPsf(PSF_PER_TSF * row.number("least_tsf")),
        Pressure.ofPsf(PSF_PER_TSF * row.number("most_tsf")),
        row.number("poisson"),
        row.text("questionable").equals("yes"),
        row.citation());
  }
}
