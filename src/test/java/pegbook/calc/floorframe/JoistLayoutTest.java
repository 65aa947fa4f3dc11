package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pegbook.calc.floorframe.FrameScene.ARMS;
import static pegbook.calc.floorframe.FrameScene.ARMS_POSTS;
import static pegbook.calc.floorframe.FrameScene.CORNERS;
import static pegbook.calc.floorframe.FrameScene.FLOOR;
import static pegbook.calc.floorframe.FrameScene.NONE;
import static pegbook.calc.floorframe.FrameScene.lay;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.floorframe.JoistSizes.Overhang;

/** Where joists lie, worked by hand on the floors of {@link FrameScene}. */
class JoistLayoutTest {
  private static final Offset<Double> EXACT = within(1e-6);

  private static JoistLayout plain(double... piers) {
    return lay(FLOOR, CORNERS, NONE, piers);
  }

  private static double[] across(JoistLayout layout) {
    return layout.joists().stream()
        .mapToDouble(joist -> Math.round(joist.y() * 1e6) / 1e6)
        .toArray();
  }

  private static Joist at(JoistLayout layout, double y) {
    return layout.joists().stream()
        .filter(joist -> Math.abs(joist.y() - y) < 1e-6)
        .findFirst()
        .orElseThrow();
  }

  private static double[] rests(List<Node> nodes) {
    return nodes.stream().mapToDouble(node -> Math.round(node.x() * 1e6) / 1e6).toArray();
  }

  /** From 0.2 to 1.8 m in four gaps; each carries half a gap to both sides, the outer two all. */
  @Test
  void evenlyBetweenTheOuterBeams() {
    JoistLayout layout = plain();
    assertThat(across(layout)).containsExactly(0.2, 0.6, 1.0, 1.4, 1.8);
    Joist second = at(layout, 0.6);
    assertThat(second.line()).isEqualTo(1);
    assertThat(second.low()).isCloseTo(0.4, EXACT);
    assertThat(second.high()).isCloseTo(0.8, EXACT);
    assertThat(second.start()).isCloseTo(0.04, EXACT);
    assertThat(second.end()).isCloseTo(3.96, EXACT);
    assertThat(rests(second.nodes())).containsExactly(0.2, 3.8);
    assertThat(second.nodes().get(0).on()).isInstanceOf(Node.OnBay.class);
    assertThat(((Node.OnBay) second.nodes().get(0).on()).along()).isCloseTo(1.2, EXACT);
    assertThat(((Node.OnBay) second.nodes().get(1).on()).along()).isCloseTo(0.4, EXACT);
    assertThat(second.isOnBeam()).isFalse();
    Joist first = at(layout, 0.2);
    assertThat(first.isOnBeam()).isTrue();
    assertThat(first.low()).isLessThan(-100);
    assertThat(first.nodes()).allMatch(node -> node.on() instanceof Node.OnPost);
    assertThat(at(layout, 1.8).high()).isGreaterThan(100);
    assertThat(layout.longestSpan()).isCloseTo(3.6, EXACT);
    assertThat(layout.bays()).hasSize(4).noneMatch(Bay::isInner);
  }

  /** 1.3 m between beams: three joists from the middle, 0.25 m left beside the outer ones. */
  @Test
  void fromTheMiddleWhereItDoesNotComeOut() {
    JoistLayout layout = lay(FLOOR, new double[] {0.2, 0.3, 3.8, 0.3, 3.8, 1.6, 0.2, 1.6}, NONE);
    assertThat(across(layout)).containsExactly(0.3, 0.55, 0.95, 1.35, 1.6);
  }

  /**
   * A pier in the middle would cut one joist of three; four lie beside it. A wider one cuts more of
   * four, one off the middle as many: three stay. Where four would crowd the beams, 50 mm, three
   * stay as well.
   */
  @ParameterizedTest
  @CsvSource({
    "1.0, 0.15, 0.2, 1.8, 4, 0",
    "1.0, 0.35, 0.2, 1.8, 3, 1",
    "0.7, 0.15, 0.2, 1.8, 3, 1",
    "0.75, 0.02, 0.2, 1.8, 3, 0",
    "0.95, 0.15, 0.3, 1.6, 3, 1",
    "0.95, 0.15, 0.27, 1.63, 4, 0"
  })
  void oneMoreWhereThatLeavesMoreWhole(
      double north, double radius, double low, double high, int between, int cut) {
    double[] ring = {0.2, low, 3.8, low, 3.8, high, 0.2, high};
    JoistLayout layout = lay(FLOOR, ring, NONE, 2, north, radius);
    assertThat(layout.joists()).hasSize(between + 2);
    assertThat(layout.joists().stream().filter(Joist::isCut)).hasSize(cut);
  }

