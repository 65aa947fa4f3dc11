package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.calc.bearing.Bearing.Footing;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.testing.PdfReader;
import pegbook.testing.TrialPacket;

/** The sheet of footings as it is printed, in the binder and in the review packet. */
class FootingsPrintedTest {
  private static final String SHEET = "Footings and frost";

  private static SheetTexts printed(String example, String document) {
    return SheetTexts.of(
        PdfReader.read(Printing.bytes(Printing.packet(example).resolve(document))));
  }

  static List<String> examples() {
    return Printing.examples();
  }

  @ParameterizedTest
  @ValueSource(strings = {"binder.pdf", "review.pdf"})
  void theSkyDecksFootingsAreReadBack(String document) {
    SheetTexts sheet = printed("sky-deck", document);
    // 124.7 ft² less a pier's opening: 122.9 ft², by the beams; 10 + 0.75 · (40 + 40) = 70 psf.
    assertThat(sheet.row(SHEET, "S1, S2, S4, S5"))
        .contains("15.9 ft²", "159 lbf", "635 lbf", "1111 lbf");
    assertThat(sheet.row(SHEET, "S3, S6")).contains("29.7 ft²", "2082 lbf");
    assertThat(sheet.words(SHEET))
        .contains("within the pressure given", "Building code and edition", "not given: ask");
    assertThat(sheet.drawn(SHEET)).contains("S1", "S6", "20.5 ft²");
  }

  /** The pressure of every footing stands in words and figures on the printed sheet. */
  @ParameterizedTest
  @MethodSource("examples")
  void everyFootingsLoadIsPrinted(String example) {
    Packet packet = TrialPacket.example(Printing.INPUT.resolve(example + ".json")).packet();
    String words = printed(example, "review.pdf").words(SHEET);
    boolean imperial = packet.job().heading().units() == UnitSystem.IMPERIAL;
    for (Footing footing : packet.bearing().footings()) {
      String pressure =
          imperial
              ? String.format(Locale.ROOT, "%.0f psf", footing.pressure().psf())
              : String.format(Locale.ROOT, "%.1f kPa", footing.pressure().kilopascals());
      assertThat(words).as(footing.mark()).contains(pressure);
    }
  }
}
