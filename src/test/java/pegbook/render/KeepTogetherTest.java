package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.lettering.Faces;
import pegbook.testing.PageCheck;
import pegbook.testing.PdfReader;
import pegbook.testing.PrintedDocument;
import pegbook.testing.Problem;
import pegbook.testing.Rules;

/** Wherever the foot of the page falls, headings stay with what they head, and boxes stay whole. */
class KeepTogetherTest {
  @TempDir static Path home;

  private static final String BLOCKS =
      """
      <h2>Table</h2>
      <table><thead><tr><th>Mark</th><th>Tape</th></tr></thead><tbody>
      <tr><th>S1</th><td>one</td></tr><tr><th>S2</th><td>two</td></tr><tr><th>S3</th><td>three</td></tr>
      </tbody></table>
      <h2>Picture</h2>
      <th:block th:replace="~{parts/drawing :: figure(${left}, 'A ring')}"/>
      <h2>Section</h2><h3>Part</h3>
      <p>A line below two headings.</p>
      <h2>Findings</h2>
      <th:block th:replace="~{parts/findings :: findings(${findings})}"/>
      <h3>Working</h3>
      <div class="working"><p class="name">Name</p><p class="formula">a = b</p><p class="result">1</p></div>
      <p>The end.</p>
      """;

  @BeforeAll
  static void writeTemplate() throws IOException {
    Files.createDirectories(home.resolve("templates"));
    Files.writeString(
        home.resolve("templates/probe.html"),
        "<html xmlns:th=\"http://www.thymeleaf.org\"><body><div class=\"sheet\">"
            + "<th:block th:replace=\"~{parts/page :: strip('Probe')}\"/><h1>Probe</h1>"
            + "<p th:each=\"line : ${lines}\" th:text=\"${line}\"/>"
            + BLOCKS
            + "</div></body></html>");
  }

  @ParameterizedTest
  @ValueSource(
      ints = {0, 4, 8, 12, 14, 16, 18, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32, 33, 34})
  void nothingStandsAloneAtThePagesFoot(int lines) {
    TemplateFolder folder = TemplateFolder.of(Optional.empty(), Optional.of(home));
    Map<String, Object> model = Demo.model("Deck");
    model.put("lines", Collections.nCopies(lines, "A line that fills the page."));
    byte[] pdf =
        new Renderer(folder, new Faces(folder::bytes))
            .render(Demo.document("probe", model, List.of(Demo.left())));
    PrintedDocument printed = PdfReader.read(pdf);
    // Where the probe ends, its last page may be nearly empty.
    assertThat(PageCheck.problems(printed, Rules.binder()))
        .filteredOn(problem -> problem.kind() != Problem.Kind.NEARLY_EMPTY)
        .isEmpty();
    assertThat(printed.text()).contains("Table\nMark Tape\nS1 one\nS2 two");
    assertThat(printed.text()).contains("Name\na = b\n1", "STOP Utilities are not marked\nNo hole");
  }
}
