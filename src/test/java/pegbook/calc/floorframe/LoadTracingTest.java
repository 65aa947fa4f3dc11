package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pegbook.calc.floorframe.FrameScene.ARMS;
import static pegbook.calc.floorframe.FrameScene.ARMS_POSTS;
import static pegbook.calc.floorframe.FrameScene.CORNERS;
import static pegbook.calc.floorframe.FrameScene.FLOOR;
import static pegbook.calc.floorframe.FrameScene.NONE;
import static pegbook.calc.floorframe.FrameScene.lay;
import static pegbook.calc.floorframe.FrameScene.loads;
import static pegbook.calc.floorframe.FrameScene.site;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.calc.floorframe.LoadPath.At;
import pegbook.calc.floorframe.LoadPath.BayLoad;
import pegbook.calc.floorframe.LoadPath.Fault;
import pegbook.calc.floorframe.LoadPath.Header;
import pegbook.calc.floorframe.LoadPath.Trimmer;

/** What reaches beams, headers and posts, worked by hand on the floors of {@link FrameScene}. */
class LoadTracingTest {
  private static final Offset<Double> EXACT = within(2e-5);

  /** Bays S1–S2 along the south, S2–S3 up the east, S3–S4 along the north, S4–S1 down the west. */
  private static BayLoad bay(LoadPath path, int number) {
    assertThat(path.bays().get(number).bay()).isEqualTo(number);
    return path.bays().get(number);
  }

  /** All of it thought together where its moment is: (2 · 2 + 3 · 1 + 1 · 3) / 6. */
  @Test
  void theCentreOfABeamsLoads() {
    BayLoad load = new BayLoad(0, 4, List.of(new At(1, 3), new At(3, 1)), 2);
    assertThat(load.total()).isCloseTo(6, EXACT);
    assertThat(load.centre()).isCloseTo(10 / 6.0, EXACT);
    assertThat(new BayLoad(0, 4, List.of(), 0).centre()).isCloseTo(2, EXACT);
    assertThat(new BayLoad(0, 4, List.of(new At(3, 1)), 0).centre()).isCloseTo(3, EXACT);
  }

  /**
   * Without a pier: every joist between carries 0.4 m · 4 m to two beams, 0.8 m² each; the outer
   * ones 0.4 m · 4 m along theirs, right to the posts. Each post 2 m² of 8.
   */
  @Test
  void aPlainFloor() {
    LoadPath path = loads(FLOOR, CORNERS, NONE);
    assertThat(path.faults()).isEmpty();
    assertThat(path.floor()).isCloseTo(8, EXACT);
    assertThat(path.carried()).containsOnlyKeys("S1", "S2", "S3", "S4");
    path.carried().values().forEach(area -> assertThat(area).isCloseTo(2, EXACT));
    assertThat(bay(path, 0).even()).isCloseTo(1.6, EXACT);
    assertThat(bay(path, 0).loads()).isEmpty();
    assertThat(bay(path, 1).even()).isZero();
    assertThat(bay(path, 1).loads()).hasSize(3);
    assertThat(bay(path, 1).loads().get(0).along()).isCloseTo(0.4, EXACT);
    assertThat(bay(path, 1).loads().get(0).area()).isCloseTo(0.8, EXACT);
    assertThat(bay(path, 3).loads().get(0).along()).isCloseTo(1.2, EXACT);
    assertThat(path.headers()).isEmpty();
    assertThat(path.trimmers()).isEmpty();
  }

