package pegbook.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.List;
import org.junit.jupiter.api.Test;
import pegbook.geometry.Point;
import pegbook.job.Default;
import pegbook.job.Default.Basis;
import pegbook.job.Job;
import pegbook.job.Layout.Baseline;
import pegbook.job.Outline;
import pegbook.job.Soil;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.measure.Pressure;

class JobFileReaderTest {

  /**
   * The overlap by hand: S1 stands 83.138 - 8 / sin 60° = 73.901 in north of the centre, the second
   * pier 66 in; 7.901 in between centres against radii of 9 and 10 in leaves 11.099 in of overlap.
   */
  @Test
  void tenMistakesAreTenProblemsInOneRun() {
    String text =
        """
        {
          "title": "Sky deck",
          "issued": "12 April 2027",
          "ground": { "soil": "sandy clay", "frost": { "depth": 42, "from": "county office" } },
          "layout": {
            "outline": { "regular": { "sides": 6, "acrossFlats": "12 ft" } },
            "baseline": ["S1", "S9"],
            "tolerance": "-1/2 in"
          },
          "supports": { "hole": "18 in", "gravle": "4 in", "steel": { "bars": 4, "size": "#12" } },
          "piers": [
            { "id": "P1", "at": "centre", "hole": "20 in", "top": "3 ft 14 in" },
            { "id": "P1", "at": "0 ft, 5.5 ft", "hole": "20 in" }
          ],
          "crew": { "people": "2" }
        }
        """;

    assertThat(messages(text))
        .containsExactly(
            "x.json:3 issued: expected a date of this century or the next, such as"
                + " \"2027-04-12\", found \"12 April 2027\"",
            "x.json:4 ground.frost.depth: expected a length with its unit, found 42;"
                + " write \"42 mm\" or \"42 in\"",
            "x.json:7 layout.baseline[1]: expected a mark of this job: S1 to S6, P1,"
                + " found \"S9\"",
            "x.json:8 layout.tolerance: expected a length from 1/16 in to 12 in, found \"-1/2 in\"",
            "x.json:10 supports.gravle: expected a known key, found \"gravle\"; write \"gravel\"",
            "x.json:10 supports.steel.size: expected one of \"#3\", \"#4\", \"#5\", \"#6\","
                + " \"#7\", \"#8\", \"8 mm\", \"10 mm\", \"12 mm\", \"16 mm\", \"20 mm\","
                + " \"25 mm\", found \"#12\"",
            "x.json:12 piers[0].top: expected a length in whole large units and a smaller rest,"
                + " such as \"3 ft 6 in\" or \"900 mm\", found \"3 ft 14 in\"; write \"50 in\"",
            "x.json:13 piers[1].id: expected a name of its own for each pier, found \"P1\";"
                + " line 12 has it already",
            "x.json:13 piers[1].at: expected ground left between the holes, found S1 and P1"
                + " overlapping by 11 1/8 in; make the holes smaller or move one of them",
            "x.json:15 crew.people: expected a whole number from 1 to 50, without quotation marks,"
                + " found \"2\"");
  }

  @Test
  void theSmallestJobIsReadAndEveryDefaultIsListed() {
    Job job =
        job(
            """
            {"title": "x", "ground": {"soil": "sand"},
             "layout": {"outline": {"regular": {"sides": 3, "side": "5 ft"}}}}
            """);

    assertThat(job.name()).isEqualTo("x");
    assertThat(job.ground().soil()).isEqualTo(Soil.SAND);
    assertThat(job.supports().hole()).isEqualTo(Length.ofInches(12));
    assertThat(job.supports().depth()).isEmpty();
    assertThat(job.floor()).isEmpty();
    assertThat(job.piers()).isEmpty();
    assertThat(job.defaults())
        .contains(
            new Default("supports.hole", "12 in", Basis.COMMON_PRACTICE),
            new Default("layout.centreToFirstMark", "0 deg", Basis.COMMON_PRACTICE),
            new Default("layout.tape.division", "1/16 in", Basis.COMMON_PRACTICE),
            new Default("crew.workDays", "[\"sat\", \"sun\"]", Basis.COMMON_PRACTICE),
            new Default("tools[1].reach", "2 ft", Basis.COMMON_PRACTICE),
            new Default("place.country", "US", Basis.DERIVED));
    assertThat(job.defaults()).extracting(Default::path).doesNotHaveDuplicates();
  }

  @Test
  void aMetricJobHasMetricDefaults() {
    Job job =
        job(
            """
            {"title": "x", "units": "metric", "ground": {"soil": "sand"},
             "layout": {"outline": {"circle": {"diameter": "4 m", "posts": 6}}},
             "supports": {"steel": {"bars": 4, "size": "12 mm"}}}
            """);

    assertThat(job.supports().hole()).isEqualTo(Length.ofMillimetres(300));
    assertThat(job.place().country()).isEqualTo("ZZ");
    assertThat(job.defaults())
        .contains(
            new Default("supports.hole", "300 mm", Basis.COMMON_PRACTICE),
            new Default("supports.steel.cover", "75 mm", Basis.PUBLISHED),
            new Default("paper", "A4", Basis.DERIVED));
  }

