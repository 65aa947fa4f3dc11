package pegbook.calc.concreteplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pegbook.calc.concreteplan.ConcretePlan.Fill;
import pegbook.calc.concreteplan.ConcretePlan.Part;
import pegbook.calc.concreteplan.ConcretePlan.PartKind;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.job.Widenings;
import pegbook.job.Widenings.Shape;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.Volume;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

/**
 * Concrete part by part. The frustum is that of the tables, V = π · h / 3 · (R² + R · r + r²)
 * (standard mathematical tables, from memory), worked by hand.
 */
class FootingPartsTest {
  private static Fill fill(FillJob of, Hole hole) {
    return ConcretePlanCalculator.calculate(of.job(), of.with(hole).holes).fills().get(0);
  }

  private static double feet(Volume volume) {
    return Unit.CUBIC_FOOT.in(volume);
  }

  /**
   * By hand: hole 12 in, 48 in deep, bell 24 in, flare 12 in, toe 4 in. Frustum π · 12 / 3 · (144 +
   * 72 + 36) = 3,166.7 in³, toe π · 144 · 4 = 1,809.6 in³, together 2.8798 ft³; shaft π · 36 · 32 =
   * 3,619.1 in³ = 2.0944 ft³; a box of 12 in by 6 in over the ground 864 in³ = 0.5 ft³. To mix
   * (4.9742 · 1.05 + 0.5) · 1.10 = 6.2952 ft³. Gravel under the bell, 4 in: π · 144 · 4 / 1,728 ·
   * 1.05 · 1.15 / 0.95 = 1.3311 ft³.
   */
  @Test
  void aBellIsAFrustumOverItsToe() {
    FillJob of = new FillJob();
    Fill fill = fill(of, of.widened(of.hole("S1", 12, 48, 4, 6), of.bell(24, 12, 4)));
    assertThat(feet(fill.part(PartKind.BELL))).isEqualTo(2.8798, offset(5e-5));
    assertThat(feet(fill.part(PartKind.SHAFT))).isEqualTo(2.0944, offset(5e-5));
    assertThat(feet(fill.part(PartKind.COLUMN))).isEqualTo(0.5, offset(1e-9));
    assertThat(feet(fill.poured())).isEqualTo(6.2952, offset(2e-4));
    assertThat(feet(fill.gravelLoose())).isEqualTo(1.3311, offset(2e-4));
    assertThat(fill.standing().inches()).isEqualTo(24, offset(1e-9));
  }

  /**
   * By hand: hole 24 in, 42 in deep, pad 10 in: π · 144 · 10 = 4,523.9 in³ = 2.6180 ft³; tube 12 in
   * from there to 8 in over the ground: 2.0944 + 0.5236 ft³. Only the pad stands against soil:
   * (2.6180 · 1.05 + 2.6180) · 1.10 = 5.9036 ft³. Soil goes in round 32 in of tube. The tube is 40
   * in long.
   */
  @Test
  void aPadTakesTheOverBreakAndItsTubeDoesNot() {
    FillJob of = new FillJob();
    Hole hole = of.widened(of.tube(of.hole("S1", 24, 42, 4, 8), 12, Tube.From.BOTTOM), of.pad(10));
    ConcretePlan plan = ConcretePlanCalculator.calculate(of.job(), of.with(hole).holes);
    Fill fill = plan.fills().get(0);
    assertThat(feet(fill.part(PartKind.PAD))).isEqualTo(2.6180, offset(5e-5));
    assertThat(feet(fill.part(PartKind.SHAFT))).isEqualTo(2.0944, offset(5e-5));
    assertThat(feet(fill.poured())).isEqualTo(5.9036, offset(2e-4));
    double ring = Math.PI / 4 * (24 * 24 * 1.05 - 144) * 32 / 1728;
    assertThat(feet(fill.backfill().orElseThrow())).isEqualTo(ring, offset(1e-6));
    assertThat(fill.standing().inches()).isEqualTo(24, offset(1e-9));
    Need tube =
        plan.needs().stream()
            .filter(need -> need.id().equals("form-tube"))
            .findFirst()
            .orElseThrow();
    assertThat(tube.arguments().get("length"))
        .isEqualTo(pegbook.figures.Argument.of(Length.ofInches(40)));
  }

  /**
   * By hand: 20 in square and 8 in thick 3,200 in³ = 1.8519 ft³; round 2,513.3 in³ = 1.4544 ft³.
   */
  @Test
  void aCapIsTheUpperPartOfTheTop() {
    FillJob of = new FillJob();
    Hole shaft = of.tube(of.hole("S1", 16, 42, 0, 18), 12, Tube.From.GROUND);
    Fill square = fill(of, of.widened(shaft, of.cap(Shape.SQUARE, 20, 8)));
    assertThat(feet(square.part(PartKind.CAP))).isEqualTo(1.8519, offset(5e-5));
    assertThat(feet(square.part(PartKind.COLUMN)))
        .isEqualTo(Math.PI * 36 * 10 / 1728, offset(1e-9));
    FillJob other = new FillJob();
    Fill round = fill(other, other.widened(shaft, other.cap(Shape.ROUND, 20, 8)));
    assertThat(feet(round.part(PartKind.CAP))).isEqualTo(1.4544, offset(5e-5));
    assertThat(round.above().cubicMetres()).isLessThan(square.above().cubicMetres());
  }