  /**
   * Beams along the joists carry the floor beside them: 0.2 to 1.7 m across, so joists at 0.55,
   * 0.95 and 1.35 m; 0.375 m of floor to the south of the first middle, 0.475 m to the north of the
   * last. A post at 1.5 m parts the southern one 1.5 to 2.5.
   */
  @Test
  void beamsAlongTheJoists() {
    LoadPath path =
        loads(FLOOR, new double[] {0.2, 0.2, 1.5, 0.2, 3.8, 0.2, 3.8, 1.7, 0.2, 1.7}, NONE);
    assertThat(bay(path, 0).even()).isCloseTo(1.5 * 0.375, EXACT);
    assertThat(bay(path, 1).even()).isCloseTo(2.5 * 0.375, EXACT);
    assertThat(bay(path, 2).even()).isZero();
    assertThat(bay(path, 3).even()).isCloseTo(4 * 0.475, EXACT);
    // By the lever: 1.5 m of floor about its middle, 0.75 m, on posts at 0.2 and 1.5 m.
    double onFirst = 1.5 * 0.375 * 0.75 / 1.3;
    double across = path.carried().getOrDefault("S1", 0.0) - onFirst;
    // Strips of 0.375, 0.4 and 0.375 m bring 2 m of their length each to the western beam, 1.15,
    // 0.75 and 0.35 m from S5.
    double west = 2 * (0.375 * 1.15 + 0.4 * 0.75 + 0.375 * 0.35) / 1.5;
    assertThat(across).isCloseTo(west, EXACT);
  }

  /**
   * A pier of 0.3 m at (1.2, 1) cuts the middle joist; headers at 0.86 and 1.54 m. West of it 0.86
   * m · 0.4 m about 0.43 m lie on the beam at 0.2 and the header: 0.344 · 0.23 / 0.66. East of it
   * 2.46 m · 0.4 m about 2.77 m on the header at 1.54 and the beam at 3.8: 0.984 · 1.03 / 2.26.
   */
  @Test
  void headersOfAPier() {
    LoadPath path = loads(FLOOR, CORNERS, NONE, 1.2, 1, 0.3);
    assertThat(path.faults()).isEmpty();
    assertThat(path.headers()).hasSize(2);
    Header near = path.headers().get(0);
    Header far = path.headers().get(1);
    assertThat(near.x()).isCloseTo(0.86, EXACT);
    assertThat(far.x()).isCloseTo(1.54, EXACT);
    assertThat(near.low()).isCloseTo(0.6, EXACT);
    assertThat(near.high()).isCloseTo(1.4, EXACT);
    assertThat(near.area()).isCloseTo(0.344 * 0.23 / 0.66, EXACT);
    assertThat(far.area()).isCloseTo(0.984 * 1.03 / 2.26, EXACT);
    assertThat(near.tails()).isEqualTo(1);
    assertThat(path.carried().values().stream().mapToDouble(area -> area).sum())
        .isCloseTo(8 - Math.PI * 0.09, EXACT);
  }

  /**
   * Each neighbour takes half of both headers, and the floor between them as far as the middle:
   * 0.68 · 0.2 m less the slice of the circle, 0.2 · √0.05 + 0.09 · arcsin(2/3), over 1.2 m.
   */
  @Test
  void whatHangsBesideAPier() {
    LoadPath path = loads(FLOOR, CORNERS, NONE, 1.2, 1, 0.3);
    assertThat(path.trimmers()).hasSize(2);
    for (Trimmer trimmer : path.trimmers()) {
      assertThat(trimmer.span()).isCloseTo(3.6, EXACT);
      assertThat(trimmer.width()).isCloseTo(0.4, EXACT);
      assertThat(trimmer.hung()).hasSize(3);
      double slice = 0.2 * Math.sqrt(0.05) + 0.09 * Math.asin(2 / 3.0);
      assertThat(trimmer.hung().get(0).along()).isCloseTo(1.0, EXACT);
      assertThat(trimmer.hung().get(0).area()).isCloseTo(0.68 * 0.2 - slice, EXACT);
      assertThat(trimmer.hung().get(1).along()).isCloseTo(0.66, EXACT);
      assertThat(trimmer.hung().get(1).area()).isCloseTo(0.344 * 0.23 / 0.66 / 2, EXACT);
      assertThat(trimmer.hung().get(2).along()).isCloseTo(1.34, EXACT);
      assertThat(trimmer.hung().get(2).area()).isCloseTo(0.984 * 1.03 / 2.26 / 2, EXACT);
    }
  }

