package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.lettering.FontLettering;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Element.Anchor;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;
import pegbook.testing.Box;
import pegbook.testing.DrawnPath;
import pegbook.testing.PdfReader;
import pegbook.testing.PrintedPage;
import pegbook.testing.TextRun;

/** Drawings come out in true size and place. */
class DrawingScaleTest {
  private static final Renderer RENDERER = new Renderer(Demo.FOLDER, Demo.FACES);

  /** The page with the drawing. */
  private static PrintedPage print(Drawing drawing) {
    var model = Demo.model("Sky deck");
    model.put("plan", drawing);
    byte[] pdf = RENDERER.render(Demo.document("binder", model, List.of(drawing, Demo.left())));
    PrintedPage page = PdfReader.read(pdf).pages().get(4);
    assertThat(page.drawings()).hasSize(1);
    return page;
  }

  private static Drawing with(Element... added) {
    return Demo.plan(
        elements -> {
          List<Element> more = new ArrayList<>(elements);
          more.addAll(List.of(added));
          return more;
        });
  }

  private static List<DrawnPath> ofWidth(PrintedPage page, double widthMm) {
    return page.pathsOf(0).stream()
        .filter(path -> Math.abs(path.stroke().orElse(0) - widthMm) < 0.001)
        .toList();
  }

  private static TextRun run(PrintedPage page, String text) {
    return page.runsOf(0).stream()
        .filter(run -> run.text().equals(text))
        .reduce((one, two) -> fail("two runs say " + text))
        .orElseThrow();
  }

  @Test
  void aBarOf100MillimetresMeasures100Millimetres() {
    DrawnPath bar = ofWidth(print(Demo.plan()), 0.5).get(0);
    assertThat(bar.pieces()).hasSize(1);
    assertThat(bar.pieces().get(0).length()).isCloseTo(100, within(0.001));
    assertThat(bar.box().height()).isCloseTo(0, within(1e-6));
  }

  @Test
  void theDrawingTakesTheRoomItSays() {
    Box box = print(Demo.plan()).drawings().get(0).box();
    assertThat(box.width()).isCloseTo(160, within(0.001));
    assertThat(box.height()).isCloseTo(82.55, within(0.001));
    assertThat(box.left()).isCloseTo(20, within(0.02));
  }

  @Test
  void placesKeepTheirDistanceAndTheirSide() {
    Element lines =
        new Element.Path(
            List.of(new Spot(10, 20), new Spot(110.25, 20), new Spot(110.25, 70.5)),
            false,
            Optional.of(new Pen(0.9, Pen.Pattern.SOLID, Ink.BLACK)),
            Optional.empty());
    PrintedPage page = print(with(lines));
    Box box = page.drawings().get(0).box();
    List<DrawnPath.Piece> drawn = ofWidth(page, 0.9).get(0).pieces();
    assertThat(drawn).hasSize(2);
    assertThat(drawn.get(0).from().x() - box.left()).isCloseTo(10, within(0.001));
    assertThat(drawn.get(0).from().y() - box.bottom()).isCloseTo(20, within(0.001));
    assertThat(drawn.get(1).to().x() - box.left()).isCloseTo(110.25, within(0.001));
    assertThat(drawn.get(1).to().y() - box.bottom()).isCloseTo(70.5, within(0.001));
  }

  @Test
  void circlesAreRoundAndOfTheirSize() {
    Element large =
        new Element.Circle(
            new Spot(80, 41),
            40.5,
            Optional.of(new Pen(0.9, Pen.Pattern.SOLID, Ink.BLACK)),
            Optional.empty());
    PrintedPage page = print(with(large));
    DrawnPath.Round round = ofWidth(page, 0.9).get(0).asCircle().orElseThrow();
    assertThat(round.radius()).isCloseTo(40.5, within(0.001));
    assertThat(round.centre().x() - page.drawings().get(0).box().left())
        .isCloseTo(80, within(0.001));
  }

  @Test
  void textStandsWhereItsAnchorIs() {
    Element.Label label = Demo.label(new Spot(100, 20), "Anchor", Anchor.RIGHT, 0, false);
    Element.Label turned = Demo.label(new Spot(10, 20), "Turned", Anchor.LEFT, 90, false);
    Element.Label middle = Demo.label(new Spot(60, 25), "H", Anchor.CENTRE_MIDDLE, 0, false);
    PrintedPage page = print(with(label, turned, middle));
    Box box = page.drawings().get(0).box();
    TextRun level = run(page, "Anchor");
    assertThat(level.end().x() - box.left()).isCloseTo(100, within(0.01));
    assertThat(level.start().y() - box.bottom()).isCloseTo(20, within(0.01));
    TextRun upright = run(page, "Turned");
    assertThat(upright.degrees()).isCloseTo(90, within(0.01));
    assertThat(upright.start().x() - box.left()).isCloseTo(10, within(0.01));
    assertThat(upright.end().y() - upright.start().y())
        .isCloseTo(new FontLettering(Demo.FACES).widthMm("Turned", 9, false), within(0.01));
    Box letter = run(page, "H").box();
    assertThat(letter.centre().x() - box.left()).isCloseTo(60, within(0.01));
    assertThat(letter.centre().y() - box.bottom()).isCloseTo(25, within(0.01));
  }
}
