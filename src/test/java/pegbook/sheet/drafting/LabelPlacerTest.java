package pegbook.sheet.drafting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import pegbook.lettering.Lettering;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;
import pegbook.testing.Chance;

class LabelPlacerTest {
  private static final Lettering LETTERING = Lettered.lettering();

  record Named(String name, Spot at, double degrees) {}

  @Provide
  Arbitrary<List<Named>> names() {
    Arbitrary<String> name =
        Arbitraries.of("S1", "S60", "the old oak", "line of the neighbour", "12′ 9 ³⁄₈″");
    return Combinators.combine(
            name,
            Arbitraries.doubles().between(0, 160),
            Arbitraries.doubles().between(0, 120),
            Arbitraries.of(0.0, 90.0, 180.0, -90.0, 30.0))
        .as((text, x, y, degrees) -> new Named(text, new Spot(x, y), degrees))
        .list()
        .ofMinSize(2)
        .ofMaxSize(60);
  }

  @Property(tries = 200, seed = Chance.SEED)
  void noTextLiesOverAnotherOrOutside(@ForAll("names") List<Named> names) {
    Canvas canvas = new Canvas(160, 120, LETTERING);
    LabelPlacer placer = new LabelPlacer(canvas);
    int placed = 0;
    for (Named named : names) {
      canvas.circle(named.at(), 2, Pen.THIN);
      if (placer.place(Wording.of(named.name(), 8), named.at(), 3, named.degrees())) {
        placed++;
      }
    }
    List<Plate> plates = plates(canvas.drawing("d", "names"));
    assertThat(plates).hasSize(placed);
    assertThat(placed).isPositive();
    for (int i = 0; i < plates.size(); i++) {
      assertThat(plates.get(i).isInside(canvas.area())).isTrue();
      for (int j = 0; j < i; j++) {
        assertThat(plates.get(i).overlaps(plates.get(j))).isFalse();
      }
    }
  }

  @Test
  void sixtyMarksOnACircleAllGetTheirNames() {
    Canvas canvas = new Canvas(180, 180, LETTERING);
    LabelPlacer placer = new LabelPlacer(canvas);
    for (int i = 1; i <= 60; i++) {
      Spot at = Spots.towards(new Spot(90, 90), 90 - 6 * i, 55);
      canvas.circle(at, 2.2, Pen.THIN);
      canvas.keepFree(new Plate(at, 2, 2, 0));
      assertThat(placer.place(Wording.bold("S" + i, 9), at, 3, 90 - 6 * i)).as("S%d", i).isTrue();
    }
  }

  @Test
  void namesOfPlacesCloseTogetherAreNearestTheirOwnOrHaveLeaders() {
    Canvas canvas = new Canvas(120, 120, LETTERING);
    List<Spot> places = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      places.add(Spots.towards(new Spot(60, 60), 15 * i, 14));
    }
    LabelPlacer placer = new LabelPlacer(canvas).among(places);
    List<Spot> named = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      if (placer.place(Wording.bold("S" + (i + 1), 9), places.get(i), 1.5, 15 * i)) {
        named.add(places.get(i));
      }
    }
    Drawing drawing = canvas.drawing("d", "names");
    List<Plate> plates = plates(drawing);
    assertThat(plates).hasSameSizeAs(named).hasSizeGreaterThan(20);
    assertThat(leaders(drawing)).isNotEmpty();
    for (int i = 0; i < plates.size(); i++) {
      Plate plate = plates.get(i);
      Spot own = named.get(i);
      boolean led = leaders(drawing).stream().anyMatch(line -> leads(line, own, plate));
      assertThat(led || places.stream().allMatch(place -> isNearer(plate, own, place)))
          .as("name %d", i)
          .isTrue();
    }
  }

  private static List<Element.Line> leaders(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Element.Line.class::isInstance)
        .map(Element.Line.class::cast)
        .toList();
  }

  private static boolean leads(Element.Line line, Spot from, Plate to) {
    return Spots.distanceMm(line.from(), from) < 1.5 && to.distanceMm(line.to()) < 1;
  }

  private static boolean isNearer(Plate plate, Spot own, Spot other) {
    return other.equals(own) || plate.distanceMm(own) + 0.9 < plate.distanceMm(other);
  }

  private static List<Plate> plates(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Element.Label.class::isInstance)
        .map(label -> Plate.of((Element.Label) label, LETTERING))
        .toList();
  }

  @Test
  void aLoneLabelStandsWhereItIsWantedWithoutALeader() {
    Canvas canvas = new Canvas(100, 100, LETTERING);
    assertThat(new LabelPlacer(canvas).place(Wording.of("P1", 8), new Spot(50, 50), 3, 90))
        .isTrue();
    Drawing drawing = canvas.drawing("d", "one name");
    assertThat(drawing.elements()).hasSize(1);
    Plate plate = plates(drawing).get(0);
    assertThat(plate.centre().x()).isEqualTo(50);
    assertThat(plate.centre().y()).isGreaterThan(53);
  }

  @Test
  void aLabelThatStepsAwayGetsALeaderThatLaterTextKeepsOff() {
    Canvas canvas = new Canvas(100, 100, LETTERING);
    canvas.keepFree(Plate.between(30, 30, 70, 70));
    LabelPlacer placer = new LabelPlacer(canvas);
    assertThat(placer.place(Wording.of("first", 8), new Spot(50, 50), 1)).isTrue();
    Drawing drawing = canvas.drawing("d", "one name");
    Element.Line leader = (Element.Line) drawing.elements().get(0);
    Spot middle = Spots.middle(leader.from(), leader.to());
    assertThat(
            canvas.write(
                new Element.Label(
                    middle, "over it", 8, Element.Anchor.CENTRE_MIDDLE, 0, false, false)))
        .isFalse();
  }

  @Test
  void aCanvasWithoutRoomPlacesNothing() {
    Canvas canvas = new Canvas(8, 8, LETTERING);
    assertThat(
            new LabelPlacer(canvas).place(Wording.of("far too long a name", 8), new Spot(4, 4), 1))
        .isFalse();
    assertThat(canvas.drawing("d", "nothing").elements()).isEmpty();
  }

  @Test
  void longNamesBreakBetweenWords() {
    double width = LETTERING.widthMm("well of the", 8, false);
    Wording wording = Wording.wrapped("well of the farm beyond", 8, width, LETTERING);
    assertThat(wording.lines()).containsExactly("well of the", "farm", "beyond");
    assertThat(wording.widthMm(LETTERING)).isLessThanOrEqualTo(width);
  }
}
