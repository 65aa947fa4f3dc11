package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Templates keep to what cannot turn job text into markup, style or addresses. */
class TemplateScanTest {
  private static List<Path> templates() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("templates"))) {
      return files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
    }
  }

  @Test
  void noTemplateUsesUnescapedTextInliningOrPreprocessing() throws IOException {
    assertThat(templates()).isNotEmpty();
    for (Path template : templates()) {
      assertThat(Files.readString(template))
          .as(template.toString())
          .doesNotContain("utext", "__", "[[", "[(", "@{", "<style", "<script", "<link", "<img");
    }
  }

  @Test
  void noTemplateBuildsAStyleFromText() throws IOException {
    for (Path template : templates()) {
      assertThat(Files.readString(template))
          .as(template.toString())
          .doesNotContain("th:style", "th:href=\"${");
    }
  }
}
