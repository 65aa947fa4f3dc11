package pegbook.calc.asdug;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.figures.Argument;
import pegbook.figures.Bottom;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Swings;
import pegbook.job.Field;
import pegbook.job.Field.Dug;
import pegbook.job.Soil;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.testing.FillJob;

/** What a found hole is told, at the thresholds; holes of 18 in, 48 in to the underside. */
class FoundHolesTest {
  private static Dug dug(Double depth, Double width, Soil soil, Double rock) {
    return new Dug(
        "S2",
        Optional.empty(),
        Optional.ofNullable(depth).map(Length::ofInches),
        Optional.ofNullable(width).map(Length::ofInches),
        Optional.empty(),
        Optional.ofNullable(soil),
        Optional.empty(),
        Optional.ofNullable(rock).map(Length::ofInches));
  }

  private static FillJob job(Dug... dug) {
    FillJob of = new FillJob();
    of.dig.field = new Field(List.of(), List.of(dug));
    Hole far = of.hole("S2", 18, 48, 4, 6);
    return of.with(of.hole("S1", 18, 48, 4, 6))
        .with(far.asDug(far.centre().plus(3, 0), far.diameter(), far.depth(), far.gravel()));
  }

  private static List<Finding> findings(FillJob of) {
    return AsDugCalculator.calculate(of.job(), of.holes).findings();
  }

  /** Half a millimetre or so is how well a hole's width is known. */
  @ParameterizedTest
  @CsvSource({"17, dug-narrower", "19, dug-wider", "18, ", "18.005, "})
  void anotherWidthIsNoted(double found, String id) {
    List<Finding> findings = findings(job(dug(52.0, found, null, null)));
    if (id == null) {
      assertThat(findings).isEmpty();
      return;
    }
    Finding only = findings.get(0);
    assertThat(findings).hasSize(1);
    assertThat(only.id()).isEqualTo(id);
    assertThat(only.kind()).isEqualTo(Kind.NOTE);
    assertThat(only.subjects()).containsExactly("S2");
    assertThat(only.arguments())
        .containsEntry("found", Argument.of(Length.ofInches(found)))
        .containsEntry("planned", Argument.of(Length.ofInches(18)));
  }

  /** Rock at the planned bottom is asked about; rock above the target stops. */
  @Test
  void rockAtTheBottomIsAQuestion() {
    List<Finding> findings = findings(job(dug(52.0, null, null, 52.0)));
    assertThat(findings)
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.id()).isEqualTo("dug-on-rock");
              assertThat(finding.kind()).isEqualTo(Kind.ASK);
              assertThat(finding.decides()).isEqualTo(Finding.Decider.BUILDING_AUTHORITY);
            });
  }

  /** Peat and fill carry nothing and stop; any other soil that was not planned asks. */
  @ParameterizedTest
  @CsvSource({
    "PEAT, dug-soft-soil, STOP",
    "FILL, dug-soft-soil, STOP",
    "CLAY, dug-other-soil, ASK",
    "GRAVEL, dug-other-soil, ASK"
  })
  void otherSoil(Soil soil, String id, Kind kind) {
    FillJob of = job(dug(52.0, null, soil, null));
    assertThat(of.job().ground().soil()).isNotEqualTo(soil);
    assertThat(findings(of))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.id()).isEqualTo(id);
              assertThat(finding.kind()).isEqualTo(kind);
            });
  }

  private static DugChecks checks(FillJob of, double firstPsf, double secondPsf) {
    AsDug asDug = AsDugCalculator.calculate(of.job(), of.holes);
    List<Bottom> bottoms = List.of(bottom(asDug, 0, firstPsf), bottom(asDug, 1, secondPsf));
    return DugChecksCalculator.calculate(
        of.job(), asDug, new Swings("S1", "S2", List.of()), bottoms);
  }

  private static Bottom bottom(AsDug asDug, int at, double psf) {
    return new Bottom(
        asDug.holes().get(at).mark(),
        asDug.holes().get(at).standing(),
        Pressure.ofPsf(psf),
        Optional.of(Pressure.ofPsf(5000)));
  }

  /** The hole's own footing is held against its soil; 1500 psf is what clay carries by the code. */
  @Test
  void aFootingIsHeldAgainstItsOwnSoil() {
    FillJob of = job(dug(52.0, null, Soil.CLAY, null));
    assertThat(checks(of, 4000, 1500).findings()).isEmpty();
    assertThat(checks(of, 100, 1501).findings())
        .extracting(Finding::id)
        .containsExactly("dug-soil-weaker");
  }

  /** Where nothing lies off its mark and the width is as planned there is nothing to check. */
  @Test
  void aHoleAsPlannedHasNoRoomToCheck() {
    FillJob of = job(dug(52.0, 18.0, null, null));
    of.holes.set(1, of.steel(of.holes.get(1), 4, "#4", 3, Optional.empty()));
    DugChecks checks = checks(of, 100, 100);
    assertThat(checks.rooms()).isEmpty();
    assertThat(checks.betweens()).isEmpty();
    assertThat(checks.loads()).isEmpty();
  }

  /** In a wider hole the steel keeps more than its cover, and the tube has more room. */
  @Test
  void aWiderHoleLeavesRoom() {
    FillJob of = job(dug(52.0, 20.0, null, null));
    of.holes.set(
        1, of.tube(of.steel(of.holes.get(1), 4, "#4", 3, Optional.empty()), 14, Tube.From.GROUND));
    DugChecks checks = checks(of, 100, 100);
    assertThat(checks.rooms()).hasSize(1);
    assertThat(checks.findings()).isEmpty();
  }
}
