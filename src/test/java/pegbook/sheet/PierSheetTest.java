package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.pierstiffness.PierStiffness.AlikePiers;
import pegbook.job.Anchors;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;
import pegbook.testing.TrialPacket;

class PierSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50))
        .filter(trial -> PierSheet.isWanted(trial.packet()));
  }

  private static PierSheet sheet(TrialPacket trial) {
    return PierSheet.of(trial.packet(), trial.writing());
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyPierHasItsCardAndEveryCaseItsCell(TrialPacket trial) {
    PierSheet sheet = sheet(trial);
    List<AlikePiers> piers = trial.packet().pierStiffness().piers();
    assertThat(piers.stream().flatMap(alike -> alike.marks().stream()))
        .containsExactlyInAnyOrderElementsOf(
            trial.packet().job().piers().stream().map(pier -> pier.id()).toList());
    assertThat(sheet.cards()).hasSameSizeAs(piers);
    for (PierSheet.Card card : sheet.cards()) {
      assertThat(card.rows())
          .allSatisfy(row -> assertThat(row.values()).hasSameSizeAs(card.cases()));
      assertThat(card.rows()).allSatisfy(row -> assertThat(row.working()).isNotEmpty());
      assertThat(card.facts()).noneMatch(fact -> fact.value().isBlank());
    }
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyDrawingFitsThePageInReadableType(TrialPacket trial) {
    PageArea page = trial.writing().page();
    for (Drawing drawing : sheet(trial).drawings()) {
      assertThat(drawing.widthMm()).isLessThanOrEqualTo(page.widthMm());
      assertThat(drawing.heightMm()).isLessThanOrEqualTo(page.heightMm());
      assertThat(labels(drawing))
          .allSatisfy(label -> assertThat(label.size()).isGreaterThanOrEqualTo(8));
    }
    assertThat(sheet(trial).drawings().stream().map(Drawing::id)).doesNotHaveDuplicates();
  }

  private static List<Element.Label> labels(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Element.Label.class::isInstance)
        .map(Element.Label.class::cast)
        .toList();
  }

  private static List<Spot> circles(Drawing drawing, double radius) {
    return drawing.elements().stream()
        .filter(Element.Circle.class::isInstance)
        .map(Element.Circle.class::cast)
        .filter(circle -> Math.abs(circle.radiusMm() - radius) < 1e-9)
        .map(Element.Circle::centre)
        .toList();
  }

  /** Every cross by which parts are joined stands on two parts, or on four at none. */
  @ParameterizedTest
  @MethodSource("packets")
  void everyJoinHasItsTwoSides(TrialPacket trial) {
    for (AlikePiers piers : trial.packet().pierStiffness().piers()) {
      Map<String, Integer> sides = new TreeMap<>();
      parts(trial, piers)
          .forEach(
              part ->
                  labels(part).stream()
                      .map(Element.Label::text)
                      .filter(text -> text.matches("[A-Z]{1,2}[12]"))
                      .forEach(name -> sides.merge(name, 1, Integer::sum)));
      assertThat(sides.values()).allMatch(count -> count == 2);
      assertThat(sides.isEmpty()).isEqualTo(parts(trial, piers).size() < 2);
    }
  }

  private static List<Drawing> parts(TrialPacket trial, AlikePiers piers) {
    String id = "pier-" + piers.marks().get(0) + "-template-";
    return sheet(trial).templates().stream()
        .map(PierSheet.Template::drawing)
        .filter(drawing -> drawing.id().startsWith(id))
        .toList();
  }

  /** Bolts that stand whole on one part have the distances of an even ring, at true size. */
  @ParameterizedTest
  @MethodSource("packets")
  void boltsHaveTheirDistances(TrialPacket trial) {
    for (AlikePiers piers : trial.packet().pierStiffness().piers()) {
      if (piers.pier().anchors().isEmpty()) {
        assertThat(parts(trial, piers)).isEmpty();
        continue;
      }
      Anchors anchors = piers.pier().anchors().orElseThrow();
      assertThat(parts(trial, piers)).isNotEmpty();
      for (Drawing part : parts(trial, piers)) {
        List<Spot> bolts = circles(part, anchors.size().millimetres() / 2);
        for (int i = 0; i < bolts.size(); i++) {
          for (int j = 0; j < i; j++) {
            double distance =
                Math.hypot(
                    bolts.get(i).x() - bolts.get(j).x(), bolts.get(i).y() - bolts.get(j).y());
            assertThat(ringDistances(anchors))
                .anySatisfy(ring -> assertThat(distance).isCloseTo(ring, offset(1e-6)));
          }
        }
      }
    }
  }

  private static List<Double> ringDistances(Anchors anchors) {
    List<Double> distances = new ArrayList<>();
    for (int i = 1; i < anchors.count(); i++) {
      distances.add(anchors.circle().millimetres() * Math.sin(Math.PI * i / anchors.count()));
    }
    return distances;
  }
}
