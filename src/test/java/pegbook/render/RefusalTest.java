package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.lettering.Faces;
import pegbook.sheet.drawing.Drawing;
import pegbook.testing.PdfChecks;

/** Whatever would not be printed as it was meant is refused, with its place. */
class RefusalTest {
  private static final String HEAD =
      "<html xmlns:th=\"http://www.thymeleaf.org\"><body><h1>Sheet</h1>";
  private static final String FOOT = "</body></html>";

  @TempDir Path home;

  private byte[] print(String template, Map<String, Object> model, List<Drawing> drawings) {
    write("probe.html", HEAD + template + FOOT);
    TemplateFolder folder = TemplateFolder.of(Optional.empty(), Optional.of(home));
    Renderer renderer = new Renderer(folder, new Faces(folder::bytes));
    return renderer.render(Demo.document("probe", model, drawings));
  }

  private void write(String name, String text) {
    try {
      Path file = home.resolve("templates").resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } catch (IOException failed) {
      throw new AssertionError(failed);
    }
  }

  private void assertRefused(String template, String... reasons) {
    assertThatThrownBy(() -> print(template, Demo.model("Deck"), List.of()))
        .isInstanceOf(RenderException.class)
        .message()
        .contains(reasons);
  }

  @Test
  void thePlainProbeIsPrinted() {
    assertThat(PdfChecks.text(print("<p>Plain</p>", Demo.model("Deck"), List.of())))
        .contains("Sheet", "Plain");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          <p th:text="${nothing}"/> | probe.html:1 | there is no nothing
          <p th:text="${strip.wrong}"/> | probe.html:1 | TitleStrip has no wrong
          <p th:text="${7*7}"/> | probe.html:1 | places text only
          <p th:text="${title.length()}"/> | probe.html:1 | places text only
          <p th:text="${T(java.lang.Runtime)}"/> | probe.html:1 | places text only
          <p th:text="${plan.widthMm}"/> | probe.html:1 | sheets format, not templates
          <p th:text="#{no.such}"/> | probe.html:1 | no such text
          <p th:text="__${title}__"/> | probe.html:1 | preprocessing
          <p th:utext="${title}"/> | probe.html | no attribute utext
          <p th:txt="${title}"/> | probe.html | no attribute txt
          <th:block th:insert="~{sheets/missing}"/> | probe.html:1 | no sheets/missing.html
          <p>open | probe.html | must be terminated
          <script>1</script> | probe.html | no such element
          <img src="x.png"/> | probe.html | no such element
          <p onclick="x">x</p> | probe.html | no attribute onclick
          <a href="http://example.org/" title="x">x</a> | probe.html | #id of the document only
          <a href="javascript:1" title="x">x</a> | probe.html | #id of the document only
          <a href="#nowhere" title="x">x</a> | probe.html | #id of the document only
          <p id="a">1</p><p id="a">2</p> | probe.html | stands twice
          <h3>Deep</h3> | probe.html | level is skipped
          <table><tbody><tr><td>1</td></tr></tbody></table> | probe.html | needs heads
          <p>漢</p> | probe.html | U+6F22
          <p style="display:flex">x</p> | probe.html | flex
          <p style="colour:red">x</p> | probe.html | colour
          <p style="background-image:url(http://example.org/a.png)">x</p> | probe.html | example.org
          <p style="background-image:url(file:///etc/hostname)">x</p> | probe.html | /etc/hostname
          <object type="application/x-pegbook-drawing" data-drawing="plan"/> | probe.html | no drawing "plan"
          <input type="text" name="a b" title="x"/> | probe.html | plain name
          <input type="text" name="a"/> | probe.html | title
          <input type="radio" name="a" title="x"/> | probe.html | not radio
          """)
  void aTemplateIsRefused(String template, String place, String reason) {
    assertRefused(template, place, reason);
  }

  @Test
  void aDocumentTypeIsRefused() {
    write("typed.html", "<!DOCTYPE html SYSTEM \"file:///etc/hostname\">" + HEAD + FOOT);
    TemplateFolder folder = TemplateFolder.of(Optional.empty(), Optional.of(home));
    Renderer renderer = new Renderer(folder, Demo.FACES);
    assertThatThrownBy(() -> renderer.render(Demo.document("typed", Demo.model("Deck"), List.of())))
        .isInstanceOf(RenderException.class)
        .hasMessageContaining("DOCTYPE");
  }

  @Test
  void anUnknownStyleIsRefused() {
    write("style/packet.css", "@page { margin: 10mm; font-family: Packet } p { gap: 3mm; }");
    assertRefused("<p>x</p>", "gap");
  }

  @ParameterizedTest
  @ValueSource(strings = {"漢", "\\6F22"})
  void aCharacterOfTheStyleThatNoFontHasIsRefused(String sign) {
    write("style/packet.css", "p:before { content: '" + sign + "' }");
    assertRefused("<p>x</p>", "style/packet.css", "U+6F22");
  }

  @Test
  void aStyleFromOutsideIsRefused() {
    write(
        "style/packet.css",
        "@import url(http://example.org/a.css);\n"
            + new String(Demo.FOLDER.bytes("style/packet.css"), StandardCharsets.UTF_8));
    assertRefused("<p>x</p>", "example.org");
  }

  @Test
  void aFontFromOutsideIsRefused() {
    write(
        "style/packet.css",
        "@font-face { font-family: Odd; src: url(http://example.org/odd.ttf); }\n"
            + Demo.FOLDER.text("style/packet.css")
            + "p { font-family: Odd; }");
    assertRefused("<p>x</p>", "example.org");
  }

  @Test
  void aDrawingWithoutAPlaceIsRefused() {
    assertThatThrownBy(() -> print("<p>x</p>", Demo.model("Deck"), List.of(Demo.plan())))
        .isInstanceOf(RenderException.class)
        .hasMessageContaining("plan has 0 places");
  }

  @Test
  void aDrawingWithTwoPlacesIsRefused() {
    String place = "<object type=\"application/x-pegbook-drawing\" data-drawing=\"plan\"/>";
    assertThatThrownBy(() -> print(place + place, Demo.model("Deck"), List.of(Demo.plan())))
        .isInstanceOf(RenderException.class)
        .hasMessageContaining("plan has 2 places");
  }

  @Test
  void aDrawingThatIsNotShownIsRefused() {
    String hidden =
        "<div style=\"display:none\"><object type=\"application/x-pegbook-drawing\""
            + " data-drawing=\"plan\"/></div>";
    assertThatThrownBy(() -> print(hidden, Demo.model("Deck"), List.of(Demo.plan())))
        .isInstanceOf(RenderException.class)
        .hasMessageContaining("painted 0 times");
  }

  @ParameterizedTest
  @CsvSource({"200, 50", "50, 300"})
  void aDrawingLargerThanThePageIsRefused(double width, double height) {
    Drawing plan = Demo.plan();
    Drawing large = new Drawing("plan", width, height, "A large plan", plan.elements());
    String place = "<object type=\"application/x-pegbook-drawing\" data-drawing=\"plan\"/>";
    assertThatThrownBy(() -> print(place, Demo.model("Deck"), List.of(large)))
        .isInstanceOf(RenderException.class)
        .hasMessageContaining("does not fit the page");
  }

  @Test
  void aMissingCharacterInADrawingIsRefused() {
    Drawing plan =
        Demo.plan(
            elements ->
                List.of(
                    Demo.label(
                        new pegbook.sheet.drawing.Spot(1, 1),
                        "漢",
                        pegbook.sheet.drawing.Element.Anchor.LEFT,
                        0,
                        false)));
    String place = "<object type=\"application/x-pegbook-drawing\" data-drawing=\"plan\"/>";
    assertThatThrownBy(() -> print(place, Demo.model("Deck"), List.of(plan)))
        .isInstanceOf(RenderException.class)
        .hasMessageContaining("drawing plan")
        .hasMessageContaining("U+6F22");
  }

  @Test
  void jobTextIsPrintedAsItIs() {
    for (String text :
        List.of(
            "<b>bold</b> & \"quoted\" 'so' &amp;",
            "${7*7}",
            "__${7*7}__",
            "[[${7*7}]] [(${7*7})]",
            "#{demo.plan} ~{sheets/plan} @{http://example.org}",
            "</p><script>x</script>")) {
      Map<String, Object> model = Demo.model(text);
      String template =
          "<p th:text=\"${title}\"/><p th:text=\"|so: ${title}|\"/><p><abbr"
              + " th:title=\"${title}\">a</abbr></p>";
      String printed = PdfChecks.text(print(template, model, List.of())).replaceAll("\\s+", " ");
      assertThat(printed).contains(text, "so: " + text);
    }
  }

  @Test
  void aUserWhoDropsASheetDropsItsDrawing() throws IOException {
    write("binder.html", HEAD + "<p>Short</p>" + FOOT);
    TemplateFolder folder =
        TemplateFolder.of(Optional.of(home.resolve("templates")), Optional.empty());
    byte[] pdf = new Renderer(folder, new Faces(folder::bytes)).render(Demo.binder());
    assertThat(PdfChecks.text(pdf)).contains("Short");
  }
}
