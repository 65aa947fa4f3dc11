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
}
