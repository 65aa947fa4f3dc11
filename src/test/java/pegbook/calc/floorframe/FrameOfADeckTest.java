package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.AbstractDoubleAssert;
import org.junit.jupiter.api.Test;
import pegbook.calc.floorframe.FloorFrame.BayRow;
import pegbook.calc.floorframe.FloorFrame.Built;
import pegbook.calc.floorframe.FloorFrame.Member;
import pegbook.calc.floorframe.FloorFrame.MemberKind;
import pegbook.figures.CutPiece;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.testing.FootingJob;

/**
 * Two decks worked from end to end with a pencil: 24 ft by 12 ft on five by two posts, and 12 ft
 * square on three by two with a pier in the middle. Posts stand 8 in inside, joists lie every 16
 * in, members are 1 1/2 in thick.
 */
class FrameOfADeckTest {
  private static FloorFrame frame(FootingJob parts) {
    Job job = parts.job();
    return FloorFrameCalculator.calculate(job, FootingJob.placement(job), FootingJob.holes(job));
  }

  private static FootingJob parts(String length, int columns) {
    FootingJob parts = new FootingJob();
    parts.outline = FootingJob.rectangle(length, "12 ft", columns, 2);
    parts.inset = "8 in";
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"frame\": { \"species\": \"southern pine\" } }";
    return parts;
  }

  private static FloorFrame deck() {
    return frame(parts("24 ft", 5));
  }

  private static FloorFrame square() {
    FootingJob parts = parts("12 ft", 3);
    parts.piers =
        """
        [{ "id": "P1", "at": "centre", "hole": "22 in", "depth": "58 in", "top": "36 in",
           "tube": { "inside": "16 in", "from": "ground" }, "gap": "1 in" }]
        """;
    return frame(parts);
  }

  private static Built built(FloorFrame frame) {
    return frame.built().orElseThrow();
  }

  /** Inches and count of each piece, under its name. */
  private static Map<String, String> pieces(FloorFrame frame) {
    Map<String, String> pieces = new LinkedHashMap<>();
    for (CutPiece piece : built(frame).pieces()) {
      pieces.put(
          piece.name(), piece.count() + " × " + Math.round(piece.length().inches() * 100) / 100.0);
    }
    return pieces;
  }

  /**
   * Beams of two plies: 272 in from post to post in four bays of 68, the last of each side 8 in on
   * to the rim, and 128 + 8 in across. 272 / 16 makes 17 gaps and 18 joists, between rims: 144 − 3
   * in. Sides of 24 ft are rimmed by two pieces of 12 ft. Blocks in the middle of 128 in, between
   * the sixteen joists that do not lie on a beam: 16 − 1 1/2 in.
   */
  @Test
  void thePiecesOfTheDeck() {
    FloorFrame deck = deck();
    assertThat(built(deck).beam().plies()).isEqualTo(2);
    assertThat(pieces(deck))
        .containsExactly(
            entry("B1", "4 × 136.0"),
            entry("B2", "4 × 76.0"),
            entry("B3", "12 × 68.0"),
            entry("J1", "18 × 141.0"),
            entry("R1", "6 × 144.0"),
            entry("N1", "15 × 14.5"));
    assertThat(built(deck).pieces()).extracting(CutPiece::size).containsOnly("2x8");
  }

  /**
   * Three plies. Nine joists; the outer two end over the post in the middle of their beam, 70 1/2
   * in each way. The middle one is cut: 9 in of gap and a header of 3 in leave 58 1/2 in on both
   * sides. Its neighbours are doubled: four and twice two of 141 in. Headers between them: 32 − 1
   * 1/2 in, two plies each. Beside a doubled joist, whose second lies away from the pier, a block
   * is another 1 1/2 in shorter.
   */
  @Test
  void thePiecesAroundThePier() {
    FloorFrame square = square();
    assertThat(built(square).beam().plies()).isEqualTo(3);
    assertThat(pieces(square))
        .containsExactly(
            entry("B1", "6 × 136.0"),
            entry("B2", "6 × 72.0"),
            entry("B3", "6 × 64.0"),
            entry("J1", "8 × 141.0"),
            entry("J2", "4 × 70.5"),
            entry("J3", "2 × 58.5"),
            entry("H1", "4 × 30.5"),
            entry("R1", "4 × 144.0"),
            entry("N1", "2 × 14.5"),
            entry("N2", "2 × 13.0"));
  }

  private static double[] fromMiddle(FloorFrame frame, MemberKind kind) {
    return built(frame).members().stream()
        .filter(member -> member.kind() == kind)
        .map(Member::at)
        .mapToDouble(at -> at.middle().distanceTo(new Point(0, 0)).inches())
        .map(each -> Math.round(each * 100) / 100.0)
        .sorted()
        .toArray();
  }

