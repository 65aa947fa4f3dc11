package pegbook.calc.tapecorrections;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import pegbook.calc.tapecorrections.TapeCorrections.Slope;
import pegbook.figures.Finding;
import pegbook.figures.Formula;
import pegbook.figures.MarkPair;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.Chance;
import pegbook.testing.DigJob;

class TapeCorrectionsCalculatorTest {
  private static final TapeCorrectionsFormulas FORMULAS =
      TapeCorrectionsFormulas.in(UnitSystem.IMPERIAL);

  private static double worked(Formula formula, double... inputs) {
    return formula.function().applyAsDouble(inputs);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/levels/taping.csv", numLinesToSkip = 1)
  void publishedCorrections(
      String name,
      String source,
      String kind,
      double a,
      double b,
      double c,
      double value,
      double printed) {
    double computed =
        switch (kind) {
          case "heat" -> worked(FORMULAS.heat(), c, b, a);
          case "slope-excess" -> worked(FORMULAS.excess(), level(a, b), b);
          // The published level distance, put in, gives the slope distance that it was made from.
          case "slope-level" -> value + a - worked(FORMULAS.alongGround(), value, b);
          case "tape-length-measure" -> SteelTape.measured(new Length(a), new Length(b)).metres();
          case "tape-length-layout" -> SteelTape.laidOut(new Length(a), new Length(b)).metres();
          default -> throw new IllegalArgumentException(kind);
        };

    assertThat(computed).as(name + ", " + source).isEqualTo(value, within(printed / 2));
  }

  private static double level(double along, double rise) {
    return Math.sqrt(along * along - rise * rise);
  }

  /** T13 of the same collection: the three corrections of a tape that is laid out. */
  @Test
  void layingOutTakesAllCorrectionsOff() {
    Length wanted = Length.ofFeet(529.81);
    Length heat = Length.ofFeet(worked(FORMULAS.heat(), 6.45, 27, 529.81));
    Length others = Length.ofFeet(0.05298 + 0.01949);

    Length reading = SteelTape.laidOut(SteelTape.laidOut(wanted, heat), others);

    assertThat(reading.feet()).isEqualTo(529.645, within(0.0005));
    assertThat(SteelTape.measured(reading, heat.plus(others)).feet())
        .isEqualTo(529.81, offset(1e-9));
  }

  private static TapeCorrections corrections(DigJob job, MarkPair... pairs) {
    return TapeCorrectionsCalculator.calculate(job.job(), job.placement(), List.of(pairs));
  }

  private static DigJob sloping(double inches) {
    DigJob job = new DigJob();
    job.levels.put("S1", Length.ZERO);
    job.levels.put("S2", Length.ofInches(inches));
    return job;
  }

  private static final MarkPair ONE_TWO = new MarkPair("S1", "S2");

  @Test
  void levelGroundNeedsNothing() {
    TapeCorrections level = corrections(sloping(0), ONE_TWO);

    assertThat(level.slopes().get(0).excess().metres()).isZero();
    assertThat(level.worst()).isEmpty();
    assertThat(level.findings()).isEmpty();
  }

  @Test
  void aMarkWithoutALevelLeavesTheSlopeUnknown() {
    TapeCorrections some = corrections(sloping(9), ONE_TWO, new MarkPair("S1", "S3"));

    assertThat(some.slopes()).extracting(Slope::pair).containsExactly(ONE_TWO);
    assertThat(some.unknown()).containsExactly(new MarkPair("S1", "S3"));
  }

  /** Half of 1/16 in over the 75 in or so from S1 to S2: a rise of about 2.2 in. */
  @Test
  void aSlopeMattersFromHalfADivisionOn() {
    DigJob job = sloping(0);
    Length d = job.placement().mark("S1").at().distanceTo(job.placement().mark("S2").at());
    double half = 1 / 32.0;
    double rise = Math.sqrt((d.inches() + half) * (d.inches() + half) - d.inches() * d.inches());

    assertThat(corrections(sloping(rise - 0.01), ONE_TWO).worst()).isEmpty();
    TapeCorrections steep = corrections(sloping(rise + 0.01), ONE_TWO);
    assertThat(steep.worst().orElseThrow().pair()).isEqualTo(ONE_TWO);
    assertThat(steep.findings()).extracting(Finding::id).containsExactly("tape-slope");
  }

  /** 6.45 ppm/°F over 100 ft is 0.00774 in a degree: 1/32 in takes 4.04 °F. */
  @Test
  void heatMattersOverLongTapesOnly() {
    DigJob near = sloping(0);
    DigJob far = sloping(0);
    far.acrossCorners = Length.ofFeet(104);

    assertThat(corrections(near, ONE_TWO).heat().matters()).isFalse();
    TapeCorrections.Heat heat = corrections(far, new MarkPair("S1", "S4")).heat();
    double degrees = 0.03125e6 / (6.45 * heat.longest().inches());
    assertThat(heat.matters()).isTrue();
    assertThat(heat.halfDivisionKelvins() * 1.8).isEqualTo(degrees, offset(1e-9));
    // Warm: the tape is long, so less is read.
    assertThat(heat.warm().isLessThan(heat.longest())).isTrue();
    assertThat(heat.cold().isMoreThan(heat.longest())).isTrue();
    assertThat(heat.season().inches())
        .isEqualTo(6.45e-6 * 36 * heat.longest().inches(), offset(1e-9));
  }

  @Property(tries = 200, seed = Chance.SEED)
  void whicheverEndHoldsTheZero(@ForAll @DoubleRange(min = -90, max = 90) double rise) {
    Slope there = corrections(sloping(rise), ONE_TWO).slopes().get(0);
    Slope back = corrections(sloping(rise), new MarkPair("S2", "S1")).slopes().get(0);

    assertThat(back.rise().metres()).isEqualTo(-there.rise().metres(), offset(0.0));
    assertThat(back.excess()).isEqualTo(there.excess());
    // A right triangle: the way along the ground is the level way and the excess.
    assertThat(there.level().plus(there.excess()).metres())
        .isEqualTo(there.alongGround().metres(), offset(1e-12));
    assertThat(StrictMath.hypot(there.level().metres(), there.rise().metres()))
        .isEqualTo(there.alongGround().metres(), offset(1e-12));
    // h² / (2 d) is never too little.
    double approximate = rise * rise * 0.0254 * 0.0254 / (2 * there.level().metres());
    assertThat(there.excess().metres()).isLessThanOrEqualTo(approximate + 1e-12);
  }
}