  /** A ring of tube is bought for a round cap, and the tube under it is that much shorter. */
  @Test
  void aRoundCapIsFormedByARingOfTube() {
    FillJob of = new FillJob();
    Hole shaft = of.tube(of.hole("S1", 16, 42, 0, 18), 12, Tube.From.GROUND);
    ConcretePlan plan =
        ConcretePlanCalculator.calculate(
            of.job(), of.with(of.widened(shaft, of.cap(Shape.ROUND, 20, 8))).holes);
    assertThat(plan.needs().stream().filter(need -> need.id().equals("form-tube")).toList())
        .extracting(Need::arguments)
        .extracting(Map::size)
        .hasSize(2);
    assertThat(plan.needs())
        .filteredOn(need -> need.id().equals("form-tube"))
        .extracting(need -> need.arguments().get("length"))
        .containsExactlyInAnyOrder(
            pegbook.figures.Argument.of(Length.ofInches(10)),
            pegbook.figures.Argument.of(Length.ofInches(8)));
  }

  /** A pad that is poured by itself is the first lift; the second has tube and cap. */
  @Test
  void aJointOnThePadParts() {
    FillJob of = new FillJob();
    Hole hole = of.tube(of.hole("S1", 24, 42, 0, 18), 12, Tube.From.BOTTOM);
    Hole steel = of.steel(hole, 4, "#4", 3, Optional.empty());
    Hole lifts = of.starters(steel, Steel.Foot.HOOKED, Optional.of(Length.ofInches(10)));
    Widenings both =
        new Widenings(Optional.empty(), of.pad(10).pad(), of.cap(Shape.SQUARE, 20, 8).cap());
    Fill fill = fill(of, of.widened(lifts, both));
    double waste = 1.10;
    assertThat(feet(fill.lifts().get(0).poured())).isEqualTo(2.6180 * 1.05 * waste, offset(2e-4));
    double second = Math.PI * 36 * (32 + 10) / 1728 + 3200.0 / 1728;
    assertThat(feet(fill.lifts().get(1).poured())).isEqualTo(second * waste, offset(2e-4));
    assertThat(of.widened(lifts, both).isHungOverPad()).isFalse();
    assertThat(of.widened(steel, both).isHungOverPad()).isTrue();
  }

  @Property(tries = 60, seed = Chance.SEED)
  void partsSumUpAndGrowWithTheCubeOfTheirSize(
      @ForAll @DoubleRange(min = 8, max = 24) double hole,
      @ForAll @DoubleRange(min = 1.05, max = 2.5) double wide,
      @ForAll @DoubleRange(min = 4, max = 20) double flare,
      @ForAll @DoubleRange(min = 0, max = 6) double toe,
      @ForAll @DoubleRange(min = 1.1, max = 3) double k) {
    Fill one = belled(hole, wide, flare, toe, 1);
    Fill larger = belled(hole, wide, flare, toe, k);
    assertThat(larger.drawn().cubicMetres())
        .isCloseTo(one.drawn().cubicMetres() * k * k * k, within(1e-9 * k * k * k));
    double sum = one.parts().stream().map(Part::volume).mapToDouble(Volume::cubicMetres).sum();
    assertThat(sum).isCloseTo(one.drawn().cubicMetres(), within(1e-12));
    FillJob of = new FillJob();
    assertThat(of.bell(hole * wide, flare, toe).bottomVolume(Length.ofInches(hole)).cubicMetres())
        .isCloseTo(one.part(PartKind.BELL).cubicMetres(), within(1e-12));
  }

  private static Fill belled(double hole, double wide, double flare, double toe, double k) {
    FillJob of = new FillJob();
    Hole plain = of.hole("S1", hole * k, 48 * k, 4 * k, 6 * k);
    return fill(of, of.widened(plain, of.bell(hole * wide * k, flare * k, toe * k)));
  }

  /** As a bell gets no wider than its hole it becomes a piece of the shaft. */
  @Property(tries = 30, seed = Chance.SEED)
  void aNarrowBellIsNearlyTheShaft(@ForAll @DoubleRange(min = 8, max = 24) double hole) {
    FillJob of = new FillJob();
    Fill plain = fill(of, of.hole("S1", hole, 48, 4, 6));
    Fill narrow = belled(hole, 1 + 1e-9, 12, 4, 1);
    assertThat(narrow.below().cubicMetres()).isCloseTo(plain.below().cubicMetres(), within(1e-8));
  }
}
