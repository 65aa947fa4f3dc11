package pegbook.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestWordTest {
  private static final List<String> KNOWN = List.of("hole", "depth", "gravel", "top", "title");

  @ParameterizedTest(name = "{0} is meant as {1}")
  @CsvSource({
    "gravle, gravel", // neighbours swapped
    "gravl, gravel", // a letter left out
    "holle, hole", // one too many
    "Depth, depth", // a capital
    "tip, top", // a wrong letter
    "titel, title",
    "tittel, none",
    "colour, none",
    "x, none",
    "topsoil, none"
  })
  void findsTheWordThatWasMeant(String written, String meant) {
    assertThat(NearestWord.among(KNOWN, written).orElse("none")).isEqualTo(meant);
  }
}
