package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pegbook.testing.DrawnPath;
import pegbook.testing.PdfReader;
import pegbook.testing.Position;
import pegbook.testing.PrintedPage;
import pegbook.testing.TextRun;
import pegbook.testing.WorkFolder;

/** Templates for bolts, read back from the printed binder with a ruler. */
class AnchorTemplateTest {
  private static final double MM = 0.05;
  private static final Path FOLDER = WorkFolder.of("templates");

  @BeforeAll
  static void print() {
    for (String example : List.of("sky-deck", "forest-hut")) {
      Printing.Said said =
          Printing.run("print", "input/" + example + ".json", "--output", FOLDER.toString());
      assertThat(said.code()).as(said.err()).isZero();
    }
  }

  private static List<PrintedPage> templates(String example) {
    return PdfReader.read(Printing.bytes(FOLDER.resolve(example).resolve("binder.pdf")))
        .pages()
        .stream()
        .filter(
            page ->
                page.lines().stream()
                    .anyMatch(line -> line.contains("template for the bolts at true size")))
        .toList();
  }

  private static List<Position> circles(PrintedPage page, double radius) {
    return page.paths().stream()
        .flatMap(path -> path.asCircle().stream())
        .filter(circle -> Math.abs(circle.radius() - radius) < MM)
        .map(DrawnPath.Round::centre)
        .toList();
  }

  private static boolean hasPiece(PrintedPage page, double length) {
    return page.paths().stream()
        .flatMap(path -> path.pieces().stream())
        .anyMatch(piece -> Math.abs(piece.length() - length) < MM);
  }

  /** Three bolts of 1/2 in on a circle of 5 1/2 in, the first to the north; bar of 4 in. */
  @Test
  void theSkyDecksBoltsOnOnePage() {
    List<PrintedPage> pages = templates("sky-deck");
    assertThat(pages).hasSize(1);
    PrintedPage page = pages.get(0);
    List<Position> bolts = circles(page, 6.35);
    double side = 5.5 * 25.4 * Math.sqrt(3) / 2;

    assertThat(bolts).hasSize(3);
    assertThat(bolts.get(0).distanceTo(bolts.get(1))).isEqualTo(side, offset(MM));
    assertThat(bolts.get(1).distanceTo(bolts.get(2))).isEqualTo(side, offset(MM));
    assertThat(bolts.get(2).distanceTo(bolts.get(0))).isEqualTo(side, offset(MM));
    // The first is the northern one, the second lies to the east.
    assertThat(bolts.get(0).y()).isGreaterThan(bolts.get(1).y() + 100);
    assertThat(bolts.get(1).x()).isGreaterThan(bolts.get(2).x() + 100);
    assertThat(circles(page, 25.4)).as("sleeve").hasSize(1);
    assertThat(hasPiece(page, 101.6)).as("check bar").isTrue();
  }

  /** Four bolts of 12 mm on a circle of 160 mm over two pages, joined by the crosses A1 and A2. */
  @Test
  void theHutsBoltsOverTwoPages() {
    List<PrintedPage> pages = templates("forest-hut");
    assertThat(pages).hasSize(2);
    List<Position> west = circles(pages.get(0), 6);
    List<Position> east = circles(pages.get(1), 6);
    double side = 160 / Math.sqrt(2);
    Position westCross = cross(pages.get(0));
    Position eastCross = cross(pages.get(1));

    assertThat(west).hasSize(2);
    assertThat(east).hasSize(2);
    assertThat(west.get(0).distanceTo(west.get(1))).isEqualTo(side, offset(MM));
    for (Position bolt : west) {
      double up = bolt.y() - westCross.y();
      assertThat(east)
          .anySatisfy(
              other -> {
                double across = (other.x() - eastCross.x()) - (bolt.x() - westCross.x());
                assertThat(across).isEqualTo(side, offset(MM));
                assertThat(other.y() - eastCross.y()).isEqualTo(up, offset(MM));
              });
    }
    assertThat(pages).allMatch(page -> hasPiece(page, 100));
  }

  /** The ring of the lower cross, A1. */
  private static Position cross(PrintedPage page) {
    assertThat(page.runs().stream().map(TextRun::text)).anyMatch(text -> text.contains("A1"));
    return circles(page, 1.5).stream()
        .min((one, other) -> Double.compare(one.y(), other.y()))
        .orElseThrow();
  }
}
