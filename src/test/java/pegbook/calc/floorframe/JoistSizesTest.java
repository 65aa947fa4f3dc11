package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.floorframe.FloorFrame.JoistSize;
import pegbook.calc.floorframe.FloorFrame.Limit;
import pegbook.figures.Finding;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.testing.FootingJob;

/**
 * Sizes of southern pine No. 2, wet, 16 in apart, under 40 and 10 psf. Published: DCA 6, Table 2,
 * gives spans of 142 in for 2x8 and 198 in for 2x12; recalled are 108 in for 2x6 and 168 in for
 * 2x10.
 */
class JoistSizesTest {
  private static FloorFrame frame(String width, String inset) {
    FootingJob parts = new FootingJob();
    parts.outline = FootingJob.rectangle("24 ft", width, 5, 2);
    parts.inset = inset;
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\","
            + " \"frame\": { \"species\": \"southern pine\", \"joistsAlong\": [\"S1\", \"S10\"] } }";
    Job job = parts.job();
    return FloorFrameCalculator.calculate(job, FootingJob.placement(job), FootingJob.holes(job));
  }

  private static List<JoistSize> sizes(FloorFrame frame) {
    return frame.built().orElseThrow().joists();
  }

  private static List<String> worked(FloorFrame frame, String formula) {
    return frame.workings().stream()
        .filter(working -> working.formula().id().equals("floor-frame." + formula))
        .map(Working::subject)
        .toList();
  }

  /** 12 ft less twice 8 in are 128 in: 2x8. The next smaller one is worked too, no other. */
  @Test
  void theSmallestThatSpansIsTaken() {
    FloorFrame frame = frame("12 ft", "8 in");
    List<JoistSize> sizes = sizes(frame);
    assertThat(sizes).extracting(JoistSize::size).containsExactly("2x6", "2x8", "2x10", "2x12");
    double[] published = {108, 142, 168, 198};
    for (int i = 0; i < published.length; i++) {
      assertThat(sizes.get(i).allowed().inches()).isCloseTo(published[i], within(1.0));
      assertThat(sizes.get(i).limit()).isIn(Limit.BENDING, Limit.DEFLECTION);
    }
    assertThat(sizes.stream().filter(JoistSize::isChosen).map(JoistSize::size))
        .containsExactly("2x8");
    for (String formula : List.of("bending-span", "deflection-span", "shear-span")) {
      assertThat(worked(frame, formula)).as(formula).containsExactly("2x6", "2x8");
    }
    assertThat(worked(frame, "overhang")).containsExactly("2x6", "2x8");
  }

  /** The smallest of all has no smaller one beside it: 8 ft less 16 in are 80 in. */
  @Test
  void theSmallestOfAll() {
    FloorFrame frame = frame("8 ft", "8 in");
    assertThat(sizes(frame).get(0).isChosen()).isTrue();
    assertThat(worked(frame, "bending-span")).containsExactly("2x6");
  }

  /** 19 ft less 16 in are 212 in, more than any size spans: the largest is shown. */
  @Test
  void noneSpans() {
    FloorFrame frame = frame("19 ft", "8 in");
    assertThat(frame.built()).isEmpty();
    assertThat(frame.findings()).extracting(Finding::id).contains("frame-joist-too-long");
    assertThat(worked(frame, "bending-span")).containsExactly("2x10", "2x12");
  }

  /**
   * Spans of 100 in, which 2x6 reaches. At its end a person of 220 lb may stand: with E of 1.26
   * million psi, 20.8 in⁴ and L/180, a (a + 100) = 1,985 in², so 16.97 in, 3 in less as DCA 6 takes
   * off. The overhang counts from the rim to the side of the beam, 3 in less than the inset: 13.5
   * in hold, 14.2 in take 2x8.
   */
  @ParameterizedTest
  @CsvSource({"133, 16.5, 2x6", "134.4, 17.2, 2x8", "140, 20, 2x8"})
  void anOverhangTakesALargerSize(String width, String inset, String size) {
    FloorFrame frame = frame(width + " in", inset + " in");
    assertThat(frame.built().orElseThrow().longestSpan().inches()).isCloseTo(100, within(1e-6));
    assertThat(frame.built().orElseThrow().joist().size()).isEqualTo(size);
    Working sag =
        frame.workings().stream()
            .filter(working -> working.formula().id().equals("floor-frame.overhang"))
            .findFirst()
            .orElseThrow();
    assertThat(sag.subject()).isEqualTo("2x6");
    assertThat(sag.asLength().inches()).isCloseTo(16.97, within(0.005));
  }
}
