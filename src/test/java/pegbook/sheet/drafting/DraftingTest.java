package pegbook.sheet.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.published.Table;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;

class DraftingTest {
  private static Canvas canvas() {
    return new Canvas(150, 100, Lettered.lettering());
  }

  private static <T extends Element> List<T> all(Drawing drawing, Class<T> kind) {
    return drawing.elements().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  @Test
  void scalesPrintTheirSeries() {
    for (Table.Row row : Table.read("/pegbook/sheet/drawing-scales").rows()) {
      UnitSystem units =
          row.text("scale").startsWith("1:") ? UnitSystem.METRIC : UnitSystem.IMPERIAL;
      DrawingScale scale =
          DrawingScale.series(units).stream()
              .filter(some -> Math.abs(some.ratio() - row.number("ratio")) < 1e-9)
              .findFirst()
              .orElseThrow();
      assertThat(scale.millimetres(new Length(1)))
          .isCloseTo(row.number("mm_per_metre"), within(0.5e-4));
      assertThat(scale.millimetres(Length.ofFeet(1)))
          .isCloseTo(row.number("mm_per_foot"), within(0.5e-5));
    }
  }

  @Test
  void scalesAreNamedAsTheTradeNamesThem() {
    assertThat(DrawingScale.series(UnitSystem.METRIC).get(3).text()).isEqualTo("1:50");
    List<String> imperial =
        DrawingScale.series(UnitSystem.IMPERIAL).stream()
            .map(scale -> scale.text().replace('\u00a0', ' '))
            .toList();
    assertThat(imperial).contains("3″ = 1′ 0″ (1:4)", "1″ = 10′ 0″ (1:120)");
  }

  @Test
  void theLargestScaleThatFitsIsTaken() {
    Extent ground = new Extent(-6, -4, 6, 4);
    DrawingScale scale =
        DrawingScale.largestThatFits(UnitSystem.METRIC, ground, 180, 240).orElseThrow();
    assertThat(scale.ratio()).isEqualTo(100);
    assertThat(DrawingScale.largestThatFits(UnitSystem.METRIC, ground, 240, 160))
        .hasValueSatisfying(larger -> assertThat(larger.ratio()).isEqualTo(50));
    assertThat(DrawingScale.largestThatFits(UnitSystem.METRIC, ground.grown(5000), 180, 240))
        .isEmpty();
  }

  @Test
  void plansAreUprightAndTrue() {
    PlanFrame frame =
        new PlanFrame(
            new Point(3, 1), new Spot(90, 120), DrawingScale.series(UnitSystem.METRIC).get(3));
    assertThat(frame.spot(new Point(3, 1))).isEqualTo(new Spot(90, 120));
    assertThat(frame.spot(new Point(4, 1)).x()).as("east is right").isEqualTo(110);
    assertThat(frame.spot(new Point(3, 2)).y()).as("north is up").isEqualTo(140);
    assertThat(frame.place(frame.spot(new Point(-7, 2.5)))).isEqualTo(new Point(-7, 2.5));
  }

  @Test
  void dimensionsReadFromBelowOrFromTheRight() {
    for (double degrees : new double[] {0, 30, 90, 91, 135, 180, -90, -135, 270, 359}) {
      assertThat(Spots.readable(degrees)).isGreaterThan(-90).isLessThanOrEqualTo(90);
    }
    Canvas canvas = canvas();
    assertThat(Dimension.draw(canvas, new Spot(100, 30), new Spot(40, 30), -8, "3 600 mm", 8))
        .isTrue();
    assertThat(Dimension.draw(canvas, new Spot(100, 30), new Spot(100, 80), -8, "3 600 mm", 8))
        .isTrue();
    List<Element.Label> values = all(canvas.drawing("d", "two"), Element.Label.class);
    assertThat(values.get(0).turnDegrees()).isCloseTo(0, within(1e-9));
    assertThat(values.get(0).at().y()).isGreaterThan(38);
    assertThat(values.get(1).turnDegrees()).isCloseTo(90, within(1e-9));
  }

  @Test
  void dimensionsStepOutWhereTheirValueHasNoRoom() {
    Canvas canvas = canvas();
    canvas.keepFree(Plate.between(0, 0, 150, 45));
    assertThat(Dimension.draw(canvas, new Spot(40, 30), new Spot(100, 30), 8, "12 m", 8)).isTrue();
    Element.Label value = all(canvas.drawing("d", "one"), Element.Label.class).get(0);
    assertThat(value.at().y()).isGreaterThan(45);
    canvas.keepFree(canvas.area());
    assertThat(Dimension.draw(canvas, new Spot(40, 30), new Spot(100, 30), 8, "12 m", 8)).isFalse();
  }

  @Test
  void barsHaveTheirLengths() {
    Canvas canvas = canvas();
    CheckBar.draw(canvas, new Spot(10, 10), UnitSystem.METRIC, "100 mm");
    Element.Line bar = all(canvas.drawing("d", "bar"), Element.Line.class).get(0);
    assertThat(Spots.distanceMm(bar.from(), bar.to())).isCloseTo(100, within(1e-9));
    assertThat(CheckBar.length(UnitSystem.IMPERIAL).inches()).isCloseTo(4, within(1e-9));
    DrawingScale scale = DrawingScale.series(UnitSystem.METRIC).get(3);
    double longMm =
        ScaleBar.draw(
            canvas,
            new Spot(10, 40),
            scale,
            60,
            length -> Math.round(length.metres() * 10) + " dm");
    assertThat(longMm).isCloseTo(40, within(1e-9));
    assertThat(all(canvas.drawing("d", "bars"), Element.Label.class))
        .extracting(Element.Label::text)
        .contains("0", "10 dm", "20 dm");
  }

  @Test
  void northStandsOverItsArrow() {
    Canvas canvas = canvas();
    NorthArrow.draw(canvas, new Spot(75, 50), "N");
    Element.Label letter = all(canvas.drawing("d", "north"), Element.Label.class).get(0);
    assertThat(letter.at().x()).isEqualTo(75);
    assertThat(letter.at().y()).isGreaterThan(63);
  }

  @Test
  void fillsStayInsideTheirFigure() {
    Canvas canvas = canvas();
    List<Spot> figure =
        List.of(new Spot(10, 10), new Spot(60, 10), new Spot(60, 40), new Spot(30, 25));
    Fills.gravel(canvas, figure);
    Fills.concrete(canvas, figure);
    List<Element.Circle> pebbles = all(canvas.drawing("d", "fills"), Element.Circle.class);
    assertThat(pebbles).hasSizeGreaterThan(50);
    assertThat(pebbles)
        .allSatisfy(
            pebble -> {
              double right = pebble.centre().x();
              double up = pebble.centre().y();
              assertThat(right).isBetween(10.0, 60.0);
              assertThat(up).isGreaterThan(10);
              // Over the lower of the two upper edges.
              double edge = right < 30 ? 10 + (right - 10) * 0.75 : 25 + (right - 30) * 0.5;
              assertThat(up + pebble.radiusMm()).isLessThan(edge + 0.2);
            });
  }

  @Test
  void textThatMustStandButDoesNotFitIsAFault() {
    Canvas canvas = canvas();
    Element.Label label =
        new Element.Label(
            new Spot(140, 50), "out at the edge", 8, Element.Anchor.LEFT, 0, false, false);
    assertThatThrownBy(() -> canvas.writeFixed(label)).hasMessageContaining("out at the edge");
    assertThatThrownBy(() -> canvas.under(label)).isInstanceOf(IllegalArgumentException.class);
  }
}
