package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbook.lettering.Faces;
import pegbook.testing.PageCheck;
import pegbook.testing.PdfReader;
import pegbook.testing.PrintedDocument;
import pegbook.testing.Rules;

/** However long a sheet is, it does not end on a nearly empty page. */
class SheetEndsTest {
  @TempDir static Path home;

  private static final String SHEET =
      "<section class=\"sheet\"><th:block th:replace=\"~{parts/page :: strip('%1$s')}\"/>"
          + "<h1>%1$s</h1><p th:each=\"line : ${%2$s}\" th:text=\"${line}\"/></section>";

  @BeforeAll
  static void writeTemplate() throws IOException {
    Files.createDirectories(home.resolve("templates"));
    Files.writeString(
        home.resolve("templates/probe.html"),
        "<html xmlns:th=\"http://www.thymeleaf.org\"><body>"
            + String.format(SHEET, "First", "first")
            + String.format(SHEET, "Second", "second")
            + "</body></html>");
    Files.writeString(
        home.resolve("templates/turning.html"),
        "<html xmlns:th=\"http://www.thymeleaf.org\"><body>"
            + String.format(
                SHEET
                    .replace("class=\"sheet\"", "class=\"sheet tight\"")
                    .replace("<p th:each", "<p>Begin</p><h2 class=\"turn\">Half</h2><p th:each"),
                "First",
                "first")
            + String.format(
                SHEET
                    .replace("<h1>", "<div class=\"keep\"><h1>")
                    .replace("</section>", "</div></section>"),
                "Second",
                "second")
            + "</body></html>");
  }

  private static PrintedDocument print(int lines) {
    return print("probe", lines);
  }

  private static PrintedDocument print(String template, int lines) {
    TemplateFolder folder = TemplateFolder.of(Optional.empty(), Optional.of(home));
    Map<String, Object> model = Demo.model("Deck");
    model.put("first", Collections.nCopies(lines, "A line that fills the page."));
    model.put("second", Collections.nCopies(20, "A line of the sheet after it."));
    Renderer renderer = new Renderer(folder, new Faces(folder::bytes));
    return PdfReader.read(renderer.render(Demo.document(template, model, List.of())));
  }

  @Test
  void noPageIsNearlyEmptyHoweverLongTheSheetIs() {
    TreeSet<Integer> pages = new TreeSet<>();
    for (int lines = 30; lines < 60; lines++) {
      PrintedDocument printed = print(lines);
      assertThat(PageCheck.problems(printed, Rules.binder())).as("%d lines", lines).isEmpty();
      pages.add(printed.pages().size());
    }
    assertThat(pages).containsExactly(2, 3);
  }

  /** The sheet after it is kept together and cannot come up; so the page is turned earlier. */
  @Test
  void aSheetTurnsThePageEarlierWhereItSaysSo() {
    int turned = 0;
    for (int lines = 36; lines < 56; lines++) {
      PrintedDocument printed = print("turning", lines);
      List<String> second = printed.pages().get(1).lines();
      if (second.contains("Half")) {
        assertThat(printed.pages().get(0).lines()).contains("Begin").doesNotContain("Half");
        turned++;
      }
    }
    assertThat(turned).isBetween(1, 10);
  }

  @Test
  void aSheetAfterALittleRestGoesOnBelowIt() {
    PrintedDocument printed =
        java.util.stream.IntStream.range(36, 50)
            .mapToObj(SheetEndsTest::print)
            .filter(each -> each.pages().get(1).lines().get(0).startsWith("A line that fills"))
            .findFirst()
            .orElseThrow();
    assertThat(printed.pages().get(1).lines()).contains("Second");
    assertThat(printed.bookmarks().get(1).page()).isEqualTo(2);
  }
}
