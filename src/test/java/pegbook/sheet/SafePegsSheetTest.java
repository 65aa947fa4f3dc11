package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.safepegs.SafePegs;
import pegbook.calc.safepegs.SafePegs.Peg;
import pegbook.geometry.Point;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;
import pegbook.sheet.plan.PegPicture;
import pegbook.testing.TrialPacket;

class SafePegsSheetTest {
  private static final Pattern SCALE = Pattern.compile("1:(\\d+)");
  private static final Map<String, Optional<SafePegsSheet>> SHEETS = new ConcurrentHashMap<>();

  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(12));
  }

  static SafePegsSheet sheet(TrialPacket trial) {
    return SHEETS
        .computeIfAbsent(trial.name(), name -> SafePegsSheet.of(trial.packet(), trial.writing()))
        .orElseThrow();
  }

  private static double scale(SafePegsSheet sheet) {
    Matcher matcher = SCALE.matcher(sheet.caption());
    assertThat(matcher.find()).isTrue();
    return Double.parseDouble(matcher.group(1));
  }

  /** Squares as large as a peg's, in the order of the pegs. */
  private static List<Spot> squares(SafePegsSheet sheet) {
    List<Spot> squares = new ArrayList<>();
    for (Element element : sheet.plan().elements()) {
      if (element instanceof Element.Path path && path.spots().size() == 4 && path.closed()) {
        double side = path.spots().get(1).x() - path.spots().get(0).x();
        if (Math.abs(side - 2 * PegPicture.PEG_MM) < 0.03) {
          squares.add(
              new Spot(
                  path.spots().get(0).x() + PegPicture.PEG_MM,
                  path.spots().get(0).y() + PegPicture.PEG_MM));
        }
      }
    }
    return squares;
  }

  /** East to the right, north up, at the scale that the caption names. */
  @ParameterizedTest
  @MethodSource("packets")
  void pegsStandInThePictureAtTrueScale(TrialPacket trial) {
    SafePegsSheet sheet = sheet(trial);
    List<Peg> pegs = trial.packet().safePegs().pegs();
    List<Spot> squares = squares(sheet);
    assertThat(squares).hasSameSizeAs(pegs);
    Point first = pegs.get(0).peg().at();
    for (int i = 0; i < pegs.size(); i++) {
      Point at = pegs.get(i).peg().at();
      double perMetre = 1000 / scale(sheet);
      assertThat(squares.get(i).x() - squares.get(0).x())
          .isCloseTo((at.east() - first.east()) * perMetre, within(0.03));
      assertThat(squares.get(i).y() - squares.get(0).y())
          .isCloseTo((at.north() - first.north()) * perMetre, within(0.03));
    }
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyPegAndMarkIsNamedInThePictureOrSaidNotToBe(TrialPacket trial) {
    SafePegsSheet sheet = sheet(trial);
    List<String> labels =
        sheet.plan().elements().stream()
            .filter(Element.Label.class::isInstance)
            .map(element -> ((Element.Label) element).text())
            .toList();
    for (Peg peg : trial.packet().safePegs().pegs()) {
      assertThat(labels.contains(peg.peg().id()) || !sheet.unnamed().isEmpty()).isTrue();
    }
    assertThat(labels.stream().filter(label -> label.matches("[SPK]\\d+")).toList())
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("packets")
  void rowsSayWhatTheFiguresSay(TrialPacket trial) {
    SafePegsSheet sheet = sheet(trial);
    SafePegs figures = trial.packet().safePegs();
    assertThat(sheet.pegs()).hasSameSizeAs(figures.pegs());
    assertThat(sheet.finds()).hasSameSizeAs(figures.finds());
    for (int i = 0; i < figures.finds().size(); i++) {
      SafePegs.Find find = figures.finds().get(i);
      SafePegsSheet.FindRow row = sheet.finds().get(i);
      assertThat(row.mark()).isEqualTo(find.mark());
      assertThat(row.first())
          .isEqualTo(
              find.first().name() + ": " + trial.writing().formats().tape(find.first().length()));
      assertThat(row.side()).startsWith(find.left() ? "left" : "right");
      assertThat(row.crossing().endsWith("weak")).isEqualTo(find.weak());
    }
    assertThat(sheet.stretched()).isEqualTo(!figures.strings().isEmpty());
    long cells =
        sheet.crossings().stream()
            .flatMap(pair -> Stream.of(pair.left(), pair.right()))
            .filter(cell -> !cell.mark().isEmpty())
            .count();
    assertThat(cells).isEqualTo(figures.crossings().size());
  }

  @Test
  void pegsUnderTheFloorAreNamedToBePulled() {
    for (TrialPacket trial : packets().toList()) {
      boolean under = !trial.packet().safePegs().underFloor().isEmpty();
      assertThat(sheet(trial).steps().stream().anyMatch(step -> step.contains("where the floor")))
          .isEqualTo(under);
    }
  }
}
