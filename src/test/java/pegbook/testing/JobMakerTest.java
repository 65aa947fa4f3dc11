package pegbook.testing;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.Finding;
import pegbook.job.Job;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.measure.Length;
import pegbook.packet.Packet;

/** The made-up jobs are as unlike as the tests that use them need. */
class JobMakerTest {
  private static final List<JsonNode> JOBS =
      IntStream.range(0, JobMaker.ROUND).mapToObj(JobMakerTest::job).toList();

  private static JsonNode job(int number) {
    try {
      return new ObjectMapper().readTree(JobMaker.text(number));
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException(broken);
    }
  }

  private static List<String> texts(String path) {
    return JOBS.stream().map(job -> job.at(path).asText()).distinct().toList();
  }

  /** The whole path on made-up jobs: a mark moved 45 mm is named and measured, a good one never. */
  @Test
  void aMarkPaintedOffItsPlaceIsNamed() {
    for (int number = 4; number < JobMaker.ROUND; number += 6) {
      Packet packet = TrialPacket.text("painted", JobMaker.text(number)).packet();
      List<Finding> findings =
          packet.asMarked().findings().stream()
              .filter(finding -> finding.id().startsWith("as-marked"))
              .toList();
      if (number % 12 == 4) {
        assertThat(findings).extracting(Finding::subjects).containsExactly(List.of("S2"));
        assertThat(findings).extracting(Finding::id).containsExactly("as-marked-moved");
      } else {
        assertThat(findings).as("job %d", number).isEmpty();
      }
    }
  }

  @Test
  void sameNumberSameText() {
    assertThat(JobMaker.text(17)).isEqualTo(JobMaker.text(17)).isNotEqualTo(JobMaker.text(18));
  }

  @Test
  void everyOutlineUnitAndPaperOccurs() {
    assertThat(JOBS.stream().map(job -> job.at("/layout/outline").fieldNames().next()).distinct())
        .containsExactlyInAnyOrder(
            "regular", "rectangle", "chamferedRectangle", "circle", "points");
    assertThat(texts("/units")).containsExactlyInAnyOrder("imperial", "metric");
    assertThat(texts("/paper")).hasSize(5);
  }

  @Test
  void somethingIsMissingInSomeAndGivenInOthers() {
    for (String path :
        List.of(
            "/supports",
            "/supports/steel",
            "/supports/tube",
            "/piers",
            "/place",
            "/site",
            "/site/boundary",
            "/ground/frost",
            "/ground/levels",
            "/floor",
            "/crew",
            "/plan",
            "/plan/machine",
            "/field/dug",
            "/tools",
            "/concrete",
            "/power",
            "/power/pier",
            "/power/depth")) {
      assertThat(JOBS.stream().map(job -> job.at(path).isMissingNode()).distinct())
          .as(path)
          .hasSize(2);
    }
  }

  @Test
  void namesAreShortAndLongAndAsLongAsTheJobFileTakes() {
    for (String path : List.of("/title", "/owner", "/place/authority")) {
      List<Integer> lengths = texts(path).stream().map(String::length).toList();
      assertThat(lengths).as(path).anyMatch(length -> length < 20).anyMatch(length -> length > 60);
    }
    assertThat(JOBS).anyMatch(job -> job.findValuesAsText("name").contains(LongNames.LONGEST));
    assertThat(LongNames.LONGEST).hasSize(200);
  }

  @Test
  void turnsComeRoundAndTheGroundFalls() {
    assertThat(texts("/layout/centreToFirstMark")).contains("0 deg", "359 deg", "359.999 deg");
    List<Double> falls =
        IntStream.range(0, JobMaker.ROUND)
            .mapToObj(number -> read(JobMaker.text(number)))
            .flatMap(job -> job.ground().levels().values().stream())
            .map(Length::metres)
            .toList();
    assertThat(falls).anyMatch(fall -> fall < -3).anyMatch(fall -> fall > 1);
  }

  @Test
  void everyJobIsTakenAndTheirMarksReachFromThreeToSixty() {
    List<Integer> marks =
        IntStream.range(0, JobMaker.ROUND)
            .mapToObj(number -> marksOf(JobMaker.text(number)))
            .sorted()
            .toList();
    assertThat(marks).first().isEqualTo(3);
    assertThat(marks).last().isEqualTo(60);
    assertThat(marks).filteredOn(count -> count > 30).hasSizeGreaterThan(10);
  }

  private static int marksOf(String text) {
    return PlacementCalculator.calculate(read(text)).marks().size();
  }

  private static Job read(String text) {
    JobFile file = JobFileReader.read("made-up.json", text.getBytes(StandardCharsets.UTF_8));
    if (file instanceof JobFile.Read read) {
      return read.job();
    }
    throw new AssertionError(((JobFile.Refused) file).problems() + "\n" + text);
  }
}
