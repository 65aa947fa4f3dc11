package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pegbook.calc.floorframe.FloorFrame.BayRow;
import pegbook.calc.floorframe.FloorFrame.Built;
import pegbook.calc.floorframe.FloorFrame.MemberKind;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.testing.FootingJob;

/**
 * The pieces of a floor with two arms, by a pencil: 14 ft along the foot, arms 4 1/2 ft wide and 5
 * ft long on a foot of 5 ft. Posts stand 8 in inside the edge, joists lie along the arms.
 */
class FramePiecesTest {
  private static Built arms() {
    FootingJob parts = new FootingJob();
    parts.outline =
        """
        { "points": { "corners": ["0 ft, 0 ft", "14 ft, 0 ft", "14 ft, 10 ft", "9.5 ft, 10 ft",
          "9.5 ft, 5 ft", "4.5 ft, 5 ft", "4.5 ft, 10 ft", "0 ft, 10 ft"] } }
        """;
    parts.inset = "8 in";
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\","
            + " \"frame\": { \"species\": \"southern pine\", \"joistsAlong\": [\"S1\", \"S2\"] } }";
    Job job = parts.job();
    return FloorFrameCalculator.calculate(job, FootingJob.placement(job), FootingJob.holes(job))
        .built()
        .orElseThrow();
  }

  /**
   * Beams run on to the rim at the six corners that point outwards, 8 in, and end at the others.
   */
  @Test
  void beamsRunOnToTheRim() {
    List<BayRow> bays = arms().bays();
    assertThat(bays)
        .extracting(BayRow::name)
        .containsExactly("S1–S2", "S2–S3", "S3–S4", "S4–S5", "S5–S6", "S6–S7", "S7–S8", "S8–S1");
    double[] tails = {8, 8, 0, 0, 8, 8, 8, 8};
    for (int i = 0; i < tails.length; i++) {
      assertThat(bays.get(i).tail().inches()).as("%s", i).isCloseTo(tails[i], within(1e-6));
    }
  }

  private static List<String> pieces(Built built, String letter) {
    return built.pieces().stream()
        .filter(piece -> piece.name().startsWith(letter))
        .map(piece -> piece.count() + " × " + Math.round(piece.length().inches() * 100) / 100.0)
        .toList();
  }

  /**
   * Beams of two plies, post to post and the tail: the foot's 168 less 16 and 8 more, the outer
   * sides' 120 as much, the arms' ends 54 as much, the inner sides 60 to and 60 and 8 from, between
   * these 60 and 16. Rims are the sides themselves.
   */
  @Test
  void beamsAndRims() {
    Built built = arms();
    assertThat(built.beam().plies()).isEqualTo(2);
    assertThat(pieces(built, "B"))
        .containsExactly("2 × 160.0", "4 × 112.0", "2 × 76.0", "2 × 68.0", "2 × 60.0", "4 × 46.0");
    assertThat(pieces(built, "R"))
        .containsExactly("1 × 168.0", "2 × 120.0", "3 × 60.0", "2 × 54.0");
  }

  /** All 115 ft² of floor are carried, both arms alike. */
  @Test
  void armsCarryAlike() {
    Built built = arms();
    double sum = built.carried().values().stream().mapToDouble(area -> area.squareFeet()).sum();
    assertThat(sum).isCloseTo(14 * 10 - 5 * 5, within(1e-4));
    String[][] alike = {{"S1", "S8"}, {"S2", "S7"}, {"S3", "S6"}, {"S4", "S5"}};
    for (String[] pair : alike) {
      assertThat(built.carried().get(pair[0]).squareFeet())
          .isCloseTo(built.carried().get(pair[1]).squareFeet(), within(1e-6));
    }
  }

  /**
   * Blocks stand between joists that span more than 8 ft, here 104 in, and lie on no beam: the two
   * in the middle of each arm, 16 in apart. They stand in the middle, 60 in from the foot's rim.
   */
  @Test
  void blocksStandInTheMiddleOfLongSpans() {
    Built built = arms();
    List<Segment> blocks = lines(built, MemberKind.BLOCK);
    Segment foot =
        lines(built, MemberKind.RIM).stream()
            .filter(rim -> rim.length().inches() > 167)
            .findFirst()
            .orElseThrow();
    assertThat(blocks).hasSize(2);
    for (Segment block : blocks) {
      assertThat(block.length().inches()).isCloseTo(16, within(1e-6));
      assertThat(foot.distanceTo(block.middle()).inches()).isCloseTo(60, within(1e-6));
    }
    assertThat(pieces(built, "N")).containsExactly("2 × 14.5");
  }

  private static List<Segment> lines(Built built, MemberKind kind) {
    return built.members().stream()
        .filter(member -> member.kind() == kind)
        .map(FloorFrame.Member::at)
        .toList();
  }
}
