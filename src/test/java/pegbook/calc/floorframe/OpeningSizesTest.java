package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pegbook.figures.Finding;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.published.TimberSize;
import pegbook.testing.FootingJob;

/** By hand: doubled 2x8 of southern pine, 925 psi in bending, 169.75 psi in shear, 50 psf. */
class OpeningSizesTest {
  private static final double FOOT = 0.3048;
  private static final double PER_POUND = FOOT * FOOT / 50;

  private static List<String> found(
      List<LoadPath.Trimmer> trimmers, List<LoadPath.Header> headers) {
    FootingJob parts = new FootingJob();
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\","
            + " \"frame\": { \"species\": \"southern pine\" } }";
    Job job = parts.job();
    JoistSizes.Loads loads =
        new JoistSizes.Loads(Pressure.ofPsf(50), Pressure.ofPsf(40), Pressure.ofPsf(50));
    LoadPath path = new LoadPath(1, Map.of(), List.of(), trimmers, headers, List.of());
    return OpeningSizes.of(
            job,
            job.floor().flatMap(Floor::frame).orElseThrow(),
            path,
            TimberSize.find("2x8").orElseThrow(),
            loads)
        .findings()
        .stream()
        .map(Finding::id)
        .toList();
  }

  /** 10 ft, a strip of 16 in (667 lb) and so many pounds in the middle. */
  private static List<LoadPath.Trimmer> trimmer(double pounds) {
    Joist joist = new Joist(0, 0, -1, 1, 0, 10 * FOOT, List.of(), List.of(), false);
    return List.of(
        new LoadPath.Trimmer(
            joist,
            10 * FOOT,
            Length.ofInches(16).metres(),
            List.of(new LoadPath.At(5 * FOOT, pounds * PER_POUND))));
  }

  private static List<LoadPath.Header> header(double inches, double pounds) {
    return List.of(
        new LoadPath.Header(0, 0, 0, Length.ofInches(inches).metres(), pounds * PER_POUND, 1));
  }

  /** (667 · 120 / 8 + P · 120 / 4) / 26.28 in³: 837 psi with 400 lb, 951 psi with 500 lb. */
  @Test
  void aTrimmerBends() {
    assertThat(found(trimmer(400), List.of())).isEmpty();
    assertThat(found(trimmer(500), List.of())).containsExactly("frame-trimmer-overloaded");
  }

  /** 1.5 · P / 21.75 in²: 165.5 psi with 2400 lb, 179.3 psi with 2600 lb, bending under 200 psi. */
  @Test
  void aShortHeaderShears() {
    assertThat(found(List.of(), header(8, 2400))).isEmpty();
    assertThat(found(List.of(), header(8, 2600))).containsExactly("frame-header-overloaded");
  }
}
