package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.figures.PlacedMark;
import pegbook.job.Job;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.measure.Length;
import pegbook.measure.LengthNotation;
import pegbook.measure.Rounding;
import pegbook.measure.TapeDivision;
import pegbook.packet.Packet;
import pegbook.packet.Packets;
import pegbook.sheet.drawing.Element;
import pegbook.testing.TestWriting;

class AsMarkedSheetTest {
  private static final Path EXAMPLE = Path.of("input", "hillside-deck.json");
  private static final ObjectMapper JSON = new ObjectMapper();

  private static Packet packet(byte[] text) {
    JobFile file = JobFileReader.read("trial.json", text);
    assertThat(file).isInstanceOf(JobFile.Read.class);
    Job job = ((JobFile.Read) file).job();
    return Packets.calculate(job, "0".repeat(64));
  }

  private static AsMarkedSheet sheet(Packet packet) {
    return AsMarkedSheet.of(packet, TestWriting.of(packet.job()));
  }

  /**
   * The example with readings as planned, but for some.
   *
   * @param wrong inches added to readings, by the names of their marks
   */
  private static Packet planned(List<String> pairs, Map<String, Double> wrong) throws IOException {
    Packet example = packet(Files.readAllBytes(EXAMPLE));
    ObjectNode job = (ObjectNode) JSON.readTree(Files.readAllBytes(EXAMPLE));
    ArrayNode marked = JSON.createArrayNode();
    for (String pair : pairs) {
      String[] ends = pair.split(" ", -1);
      Length planned =
          example
              .placement()
              .mark(ends[0])
              .at()
              .distanceTo(example.placement().mark(ends[1]).at())
              .plus(Length.ofInches(wrong.getOrDefault(pair, 0.0)))
              .setTo(TapeDivision.EIGHTH_INCH.step(), Rounding.NEAREST);
      marked
          .addObject()
          .put("from", ends[0])
          .put("to", ends[1])
          .put("tape", LengthNotation.typed(planned, TapeDivision.EIGHTH_INCH));
    }
    ((ObjectNode) job.get("field")).set("marked", marked);
    return packet(JSON.writeValueAsBytes(job));
  }

  private static List<String> ring(int... steps) {
    List<String> pairs = new ArrayList<>();
    for (int step : steps) {
      for (int i = 0; i < (step == 4 ? 4 : 8); i++) {
        pairs.add("S" + (i + 1) + " S" + ((i + step) % 8 + 1));
      }
    }
    return pairs;
  }

  @Test
  void theExampleNamesTheMarkThatWasMovedAndSaysHowToMoveItBack() throws IOException {
    AsMarkedSheet sheet = sheet(packet(Files.readAllBytes(EXAMPLE)));
    assertThat(sheet.verdict()).startsWith("S5 is not where the plan has it");
    assertThat(sheet.move().get(0))
        .matches("S5: move 1″ in the direction from S2 to S1 and .* toward the line S1–S2\\.");
    assertThat(sheet.move().get(1)).contains("from S1", "from S2");
    assertThat(sheet.rows()).hasSize(24);
    assertThat(sheet.rows().stream().filter(AsMarkedSheet.DistanceRow::beyond))
        .isNotEmpty()
        .allMatch(row -> row.pair().contains("S5"));
    assertThat(sheet.suspects().get(0).name()).isEqualTo("mark S5");
    assertThat(sheet.suspects().get(0).behind()).isEmpty();
    assertThat(sheet.caption()).contains("S5 as painted");
    assertThat(sheet.telling()).isFalse();
  }

  @Test
  void everyMarkIsNamedOnThePicture() throws IOException {
    Packet packet = packet(Files.readAllBytes(EXAMPLE));
    List<String> labels =
        sheet(packet).picture().get(0).elements().stream()
            .filter(element -> element instanceof Element.Label)
            .map(element -> ((Element.Label) element).text())
            .toList();
    assertThat(labels)
        .containsAll(packet.placement().marks().stream().map(PlacedMark::id).toList());
  }

  @Test
  void aGoodFieldSaysSoAndPromisesNothing() throws IOException {
    AsMarkedSheet sheet = sheet(planned(ring(1, 2, 4), Map.of()));
    assertThat(sheet.verdict()).contains("No mistake shows");
    assertThat(sheet.suspects()).isEmpty();
    assertThat(sheet.move()).isEmpty();
    assertThat(sheet.caption()).doesNotContain("painted");
    assertThat(sheet.gaps()).anyMatch(gap -> gap.contains("P1"));
  }

  @Test
  void aWrongReadingIsShownWithWhatItShouldBe() throws IOException {
    AsMarkedSheet sheet = sheet(planned(ring(1, 2, 4), Map.of("S2 S6", 12.0)));
    assertThat(sheet.verdict())
        .matches("One reading is wrong: S2–S6 was read 17′.10.⁷⁄₈″ and should be about 16′.10.*");
    assertThat(sheet.tell()).contains("S2–S6");
  }

  @ParameterizedTest
  @ValueSource(strings = {"S5 S6", "S4 S5"})
  void aTieSaysWhatWouldTell(String wrong) throws IOException {
    List<String> pairs = ring(1, 2, 4);
    pairs.removeIf(pair -> pair.contains("S5") && !pair.equals("S5 S6") && !pair.equals("S4 S5"));
    AsMarkedSheet sheet = sheet(planned(pairs, Map.of(wrong, 3.0)));
    assertThat(sheet.telling()).isTrue();
    assertThat(sheet.verdict()).contains("mark S5", "reading " + wrong.replace(" ", "–"));
    assertThat(sheet.further()).isNotEmpty();
    assertThat(sheet.further()).allMatch(row -> !row.expected().equals(row.otherwise()));
    assertThat(sheet.suspect()).isEqualTo("Reads, if it is mark S5");
  }

  @Test
  void readingsThatDisagreeAreBothShown() throws IOException {
    List<String> pairs = ring(1, 2, 4);
    pairs.add("S2 S1");
    AsMarkedSheet sheet = sheet(planned(pairs, Map.of("S2 S1", 12.0)));
    assertThat(sheet.doubled()).hasSize(1);
    assertThat(sheet.doubled().get(0).pair()).isEqualTo("S1–S2");
    assertThat(sheet.doubled().get(0).least()).isNotEqualTo(sheet.doubled().get(0).most());
    assertThat(sheet.rows()).hasSize(19);
  }

  @Test
  void onlyReadingsThatDisagreeStillMakeASheet() throws IOException {
    AsMarkedSheet sheet =
        sheet(planned(List.of("S1 S2", "S2 S1"), new LinkedHashMap<>(Map.of("S2 S1", 12.0))));
    assertThat(sheet.verdict()).startsWith("No distance can be used");
    assertThat(sheet.rows()).isEmpty();
    assertThat(sheet.picture()).isEmpty();
  }
}
