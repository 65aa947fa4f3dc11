package pegbook.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static pegbook.testing.Problem.Kind.DRAWINGS_OVERLAP;
import static pegbook.testing.Problem.Kind.DRAWING_CUT;
import static pegbook.testing.Problem.Kind.FIELD_OVERLAP;
import static pegbook.testing.Problem.Kind.LONE_HEADING;
import static pegbook.testing.Problem.Kind.LONE_TABLE_HEAD;
import static pegbook.testing.Problem.Kind.MISSING_LETTER;
import static pegbook.testing.Problem.Kind.NEARLY_EMPTY;
import static pegbook.testing.Problem.Kind.OUTSIDE_MARGIN;
import static pegbook.testing.Problem.Kind.SMALL_TYPE;
import static pegbook.testing.Problem.Kind.SPLIT_ROW;
import static pegbook.testing.Problem.Kind.TABLE_WITHOUT_HEAD;
import static pegbook.testing.Problem.Kind.TEXT_COVERED;
import static pegbook.testing.Problem.Kind.TEXT_CROWDED;
import static pegbook.testing.Problem.Kind.TEXT_CUT;
import static pegbook.testing.Problem.Kind.TEXT_ON_DRAWING;
import static pegbook.testing.Problem.Kind.TEXT_ON_LINE;
import static pegbook.testing.Problem.Kind.TEXT_OVER_TEXT;
import static pegbook.testing.Problem.Kind.TEXT_STRUCK;
import static pegbook.testing.Problem.Kind.UNREADABLE_TEXT;

import java.awt.Color;
import java.io.IOException;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;

/** Every rule of the page lets a good page pass and stops a bad one. */
class PageCheckTest {
  private static final Rules BINDER = Rules.binder();

  private static void good(TrialPdf pdf) throws IOException {
    assertThat(pdf.problems(BINDER)).isEmpty();
  }

  private static void bad(TrialPdf pdf, Problem.Kind... kinds) throws IOException {
    assertThat(kindsOf(pdf, BINDER)).isEqualTo(EnumSet.copyOf(Set.of(kinds)));
  }

