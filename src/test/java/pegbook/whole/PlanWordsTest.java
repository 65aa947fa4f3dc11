package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.testing.PdfReader;
import pegbook.testing.Position;

/**
 * The words about where things lie against the places themselves: a figure or a word that is
 * mirrored or turned as a whole agrees with itself everywhere but here.
 */
class PlanWordsTest {
  private static final List<String> WINDS =
      List.of(
          "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");

  static List<String> examples() {
    return Printing.examples();
  }

  /** Places of marks, metres east and north of the centre. */
  private static Map<String, Position> marks(String example) throws IOException {
    byte[] results = Printing.bytes(Printing.packet(example).resolve("results.json"));
    Map<String, Position> marks = new LinkedHashMap<>();
    for (JsonNode mark : new ObjectMapper().readTree(results).get("marks")) {
      marks.put(
          mark.get("id").asText(),
          new Position(mark.get("eastMetres").asDouble(), mark.get("northMetres").asDouble()));
    }
    return marks;
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theSideToStandOnIsTheSideWhereTheMarkLies(String example) throws IOException {
    Map<String, Position> marks = marks(example);
    String table =
        new String(
            Printing.bytes(Printing.packet(example).resolve("tapes.csv")), StandardCharsets.UTF_8);
    List<String[]> rows = table.lines().skip(1).map(line -> line.split(",", -1)).toList();
    assertThat(rows).isNotEmpty();
    for (String[] row : rows) {
      Position from = marks.get(row[3]);
      Position to = marks.get(row[5]);
      Position mark = marks.get(row[1]);
      assertThat(row[2]).as(example + " " + row[1]).isEqualTo(side(from, to, mark));
    }
  }

  /** On which side of the line from one place to another a third lies, or where on the line. */
  private static String side(Position from, Position to, Position mark) {
    double x = to.x() - from.x();
    double y = to.y() - from.y();
    double turn = x * (mark.y() - from.y()) - y * (mark.x() - from.x());
    if (Math.abs(turn) > 1e-6) {
      return turn > 0 ? "left" : "right";
    }
    double along = (x * (mark.x() - from.x()) + y * (mark.y() - from.y())) / (x * x + y * y);
    return along < 0 ? "beyond first" : along > 1 ? "beyond second" : "between";
  }

  @Test
  void marksRunClockwiseFromTheAzimuthThatTheJobGives() throws IOException {
    Map<String, Position> marks = marks("sky-deck");
    for (int i = 0; i < 6; i++) {
      Position mark = marks.get("S" + (i + 1));
      double azimuth = Math.toDegrees(Math.atan2(mark.x(), mark.y()));
      assertThat((azimuth + 360) % 360).isCloseTo((8 + 60 * i) % 360, within(1e-6));
    }
  }

  /** The fixed things' places are those of the job file, in feet. */
  @Test
  void tiesNameTheWindTowardsTheirMark() throws IOException {
    Map<String, Position> things =
        Map.of(
            "shed, north-west corner", new Position(24, -14),
            "benchmark: nail in the fence post by the gate", new Position(30, 5),
            "oak", new Position(-14, 9));
    Map<String, Position> marks = marks("sky-deck");
    SheetTexts texts =
        SheetTexts.of(
            PdfReader.read(Printing.bytes(Printing.packet("sky-deck").resolve("binder.pdf"))));
    int found = 0;
    for (String tie : List.of("T1", "T2", "T3", "T4")) {
      String row = texts.row("Site plan", tie).replaceAll("\\s+", " ");
      for (Map.Entry<String, Position> thing : things.entrySet()) {
        if (row.startsWith(tie + " " + thing.getKey())) {
          String rest = row.substring(tie.length() + 1 + thing.getKey().length()).strip();
          String mark = rest.substring(0, rest.indexOf(' '));
          assertThat(rest).as(row).endsWith(" " + wind(thing.getValue(), marks.get(mark)));
          found++;
        }
      }
    }
    assertThat(found).isEqualTo(4);
  }

  private static String wind(Position feet, Position metres) {
    double east = metres.x() / 0.3048 - feet.x();
    double north = metres.y() / 0.3048 - feet.y();
    double azimuth = (Math.toDegrees(Math.atan2(east, north)) + 360) % 360;
    return WINDS.get((int) Math.round(azimuth / 45) % 8);
  }
}
