package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.testing.DrawnPath;
import pegbook.testing.PdfReader;
import pegbook.testing.Position;
import pegbook.testing.PrintedPage;

/**
 * Plans read back from the PDF with a ruler: the check bar has its length, and the holes lie where
 * the figures and the tapes say, so that a plan turned or mirrored as a whole cannot pass.
 */
class TrueScaleTest {
  private static final double MM = 0.05;
  private static final Pattern SCALE = Pattern.compile("\\(?1:(\\d+)\\)?");

  static List<String> examples() {
    return Printing.examples();
  }

  private record Holes(JsonNode results) {
    static Holes of(String example) throws IOException {
      return new Holes(
          new ObjectMapper()
              .readTree(Printing.bytes(Printing.packet(example).resolve("results.json"))));
    }

    int count() {
      return results.get("marks").size();
    }

    double east(int mark) {
      return results.get("marks").get(mark).get("eastMetres").asDouble();
    }

    double north(int mark) {
      return results.get("marks").get(mark).get("northMetres").asDouble();
    }

    double diameter(int mark) {
      String id = results.get("marks").get(mark).get("id").asText();
      for (JsonNode hole : results.get("holes")) {
        if (hole.get("mark").asText().equals(id)) {
          return hole.get("diameterMetres").asDouble();
        }
      }
      throw new IllegalStateException("no hole at " + id);
    }
  }

  private static List<PrintedPage> pages(String example) {
    return PdfReader.read(Printing.bytes(Printing.packet(example).resolve("binder.pdf"))).pages();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void aPageShowsEveryHoleAtTrueSizeInItsPlace(String example) throws IOException {
    Holes holes = Holes.of(example);
    assertThat(pages(example)).anyMatch(page -> showsAll(page, holes, 1, 1));
    // The same page must not fit a mirror image; that of the three-legged stand with a leg to the
    // north is the stand itself.
    if (!example.equals("smallest")) {
      assertThat(pages(example)).noneMatch(page -> showsAll(page, holes, -1, 1));
      assertThat(pages(example)).noneMatch(page -> showsAll(page, holes, 1, -1));
    }
  }

  /** Whether circles stand at the holes' places, in some scale that the page names. */
  private static boolean showsAll(PrintedPage page, Holes holes, int eastSign, int northSign) {
    List<DrawnPath.Round> circles =
        page.paths().stream().flatMap(path -> path.asCircle().stream()).toList();
    return scales(page).stream()
        .anyMatch(
            scale ->
                circles.stream()
                    .anyMatch(first -> fits(circles, first, holes, scale, eastSign, northSign)));
  }

  private static List<Integer> scales(PrintedPage page) {
    List<Integer> scales = new ArrayList<>();
    for (String line : page.lines()) {
      Matcher matcher = SCALE.matcher(line);
      while (matcher.find()) {
        scales.add(Integer.parseInt(matcher.group(1)));
      }
    }
    return scales;
  }

  private static boolean fits(
      List<DrawnPath.Round> circles,
      DrawnPath.Round first,
      Holes holes,
      int scale,
      int eastSign,
      int northSign) {
    double perMetre = 1000.0 / scale;
    return IntStream.range(0, holes.count())
        .allMatch(
            mark -> {
              double x =
                  first.centre().x() + eastSign * perMetre * (holes.east(mark) - holes.east(0));
              double y =
                  first.centre().y() + northSign * perMetre * (holes.north(mark) - holes.north(0));
              double radius = holes.diameter(mark) / 2 * perMetre;
              Position place = new Position(x, y);
              return circles.stream()
                  .anyMatch(
                      circle ->
                          circle.centre().distanceTo(place) < MM
                              && Math.abs(circle.radius() - radius) < MM);
            });
  }

  @ParameterizedTest
  @MethodSource("examples")
  void tapesAreTheDistancesBetweenTheDrawnPlaces(String example) throws IOException {
    Holes holes = Holes.of(example);
    JsonNode tapes = holes.results().get("tapes");
    int first = indexOf(holes, tapes.get("first").asText());
    int second = indexOf(holes, tapes.get("second").asText());
    for (JsonNode row : tapes.get("marks")) {
      int mark = indexOf(holes, row.get("mark").asText());
      double half = example.equals("forest-hut") ? 0.0005 : 0.0016;
      assertThat(row.get("fromFirstMetres").asDouble())
          .isCloseTo(distance(holes, first, mark), org.assertj.core.data.Offset.offset(half));
      assertThat(row.get("fromSecondMetres").asDouble())
          .isCloseTo(distance(holes, second, mark), org.assertj.core.data.Offset.offset(half));
    }
  }

  private static int indexOf(Holes holes, String id) {
    return IntStream.range(0, holes.count())
        .filter(mark -> holes.results().get("marks").get(mark).get("id").asText().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static double distance(Holes holes, int one, int other) {
    return Math.hypot(holes.east(one) - holes.east(other), holes.north(one) - holes.north(other));
  }

  /** 100 mm on metric paper, 4 in = 101.6 mm on imperial. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck:101.6", "hillside-deck:101.6", "forest-hut:100"})
  void theCheckBarHasItsLength(String exampleAndLength) {
    String[] parts = exampleAndLength.split(":", 2);
    double length = Double.parseDouble(parts[1]);
    List<PrintedPage> withBar =
        pages(parts[0]).stream()
            .filter(page -> page.lines().stream().anyMatch(line -> line.contains("resized")))
            .toList();
    assertThat(withBar).isNotEmpty();
    assertThat(withBar)
        .allMatch(
            page ->
                page.paths().stream()
                    .flatMap(path -> path.pieces().stream())
                    .anyMatch(piece -> Math.abs(piece.length() - length) < MM));
  }
}