  private static Set<Problem.Kind> kindsOf(TrialPdf pdf, Rules rules) throws IOException {
    return pdf.problems(rules).stream()
        .map(Problem::kind)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Problem.Kind.class)));
  }

  @Test
  void textBesideTextIsGoodOverTextIsBad() throws IOException {
    good(new TrialPdf().text(30, 200, 10, "one").text(30, 196, 10, "two"));
    bad(new TrialPdf().text(30, 200, 10, "one").text(32, 200.5, 10, "two"), TEXT_OVER_TEXT);
    bad(new TrialPdf().text(30, 200, 10, "same").text(30, 200, 10, "same"), TEXT_OVER_TEXT);
  }

  @Test
  void textsOfTwoCellsThatReadAsOneAreBad() throws IOException {
    String row = "Table/TBody/TR/";
    good(new TrialPdf().tagged(row + "TD", 30, 200, "12").tagged(row + "TD", 40, 200, "34"));
    bad(
        new TrialPdf().tagged(row + "TD", 30, 200, "12").tagged(row + "TD", 34.6, 200, "34"),
        TEXT_CROWDED);
    TrialPdf drawn = new TrialPdf();
    bad(
        drawn.drawing(
            30,
            100,
            60,
            60,
            content -> {
              drawn.label(content, 10, 20, 10, "S1");
              drawn.label(content, 13.7, 20, 10, "S2");
            }),
        TEXT_CROWDED);
  }

  @Test
  void turnedTextIsJudgedByItsTurnedBox() throws IOException {
    TrialPdf apart = new TrialPdf().turned(60, 150, 10, 45, "along the slope");
    good(apart.turned(64, 150, 10, 45, "beside it on the slope"));
    TrialPdf crossing = new TrialPdf().turned(60, 150, 10, 45, "along the slope");
    bad(crossing.text(60, 155, 10, "level across"), TEXT_OVER_TEXT);
  }

  @Test
  void textCutByItsCellOrThePaperIsBad() throws IOException {
    bad(clipped(30, 30), TEXT_CUT);
    good(clipped(30, 90));
    bad(new TrialPdf().text(195, 200, 10, "over the edge of it"), TEXT_CUT, OUTSIDE_MARGIN);
  }

  private static TrialPdf clipped(double left, double width) throws IOException {
    TrialPdf pdf = new TrialPdf();
    return pdf.paint(
        content -> {
          content.saveGraphicsState();
          content.addRect(TrialPdf.pt(left), TrialPdf.pt(195), TrialPdf.pt(width), TrialPdf.pt(20));
          content.clip();
          Matrix place = Matrix.getTranslateInstance(TrialPdf.pt(32), TrialPdf.pt(200));
          pdf.write(content, place, 12, "a text of fifty millimetres");
          content.restoreGraphicsState();
        });
  }

  @Test
  void textAcrossARuleOfItsTableIsBad() throws IOException {
    good(new TrialPdf().text(30, 200, 10, "cell").line(25, 199, 80, 199).line(29, 199, 29, 210));
    bad(new TrialPdf().text(30, 200, 10, "cell").line(33, 195, 33, 210), TEXT_ON_LINE);
    bad(new TrialPdf().text(30, 200, 10, "cell").line(25, 201, 80, 201), TEXT_ON_LINE);
  }

  @Test
  void aFilledBorderIsALineToo() throws IOException {
    TrialPdf pdf = new TrialPdf().text(30, 200, 10, "cell");
    bad(pdf.paint(content -> fill(content, Color.BLACK, 33, 195, 0.2, 15)), TEXT_ON_LINE);
  }

  private static void fill(
      PDPageContentStream content, Color colour, double x, double y, double width, double height)
      throws IOException {
    content.setNonStrokingColor(colour);
    content.addRect(TrialPdf.pt(x), TrialPdf.pt(y), TrialPdf.pt(width), TrialPdf.pt(height));
    content.fill();
    content.setNonStrokingColor(Color.BLACK);
  }

  @Test
  void aLabelStruckByALineIsBadUnlessCleared() throws IOException {
    bad(struck(false), TEXT_STRUCK);
    good(struck(true));
  }

  private static TrialPdf struck(boolean cleared) throws IOException {
    TrialPdf pdf = new TrialPdf();
    return pdf.drawing(
        30,
        100,
        100,
        100,
        content -> {
          content.setLineWidth(0.25f);
          TrialPdf.stroke(content, 5, 20.5f, 95, 22.5f);
          if (cleared) {
            content.setNonStrokingColor(Color.WHITE);
            content.addRect(39, 19, 20, 6);
            content.fill();
            content.setNonStrokingColor(Color.BLACK);
          }
          pdf.label(content, 40, 20, 10, "3 ft 6 in");
        });
  }

  @Test
  void aLineDrawnAfterTheClearingStrikesTheText() throws IOException {
    TrialPdf pdf = new TrialPdf();
    bad(
        pdf.drawing(
            30,
            100,
            100,
            100,
            content -> {
              pdf.label(content, 40, 20, 10, "3 ft 6 in");
              content.setLineWidth(0.25f);
              TrialPdf.stroke(content, 45, 15, 45, 30);
            }),
        TEXT_STRUCK);
  }

  @Test
  void aClearingOverAnEarlierLabelIsBad() throws IOException {
    TrialPdf pdf = new TrialPdf();
    bad(
        pdf.drawing(
            30,
            100,
            100,
            100,
            content -> {
              pdf.label(content, 40, 20, 10, "covered");
              content.setNonStrokingColor(Color.WHITE);
              content.addRect(43, 18, 30, 6);
              content.fill();
              content.setNonStrokingColor(Color.BLACK);
              pdf.label(content, 56, 20, 10, "label");
            }),
        TEXT_COVERED);
  }

  @Test
  void smallTypeIsBad() throws IOException {
    good(new TrialPdf().text(30, 200, 8, "small enough"));
    bad(new TrialPdf().text(30, 200, 7.8, "too small"), SMALL_TYPE);
    TrialPdf day = new TrialPdf().text(30, 200, 10, "for a desk").tagged("P", 30, 180, "field");
    assertThat(kindsOf(day, Rules.daySheet())).containsExactly(SMALL_TYPE);
    TrialPdf drawn = new TrialPdf();
    bad(
        drawn.drawing(
            30, 100, 50, 50, content -> drawn.label(content, 5, 5, 7, "small in a drawing")),
        SMALL_TYPE);
  }

  @Test
  void aHeadingAloneAtTheFootIsBad() throws IOException {
    good(new TrialPdf().tagged("H2", 30, 200, "Heading").tagged("P", 30, 190, "Text"));
    bad(
        new TrialPdf()
            .tagged("P", 30, 200, "Text")
            .tagged("H2", 30, 190, "Heading")
            .tagged("Artifact", 30, 12, "job, revision, page"),
        LONE_HEADING);
    good(new TrialPdf().tagged("H2", 30, 200, "Over a drawing").drawing(30, 50, 50, 50, c -> {}));
  }

  @Test
  void aTableHeadAloneAtTheFootIsBad() throws IOException {
    good(new TrialPdf().tagged("THead", 30, 200, "Depth").tagged("TD", 30, 190, "4 ft"));
    bad(
        new TrialPdf().tagged("TD", 30, 200, "4 ft").tagged("THead", 30, 190, "Depth"),
        LONE_TABLE_HEAD);
  }

  @Test
  void aTableThatGoesOnRepeatsItsHead() throws IOException {
    good(
        tableOverTwoPages().tagged("Table/THead/TR/TH", 30, 250, "Depth").tagged(ROW, 30, 60, "3"));
    bad(tableOverTwoPages().tagged(ROW, 30, 60, "3"), TABLE_WITHOUT_HEAD);
    good(tableOverTwoPages().tagged("Another/TBody/TR/TD", 30, 60, "without a head"));
  }

  @Test
  void aRowOverTwoPagesIsBad() throws IOException {
    TrialPdf pdf = tableOverTwoPages().tagged("Table/THead/TR/TH", 30, 250, "Depth");
    bad(pdf.tagged("Table/TBody/TR 1/TD", 30, 60, "2, continued"), SPLIT_ROW);
  }

  private static final String ROW = "Table/TBody/TR 2/TD";

  private static TrialPdf tableOverTwoPages() throws IOException {
    return new TrialPdf()
        .tagged("Table/THead/TR/TH", 30, 100, "Depth")
        .tagged("Table/TBody/TR 1/TD", 30, 60, "2")
        .nextPage();
  }

  @Test
  void aNearlyEmptyPageIsBad() throws IOException {
    TrialPdf pdf = new TrialPdf().tagged("P", 30, 60, "reaches far down").nextPage();
    bad(pdf.tagged("P", 30, 270, "two words").tagged("Artifact", 30, 12, "strip"), NEARLY_EMPTY);
    bad(new TrialPdf().tagged("P", 30, 60, "reaches far down").nextPage(), NEARLY_EMPTY);
    good(new TrialPdf().tagged("P", 30, 270, "a document of one short page"));
  }

  @Test
  void aLetterThatNoFontHasIsBad() throws IOException {
    good(new TrialPdf().text(30, 200, 10, "4 × #4 bars (#3 ties)"));
    bad(new TrialPdf().text(30, 200, 10, "Haus am #hang"), MISSING_LETTER);
    bad(new TrialPdf().text(30, 200, 10, "Str#4e"), MISSING_LETTER);
  }

  @Test
  void textThatDoesNotExtractIsBad() throws IOException {
    bad(new TrialPdf().meaningless(30, 200, "AB"), UNREADABLE_TEXT);
  }

  @Test
  void contentOutsideTheMarginsIsBad() throws IOException {
    bad(new TrialPdf().text(18, 200, 10, "in the filing margin"), OUTSIDE_MARGIN);
    good(new TrialPdf().tagged("Artifact", 18, 7, "the strip").tagged("P", 30, 200, "text"));
    bad(
        new TrialPdf().tagged("Artifact", 30, 3, "not printed").tagged("P", 30, 200, "text"),
        OUTSIDE_MARGIN);
    bad(new TrialPdf().drawing(150, 100, 60, 50, c -> {}), OUTSIDE_MARGIN);
    bad(new TrialPdf().field("a", 195, 100, 10, 10), OUTSIDE_MARGIN);
  }

  @Test
  void drawingsOverDrawingsOrTextAreBad() throws IOException {
    good(new TrialPdf().drawing(30, 50, 50, 50, c -> {}).drawing(80, 50, 50, 50, c -> {}));
    bad(
        new TrialPdf().drawing(30, 50, 50, 50, c -> {}).drawing(70, 60, 50, 50, c -> {}),
        DRAWINGS_OVERLAP);
    bad(new TrialPdf().text(40, 60, 10, "under").drawing(30, 50, 50, 50, c -> {}), TEXT_ON_DRAWING);
  }

  @Test
  void aLineBeyondItsDrawingIsBad() throws IOException {
    bad(
        new TrialPdf().drawing(30, 50, 50, 50, c -> TrialPdf.stroke(c, 10, 10, 60, 20)),
        DRAWING_CUT);
  }

  @Test
  void fieldsOverFieldsOrTextAreBad() throws IOException {
    good(new TrialPdf().field("a", 30, 100, 20, 8).field("b", 50, 100, 20, 8));
    bad(new TrialPdf().field("a", 30, 100, 20, 8).field("b", 45, 100, 20, 8), FIELD_OVERLAP);
    bad(new TrialPdf().text(32, 102, 10, "text").field("a", 30, 100, 20, 8), FIELD_OVERLAP);
  }
}