  /**
   * Two piers in one line, the far one written first. A header of two members, 80 mm, lies flush
   * with each gap: 1.2 − 0.15 − 0.04 is the middle of the first.
   */
  @Test
  void whatIsLeftOfAJoistWithTwoOpenings() {
    JoistLayout layout = plain(3, 1, 0.3, 1.2, 1, 0.15);
    Joist joist = at(layout, 1);
    assertThat(joist.cuts()).extracting(Joist.Cut::gap).containsExactly(1, 0);
    assertThat(joist.cuts().get(0).from()).isCloseTo(1.01, EXACT);
    assertThat(joist.cuts().get(0).to()).isCloseTo(1.39, EXACT);
    assertThat(joist.cuts().get(1).from()).isCloseTo(2.66, EXACT);
    assertThat(joist.cuts().get(1).half()).isCloseTo(0.04, EXACT);
    List<Joist.Part> parts = joist.parts();
    assertThat(parts).hasSize(3);
    // 0.97 − 0.04, 2.62 − 1.43, 3.96 − 3.38.
    assertThat(parts.get(0).length()).isCloseTo(0.93, EXACT);
    assertThat(parts.get(1).length()).isCloseTo(1.19, EXACT);
    assertThat(parts.get(2).length()).isCloseTo(0.58, EXACT);
    assertThat(rests(parts.get(0).nodes())).containsExactly(0.2, 1.01);
    assertThat(rests(parts.get(1).nodes())).containsExactly(1.39, 2.66);
    assertThat(rests(parts.get(2).nodes())).containsExactly(3.34, 3.8);
    assertThat(joist.longestSpan()).isCloseTo(1.27, EXACT);
    for (double wood : new double[] {0.1, 0.9, 1.5, 2.6, 3.5}) {
      assertThat(joist.reaches(wood)).as("%s", wood).isTrue();
    }
    for (double gap : new double[] {0.03, 1.0, 1.2, 1.4, 2.7, 3.0, 3.37, 3.97}) {
      assertThat(joist.reaches(gap)).as("%s", gap).isFalse();
    }
    // 0.3 + 0.02 m wide at each side: the neighbours 0.4 m away stay whole.
    assertThat(layout.joists().stream().filter(Joist::isCut)).hasSize(1);
  }

  /** A pier cuts what comes nearer than its radius and half a joist, here 50 mm beside it. */
  @ParameterizedTest
  @CsvSource({"1.05, 0.0301, 1", "1.05, 0.0299, 0", "0.95, 0.0301, 1", "0.95, 0.0299, 0"})
  void howNearAPierCuts(double north, double radius, int cut) {
    double[] ring = {0.2, 0.35, 3.8, 0.35, 3.8, 1.65, 0.2, 1.65};
    JoistLayout layout = lay(FLOOR, ring, NONE, 2, north, radius);
    assertThat(layout.joists().stream().filter(Joist::isCut)).hasSize(cut);
  }

  /** A floor with two arms: each stretch of a line has its own joist, and its own pier. */
  @Test
  void eachArmHasItsOwnJoists() {
    JoistLayout layout = lay(ARMS, ARMS_POSTS, NONE, 3.3, 1.2, 0.2);
    List<Joist> line =
        layout.joists().stream().filter(joist -> Math.abs(joist.y() - 1.15) < 0.21).toList();
    List<Joist> west = line.stream().filter(joist -> joist.end() < 2).toList();
    List<Joist> east = line.stream().filter(joist -> joist.start() > 2).toList();
    assertThat(west).isNotEmpty().hasSameSizeAs(east);
    assertThat(west).noneMatch(Joist::isCut);
    assertThat(east).anyMatch(Joist::isCut);
    for (Joist joist : west) {
      assertThat(joist.start()).isCloseTo(0.04, EXACT);
      assertThat(joist.end()).isCloseTo(1.36, EXACT);
      assertThat(rests(joist.nodes())).containsExactly(0.2, 1.2);
    }
    for (Joist joist : east) {
      assertThat(joist.start()).isCloseTo(2.64, EXACT);
      assertThat(joist.end()).isCloseTo(3.96, EXACT);
      assertThat(rests(joist.nodes())).containsExactly(2.8, 3.8);
    }
    // Each arm's own end beam, 1 m long, lies under its own outer joist.
    List<Joist> outer =
        layout.joists().stream().filter(joist -> Math.abs(joist.y() - 1.8) < 1e-6).toList();
    assertThat(outer).hasSize(2).allMatch(Joist::isOnBeam);
    // Between the arms a beam runs from 1.2 to 2.8 at 0.5; what lies over it is one joist.
    List<Joist> inner =
        layout.joists().stream().filter(joist -> Math.abs(joist.y() - 0.5) < 1e-6).toList();
    assertThat(inner).hasSize(1).allMatch(Joist::isOnBeam);
  }

