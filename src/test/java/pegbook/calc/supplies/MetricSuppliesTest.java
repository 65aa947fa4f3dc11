package pegbook.calc.supplies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.figures.Argument;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.Anchors;
import pegbook.job.Pier;
import pegbook.job.Sleeve;
import pegbook.job.Tube;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.testing.FillJob;

/** Sizes in which a metric yard sells, and counts of several holes alike, by hand. */
class MetricSuppliesTest {
  private static Supplies of(FillJob job) {
    return SuppliesCalculator.calculate(
        job.job(), job.holes, List.of(job.holes.stream().map(Hole::mark).toList()));
  }

  private static Need need(Supplies supplies, String id) {
    return supplies.needs().stream().filter(need -> need.id().equals(id)).findFirst().orElseThrow();
  }

  private static double order(Supplies supplies, String id) {
    return supplies.needs().stream()
        .filter(need -> need.id().equals(id))
        .mapToDouble(Need::order)
        .sum();
  }

  private static Argument mm(double millimetres) {
    return Argument.of(Length.ofMillimetres(millimetres));
  }

  /** Boards of 145 mm: a top of 150 mm takes two rows of four; 1 m round the top for the sheet. */
  @Test
  void aBoxIsOfMetricBoards() {
    FillJob job = new FillJob().metric();
    job.with(job.hole("S1", 450, 1200, 100, 150));
    Supplies supplies = of(job);
    Need boards = need(supplies, "form-boards");
    assertThat(boards.arguments())
        .containsEntry("pieces", Argument.of(8))
        .containsEntry("thick", mm(50))
        .containsEntry("wide", mm(150))
        .containsEntry("stock", mm(2400));
    assertThat(need(supplies, "hole-covers").arguments()).containsEntry("thick", mm(18));
    Need sheet = need(supplies, "curing-sheet");
    assertThat(sheet.unit()).isEqualTo(Unit.SQUARE_METRE);
    assertThat(sheet.amount()).isEqualTo((0.45 + 0.6) * (0.45 + 0.6), offset(1e-9));
  }

  @Test
  void aBoxIsOfInchBoards() {
    FillJob job = new FillJob();
    job.with(job.hole("S1", 18, 48, 4, 6));
    Supplies supplies = of(job);
    assertThat(need(supplies, "form-boards").arguments())
        .containsEntry("thick", Argument.of(Length.ofInches(2)))
        .containsEntry("wide", Argument.of(Length.ofInches(6)))
        .containsEntry("stock", Argument.of(Length.ofInches(96)));
    assertThat(need(supplies, "hole-covers").arguments())
        .containsEntry("thick", Argument.of(Length.ofInches(0.75)));
    assertThat(need(supplies, "curing-sheet").unit()).isEqualTo(Unit.SQUARE_FOOT);
  }

  /** Two braces and two hangers at each of three tall tubes; a stake holds each brace. */
  @Test
  void eachOfSeveralTallTubesHasItsBraces() {
    FillJob job = new FillJob().metric();
    for (int i = 1; i <= 3; i++) {
      job.with(job.tube(job.hole("P" + i, 550, 1450, 0, 900), 400, Tube.From.GROUND));
    }
    Supplies supplies = of(job);
    assertThat(need(supplies, "form-braces").arguments())
        .containsEntry("pieces", Argument.of(6))
        .containsEntry("wide", mm(100));
    assertThat(need(supplies, "form-hangers").arguments()).containsEntry("pieces", Argument.of(6));
    assertThat(order(supplies, "ground-stakes"))
        .as("four at each of three covers, one at each of six braces")
        .isEqualTo(12 + 6);
    assertThat(order(supplies, "form-screws")).isEqualTo(4.0 * 12);
  }

  /** A cover is counted for holes of its own width only. */
  @Test
  void coversAreNamedForTheHolesOfTheirWidth() {
    FillJob job = new FillJob();
    job.with(job.hole("S1", 18, 48, 4, 0)).with(job.hole("P1", 24, 48, 4, 0));
    assertThat(of(job).workings())
        .filteredOn(working -> working.formula().id().equals("supplies.cover"))
        .extracting(Working::subject)
        .containsExactly("S1", "P1");
  }

  /** A day with no open hole asks for no fence, and does not hide the day that does. */
  @Test
  void aDayWithoutHolesHasNoFence() {
    FillJob job = new FillJob();
    job.with(job.hole("S1", 18, 48, 4, 0));
    Supplies supplies =
        SuppliesCalculator.calculate(job.job(), job.holes, List.of(List.of(), List.of("S1")));
    assertThat(order(supplies, "barrier-fence")).isEqualTo(24);
    assertThat(SuppliesCalculator.calculate(job.job(), job.holes, List.of(List.of())).needs())
        .extracting(Need::id)
        .doesNotContain("barrier-fence");
  }

  /** The board of the template lies 50 mm, or 2 in, over the form on each side. */
  @Test
  void templatesLapTheirForm() {
    FillJob metric = new FillJob().metric();
    metric.dig.piers.addAll(List.of(pier("P1"), pier("P2")));
    metric.with(metric.tube(metric.hole("P1", 550, 1450, 0, 900), 400, Tube.From.GROUND));
    metric.with(metric.tube(metric.hole("P2", 600, 1450, 0, 900), 450, Tube.From.GROUND));
    Supplies supplies = of(metric);
    assertThat(supplies.needs())
        .filteredOn(need -> need.id().equals("template-board"))
        .extracting(need -> need.arguments().get("side"))
        .satisfiesExactly(
            side -> assertThat(millimetres(side)).isEqualTo(500, offset(1e-6)),
            side -> assertThat(millimetres(side)).isEqualTo(550, offset(1e-6)));
    assertThat(supplies.workings())
        .filteredOn(working -> working.formula().id().equals("supplies.cable-sleeve"))
        .extracting(Working::subject)
        .containsExactly("P1", "P2");
    FillJob imperial = new FillJob();
    imperial.dig.piers.add(pier("P1"));
    imperial.with(imperial.tube(imperial.hole("P1", 22, 58, 0, 36), 16, Tube.From.GROUND));
    assertThat(millimetres(need(of(imperial), "template-board").arguments().get("side")))
        .isEqualTo(20 * 25.4, offset(1e-6));
  }

  private static double millimetres(Argument argument) {
    return ((Length) ((Argument.Measured) argument).quantity()).millimetres();
  }

  private static Pier pier(String id) {
    return FillJob.fitted(
        id,
        Optional.of(
            new Anchors(
                3,
                Length.ofMillimetres(12),
                Length.ofMillimetres(140),
                Length.ofMillimetres(75),
                Length.ofMillimetres(200),
                Angle.ZERO)),
        Optional.of(
            new Sleeve(
                Length.ofMillimetres(50),
                Length.ZERO,
                Angle.ofDegrees(120),
                Length.ofMillimetres(450))));
  }
}
