package pegbook.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is read back lies where it was painted. */
class PdfReaderTest {
  @Test
  void textStandsWhereItWasWritten() throws IOException {
    TextRun run = new TrialPdf().text(30, 200, 10, "HH 5 1⁄2").read().pages().get(0).runs().get(0);
    assertThat(run.text()).isEqualTo("HH 5 1⁄2");
    assertThat(run.start().x()).isCloseTo(30, within(0.001));
    assertThat(run.start().y()).isCloseTo(200, within(0.001));
    assertThat(run.size()).isCloseTo(10, within(0.001));
    assertThat(run.font()).isEqualTo("SourceSans3-Regular");
    assertThat(run.isInDrawing()).isFalse();
  }

  @Test
  void letterBoxesAreThoseOfTheShapes() throws IOException {
    TextRun run = new TrialPdf().text(30, 200, 100, "H").read().pages().get(0).runs().get(0);
    double capital = TrialPdf.packetFont().getOS2Windows().getCapHeight() / 1000.0;
    assertThat(run.box().height()).isCloseTo(capital * 100 / TrialPdf.POINTS, within(0.2));
    assertThat(run.box().bottom()).isCloseTo(200, within(0.05));
  }

  @Test
  void turnedTextKeepsItsTurn() throws IOException {
    TextRun run =
        new TrialPdf().turned(50, 100, 12, 90, "up the page").read().pages().get(0).runs().get(0);
    assertThat(run.degrees()).isCloseTo(90, within(0.01));
    assertThat(run.box().height()).isGreaterThan(run.box().width() * 3);
    assertThat(run.end().x()).isCloseTo(50, within(0.01));
    assertThat(run.ink().height()).isLessThan(6);
  }

  @Test
  void drawingsAreReadThroughTheirMatrix() throws IOException {
    TrialPdf pdf = new TrialPdf();
    PrintedPage page =
        pdf.drawing(
                40,
                60,
                120,
                50,
                content -> {
                  content.setLineWidth(0.35f);
                  TrialPdf.stroke(content, 10, 20, 110, 20);
                  pdf.label(content, 10, 25, 9, "100 mm");
                })
            .read()
            .pages()
            .get(0);
    assertThat(page.drawings()).hasSize(1);
    assertThat(page.drawings().get(0).box().left()).isCloseTo(40, within(0.001));
    assertThat(page.drawings().get(0).box().top()).isCloseTo(110, within(0.001));
    DrawnPath line = page.pathsOf(0).get(0);
    assertThat(line.box().width()).isCloseTo(100, within(0.001));
    assertThat(line.box().left()).isCloseTo(50, within(0.001));
    assertThat(line.stroke().orElseThrow()).isCloseTo(0.35, within(0.001));
    TextRun label = page.runsOf(0).get(0);
    assertThat(label.size()).isCloseTo(9, within(0.001));
    assertThat(label.start().x()).isCloseTo(50, within(0.001));
    assertThat(label.start().y()).isCloseTo(85, within(0.001));
  }

  @Test
  void circlesAreKnown() throws IOException {
    double curve = 0.5522847498 * 5;
    PrintedPage page =
        new TrialPdf()
            .drawing(
                20,
                20,
                50,
                50,
                content -> {
                  float k = (float) curve;
                  content.moveTo(30, 25);
                  content.curveTo(30, 25 + k, 25 + k, 30, 25, 30);
                  content.curveTo(25 - k, 30, 20, 25 + k, 20, 25);
                  content.curveTo(20, 25 - k, 25 - k, 20, 25, 20);
                  content.curveTo(25 + k, 20, 30, 25 - k, 30, 25);
                  content.closeAndStroke();
                })
            .read()
            .pages()
            .get(0);
    DrawnPath.Round circle = page.pathsOf(0).get(0).asCircle().orElseThrow();
    assertThat(circle.radius()).isCloseTo(5, within(0.01));
    assertThat(circle.centre().x()).isCloseTo(45, within(0.01));
  }

  @Test
  void tagsFieldsAndBookmarksAreFound() throws IOException {
    PrintedDocument document =
        new TrialPdf()
            .bookmark("First")
            .tagged("H1", 30, 250, "A heading")
            .tagged("Artifact", 30, 12, "a frame text")
            .nextPage()
            .bookmark("Second")
            .tagged("P", 30, 250, "A text")
            .field("day-1-S1-depth", 30, 100, 20, 8)
            .read();
    assertThat(document.pages().get(0).runs())
        .extracting(TextRun::isHeading)
        .containsExactly(true, false);
    assertThat(document.pages().get(0).runs())
        .extracting(TextRun::isArtifact)
        .containsExactly(false, true);
    assertThat(document.pages().get(1).runs().get(0).tags()).containsExactly("P");
    PrintedPage.Field field = document.pages().get(1).fields().get(0);
    assertThat(field.name()).isEqualTo("day-1-S1-depth");
    assertThat(field.box().left()).isCloseTo(30, within(0.001));
    assertThat(field.box().height()).isCloseTo(8, within(0.001));
    assertThat(document.pages().get(0).fields()).isEmpty();
    assertThat(document.bookmarks())
        .containsExactly(
            new PrintedDocument.Bookmark("First", 1, 1),
            new PrintedDocument.Bookmark("Second", 1, 2));
  }

  @Test
  void linesAreReadFromTheTopAndFromTheLeft() throws IOException {
    PrintedDocument document =
        new TrialPdf()
            .text(60, 200, 10, "second")
            .text(30, 200, 10, "first")
            .text(30, 220, 10, "above")
            .read();
    assertThat(document.lines()).isEqualTo(List.of("above", "first second"));
  }
}
