package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.tapetable.TapeTable;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.calc.tapetable.TapeTable.Stand;
import pegbook.figures.Hole;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.measure.Notation;
import pegbook.packet.Packet;
import pegbook.packet.Packets;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;
import pegbook.sheet.plan.PlanContent;
import pegbook.testing.LayoutJob;
import pegbook.testing.TrialPacket;

class SitePlanSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50));
  }

  private static final Map<String, SitePlanSheet> SHEETS = new ConcurrentHashMap<>();

  private static SitePlanSheet sheet(TrialPacket trial) {
    return SHEETS.computeIfAbsent(
        trial.name(), name -> SitePlanSheet.of(trial.packet(), trial.writing()));
  }

  /** The plan on which the marks are named. */
  private static Drawing figure(SitePlanSheet sheet) {
    return sheet.marking().orElse(sheet.plan());
  }

  /** Scale read from the caption: the number behind "1:". */
  private static double ratio(SitePlanSheet sheet) {
    String caption = sheet.marking().isPresent() ? sheet.markingCaption() : sheet.planCaption();
    int at = caption.indexOf("1:") + 2;
    int end = at;
    while (end < caption.length() && Character.isDigit(caption.charAt(end))) {
      end++;
    }
    return Double.parseDouble(caption.substring(at, end));
  }

  /** Rings of holes in the order of the marks: drawn whole, in the pen of holes alone. */
  private static List<Element.Circle> rings(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Element.Circle.class::isInstance)
        .map(Element.Circle.class::cast)
        .filter(circle -> circle.pen().equals(Optional.of(Pen.MEDIUM)))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("packets")
  void holesReadBackFromThePlanHaveTheirSizeAndTheTapesOfTheTable(TrialPacket trial) {
    SitePlanSheet sheet = sheet(trial);
    Packet packet = trial.packet();
    List<Hole> holes = packet.depthTargets().holes();
    List<Element.Circle> rings = rings(figure(sheet));
    assertThat(rings).hasSameSizeAs(holes);
    double metresPerMm = ratio(sheet) / 1000;
    for (int i = 0; i < holes.size(); i++) {
      assertThat(rings.get(i).radiusMm() * 2 * metresPerMm)
          .isCloseTo(holes.get(i).diameter().metres(), within(1e-9));
    }
    TapeTable table = packet.tapeTable();
    Spot first = centre(holes, rings, table.baseline().first());
    Spot second = centre(holes, rings, table.baseline().second());
    Length half = packet.job().layout().tape().division().times(0.5 + 1e-5);
    for (TapeTableSheet.MarkRow row : TapeTableSheetTest.sheet(trial).rows()) {
      Spot mark = centre(holes, rings, row.mark());
      assertThat(Spots.distanceMm(first, mark) * metresPerMm)
          .isCloseTo(length(row.fromFirst()), within(half.metres()));
      assertThat(Spots.distanceMm(second, mark) * metresPerMm)
          .isCloseTo(length(row.fromSecond()), within(half.metres()));
    }
  }

  private static Spot centre(List<Hole> holes, List<Element.Circle> rings, String mark) {
    for (int i = 0; i < holes.size(); i++) {
      if (holes.get(i).mark().equals(mark)) {
        return rings.get(i).centre();
      }
    }
    throw new IllegalArgumentException(mark);
  }

  /** Distances alone do not see a mirrored plan: the printed sides and the winds do. */
  @ParameterizedTest
  @MethodSource("packets")
  void thePlanIsNeitherMirroredNorTurned(TrialPacket trial) {
    SitePlanSheet sheet = sheet(trial);
    List<Hole> holes = trial.packet().depthTargets().holes();
    List<Element.Circle> rings = rings(figure(sheet));
    TapeTable table = trial.packet().tapeTable();
    Spot first = centre(holes, rings, table.baseline().first());
    Spot second = centre(holes, rings, table.baseline().second());
    TapeTableSheet tapes = TapeTableSheetTest.sheet(trial);
    for (int i = 0; i < table.rows().size(); i++) {
      Row row = table.rows().get(i);
      Spot mark = centre(holes, rings, row.mark());
      double left =
          (second.x() - first.x()) * (mark.y() - first.y())
              - (second.y() - first.y()) * (mark.x() - first.x());
      if (row.stand() == Stand.LEFT) {
        assertThat(left).isPositive();
        assertThat(tapes.rows().get(i).side()).startsWith("left");
      } else if (row.stand() == Stand.RIGHT) {
        assertThat(left).isNegative();
        assertThat(tapes.rows().get(i).side()).startsWith("right");
      }
    }
    winds(sheet, rings, ratio(sheet));
  }

  /** "East of" in the table of marks is right of the centre on the plan, "north of" is above it. */
  private static void winds(SitePlanSheet sheet, List<Element.Circle> rings, double ratio) {
    List<SitePlanSheet.MarkCell> cells = new ArrayList<>();
    sheet.marks().forEach(pair -> cells.add(pair.left()));
    sheet.marks().stream()
        .map(SitePlanSheet.MarkPair::right)
        .filter(cell -> !cell.mark().isEmpty())
        .forEach(cells::add);
    assertThat(cells).hasSameSizeAs(rings);
    for (int i = 1; i < cells.size(); i++) {
      double right = (rings.get(i).centre().x() - rings.get(0).centre().x()) * ratio / 1000;
      double up = (rings.get(i).centre().y() - rings.get(0).centre().y()) * ratio / 1000;
      // Two printed places, each to half a sixteenth of an inch or half a millimetre.
      assertThat(metres(cells.get(i).east()) - metres(cells.get(0).east()))
          .isCloseTo(right, within(0.0017));
      assertThat(metres(cells.get(i).north()) - metres(cells.get(0).north()))
          .isCloseTo(up, within(0.0017));
    }
  }

  private static double length(String printed) {
    return Notation.LENGTHS.read(printed).taken().orElseThrow().metres();
  }

  /** A printed place on one axis: west and south are negative. */
  private static double metres(String printed) {
    String plain = printed.replaceAll(" (east|west|north|south)$", "");
    double size = length(plain);
    return printed.endsWith("west") || printed.endsWith("south") ? -size : size;
  }

  @ParameterizedTest
  @MethodSource("packets")
  void noTextLiesOverAnotherOrOutsideAndNoneIsSmall(TrialPacket trial) {
    SitePlanSheet sheet = sheet(trial);
    Lettering lettering = trial.writing().lettering();
    List<Drawing> drawings = new ArrayList<>(sheet.drawings());
    drawings.addAll(TapeTableSheetTest.sheet(trial).drawings());
    for (Drawing drawing : drawings) {
      assertThat(drawing.widthMm()).isLessThan(trial.writing().page().widthMm() + 1e-6);
      assertThat(drawing.heightMm()).isLessThan(trial.writing().page().heightMm() + 1e-6);
      Plate area = Plate.between(0, 0, drawing.widthMm(), drawing.heightMm());
      List<Element.Label> labels = labels(drawing);
      List<Plate> plates = labels.stream().map(label -> Plate.of(label, lettering)).toList();
      for (int i = 0; i < plates.size(); i++) {
        assertThat(labels.get(i).size()).isGreaterThanOrEqualTo(8);
        assertThat(plates.get(i).isInside(area)).as(labels.get(i).text()).isTrue();
        for (int j = 0; j < i; j++) {
          assertThat(
                  isOneOver(labels.get(i), labels.get(j)) || !plates.get(i).overlaps(plates.get(j)))
              .as("%s and %s", labels.get(i).text(), labels.get(j).text())
              .isTrue();
        }
      }
    }
  }

  /**
   * Lines of one wording stand close over one another: their tall and low letters may share air.
   */
  private static boolean isOneOver(Element.Label one, Element.Label other) {
    double lines = Math.abs(one.at().y() - other.at().y()) * Lettering.POINTS_PER_MM / one.size();
    return one.at().x() == other.at().x() && one.size() == other.size() && lines > 1.1;
  }

  private static List<Element.Label> labels(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Element.Label.class::isInstance)
        .map(Element.Label.class::cast)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyMarkIsNamedOnThePlanOrInTheSentenceBelow(TrialPacket trial) {
    SitePlanSheet sheet = sheet(trial);
    List<String> texts =
        Stream.concat(
                Stream.of(figure(sheet)),
                sheet.parts().stream().map(SitePlanSheet.PartFigure::drawing))
            .flatMap(drawing -> labels(drawing).stream())
            .map(Element.Label::text)
            .toList();
    for (Hole hole : trial.packet().depthTargets().holes()) {
      assertThat(texts.contains(hole.mark()) || !sheet.unnamed().isEmpty())
          .as(hole.mark())
          .isTrue();
    }
    List<String> tapes =
        labels(TapeTableSheetTest.sheet(trial).swings()).stream().map(Element.Label::text).toList();
    for (Row row : trial.packet().tapeTable().rows()) {
      assertThat(tapes).containsAnyOf(row.mark(), row.mark() + " · " + row.order());
    }
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyPlanHasItsBarsAndItsNorth(TrialPacket trial) {
    SitePlanSheet sheet = sheet(trial);
    double bar = trial.packet().job().heading().units().name().equals("METRIC") ? 100 : 101.6;
    Stream.concat(Stream.of(sheet.plan()), sheet.marking().stream())
        .forEach(
            drawing -> {
              assertThat(labels(drawing)).extracting(Element.Label::text).contains("N");
              assertThat(drawing.elements())
                  .filteredOn(Element.Line.class::isInstance)
                  .map(Element.Line.class::cast)
                  .anyMatch(
                      line ->
                          Math.abs(Spots.distanceMm(line.from(), line.to()) - bar) < 1e-9
                              && line.from().y() == line.to().y());
            });
  }

  @Test
  void examplesNameEverything() {
    TrialPacket.examples()
        .forEach(trial -> assertThat(sheet(trial).unnamed()).as(trial.name()).isEmpty());
  }

  /** 120 marks 750 mm apart: too many names for one plan, so it becomes a key to its parts. */
  @Test
  void crowdedMarksAreNamedOnPartsOfThePlan() {
    StringJoiner supports = new StringJoiner(", ");
    for (int row = 0; row < 10; row++) {
      for (int column = 0; column < 12; column++) {
        supports.add(
            String.format(
                Locale.ROOT, "\"%.1f m, %.1f m\"", 0.5 + 0.75 * column, 0.5 + 0.75 * row));
      }
    }
    TrialPacket trial =
        TrialPacket.text(
            "close grid",
            "{\"title\": \"Close grid\", \"units\": \"metric\", \"ground\": {\"soil\": \"sand\"},"
                + " \"supports\": {\"hole\": \"250 mm\"}, \"layout\": {\"outline\": {\"points\": {"
                + "\"corners\": [\"0 m, 0 m\", \"0 m, 8 m\", \"10 m, 8 m\", \"10 m, 0 m\"],"
                + " \"supports\": ["
                + supports
                + "]}}}}");
    SitePlanSheet sheet = sheet(trial);
    assertThat(sheet.unnamed()).isEmpty();
    assertThat(sheet.parts()).hasSizeGreaterThan(1);
    List<String> named =
        sheet.parts().stream()
            .flatMap(part -> part.drawing().elements().stream())
            .filter(Element.Label.class::isInstance)
            .map(label -> ((Element.Label) label).text())
            .filter(text -> text.matches("S\\d+"))
            .toList();
    List<String> marks =
        trial.packet().placement().marks().stream().map(mark -> mark.id()).toList();
    assertThat(marks).hasSize(120);
    assertThat(named).containsExactlyInAnyOrderElementsOf(marks);
  }

  @Test
  void aBreachIsPrintedStrong() {
    boolean breach = false;
    for (TrialPacket trial : packets().toList()) {
      SitePlanSheet sheet = sheet(trial);
      for (int i = 0; i < sheet.clearances().size(); i++) {
        var row = sheet.clearances().get(i);
        var figure = trial.packet().sitePlan().clearances().get(i);
        assertThat(row.emphasis().equals("strong")).isEqualTo(figure.breach());
        assertThat(row.verdict().equals("NO")).isEqualTo(figure.breach());
        breach |= figure.breach();
      }
    }
    assertThat(breach).as("some made-up job has a breach").isTrue();
  }

  @Test
  void aMissingDistanceAsksWhereItMatters() {
    LayoutJob job = new LayoutJob().spot("oak", -9, 1);
    Segment line = new Segment(new Point(-9, 9), new Point(9, 9));
    job.feature("cable", Feature.Kind.BURIED_LINE, new Feature.Shape.Line(line), Optional.empty());
    Packet packet = Packets.calculate(job.job(), "0".repeat(64));
    TrialPacket trial = new TrialPacket("unknown distances", packet);
    assertThat(sheet(trial).clearances())
        .extracting(SitePlanSheet.ClearanceRow::thing, SitePlanSheet.ClearanceRow::verdict)
        .containsExactly(tuple("oak", "–"), tuple("cable", "ask"));
  }

  @Test
  void thePlanShowsEverythingThatThePacketKnows() {
    PlanContent content = PlanContent.of(TrialPacket.examples().findFirst().orElseThrow().packet());
    assertThat(content.holes()).isNotEmpty();
    assertThat(content.heaps()).isNotEmpty();
  }
}
