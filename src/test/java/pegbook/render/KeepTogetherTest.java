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
import org.junit.jupiter.api.Test;
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

  /** A first row that takes more room than the style sheet asks for. */
  private static final String TALL =
      """
      <h2>First heading</h2>
      <div class="working"><p>Kept with what follows.</p></div>
      <table><thead><tr><th>Mark</th><th>Tape</th></tr></thead><tbody>
      <tr><th>S1</th><td>one<br/>b<br/>c<br/>d<br/>e<br/>f<br/>g<br/>h<br/>i</td></tr>
      <tr><th>S2</th><td>two</td></tr>
      </tbody></table>
      <th:block th:replace="~{parts/drawing :: figure(${left}, 'A ring')}"/>
      <div class="pair"><div class="half">Beside.</div><div class="half"><table>
      <thead><tr><th>Mark</th></tr></thead><tbody><tr><th>S1</th></tr></tbody>
      </table></div></div>
      """;

  @BeforeAll
  static void writeTemplate() throws IOException {
    Files.createDirectories(home.resolve("templates"));
    writeTemplate("probe", BLOCKS);
    writeTemplate("tall", TALL);
  }

  private static void writeTemplate(String name, String blocks) throws IOException {
    Files.writeString(
        home.resolve("templates/" + name + ".html"),
        "<html xmlns:th=\"http://www.thymeleaf.org\"><body><div class=\"sheet\">"
            + "<th:block th:replace=\"~{parts/page :: strip('Probe')}\"/><h1>Probe</h1>"
            + "<p th:each=\"line : ${lines}\" th:text=\"${line}\"/>"
            + blocks
            + "</div></body></html>");
  }

  @ParameterizedTest
  @ValueSource(
      ints = {0, 4, 8, 12, 14, 16, 18, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32, 33, 34})
  void nothingStandsAloneAtThePagesFoot(int lines) {
    PrintedDocument printed = print("probe", lines);
    // Where the probe ends, its last page may be nearly empty.
    assertThat(PageCheck.problems(printed, Rules.binder()))
        .filteredOn(problem -> problem.kind() != Problem.Kind.NEARLY_EMPTY)
        .isEmpty();
    assertThat(printed.text()).contains("Table\nMark Tape\nS1 one\nS2 two");
    assertThat(printed.text()).contains("Name\na = b\n1", "STOP Utilities are not marked\nNo hole");
  }

  /** Every place of the page's foot, to the line; with its headings or without. */
  @Test
  void aTallFirstRowTakesItsHeadAlong() {
    int turned = 0;
    for (int lines = 14; lines < 40; lines++) {
      PrintedDocument printed = print("tall", lines);
      assertThat(PageCheck.problems(printed, Rules.binder()))
          .as("%d lines", lines)
          .filteredOn(problem -> problem.kind() != Problem.Kind.NEARLY_EMPTY)
          .isEmpty();
      List<String> second = printed.pages().size() < 2 ? List.of() : printed.pages().get(1).lines();
      if (!second.isEmpty() && second.get(0).equals("First heading")) {
        assertThat(second.subList(1, 4))
            .containsExactly("Kept with what follows.", "Mark Tape", "S1 one");
        turned++;
      }
    }
    assertThat(turned).isGreaterThan(8);
  }

  private static PrintedDocument print(String template, int lines) {
    TemplateFolder folder = TemplateFolder.of(Optional.empty(), Optional.of(home));
    Map<String, Object> model = Demo.model("Deck");
    model.put("lines", Collections.nCopies(lines, "A line that fills the page."));
    return PdfReader.read(
        new Renderer(folder, new Faces(folder::bytes))
            .render(Demo.document(template, model, List.of(Demo.left()))));
  }
}
