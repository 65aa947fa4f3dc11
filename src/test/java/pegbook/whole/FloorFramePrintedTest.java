package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.testing.PageCheck;
import pegbook.testing.PrintedJob;
import pegbook.testing.Rules;

/** The sheet of the floor's frame as it is printed, for every kind of outline. */
class FloorFramePrintedTest {
  private static final String SHEET = "Floor frame";

  private static PrintedJob printed(String name, String outline) {
    return PrintedJob.example(
        "sky-deck",
        name,
        job -> {
          ObjectNode layout = (ObjectNode) job.get("layout");
          layout.set("outline", outline(outline));
          ((ObjectNode) job.get("ground")).remove("levels");
          job.remove("field");
        });
  }

  private static ObjectNode outline(String words) {
    ObjectNode outline = JsonNodeFactory.instance.objectNode();
    String[] parts = words.split(" ", -1);
    ObjectNode figure = outline.putObject(parts[0]);
    for (int i = 1; i < parts.length; i++) {
      String[] entry = parts[i].split("=", -1);
      if (entry[1].matches("[0-9]+")) {
        figure.put(entry[0], Integer.parseInt(entry[1]));
      } else {
        figure.put(entry[0], entry[1].replace('_', ' '));
      }
    }
    return outline;
  }

  @ParameterizedTest
  @CsvSource({
    "hexagon, regular sides=6 acrossFlats=12_ft",
    "rectangle, rectangle length=14_ft width=10_ft columns=3 rows=2",
    "cut-corner, chamferedRectangle length=14_ft width=12_ft cut=3_ft",
    "twelve-sided, regular sides=12 acrossFlats=16_ft",
    "round, circle diameter=13_ft posts=7"
  })
  void itsPagesHold(String name, String outline) {
    PrintedJob job = printed("frame-" + name, outline);
    SheetTexts sheet = SheetTexts.of(job.document("review"));
    assertThat(sheet.words(SHEET)).contains("Joists 2x", "Pieces to cut", "taken", "Boards");
    assertThat(sheet.drawn(SHEET)).contains("S1", "P1");
    assertThat(PageCheck.problems(job.document("review"), Rules.binder())).isEmpty();
  }
}