  /**
   * A wide pier cuts two joists, 0.4 m apart: their loads stand a third and two thirds along the
   * headers.
   */
  @Test
  void twoJoistsOnAHeader() {
    LoadPath path =
        loads(
            new double[] {0, 0, 4, 0, 4, 2.4, 0, 2.4},
            new double[] {0.2, 0.2, 3.8, 0.2, 3.8, 2.2, 0.2, 2.2},
            NONE,
            2,
            1.1,
            0.42);
    assertThat(path.faults()).isEmpty();
    assertThat(path.headers()).extracting(Header::tails).containsOnly(2);
    Header near = path.headers().get(0);
    assertThat(near.high() - near.low()).isCloseTo(1.2, EXACT);
    // Each joist brings 1.54 m · 0.4 m about 0.77 m to the beam at 0.2 and the header at 1.54.
    double one = 1.54 * 0.4 * 0.57 / 1.34;
    assertThat(near.area()).isCloseTo(2 * one, EXACT);
    assertThat(path.trimmers()).hasSize(2);
    for (Trimmer trimmer : path.trimmers()) {
      assertThat(
              trimmer.hung().stream()
                  .filter(at -> Math.abs(at.along() + 0.2 - near.x()) < 1e-6)
                  .map(At::area)
                  .sorted())
          .satisfiesExactly(
              far -> assertThat(far).isCloseTo(one / 3, EXACT),
              close -> assertThat(close).isCloseTo(2 * one / 3, EXACT));
    }
  }

  /**
   * A pier in any of three spans of a floor of 6 m: all is carried, about the same middle. What
   * hangs on a joist counts from the beam before it, 1.8, 2 and 1.8 m long.
   */
  @ParameterizedTest
  @CsvSource({"1.0, 0.2, 1.8", "3.1, 2, 2", "5.0, 4, 1.8", "2.6, 2, 2", "3.4, 2, 2"})
  void whicheverSpanAPierStandsIn(double east, double from, double span) {
    LoadPath path =
        loads(
            new double[] {0, 0, 6, 0, 6, 2, 0, 2},
            new double[] {0.2, 0.2, 2, 0.2, 4, 0.2, 5.8, 0.2, 5.8, 1.8, 4, 1.8, 2, 1.8, 0.2, 1.8},
            new double[] {2, 1.2, 4, 1.2, 2, 0.8, 4, 0.8},
            east,
            1,
            0.3);
    assertThat(path.faults()).isEmpty();
    double area = 12 - Math.PI * 0.09;
    double carried = 0;
    double moment = 0;
    for (var post : path.carried().entrySet()) {
      carried += post.getValue();
      moment += post.getValue() * at(post.getKey());
    }
    assertThat(carried).isCloseTo(area, EXACT);
    assertThat(moment).isCloseTo(12 * 3 - Math.PI * 0.09 * east, EXACT);
    assertThat(path.trimmers()).hasSize(2);
    for (Trimmer trimmer : path.trimmers()) {
      assertThat(trimmer.span()).isCloseTo(span, EXACT);
      assertThat(trimmer.hung().get(0).along()).isCloseTo(east - from, EXACT);
      assertThat(trimmer.hung().get(1).along()).isCloseTo(east - 0.34 - from, EXACT);
    }
    // North and south of the middle line all is alike.
    for (String[] pair : new String[][] {{"S1", "S8"}, {"S2", "S7"}, {"S3", "S6"}, {"S4", "S5"}}) {
      assertThat(path.carried().getOrDefault(pair[0], 0.0))
          .isCloseTo(path.carried().getOrDefault(pair[1], 0.0), EXACT)
          .isPositive();
    }
  }

  private static double at(String post) {
    return switch (post) {
      case "S1", "S8" -> 0.2;
      case "S2", "S7", "I1", "I3" -> 2;
      case "S3", "S6", "I2", "I4" -> 4;
      default -> 5.8;
    };
  }

  private static List<String> faults(double... piers) {
    return loads(FLOOR, CORNERS, NONE, piers).faults().stream()
        .map(fault -> fault.kind() + " " + fault.subject())
        .toList();
  }

