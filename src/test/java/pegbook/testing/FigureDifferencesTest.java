package pegbook.testing;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class FigureDifferencesTest {
  private static JsonNode json(String text) throws JsonProcessingException {
    return new ObjectMapper().readTree(text.replace('\'', '"'));
  }

  @Test
  void namesEveryChangedFigureAndNoOther() throws JsonProcessingException {
    JsonNode before = json("{'holes': [{'mark': 'S1', 'depth_m': 1.2}], 'total_m3': 2, 'gone': 1}");
    JsonNode after = json("{'holes': [{'mark': 'S1', 'depth_m': 1.3}], 'total_m3': 2, 'new': 'a'}");
    assertThat(FigureDifferences.between(before, after))
        .containsExactly(
            "/holes/0(S1)/depth_m: 1.2 → 1.3", "/gone: 1 → (nothing)", "/new: (nothing) → \"a\"");
    assertThat(FigureDifferences.between(before, before)).isEmpty();
  }
}