  @Test
  void readsTheExampleAsItIsWritten() throws IOException {
    JobFile.Read read = read("input/sky-deck.json");
    Job job = read.job();

    assertThat(job.name()).isEqualTo("sky-deck");
    Outline.Regular outline = (Outline.Regular) job.layout().outline();
    // Across corners of a hexagon: across flats times 2/√3.
    assertThat(outline.acrossCorners().feet()).isCloseTo(12 * 2 / Math.sqrt(3), within(1e-12));
    assertThat(job.layout().baseline()).isEqualTo(new Baseline.Choose());
    assertThat(job.layout().centreToFirstMark().orElseThrow().degrees())
        .isCloseTo(8, within(1e-12));
    assertThat(job.ground().levels().get("S2")).isEqualTo(Length.ofInches(-1.5));
    assertThat(job.ground().allowablePressure().orElseThrow().value())
        .isEqualTo(Pressure.ofPsf(1500));
    assertThat(job.piers().get(0).at()).isEqualTo(Point.ORIGIN);
    assertThat(job.piers().get(0).depth()).contains(Length.ofInches(58));
    assertThat(job.supports().tube()).contains(new Tube(Length.ofInches(14), Tube.From.GROUND));
    assertThat(job.crew().workDays()).containsExactly(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
    assertThat(job.site().features().get(0).shape())
        .isEqualTo(
            new pegbook.job.Feature.Shape.Spot(Point.of(Length.ofFeet(-14), Length.ofFeet(9))));
    assertThat(job.site().boundary().orElseThrow().isClockwise()).isTrue();
    assertThat(read.sha256()).matches("[0-9a-f]{64}");
  }

  @Test
  void knowsTheLineOfEveryValue() throws IOException {
    JobFile.Read read = read("input/sky-deck.json");
    List<String> lines = Files.readAllLines(Path.of("input/sky-deck.json"));

    for (String path : List.of("title", "piers[0].at", "supports.steel.ties.size", "ground.soil")) {
      Location at = read.lines().of(path);
      String key = path.substring(path.lastIndexOf('.') + 1);
      assertThat(lines.get(at.line() - 1).substring(0, at.column() - 1))
          .as(path)
          .endsWith("\"" + key + "\": ");
    }
    // What was left out lies in the part that would hold it.
    assertThat(read.lines().of("piers[0].steel.nothing"))
        .isEqualTo(read.lines().of("piers[0].steel"));
    assertThat(read.lines().of("spoil.cart")).isEqualTo(new Location(1, 1));
  }

  @Test
  void aTubeMayBeWrittenAsItsInsideAlone() {
    Job job =
        job(
            """
            {"title": "x", "ground": {"soil": "sand"},
             "layout": {"outline": {"regular": {"sides": 4, "side": "5 ft"}}},
             "supports": {"hole": "18 in", "tube": "12 in"}}
            """);

    assertThat(job.supports().tube()).contains(new Tube(Length.ofInches(12), Tube.From.GROUND));
    assertThat(job.defaults())
        .contains(new Default("supports.tube.from", "ground", Basis.COMMON_PRACTICE));
  }

  @Test
  void aFreeOutlineLiesAsItIsDrawn() {
    Job job =
        job(
            """
            {"title": "x", "ground": {"soil": "sand"},
             "layout": {"outline": {"points": {
               "corners": ["0 m, 0 m", "0 m, 4 m", "4 m, 4 m", "4 m, 0 m"],
               "supports": ["1 m, 1 m", "1 m, 3 m", "3 m, 2 m"]}}}}
            """);

    assertThat(job.layout().centreToFirstMark()).isEmpty();
    assertThat(job.defaults())
        .extracting(Default::path)
        .doesNotContain("layout.centreToFirstMark", "layout.supportInset");
  }

  @Test
  void sizesByFlatsByCornersAndBySideAreOneHexagon() {
    double side = acrossCorners("\"side\": \"1 m\"");
    double corners = acrossCorners("\"acrossCorners\": \"2 m\"");
    double flats = acrossCorners("\"acrossFlats\": \"1732.0508 mm\"");

    assertThat(side).isCloseTo(2, within(1e-12));
    assertThat(corners).isCloseTo(2, within(1e-12));
    assertThat(flats).isCloseTo(2, within(1e-7));
  }

  @Test
  void aNewJobIsOneToStartFrom() {
    String text = NewJob.text("Hütte 3");

    Job job = job(text);
    assertThat(job.heading().title()).isEqualTo("Hütte 3");
    assertThat(text).hasLineCount(14).contains("\"$schema\": \"job.schema.json\"");
    assertThat(NewJob.isName("a/b")).isFalse();
    assertThat(NewJob.isName("a\"b")).isFalse();
  }

  private static double acrossCorners(String size) {
    Job job =
        job(
            "{\"title\": \"x\", \"ground\": {\"soil\": \"sand\"}, \"layout\": {\"outline\":"
                + " {\"regular\": {\"sides\": 6, "
                + size
                + "}}}}");
    return ((Outline.Regular) job.layout().outline()).acrossCorners().metres();
  }

  private static List<String> messages(String text) {
    return RefusalTest.messages("x.json", text.getBytes(StandardCharsets.UTF_8));
  }

  private static Job job(String text) {
    JobFile file = JobFileReader.read("input/x.json", text.getBytes(StandardCharsets.UTF_8));
    assertThat(messages(text)).isEmpty();
    return ((JobFile.Read) file).job();
  }

  private static JobFile.Read read(String file) throws IOException {
    return (JobFile.Read) JobFileReader.read(file, Files.readAllBytes(Path.of(file)));
  }
}
