package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.job.Job;
import pegbook.testing.Chance;
import pegbook.testing.FootingJob;

class LoadPathTest {
  private static final double SPACING = 0.4064;
  private static final double PLY = 0.0381;

  private record Worked(FrameSite site, JoistLayout layout, LoadPath path) {}

  private static Worked work(FootingJob parts) {
    Job job = parts.job();
    FrameSite site = FrameSite.of(job, FootingJob.placement(job), FootingJob.holes(job));
    Axes first = Axes.along(site.ring().get(0).at(), site.ring().get(1).at());
    JoistLayout best = JoistLayout.of(site, first, SPACING, PLY);
    return new Worked(site, best, LoadPath.of(site, best));
  }

  private static FootingJob outline(String outline) {
    FootingJob parts = new FootingJob();
    parts.outline = outline;
    parts.inset = "8 in";
    return parts;
  }

  private static String regular(int sides) {
    return sides == 6
        ? "{ \"regular\": { \"sides\": 6, \"acrossFlats\": \"12 ft\" } }"
        : String.format(
            Locale.ROOT,
            "{ \"regular\": { \"sides\": %d, \"acrossCorners\": \"%d ft\" } }",
            sides,
            sides > 12 ? 26 : 14);
  }

  private static String pier(String at) {
    return """
    [{ "id": "P1", "at": "AT", "hole": "22 in", "depth": "58 in", "top": "36 in",
       "tube": { "inside": "16 in", "from": "ground" }, "gap": "1 in" }]
    """
        .replace("AT", at);
  }

  private static double sum(LoadPath path) {
    return path.carried().values().stream().mapToDouble(Double::doubleValue).sum();
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 7, 8, 9, 12, 16, 24})
  void everyPolygonReachesItsPosts(int sides) {
    Worked worked = work(outline(regular(sides)));
    assertThat(worked.path().faults()).isEmpty();
    assertThat(sum(worked.path())).isEqualTo(worked.path().floor(), offset(1e-6));
  }

  @Test
  void aPierInTheMiddleIsFramed() {
    FootingJob parts = outline(regular(6));
    parts.piers = pier("centre");
    Worked worked = work(parts);
    assertThat(worked.path().faults()).isEmpty();
    assertThat(worked.layout().joists().stream().filter(Joist::isCut).count()).isEqualTo(1);
    assertThat(worked.path().headers()).hasSize(2);
    assertThat(worked.path().trimmers()).hasSize(2);
    assertThat(sum(worked.path())).isEqualTo(worked.path().floor(), offset(1e-6));
    double radius = 9 * 0.0254;
    assertThat(worked.path().floor())
        .as("the floor less the round opening, worked by hand")
        .isEqualTo(
            12 * 12 * 0.3048 * 0.3048 * Math.sqrt(3) / 2 - Math.PI * radius * radius, offset(1e-6));
  }

  /** A hexagon is alike on both sides of its middle, and from end to end. */
  @Test
  void alikePostsCarryAlike() {
    Map<String, Double> carried = work(outline(regular(6))).path().carried();
    List<Double> all = List.copyOf(carried.values());
    assertThat(all.get(0)).isEqualTo(all.get(1), offset(1e-9));
    assertThat(all.get(0)).isEqualTo(all.get(3), offset(1e-9));
    assertThat(all.get(2)).isEqualTo(all.get(5), offset(1e-9));
  }

  /** By hand: 16 ft by 12 ft on four posts, half of all on each side, half of that on each post. */
  @Test
  void fourPostsCarryAQuarterEach() {
    LoadPath path = work(new FootingJob()).path();
    path.carried()
        .values()
        .forEach(area -> assertThat(area).isEqualTo(16 * 12 * 0.09290304 / 4, offset(1e-9)));
  }

  /** By hand: the middle of nine posts carries the joists of two half bays over a whole bay. */
  @Test
  void aMiddlePostCarriesItsBays() {
    FootingJob parts = new FootingJob();
    parts.outline = FootingJob.rectangle("18 ft", "14 ft", 3, 3);
    LoadPath path = work(parts).path();
    assertThat(path.faults()).isEmpty();
    assertThat(path.carried().get("S9"))
        .as("8 ft of joist by 6 ft of beam, set by the spacing of the joists")
        .isEqualTo(8 * 6 * 0.09290304, offset(0.2));
    assertThat(sum(path)).isEqualTo(18 * 14 * 0.09290304, offset(1e-6));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{ \"chamferedRectangle\": { \"length\": \"18 ft\", \"width\": \"14 ft\", \"cut\": \"3 ft\" } }",
        "{ \"circle\": { \"diameter\": \"14 ft\", \"posts\": 7 } }",
        "{ \"points\": { \"corners\": [\"0 ft, 0 ft\", \"16 ft, 0 ft\", \"16 ft, 8 ft\", \"8 ft, 8 ft\", \"8 ft, 16 ft\", \"0 ft, 16 ft\"] } }"
      })
  void otherOutlinesReachTheirPosts(String outline) {
    Worked worked = work(outline(outline));
    assertThat(worked.path().faults()).isEmpty();
    assertThat(sum(worked.path())).isEqualTo(worked.path().floor(), offset(1e-5));
  }

  @Test
  void aPierUnderABeamIsAFault() {
    FootingJob parts = outline(regular(6));
    parts.azimuth = "0 deg";
    parts.piers = pier("2.67 ft, 4.62 ft");
    assertThat(work(parts).path().faults()).isNotEmpty();
  }

  @Property(tries = 60, seed = Chance.SEED)
  void turningTheFigureTurnsNothingElse(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @DoubleRange(min = -180, max = 180) double azimuth) {
    FootingJob still = outline(regular(sides));
    still.azimuth = "0 deg";
    FootingJob turned = outline(regular(sides));
    turned.azimuth = String.format(Locale.ROOT, "%.3f deg", azimuth);
    LoadPath one = work(still).path();
    LoadPath other = work(turned).path();
    one.carried()
        .forEach(
            (post, area) ->
                assertThat(other.carried().get(post)).as(post).isEqualTo(area, offset(1e-6)));
  }

  @Property(tries = 60, seed = Chance.SEED)
  void allOfTheFloorIsCarriedWhereverThePierStands(
      @ForAll @DoubleRange(min = -2.5, max = 2.5) double east,
      @ForAll @DoubleRange(min = -2.5, max = 2.5) double north) {
    FootingJob parts = outline(regular(8));
    parts.piers = pier(String.format(Locale.ROOT, "%.3f ft, %.3f ft", east, north));
    LoadPath path = work(parts).path();
    if (path.faults().isEmpty()) {
      assertThat(sum(path)).isEqualTo(path.floor(), offset(1e-5));
    }
    assertThat(path.faults()).allMatch(fault -> fault.kind() != LoadPath.Fault.Kind.FLOOR_LOST);
  }
}
