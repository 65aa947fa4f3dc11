package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.figures.Hole;
import pegbook.geometry.Point;
import pegbook.job.Frost;
import pegbook.job.Spoil;
import pegbook.measure.Length;
import pegbook.measure.Volume;
import pegbook.packet.Packet;
import pegbook.packet.Packets;
import pegbook.sheet.DigScheduleSheet.DepthRow;
import pegbook.sheet.DigScheduleSheet.Section;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.testing.DigJob;
import pegbook.testing.TestWriting;

class DigScheduleSheetTest {

  private static Packet packet(DigJob job) {
    return Packets.calculate(job.job(), "0".repeat(64));
  }

  private static DigScheduleSheet sheet(DigJob job) {
    Packet packet = packet(job);
    return DigScheduleSheet.of(packet, TestWriting.of(packet.job()));
  }

  private static DigJob deck() {
    DigJob job = new DigJob().frostInches(42);
    job.pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(58)));
    return job;
  }

  private static DepthRow row(DigScheduleSheet sheet, String mark) {
    return sheet.depths().stream().filter(r -> r.mark().equals(mark)).findFirst().orElseThrow();
  }

  private static List<String> labels(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Element.Label.class::isInstance)
        .map(element -> ((Element.Label) element).text())
        .toList();
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  @Test
  void everyHoleHasItsRowInTheOrderOfDigging() {
    DigScheduleSheet sheet = sheet(deck());
    assertThat(sheet.depths())
        .extracting(DepthRow::mark)
        .containsExactly("P1", "S1", "S2", "S3", "S4", "S5", "S6");
    DepthRow support = row(sheet, "S4");
    assertThat(plain(support.target())).isEqualTo("3′ 6″");
    assertThat(plain(support.dug())).isEqualTo("3′ 10″");
    assertThat(plain(support.gravel())).isEqualTo("4″");
    assertThat(support.rule()).isEqualTo("frost depth");
    assertThat(row(sheet, "P1").rule()).isEqualTo("the job");
    assertThat(row(sheet, "P1").gravel()).isEqualTo("none");
    assertThat(sheet.levels()).isFalse();
  }

  @Test
  void moreGravelIsDugDeeperAndLeavesTheTarget() {
    DigJob job = deck();
    job.supportGravel = Length.ofInches(6);
    DigScheduleSheet sheet = sheet(job);
    assertThat(plain(row(sheet, "S2").target())).isEqualTo("3′ 6″");
    assertThat(plain(row(sheet, "S2").dug())).isEqualTo("4′ 0″");
    assertThat(plain(sheet.lead())).contains("S1 to S6 to 4′ 0″").contains("P1 to 4′ 10″");
    assertThat(labels(sheet.firstSections().get(1).picture()).stream().map(s -> plain(s)))
        .contains("dig to 4′ 0″", "target 3′ 6″", "gravel 6″");
  }

  @Test
  void depthsFromTheLineStandInTheTableAndOnTheSection() {
    DigJob job = deck();
    job.levels.put("P1", Length.ofInches(-1));
    job.levels.put("S1", Length.ZERO);
    job.levels.put("S2", Length.ofInches(-3));
    DigScheduleSheet sheet = sheet(job);
    assertThat(sheet.levels()).isTrue();
    assertThat(plain(sheet.line())).contains("6″ above the benchmark");
    assertThat(plain(row(sheet, "P1").lineToBottom())).isEqualTo("5′ 5″");
    assertThat(row(sheet, "S5").lineToBottom()).isEqualTo("no level");
    Section pier = sheet.firstSections().get(0);
    assertThat(labels(pier.picture()).stream().map(s -> plain(s))).contains("from line 5′ 5″");
    assertThat(sheet.firstSections().get(1).caption()).contains("stand in the table");
  }

  @Test
  void aLineBelowTheBenchmarkIsSaidSo() {
    DigJob job = deck();
    job.levels.put("S1", Length.ofInches(-14));
    assertThat(plain(sheet(job).line())).contains("8″ below the benchmark");
  }

  /** The walls of the hole, times the scale, are its diameter and the depth dug. */
  @Test
  void sectionsAreTrueToScale() {
    DigJob job = deck();
    Packet packet = packet(job);
    HoleSections sections = HoleSections.of(packet, TestWriting.of(packet.job()));
    double ratio = sections.scale().ratio();
    Section support = sections.pairs().get(0).sections().get(1);
    Hole hole = packet.depthTargets().holes().get(0);
    Element.Path walls =
        support.picture().elements().stream()
            .filter(Element.Path.class::isInstance)
            .map(Element.Path.class::cast)
            .filter(path -> !path.closed() && path.spots().size() == 4)
            .findFirst()
            .orElseThrow();
    double wideMm = walls.spots().get(2).x() - walls.spots().get(1).x();
    double tallMm = walls.spots().get(0).y() - walls.spots().get(1).y();
    assertThat(wideMm * ratio).isEqualTo(hole.diameter().millimetres(), offset(0.01 * ratio));
    assertThat(tallMm * ratio).isEqualTo(hole.dug().millimetres(), offset(0.01 * ratio));
  }

  @Test
  void oneSectionServesAllHolesThatAreAlike() {
    DigJob job = deck();
    job.sides = 24;
    job.acrossCorners = Length.ofFeet(60);
    job.pier("P2", new Point(4, 0), Optional.of(Length.ofInches(50)));
    DigScheduleSheet sheet = sheet(job);
    assertThat(sheet.depths()).hasSize(26);
    assertThat(sheet.firstSections()).hasSize(2);
    assertThat(sheet.moreSections()).hasSize(1);
    assertThat(sheet.drawings()).extracting(Drawing::id).doesNotHaveDuplicates().hasSize(4);
  }

  @Test
  void outsideTheUnitedStatesTheCodeIsNotCalledTheCode() {
    DigJob job = new DigJob();
    job.country = "NO";
    DigScheduleSheet sheet = sheet(job);
    assertThat(row(sheet, "S1").rule()).isEqualTo("least depth");
    assertThat(sheet.choiceNotes().get(0)).contains("your authority decides");
    assertThat(sheet.heapLead()).contains("common practice").doesNotContain("CFR");
  }

  @Test
  void anExemptionIsNamedAndTheFrostBelowTheHoleIsSaid() {
    DigJob job = new DigJob().frostInches(48).exempt(Frost.Covers.SUPPORTS);
    job.supportDepth = Optional.of(Length.ofFeet(3));
    DigScheduleSheet sheet = sheet(job);
    assertThat(sheet.choiceNotes()).anyMatch(note -> note.contains("county inspector"));
    assertThat(plain(sheet.firstSections().get(0).caption())).contains("4′ 0″, lies below");
    assertThat(labels(sheet.firstSections().get(0).picture()))
        .noneMatch(label -> label.startsWith("frost"));
  }

  @Test
  void heapsStandTwoARowAndTheTipApart() {
    DigJob job = deck();
    job.spoil = new Spoil(Volume.ofCubicFeet(4), Optional.empty(), Optional.of(new Point(14, 0)));
    DigScheduleSheet sheet = sheet(job);
    assertThat(sheet.heaps()).hasSize(4);
    assertThat(sheet.heaps().get(0).left().mark()).isEqualTo("P1");
    assertThat(sheet.heaps().get(3).right().mark()).isEmpty();
    assertThat(sheet.tip()).startsWith("The tip:");
    assertThat(sheet(deck()).tip()).isEmpty();
  }

  /** Every finding of both subjects has its words, with every placeholder filled in. */
  @Test
  void findingsHaveTheirWords() {
    DigJob job = new DigJob().frostInches(48).pier("P1", Point.ORIGIN, Optional.empty());
    job.supportDepth = Optional.of(Length.ofFeet(3));
    job.water = Optional.of(Length.ofFeet(2));
    job.tools.clear();
    job.spoil = new Spoil(Volume.ofCubicFeet(9), Optional.empty(), Optional.of(Point.ORIGIN));
    Packet packet = packet(job);
    FindingsSheet sheet = FindingsSheet.of(packet, TestWriting.of(packet.job()));
    assertThat(sheet.groups()).flatExtracting(FindingsSheet.Group::boxes).hasSizeGreaterThan(7);
  }
}
