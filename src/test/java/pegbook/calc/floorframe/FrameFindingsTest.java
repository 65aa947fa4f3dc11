package pegbook.calc.floorframe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.job.Job;
import pegbook.testing.FootingJob;

/** What a deck of 12 ft width is asked about, just under and just over each limit. */
class FrameFindingsTest {
  private static FootingJob parts(String length, int columns) {
    FootingJob parts = new FootingJob();
    parts.outline = FootingJob.rectangle(length, "12 ft", columns, 2);
    parts.inset = "8 in";
    parts.floor =
        "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"frame\": { \"species\": \"southern pine\" } }";
    return parts;
  }

  private static List<String> found(FootingJob parts) {
    Job job = parts.job();
    return FloorFrameCalculator.calculate(job, FootingJob.placement(job), FootingJob.holes(job))
        .findings()
        .stream()
        .map(each -> each.id())
        .toList();
  }

  /** What the frame of a floor with a key changed is asked about, beside its bracing. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'\"buildUp\": \"15.5 in\"' | frame-build-up | false",
        "'\"buildUp\": \"15.6 in\"' | frame-build-up | true",
        "'\"buildUp\": \"15.4 in\"' | frame-build-up | true",
      })
  void aHeightThatWasSaidIsCompared(String key, String id, boolean expected) {
    FootingJob parts = parts("24 ft", 5);
    parts.floor = parts.floor.replace("\"live\"", key + ", \"live\"");
    assertThat(found(parts).contains(id)).isEqualTo(expected);
  }

  /**
   * IRC R507.7: boards under 1 1/2 in reach 16 in square and 12 in slanting, thicker ones 24 in and
   * 16 in.
   */
  @ParameterizedTest
  @CsvSource({
    "1 in, square, 16 in, false",
    "1 in, square, 17 in, true",
    "1 in, diagonal, 12 in, false",
    "1 in, diagonal, 13 in, true",
    "1.5 in, square, 24 in, false",
    "1.5 in, square, 25 in, true",
    "1.5 in, diagonal, 16 in, false",
    "1.5 in, diagonal, 17 in, true"
  })
  void boardsReachSoFar(String thickness, String laid, String spacing, boolean asked) {
    FootingJob parts = parts("12 ft", 3);
    parts.floor =
        parts.floor.replace(
            "\"species\"",
            "\"joistSpacing\": \"%s\", \"boards\": { \"thickness\": \"%s\", \"laid\": \"%s\" }, \"species\""
                .formatted(spacing, thickness, laid));
    assertThat(found(parts).contains("frame-boards-span")).isEqualTo(asked);
  }

  /**
   * Flat ground: the floor's height is the fall. A guard over 30 in (IRC R312.1.1), asked about
   * from 24 in; steps from the second riser of 7 3/4 in on (IRC R311.7.5.1).
   */
  @ParameterizedTest
  @CsvSource({
    "23.9, , true",
    "24, frame-guard-near, true",
    "30, frame-guard-near, true",
    "30.1, frame-guard, true"
  })
  void aGuardFromThirtyInchesOn(double inches, String guard, boolean steps) {
    FootingJob parts = parts("12 ft", 3);
    parts.ground =
        "\"soil\": \"clay\", \"levels\": { \"S1\": \"0 in\", \"S2\": \"0 in\", \"S4\": \"0 in\" }";
    parts.floor = parts.floor.replace("\"live\"", "\"top\": \"" + inches + " in\", \"live\"");
    List<String> found = found(parts);
    assertThat(found.stream().filter(id -> id.startsWith("frame-guard")).toList())
        .isEqualTo(guard == null ? List.of() : List.of(guard));
    assertThat(found.contains("frame-steps")).isEqualTo(steps);
  }

  @Test
  void bracingThatWasSaidIsNoted() {
    FootingJob parts = parts("12 ft", 3);
    assertThat(found(parts)).contains("frame-bracing").doesNotContain("frame-bracing-said");
    parts.design = "{ \"lateral\": { \"path\": \"braces both ways\", \"from\": \"designer\" } }";
    assertThat(found(parts)).contains("frame-bracing-said").doesNotContain("frame-bracing");
  }

  /**
   * Posts so many inches inside a floor of 12 ft leave 144 less twice as many between them and an
   * overhang of as many less the rim; over a quarter of the span it is asked, here from 25 in on.
   * Boards reach the rim in a step of 16 in.
   */
  @ParameterizedTest
  @CsvSource({
    "16 in, false, false",
    "17 in, false, true",
    "24 in, false, true",
    "26 in, true, true"
  })
  void overhangs(String inset, boolean quarter, boolean wide) {
    FootingJob parts = parts("12 ft", 3);
    parts.inset = inset;
    List<String> found = found(parts);
    assertThat(found.contains("frame-overhang-quarter")).as("quarter").isEqualTo(quarter);
    assertThat(found.contains("frame-edge-wide")).as("edge").isEqualTo(wide);
  }
}
