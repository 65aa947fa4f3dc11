package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.job.Job;
import pegbook.packet.Packet;
import pegbook.packet.Packets;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.testing.FootingJob;
import pegbook.testing.TestWriting;
import pegbook.testing.TrialPacket;

class FootingsSheetTest {
  private static FootingsSheet sheet(FootingJob trial) {
    Job job = trial.job();
    Packet packet = Packets.calculate(job, "0".repeat(64));
    return FootingsSheet.of(packet, TestWriting.of(job));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replace('\u202f', ' ');
  }

  private static List<String> labels(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Element.Label.class::isInstance)
        .map(element -> plain(((Element.Label) element).text()))
        .toList();
  }

  @Test
  void alikeSupportsShareARow() {
    FootingJob trial = new FootingJob();
    trial.outline = FootingJob.rectangle("16 ft", "12 ft", 3, 3);
    FootingsSheet sheet = sheet(trial);
    assertThat(sheet.loads().rows())
        .extracting(FootingLoadsPart.Row::marks)
        .containsExactly("S1, S3, S5, S7", "S2, S6", "S4, S8", "S9");
    FootingLoadsPart.Row middle = sheet.loads().rows().get(3);
    assertThat(plain(middle.area())).isEqualTo("35.0 ft²");
    assertThat(plain(middle.dead())).isEqualTo("350 lbf");
    assertThat(plain(middle.live())).isEqualTo("1400 lbf");
    assertThat(middle.snow()).isEqualTo("not known");
    assertThat(middle.governs()).isEqualTo("D + L");
    assertThat(plain(middle.total())).isEqualTo("1750 lbf");
    assertThat(plain(sheet.loads().sum().area())).isEqualTo("192.0 ft²");
  }

  @Test
  void thePlanNamesEverySupportWithItsArea() {
    FootingJob trial = new FootingJob();
    trial.outline = FootingJob.rectangle("16 ft", "12 ft", 3, 3);
    FootingsSheet sheet = sheet(trial);
    assertThat(labels(sheet.loads().plan()))
        .contains("S1", "S9", "15.8 ft²", "24.5 ft²", "22.5 ft²", "35.0 ft²");
    assertThat(sheet.loads().unnamed()).isEmpty();
    assertThat(sheet.drawings()).containsExactly(sheet.loads().plan());
  }

  @Test
  void aFootingThatIsTooSmallIsSaidInWordsWithItsRemedy() {
    FootingJob trial = new FootingJob();
    FootingsSheet sheet = sheet(trial);
    assertThat(sheet.bearing().rows())
        .allSatisfy(
            row -> {
              assertThat(row.verdict()).isEqualTo("exceeds the pressure given");
              assertThat(row.emphasis()).isEqualTo("strong");
            });
    assertThat(plain(sheet.bearing().remedies().get(0))).contains("22″").contains("19″");
    assertThat(sheet.lead()).contains("S1 to S4");
    assertThat(sheet.bearing().ground()).contains("assumed");
  }

  @Test
  void whatNobodySaidIsLeftOpenToWriteIn() {
    List<BasisPart.Row> rows = sheet(new FootingJob()).basis().rows();
    assertThat(rows)
        .filteredOn(BasisPart.Row::open)
        .hasSizeGreaterThanOrEqualTo(8)
        .allSatisfy(row -> assertThat(row.from()).isEqualTo("not given: ask"));
    assertThat(rows).filteredOn(row -> !row.open()).noneMatch(row -> row.value().isEmpty());
    assertThat(rows).extracting(BasisPart.Row::item).doesNotHaveDuplicates();
  }

  /** At 60 supports every name stands on the plan, or the sheet says which found no room. */
  @ParameterizedTest
  @ValueSource(ints = {3, 20, 40, 60})
  void noNameIsLostInACrowd(int posts) {
    FootingJob trial = new FootingJob();
    trial.outline = "{ \"circle\": { \"diameter\": \"60 ft\", \"posts\": %d } }".formatted(posts);
    FootingsSheet sheet = sheet(trial);
    List<String> drawn = labels(sheet.loads().plan());
    for (int i = 1; i <= posts; i++) {
      boolean named = drawn.contains("S" + i);
      assertThat(named || !sheet.loads().unnamed().isEmpty()).as("S" + i).isTrue();
    }
  }

  /** The rule stands first, the estimates beside it, and the exemptions are questions. */
  @Test
  void frostLeadsWithTheRuleAndAsksAboutExemptions() {
    FootingJob trial = new FootingJob();
    trial.ground =
        """
        "soil": "clay", "frost": {"depth": "42 in", "from": "county office"},
        "airFreezingIndex": {"value": "1800 F-days", "return": "100 years"}
        """;
    FrostDepthPart frost = sheet(trial).frost();
    assertThat(frost.lead()).contains("rules").contains("coldest winter in 100 years");
    assertThat(frost.rows().get(0).from()).isEqualTo("county office");
    assertThat(frost.rows().get(1).what()).contains("Stefan");
    assertThat(frost.rows().get(1).working()).isNotEmpty();
    assertThat(plain(frost.rests().get(0))).contains("1800 °F-days", "shaded ground", "assumed");
    assertThat(frost.soil()).contains("Clay, frost group F3 to F4", "memory");
    assertThat(frost.questions()).hasSize(4);
  }

  /** Grip is a range led by soil and water; a soil that drains has no figure to be afraid of. */
  @Test
  void gripIsARangeWhereTheSoilHeavesAndNoFigureWhereItDrains() {
    FootingJob trial = new FootingJob();
    trial.ground =
        "\"soil\": \"silt\", \"frost\": {\"depth\": \"30 in\", \"from\": \"county office\"}";
    FrostGripPart wet = sheet(trial).grip();
    assertThat(wet.lead()).contains("S1 to S4").contains("silt").contains("find out");
    // π · 1.5 ft · 2.5 ft · 1357.6 psf, and 2088.5 psf.
    assertThat(plain(wet.grips().get(0).rows().get(0).grip()))
        .isEqualTo("16 000 lbf to 24 600 lbf");
    assertThat(wet.remedies()).hasSize(1);
    trial.ground = trial.ground.replace("silt", "sand");
    FrostGripPart dry = sheet(trial).grip();
    assertThat(dry.lead()).contains("drained");
    assertThat(dry.grips()).isEmpty();
    assertThat(dry.remedies()).isEmpty();
    assertThat(dry.wind()).hasSize(1);
  }

  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(20));
  }

  /** Nothing calls a footing safe, and every figure behind a column has its working. */
  @ParameterizedTest
  @MethodSource("packets")
  void verdictsPromiseNothingAndColumnsPointToWorkings(TrialPacket trial) {
    FootingsSheet sheet = FootingsSheet.of(trial.packet(), trial.writing());
    assertThat(sheet.bearing().rows())
        .allSatisfy(
            row ->
                assertThat(row.verdict()).doesNotContainIgnoringCase("safe").doesNotContain("ok"));
    for (String id : List.of("own-weight", "contact-area")) {
      assertThat(trial.packet().workings().numberOf("bearing." + id)).isPresent();
    }
    assertThat(sheet.loads().working().dead())
        .isEqualTo(trial.packet().workings().numberOf("footing-loads.dead").orElseThrow());
  }
}