  private static double[] lengths(FloorFrame frame, MemberKind kind) {
    return built(frame).members().stream()
        .filter(member -> member.kind() == kind)
        .mapToDouble(member -> Math.round(member.at().length().inches() * 100) / 100.0)
        .sorted()
        .toArray();
  }

  /** Every line of the plan by its length and how far its middle is from the floor's. */
  @Test
  void theLinesOfThePlan() {
    FloorFrame deck = deck();
    assertThat(lengths(deck, MemberKind.BEAM))
        .containsExactly(68, 68, 68, 68, 68, 68, 76, 76, 136, 136);
    assertThat(lengths(deck, MemberKind.RIM)).containsExactly(144, 144, 288, 288);
    assertThat(fromMiddle(deck, MemberKind.RIM)).containsExactly(72, 72, 144, 144);
    assertThat(lengths(deck, MemberKind.JOIST)).hasSize(18).containsOnly(141);
    assertThat(fromMiddle(deck, MemberKind.JOIST))
        .containsExactly(
            8, 8, 24, 24, 40, 40, 56, 56, 72, 72, 88, 88, 104, 104, 120, 120, 136, 136);
    assertThat(lengths(deck, MemberKind.BLOCK)).hasSize(15).containsOnly(16);
    assertThat(fromMiddle(deck, MemberKind.BLOCK))
        .containsExactly(0, 16, 16, 32, 32, 48, 48, 64, 64, 80, 80, 96, 96, 112, 112);
  }

  /** A header's line lies 9 + 1 1/2 in from the middle and ends on the doubled joists' lines. */
  @Test
  void theLinesAroundThePier() {
    FloorFrame square = square();
    assertThat(lengths(square, MemberKind.HEADER)).containsExactly(32, 32);
    assertThat(lengths(square, MemberKind.DOUBLED)).containsExactly(141, 141);
    assertThat(fromMiddle(square, MemberKind.DOUBLED)).containsExactly(16, 16);
    assertThat(lengths(square, MemberKind.JOIST))
        .containsExactly(58.5, 58.5, 141, 141, 141, 141, 141, 141);
    assertThat(lengths(square, MemberKind.BLOCK)).hasSize(4).containsOnly(16);
    // Blocks at 24 and 40 in on both sides; none beside the joist that is cut.
    assertThat(fromMiddle(square, MemberKind.BLOCK)).containsExactly(24, 24, 40, 40);
    for (double each : fromMiddle(square, MemberKind.HEADER)) {
      assertThat(each).isCloseTo(10.5, within(0.01 + 1.5));
    }
  }

  private static Need need(FloorFrame frame, String id) {
    return frame.needs().stream().filter(need -> need.id().equals(id)).findFirst().orElseThrow();
  }

  /**
   * Nails through two plies at 16 in in two rows: 68 in wants five, 128 in eight: 8 · 10 + 2 · 16.
   * Three at both ends of 18 joists and of 6 rims, four a block: 112 + 3 · (36 + 12) + 60 is 316.
   * Screws: 26 rows over 18 joists, two rims and a joint, two each.
   */
  @Test
  void whatTheDeckWants() {
    FloorFrame deck = deck();
    assertThat(need(deck, "frame-nails").amount()).isEqualTo(316);
    assertThat(need(deck, "frame-nails").order()).isEqualTo(400);
    assertThat(need(deck, "board-screws").amount()).isEqualTo(2 * 26 * 21);
    assertThat(need(deck, "board-screws").order()).isEqualTo(1300);
    assertThat(need(deck, "joist-ties").amount()).isEqualTo(36);
    assertThat(deck.needs()).extracting(Need::id).doesNotContain("joist-hangers", "header-hangers");
  }

  /**
   * Through three plies twice as many: 64 in wants four, 128 in eight: 2 · (4 · 8 + 2 · 16) is 128.
   * Nine joists, one in two parts, have 20 ends; two hang. 3 · (18 + 8) + 4 · 4: 222 together.
   * Boards: 26 rows over nine joists and two rims; four rows cross the gap of the middle one.
   */
  @Test
  void whatTheSquareWants() {
    FloorFrame square = square();
    assertThat(need(square, "frame-nails").amount()).isEqualTo(222);
    assertThat(need(square, "frame-nails").order()).isEqualTo(300);
    assertThat(need(square, "board-screws").amount()).isEqualTo(2 * (26 * 11 - 4));
    // Three under each outer joist, two under six, one under each half.
    assertThat(need(square, "joist-ties").amount()).isEqualTo(6 + 12 + 2);
    assertThat(need(square, "joist-hangers").amount()).isEqualTo(2);
    assertThat(need(square, "header-hangers").amount()).isEqualTo(4);
  }