  /** A beam needs 60 mm beside a gap: half of its width and a little. */
  @ParameterizedTest
  @CsvSource({"0.409, true", "0.411, false"})
  void aGapNearABeam(double north, boolean isNear) {
    assertThat(faults(2, north, 0.15).contains("GAP_ON_BEAM P1, S1–S2")).isEqualTo(isNear);
  }

  /** The second pier is named, not the first. */
  @Test
  void whichPierCannotBeFramed() {
    // Its near header would lie beyond the beam at 0.2 m: what is left there rests on one thing.
    assertThat(faults(3, 1, 0.3, 0.35, 1, 0.3)).contains("JOIST_LOOSE P2");
    // It cuts the outermost joist.
    assertThat(faults(3, 1, 0.3, 2, 0.25, 0.15))
        .contains("GAP_AT_EDGE P2")
        .doesNotContain("GAP_AT_EDGE P1");
    assertThat(faults(3, 1, 0.3, 2, 1.75, 0.15)).contains("GAP_AT_EDGE P2");
  }

  /** Between two joists a pier cuts nothing. */
  @ParameterizedTest
  @ValueSource(doubles = {0.8, 1.2})
  void aPierBetweenJoists(double north) {
    LoadPath path = loads(FLOOR, CORNERS, NONE, 2, north, 0.1);
    assertThat(path.faults()).isEmpty();
    assertThat(path.headers()).isEmpty();
    assertThat(path.carried().values().stream().mapToDouble(area -> area).sum())
        .isCloseTo(8 - Math.PI * 0.01, EXACT);
  }

  /** In a floor with two arms each carries itself, and what hangs in one hangs in that one. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void armsCarryThemselves(boolean isWest) {
    double east = isWest ? 0.7 : 3.3;
    FrameSite site = site(ARMS, ARMS_POSTS, NONE, east, 1.15, 0.2);
    LoadPath path = LoadPath.of(site, lay(site));
    assertThat(path.faults()).isEmpty();
    assertThat(path.trimmers()).hasSize(2);
    assertThat(path.trimmers())
        .allMatch(trimmer -> trimmer.joist().start() < east && trimmer.joist().end() > east);
    assertThat(path.trimmers()).allSatisfy(t -> assertThat(t.span()).isCloseTo(1, EXACT));
    // The beam at the end of each arm carries 0.325 m of its own 1.4 m, the one of the other none.
    assertThat(bay(path, 2).even()).isCloseTo(0.325 * 1.4, EXACT);
    assertThat(bay(path, 6).even()).isCloseTo(0.325 * 1.4, EXACT);
    double[] posts = ARMS_POSTS;
    double carried = 0;
    double moment = 0;
    for (int i = 0; i < posts.length / 2; i++) {
      double here = path.carried().getOrDefault("S" + (i + 1), 0.0);
      carried += here;
      moment += here * posts[2 * i];
    }
    double whole = 8 - 1.2 * 1.3;
    assertThat(carried).isCloseTo(whole - Math.PI * 0.04, EXACT);
    assertThat(moment).isCloseTo(whole * 2 - Math.PI * 0.04 * east, EXACT);
  }

  /**
   * Two peaks over one line: each post at a peak bears its own joist's floor, 0.21 m² and no more.
   */
  @Test
  void twoPeaksCarryThemselves() {
    double[] peaks = {0, 0, 4, 0, 4, 1.2, 3, 2.4, 2, 1.2, 1, 2.4, 0, 1.2};
    double[] posts = {0.2, 0.2, 3.8, 0.2, 3.8, 1.1, 3, 2, 2, 0.9, 1, 2, 0.2, 1.1};
    LoadPath path = loads(peaks, posts, NONE);
    assertThat(path.faults()).extracting(Fault::kind).isEmpty();
    double carried = path.carried().values().stream().mapToDouble(area -> area).sum();
    assertThat(carried).isCloseTo(4 * 1.2 + 2 * 1.2, EXACT);
    assertThat(path.carried().getOrDefault("S4", 0.0))
        .isCloseTo(path.carried().getOrDefault("S6", 0.0), EXACT);
  }
}
