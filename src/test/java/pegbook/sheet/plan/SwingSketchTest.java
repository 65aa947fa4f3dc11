package pegbook.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.geometry.Point;
import pegbook.sheet.drafting.Lettered;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.plan.SwingSketch.Content;
import pegbook.sheet.plan.SwingSketch.Place;

class SwingSketchTest {
  /** The large name and the letter of north share the block's head, however the baseline lies. */
  @ParameterizedTest
  @ValueSource(strings = {"Line", "S1", "P12", "S500", "S1000"})
  void aLongNameLeavesRoomForNorthAllRound(String name) {
    for (int degrees = 0; degrees < 360; degrees += 5) {
      double turn = StrictMath.toRadians(degrees);
      Point second = new Point(6 * StrictMath.sin(turn), 6 * StrictMath.cos(turn));
      Content content =
          new Content(
              new Place("S1", new Point(0, 0)),
              new Place("S2", second),
              Optional.of(new Place(name, new Point(2, 3))),
              name,
              List.of("left of the line"),
              List.of("3.600 m", "4.100 m"),
              "58°",
              Optional.empty(),
              "",
              "N");
      assertThat(
              SwingSketch.draw(content, Lettered.lettering(), 86.3, 50.9, "sketch", "").elements())
          .as("%d degrees", degrees)
          .filteredOn(Element.Label.class::isInstance)
          .extracting(label -> ((Element.Label) label).text())
          .contains(name, "N");
    }
  }

  /**
   * Three marks beside one another at the far end of a long line: little finds room in the drawing,
   * and all that does not stands beside it.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.2, 0.4, 0.7, 1, 1.4})
  void whatFindsNoRoomInTheDrawingStandsBesideIt(double near) {
    Content content =
        new Content(
            new Place("S1", new Point(0, 0)),
            new Place("S14", new Point(0, -13.8)),
            Optional.of(new Place("S44", new Point(near, -13.8 + 2 * near))),
            "S44",
            List.of("No. 18", "right", "north-west side", "check to S45: 3′ 5 ¹⁵⁄₁₆″"),
            List.of("42′ 1 ¹⁵⁄₁₆″", "5′ 5 ⁹⁄₁₆″"),
            "124°",
            Optional.of(new Place("S45", new Point(near / 2, -13.8 + near))),
            "3′ 5 ¹⁵⁄₁₆″",
            "N");
    List<String> texts =
        SwingSketch.draw(content, Lettered.lettering(), 86.3, 50.9, "sketch", "")
            .elements()
            .stream()
            .filter(Element.Label.class::isInstance)
            .map(label -> ((Element.Label) label).text())
            .toList();
    String all = String.join(" ", texts);
    assertThat(all).contains("42′ 1 ¹⁵⁄₁₆″", "5′ 5 ⁹⁄₁₆″", "124°", "check to S45:", "S14", "N");
    assertThat(texts.stream().filter(text -> text.contains("S44"))).hasSizeGreaterThan(1);
  }
}