  /** Beside an opening that begins just past the rim the joist is cut all the same. */
  @ParameterizedTest
  @CsvSource({"0.3, true", "-0.25, true", "-0.32, false", "3.7, true", "4.25, true", "4.32, false"})
  void anOpeningAtTheEndOfAJoist(double east, boolean isCut) {
    assertThat(at(plain(east, 1, 0.35), 1).isCut()).isEqualTo(isCut);
  }

  /**
   * The left side leans 1 in 2, the right one back: inside of the rim lies 40 mm · √1.25, 44.72 mm,
   * along the joist, which ends at the longer of its two edges, 20 mm lower.
   */
  @Test
  void endsFollowALeaningRim() {
    JoistLayout layout =
        lay(
            new double[] {0, 0, 4, 0, 3, 2, 1, 2},
            new double[] {0.5, 0.2, 3.5, 0.2, 2.8, 1.8, 1.2, 1.8},
            NONE);
    Joist joist = at(layout, 1);
    assertThat(joist.start()).isCloseTo(0.98 / 2 + 0.044721, EXACT);
    assertThat(joist.end()).isCloseTo(4 - 0.98 / 2 - 0.044721, EXACT);
    // The beam from (1.2, 1.8) to (0.5, 0.2) passes 1 m up at 0.85.
    assertThat(rests(joist.nodes())).containsExactly(0.85, 3.15);
    // Leaning the other way it is the upper edge that reaches farther.
    JoistLayout turned =
        lay(
            new double[] {1, 0, 3, 0, 4, 2, 0, 2},
            new double[] {1.2, 0.2, 2.8, 0.2, 3.5, 1.8, 0.5, 1.8},
            NONE);
    assertThat(at(turned, 1).start()).isCloseTo(1 - 1.02 / 2 + 0.044721, EXACT);
    assertThat(at(turned, 1).end()).isCloseTo(3 + 1.02 / 2 - 0.044721, EXACT);
  }

  /**
   * Posts may stand under the rim, or up to 0.1 m outside its inner side: the joist reaches them.
   */
  @Test
  void postsUnderTheRim() {
    JoistLayout layout =
        lay(FLOOR, new double[] {-0.05, 0.2, 4.05, 0.2, 4.05, 1.8, -0.05, 1.8}, NONE);
    assertThat(at(layout, 1).start()).isCloseTo(-0.05, EXACT);
    assertThat(at(layout, 1).end()).isCloseTo(4.05, EXACT);
    JoistLayout outside =
        lay(FLOOR, new double[] {-0.07, 0.2, 4.07, 0.2, 4.07, 1.8, -0.07, 1.8}, NONE);
    assertThat(outside.joists()).isEmpty();
  }

  /** A post alone under a joist: it lies on it as on a beam. */
  @Test
  void overOneCornerPost() {
    JoistLayout layout =
        lay(
            new double[] {0, 0, 4, 0, 4, 2, 2, 3, 0, 2},
            new double[] {0.2, 0.2, 3.8, 0.2, 3.8, 1.8, 2, 2.7, 0.2, 1.8},
            NONE);
    Joist top = layout.joists().get(layout.joists().size() - 1);
    assertThat(top.y()).isCloseTo(2.7, EXACT);
    assertThat(rests(top.nodes())).containsExactly(2.0);
    assertThat(top.isOnBeam()).isTrue();
  }

