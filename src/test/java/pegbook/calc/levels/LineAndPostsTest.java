package pegbook.calc.levels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.depthtargets.DepthTargets;
import pegbook.calc.depthtargets.DepthTargetsCalculator;
import pegbook.figures.Argument;
import pegbook.figures.CutPiece;
import pegbook.figures.Need;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.testing.DigJob;

/** What the line takes and what posts are sawn from, by hand. */
class LineAndPostsTest {
  private static Levels levels(DigJob of) {
    Job job = of.job();
    DepthTargets targets = DepthTargetsCalculator.calculate(job, of.placement());
    return LevelsCalculator.calculate(job, of.placement(), targets.holes(), targets.datum());
  }

  private static Need need(Levels levels, String id) {
    return levels.needs().stream().filter(need -> need.id().equals(id)).findFirst().orElseThrow();
  }

  /** Two of the marks lie lower than the others. */
  private static DigJob slope() {
    DigJob job = new DigJob().frostInches(42);
    double[] inches = {0, -3, -8, -8, -3, 0};
    for (int i = 0; i < inches.length; i++) {
      job.levels.put("S" + (i + 1), Length.ofInches(inches[i]));
    }
    return job;
  }

  /** Two feet more than the line, or 600 mm, for knots; a stake more than there are spans. */
  @Test
  void stakesAndStringOfTheLine() {
    DigJob imperial = slope();
    Levels levels = levels(imperial);
    LineSag sag = levels.sag().orElseThrow();
    assertThat(need(levels, "datum-stakes").order()).isEqualTo(sag.spans() + 1.0);
    Need string = need(levels, "datum-string");
    assertThat(string.unit()).isEqualTo(Unit.FOOT);
    assertThat(string.amount()).isCloseTo((sag.span().metres() + 0.6) / 0.3048, within(1e-9));
    assertThat(stake(levels).dividedBy(Length.ofFeet(1)) % 1).isCloseTo(0, within(1e-9));
    DigJob metric = slope();
    metric.units = UnitSystem.METRIC;
    metric.division = Length.ofMillimetres(1);
    Levels same = levels(metric);
    assertThat(need(same, "datum-string").unit()).isEqualTo(Unit.METRE);
    assertThat(stake(same).millimetres() % 500).isCloseTo(0, within(1e-6));
    double highest =
        same.rows().stream().mapToDouble(row -> row.toGround().metres()).max().orElseThrow();
    assertThat(stake(same).metres()).isBetween(highest + 0.45 - 1e-9, highest + 0.45 + 0.5);
    // The stakes stand 3 ft, or a metre, beyond the outermost marks.
    assertThat(sag.span().metres() - same.sag().orElseThrow().span().metres())
        .isCloseTo(2 * (0.9144 - 1), within(1e-9));
  }

  private static Length stake(Levels levels) {
    Argument length = need(levels, "datum-stakes").arguments().get("length");
    return (Length) ((Argument.Measured) length).quantity();
  }

  /** Posts are sawn up to the next quarter inch, or 5 mm, and those alike are one piece. */
  @ParameterizedTest
  @CsvSource({"6x6, 6.35", "148x148, 5"})
  void postsAreSawnALittleLong(String size, double step) {
    DigJob job = slope();
    job.floor =
        Optional.of(
            new Floor(
                Floor.Use.PRIVATE_DECK,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Length.ofInches(40)),
                Optional.of(Length.ofInches(15))));
    Levels levels = levels(job);
    List<Levels.Post> posts = levels.floor().orElseThrow().posts();
    assertThat(posts).hasSize(6);
    List<CutPiece> pieces = levels.postPieces(size);
    assertThat(pieces).hasSizeBetween(2, 3);
    assertThat(pieces.stream().mapToInt(CutPiece::count).sum()).isEqualTo(6);
    for (int i = 0; i < pieces.size(); i++) {
      CutPiece piece = pieces.get(i);
      assertThat(piece.name()).isEqualTo("T" + (i + 1));
      assertThat(piece.marks()).hasSize(piece.count());
      for (String mark : piece.marks()) {
        Length cut =
            posts.stream()
                .filter(post -> post.mark().equals(mark))
                .findFirst()
                .orElseThrow()
                .cut()
                .orElseThrow();
        assertThat(piece.length().minus(cut).millimetres()).isBetween(-1e-5, step);
      }
    }
    assertThat(levels.postPieces("no timber")).isEmpty();
  }
}
