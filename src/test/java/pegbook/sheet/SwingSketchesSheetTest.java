package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.tapetable.TapeTable;
import pegbook.calc.tapetable.TapeTable.BetterPair;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;
import pegbook.testing.TrialPacket;

class SwingSketchesSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(12));
  }

  private static List<String> texts(Drawing drawing) {
    return labels(drawing).map(Element.Label::text).toList();
  }

  private static Stream<Element.Label> labels(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Element.Label.class::isInstance)
        .map(Element.Label.class::cast);
  }

  /** The baseline first, then one sketch a row, in the order of the table. */
  @ParameterizedTest
  @MethodSource("packets")
  void sketchesFollowTheTapeTable(TrialPacket trial) {
    List<Drawing> sketches = SwingSketchesSheet.of(trial.packet(), trial.writing()).drawings();
    TapeTable table = trial.packet().tapeTable();
    Formats formats = trial.writing().formats();

    assertThat(sketches).hasSize(table.rows().size() + 1);
    assertThat(texts(sketches.get(0)))
        .contains(
            table.baseline().first(),
            table.baseline().second(),
            formats.tape(table.baseline().tape()));
    for (int i = 0; i < table.rows().size(); i++) {
      Row row = table.rows().get(i);
      Optional<BetterPair> pair =
          table.betterPairs().stream().filter(each -> each.mark().equals(row.mark())).findFirst();
      List<String> readings = new ArrayList<>();
      readings.add(formats.tape(pair.map(BetterPair::fromFirst).orElse(row.fromFirst())));
      if (!row.stand().isOnLine()) {
        readings.add(formats.tape(pair.map(BetterPair::fromSecond).orElse(row.fromSecond())));
      }
      List<String> texts = texts(sketches.get(i + 1));
      // A reading without room in the drawing stands beside it, behind the mark it comes from.
      String all = String.join(" ", texts);
      assertThat(texts.get(0)).as(trial.name()).isEqualTo(row.mark());
      assertThat(all).contains(readings);
      assertThat(all).contains(formats.count(row.order()));
    }
  }

  /** Left of the line is up, right is down: the mark's own name stands on that side of it. */
  @ParameterizedTest
  @MethodSource("packets")
  void leftIsUp(TrialPacket trial) {
    List<Drawing> sketches = SwingSketchesSheet.of(trial.packet(), trial.writing()).drawings();
    TapeTable table = trial.packet().tapeTable();
    for (int i = 0; i < table.rows().size(); i++) {
      Row row = table.rows().get(i);
      boolean own = table.betterPairs().stream().anyMatch(pair -> pair.mark().equals(row.mark()));
      if (!own && !row.stand().isOnLine()) {
        List<Spot> ends = tapes(sketches.get(i + 1));
        double line = ends.get(0).y();
        double mark = ends.get(1).y();
        assertThat(mark > line).as(row.mark()).isEqualTo(row.stand() == TapeTable.Stand.LEFT);
      }
    }
  }

  /** The heavy line's beginning, and where the first line after it from there ends: the mark. */
  private static List<Spot> tapes(Drawing drawing) {
    List<Element.Line> lines =
        drawing.elements().stream()
            .filter(Element.Line.class::isInstance)
            .map(Element.Line.class::cast)
            .toList();
    Element.Line base =
        lines.stream()
            .filter(line -> line.pen().equals(pegbook.sheet.drawing.Pen.HEAVY))
            .findFirst()
            .orElseThrow();
    Element.Line tape =
        lines.stream()
            .filter(line -> !line.equals(base) && line.from().equals(base.from()))
            .findFirst()
            .orElseThrow();
    return List.of(base.from(), tape.to());
  }

  @ParameterizedTest
  @MethodSource("packets")
  void typeCanBeReadOnAClipboard(TrialPacket trial) {
    SwingSketchesSheet.of(trial.packet(), trial.writing())
        .drawings()
        .forEach(
            drawing ->
                assertThat(labels(drawing))
                    .allSatisfy(label -> assertThat(label.size()).isGreaterThanOrEqualTo(8)));
  }
}