  /** Inner posts in a row that ends over the ring are a beam, 12 mm out of line they are not. */
  @Test
  void rowsOfInnerPosts() {
    double[] ring = {0.2, 0.2, 2, 0.2, 3.8, 0.2, 3.8, 1.8, 2, 1.8, 0.2, 1.8};
    JoistLayout row = lay(FLOOR, ring, new double[] {2, 1});
    assertThat(row.bays().stream().filter(Bay::isInner)).hasSize(2);
    assertThat(row.idle()).isEmpty();
    assertThat(row.posts()).hasSize(7);
    assertThat(rests(at(row, 1).nodes())).containsExactly(0.2, 2.0, 3.8);
    assertThat(at(row, 1).nodes().get(1).on()).isInstanceOf(Node.OnPost.class);
    assertThat(row.longestSpan()).isCloseTo(1.8, EXACT);
    JoistLayout near = lay(FLOOR, ring, new double[] {2.009, 1});
    assertThat(near.bays().stream().filter(Bay::isInner)).hasSize(2);
    JoistLayout off = lay(FLOOR, ring, new double[] {2.012, 1});
    assertThat(off.idle()).extracting(Post::id).containsExactly("I1");
    assertThat(off.bays()).noneMatch(Bay::isInner);
    // One that ends over nothing: no post of the ring above.
    JoistLayout open =
        lay(
            FLOOR,
            new double[] {0.2, 0.2, 2, 0.2, 3.8, 0.2, 3.8, 1.8, 0.2, 1.8},
            new double[] {2, 1});
    assertThat(open.idle()).extracting(Post::id).containsExactly("I1");
    // A beam from the middle of a row of three bears on all: 0.2, 0.8, 1.2 and 1.8.
    JoistLayout four = lay(FLOOR, ring, new double[] {2, 1.2, 2, 0.8});
    assertThat(four.bays().stream().filter(Bay::isInner).map(Bay::name))
        .containsExactly("S2–I2", "I2–I1", "I1–S5");
  }

  /**
   * Two beams along the joists, 70 mm from one another: one joist lies over both, over the first.
   */
  @Test
  void beamsTooNearForTwoJoists() {
    double[] ring = {0.2, 0.2, 2, 0.27, 3.8, 0.27, 3.8, 1.8, 0.2, 1.8};
    assertThat(across(lay(FLOOR, ring, NONE))).startsWith(0.2).doesNotContain(0.27);
    double[] apart = {0.2, 0.2, 2, 0.28, 3.8, 0.28, 3.8, 1.8, 0.2, 1.8};
    assertThat(across(lay(FLOOR, apart, NONE))).startsWith(0.2, 0.28);
  }

  /**
   * Posts 0.8 and 3.5 m along a floor of 4 m: 0.76 m hang over at one end, 0.46 m at the other, the
   * inner side of the rim being 40 mm in. A row at 2 m halves the spans.
   */
  @Test
  void overhangs() {
    double[] ring = {0.8, 0.2, 2, 0.2, 3.5, 0.2, 3.5, 1.8, 2, 1.8, 0.8, 1.8};
    JoistLayout layout = lay(FLOOR, ring, new double[] {2, 1});
    List<Overhang> all = Overhang.all(layout);
    // Three joists that lie on no beam, both ends of each.
    assertThat(all).hasSize(6);
    assertThat(all.get(0).length()).isCloseTo(0.76, EXACT);
    assertThat(all.get(0).span()).isCloseTo(1.2, EXACT);
    assertThat(all.get(1).length()).isCloseTo(0.46, EXACT);
    assertThat(all.get(1).span()).isCloseTo(1.5, EXACT);
    Overhang worst = Overhang.worst(layout).orElseThrow();
    assertThat(worst.length()).isCloseTo(0.76, EXACT);
    assertThat(worst.span()).isCloseTo(1.2, EXACT);
    // From the side of a beam of two plies, 1 1/2 in from its middle.
    assertThat(Overhang.longest(layout).metres()).isCloseTo(0.76 - 0.0381, EXACT);
    // 0.76 is more than a quarter of 1.2, and 0.46 than one of 1.5.
    assertThat(LayoutChoice.longOverhangs(layout)).isEqualTo(6);
    double[] wide = {0.8, 0.2, 3.5, 0.2, 3.5, 1.8, 0.8, 1.8};
    // Of 2.7 m a quarter is 0.675: one end of each.
    assertThat(LayoutChoice.longOverhangs(lay(FLOOR, wide, NONE))).isEqualTo(3);
    assertThat(LayoutChoice.longOverhangs(plain())).isZero();
    assertThat(Overhang.all(plain()).get(0).length()).isCloseTo(0.16, EXACT);
    assertThat(Overhang.all(plain()).get(1).length()).isCloseTo(0.16, EXACT);
  }
}
