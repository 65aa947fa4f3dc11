package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pegbook.figures.Working;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Pressure;
import pegbook.testing.FootingJob;

/** A 6x6 of southern pine No. 2, wet: 525 psi · 0.91, least modulus 440,000 psi (NDS, recalled). */
class PostSizesTest {
  private static final double SIDE = 5.5;
  private static final double SHORT = 525 * 0.91;

  private static PostSizes posts(double... pounds) {
    FootingJob parts = new FootingJob();
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\","
            + " \"frame\": { \"species\": \"southern pine\" } }";
    Job job = parts.job();
    Map<String, Double> carried = new LinkedHashMap<>();
    for (int i = 0; i < pounds.length; i++) {
      carried.put("S" + (i + 1), pounds[i] / 50 * 0.3048 * 0.3048);
    }
    LoadPath path = new LoadPath(1, carried, List.of(), List.of(), List.of(), List.of());
    return PostSizes.of(
        job, job.floor().flatMap(Floor::frame).orElseThrow(), path, Pressure.ofPsf(50));
  }

  /** NDS 3.7.1: what a column of that height bears, worked forwards, c = 0.8. */
  private static double bears(double height) {
    double euler = 0.822 * 440_000 / Math.pow(height / SIDE, 2) / SHORT;
    double half = (1 + euler) / 1.6;
    return (half - Math.sqrt(half * half - euler / 0.8)) * SHORT * SIDE * SIDE;
  }

  @Test
  void aPostOfThatHeightBearsItsLoad() {
    for (double pounds : new double[] {6000, 9000, 12_000, 14_000}) {
      double height = posts(pounds).rows().get(0).mayStand().inches();
      assertThat(height).isLessThan(50 * SIDE);
      assertThat(bears(height)).as("load of " + pounds).isEqualTo(pounds, offset(0.1));
    }
  }

  @Test
  void noneIsMoreSlenderThanFiftyAndNoneBearsMoreThanItsShortStrength() {
    PostSizes posts = posts(0, 500, SHORT * SIDE * SIDE * 1.01);
    assertThat(posts.size().size()).isEqualTo("6x6");
    assertThat(posts.rows().get(0).mayStand().inches()).isEqualTo(50 * SIDE, offset(1e-9));
    assertThat(posts.rows().get(1).mayStand().inches()).isEqualTo(50 * SIDE, offset(1e-9));
    assertThat(posts.rows().get(2).mayStand().inches()).isZero();
    assertThat(posts.workings())
        .filteredOn(working -> working.formula().id().equals("floor-frame.compression"))
        .extracting(Working::result)
        .containsExactly(SHORT);
  }
}
