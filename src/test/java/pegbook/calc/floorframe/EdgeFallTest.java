package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.testing.FootingJob;

/** By hand: how far it is down to the lowest ground within 36 in of the edge (IRC R312.1.1). */
class EdgeFallTest {
  private static FootingJob parts() {
    FootingJob parts = new FootingJob();
    parts.floor = "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"top\": \"26 in\" }";
    return parts;
  }

  private static void level(FootingJob parts, ToDoubleFunction<Point> inches) {
    Placement placement = FootingJob.placement(parts.job());
    parts.ground =
        placement.marks().stream()
            .map((PlacedMark mark) -> entry(mark, inches))
            .collect(Collectors.joining(", ", "\"soil\": \"clay\", \"levels\": { ", " }"));
  }

  private static String entry(PlacedMark mark, ToDoubleFunction<Point> inches) {
    return String.format(
        Locale.ROOT, "\"%s\": \"%.4f in\"", mark.id(), inches.applyAsDouble(mark.at()));
  }

  private static double fall(FootingJob parts) {
    return EdgeFall.of(parts.job(), FootingJob.placement(parts.job()))
        .orElseThrow()
        .height()
        .inches();
  }

  @Test
  void onLevelGroundItIsTheFloor() {
    FootingJob parts = parts();
    level(parts, at -> 0);
    assertThat(fall(parts)).isEqualTo(26, offset(1e-6));
  }

  /** An inch a foot: the corner farthest down, and 3 ft more straight down the slope. */
  @Test
  void onASlopeItIsThreeFeetBelowTheLowestCorner() {
    FootingJob parts = parts();
    level(parts, at -> -at.east() / 0.3048);
    Placement placement = FootingJob.placement(parts.job());
    double corner = 0;
    for (Point each : placement.outline().corners()) {
      corner = Math.max(corner, each.east() / 0.3048);
    }
    double highest = 0;
    for (PlacedMark mark : placement.marks()) {
      highest = Math.max(highest, -mark.at().east() / 0.3048);
    }
    assertThat(fall(parts)).isEqualTo(26 + highest + corner + 3, offset(1e-3));
  }

  /**
   * The corner by S1 lies 10 ft north: a low place 4 ft beyond does not count, one at 2 ft does.
   */
  @Test
  void aLowPlaceCountsOnlyNearTheEdge() {
    assertThat(withPier("0 ft, 14 ft")).isEqualTo(26, offset(1e-6));
    assertThat(withPier("0 ft, 12 ft")).isGreaterThanOrEqualTo(26 + 60);
  }

  private static double withPier(String at) {
    FootingJob parts = parts();
    parts.azimuth = "0 deg";
    parts.piers =
        "[{ \"id\": \"P1\", \"at\": \"AT\", \"hole\": \"12 in\", \"depth\": \"58 in\","
                .replace("AT", at)
            + " \"top\": \"6 in\" }]";
    level(parts, place -> 0);
    parts.ground = parts.ground.replaceAll("\"P1\": \"[^\"]*\"", "\"P1\": \"-60 in\"");
    return fall(parts);
  }
}
