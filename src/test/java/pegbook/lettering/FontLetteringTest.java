package pegbook.lettering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FontLetteringTest {
  private static final Faces FACES = new Faces(FontLetteringTest::file);
  private final FontLettering lettering = new FontLettering(FACES);

  private static byte[] file(String name) {
    try {
      return Files.readAllBytes(Path.of("templates").resolve(name));
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  @Test
  void digitsAreAllOneWidth() {
    double zero = lettering.widthMm("0", 10, false);
    assertThat(zero).isCloseTo(0.497 * 10 * 25.4 / 72, within(1e-9));
    for (char digit = '1'; digit <= '9'; digit++) {
      assertThat(lettering.widthMm(String.valueOf(digit), 10, false)).isEqualTo(zero);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Dig schedule", "12′ 9 ³⁄₈″", "office flange", "±0.5 × 3 → ½″"})
  void widthIsWhatThePdfStates(String text) throws IOException {
    try (PDDocument document = new PDDocument()) {
      double thousandths = 0;
      for (Faces.Run run : FACES.runs(text, Face.BOLD)) {
        PDFont font = PDType0Font.load(document, FACES.font(run.face()), true);
        thousandths += font.getStringWidth(run.text());
      }
      assertThat(lettering.widthMm(text, 9, true))
          .isCloseTo(thousandths / 1000 * 9 / 72 * 25.4, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0123456789",
        "¹²³⁴⁵⁶⁷⁸⁹⁰⁄₀₁₂₃₄₅₆₇₈₉",
        "½¼¾⅛⅜⅝⅞⅓⅔",
        "′″°±×÷−·–—…‘’“”",
        "≤≥≠≈√πσφθαβγΔΣ∅∠",
        "→←↑↓▲△●○■□☐☑✓✗",
        "äöüéèñçåøÅßŁżčĐ",
        "«»‰µ¢€£\u00a0\u2009\u202f\u2011"
      })
  void printsWhatASheetNeeds(String text) {
    assertThat(lettering.isPrintable(text)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"line\nbreak", "tab\t", "שלום", "مرحبا", "漢字", "🦫"})
  void knowsWhatItCannotPrint(String text) {
    assertThat(lettering.isPrintable(text)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"dblpgyjQ(/⁄³⁸₈½′″HX0ÅÉ"})
  void signsStayWithinTheStatedHeightAndDepth(String text) throws IOException {
    TrueTypeFont font = FACES.font(Face.BOLD);
    for (int point : text.codePoints().toArray()) {
      var box =
          font.getGlyph().getGlyph(font.getUnicodeCmapLookup().getGlyphId(point)).getBoundingBox();
      boolean accented = "ÅÉ".indexOf(point) >= 0;
      assertThat(box.getUpperRightY() / 1000.0)
          .as(Character.toString(point))
          .isLessThan(Lettering.ASCENT + (accented ? 0.15 : 0.02));
      assertThat(-box.getLowerLeftY() / 1000.0).isLessThan(Lettering.DESCENT + 0.01);
    }
    assertThat(font.getOS2Windows().getCapHeight() / 1000.0).isEqualTo(Lettering.CAPITAL_HEIGHT);
  }

  @Test
  void namesTheCharacterThatNoFontHas() {
    assertThatThrownBy(() -> lettering.widthMm("hole 漢", 10, false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("U+6F22");
  }

  @Test
  void wrapsBetweenWordsAndInsideAWordTooLong() {
    double width = lettering.widthMm("the oak root", 10, false);
    assertThat(lettering.wrap("the oak root near the well", 10, false, width))
        .containsExactly("the oak root", "near the well".substring(0, 8), "well");
    assertThat(lettering.wrap("  ", 10, false, width)).isEmpty();
    assertThat(String.join("", lettering.wrap("northnorthwestnorthnorthwest", 10, false, width)))
        .isEqualTo("northnorthwestnorthnorthwest");
    assertThat(lettering.wrap("northnorthwestnorthnorthwest", 10, false, width))
        .allMatch(line -> lettering.widthMm(line, 10, false) <= width);
    assertThat(lettering.wrap("wide", 10, false, 0.1)).containsExactly("w", "i", "d", "e");
  }
}