  /** 59 pieces and 10 posts: 0.12 h and 0.3 h; 292.5 ft² of boards a quarter of an hour a m². */
  @Test
  void hours() {
    FloorFrame deck = deck();
    Task framing = deck.tasks().get(0);
    assertThat(framing.kind()).isEqualTo(Task.Kind.FRAME);
    assertThat(framing.least().hours()).isCloseTo(59 * 0.12 + 3, within(1e-9));
    assertThat(framing.most().hours()).isCloseTo(59 * 0.3 + 8, within(1e-9));
    assertThat(deck.tasks().get(1).least().hours())
        .isCloseTo(292.5 * 0.3048 * 0.3048 / 4, within(1e-9));
  }

  /** Rows of 5 5/8 in: 26 over 12 ft. 288 in of two boards, joined over a joist 184 in along. */
  @Test
  void boards() {
    FloorFrame square = square();
    FloorFrame.BoardPlan boards = built(deck()).boards();
    assertThat(boards.rows()).isEqualTo(26);
    assertThat(boards.pieces())
        .extracting(piece -> piece.name() + " " + Math.round(piece.length().inches()))
        .containsExactly("F1 184", "F2 104");
    assertThat(boards.pieces()).extracting(CutPiece::count).containsExactly(26, 26);
    assertThat(boards.pieces().get(0).marks()).hasSize(26).startsWith("1", "2").endsWith("26");
    assertThat(boards.joints()).isEqualTo(26);
    assertThat(boards.aligned()).isZero();
    assertThat(boards.crossings()).isEqualTo(26 * 21);
    assertThat(boards.covered().squareFeet()).isCloseTo(292.5, within(1e-6));
    // 12 ft is one board a row, over nine joists and both rims.
    assertThat(built(square).boards().joints()).isZero();
    assertThat(built(square).boards().pieces()).hasSize(1);
  }

  private static BayRow bay(FloorFrame frame, String name) {
    return built(frame).bays().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static AbstractDoubleAssert<?> pounds(double newtons) {
    return assertThat(newtons / 4.4482216152605);
  }

  /**
   * Each joist brings 16 in · 6 ft, 8 ft², 400 lb, to a beam; one stands on S1 itself. Four stand
   * 16, 32, 48, 64 in from S1 on 68 in: 400 · (52 + 36 + 20 + 4) / 68 is 659 lb at S1, 941 at S2.
   */
  @Test
  void loadsOfABay() {
    FloorFrame deck = deck();
    pounds(bay(deck, "S1–S2").from().newtons()).isCloseTo(658.8, within(0.05));
    pounds(bay(deck, "S1–S2").to().newtons()).isCloseTo(941.2, within(0.05));
    assertThat(bay(deck, "S1–S2").floor().squareFeet()).isCloseTo(32, within(1e-6));
    assertThat(bay(deck, "S1–S2").tail().inches()).isCloseTo(0, within(1e-6));
    assertThat(bay(deck, "S4–S5").tail().inches()).isCloseTo(8, within(1e-6));
    assertThat(bay(deck, "S5–S6").tail().inches()).isCloseTo(8, within(1e-6));
    // The beam across carries its own joist's strip along it: 16 in wide, 12 ft long.
    assertThat(bay(deck, "S5–S6").floor().squareFeet()).isCloseTo(16, within(1e-6));
    pounds(bay(deck, "S5–S6").from().newtons()).isCloseTo(400, within(0.05));
  }

  /** 144 ft² a side: the middle of three posts takes four of 17 gaps, the corner two and a half. */
  @Test
  void whatEachPostCarries() {
    FloorFrame deck = deck();
    FloorFrame square = square();
    for (String middle : List.of("S2", "S3", "S4", "S7", "S8", "S9")) {
      assertThat(built(deck).carried().get(middle).squareFeet())
          .isCloseTo(144 * 4 / 17.0, within(1e-6));
    }
    for (String corner : List.of("S1", "S5", "S6", "S10")) {
      assertThat(built(deck).carried().get(corner).squareFeet())
          .isCloseTo(144 * 2.5 / 17, within(1e-6));
    }
    // The gap of 9 in radius is not floor; each corner of the square carries alike.
    double floor = 144 - Math.PI * 0.75 * 0.75;
    assertThat(built(square).floor().squareFeet()).isCloseTo(floor, within(1e-6));
    assertThat(built(square).carried().get("S2").squareFeet())
        .isCloseTo(built(square).carried().get("S5").squareFeet(), within(1e-6));
    for (String corner : List.of("S1", "S3", "S4", "S6")) {
      assertThat(built(square).carried().get(corner).squareFeet())
          .isCloseTo((floor - 14) / 4, within(1e-6));
    }
  }

  /** Boards of 1 in, joists and beams of 7 1/4 in; 9 1/4 in under the square(). */
  @Test
  void heights() {
    FloorFrame deck = deck();
    assertThat(built(deck).height().inches()).isCloseTo(15.5, offset(1e-9));
    assertThat(built(square()).height().inches()).isCloseTo(17.5, offset(1e-9));
    assertThat(built(deck).longestSpan().inches()).isCloseTo(128, offset(1e-9));
  }
}
