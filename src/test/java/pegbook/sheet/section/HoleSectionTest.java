package pegbook.sheet.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.section.HoleSection.Style;
import pegbook.testing.Chance;
import pegbook.testing.TestWriting;

class HoleSectionTest {
  private static final HoleWords WORDS =
      new HoleWords(
          "hole 22 11⁄16″",
          "target 4′ 10 15⁄16″",
          "dig to 5′ 2 15⁄16″",
          "gravel 4″",
          "top 36 3⁄4″",
          "tube 16″",
          "concrete",
          "tamped soil",
          "frost 4′ 10″",
          "smooth sleeve 4′ 10″",
          "datum line",
          Optional.of("from line 6′ 4 15⁄16″"),
          Optional.of("from line 6′ 8 15⁄16″"),
          new HoleWords.Wide(
              "bell 30″",
              "from 4′ 2 15⁄16″",
              "flare 9″",
              "edge 4″",
              "pad 10″",
              "cap 20″ square",
              "cap 6″"));

  private static Optional<Length> inches(double inches) {
    return inches > 0 ? Optional.of(Length.ofInches(inches)) : Optional.empty();
  }

  private static List<Element.Label> labels(Drawing drawing) {
    List<Element.Label> labels = new ArrayList<>();
    for (Element element : drawing.elements()) {
      if (element instanceof Element.Label label) {
        labels.add(label);
      }
    }
    return labels;
  }

  @Property(tries = 400, seed = Chance.SEED)
  void everyWordHasItsPlaceAndNoneLiesOverAnother(
      @ForAll @DoubleRange(min = 6, max = 60) double diameter,
      @ForAll @DoubleRange(min = 12, max = 110) double depth,
      @ForAll @DoubleRange(min = -4, max = 12) double gravel,
      @ForAll @DoubleRange(min = -6, max = 72) double top,
      @ForAll @DoubleRange(min = -1, max = 1) double tube,
      @ForAll boolean fromBottom,
      @ForAll @DoubleRange(min = -0.5, max = 1) double frost,
      @ForAll @DoubleRange(min = -0.5, max = 1) double sleeve,
      @ForAll @DoubleRange(min = -30, max = 60) double line) {
    boolean hasTube = tube > 0.3;
    HoleSizes sizes =
        new HoleSizes(
            Length.ofInches(diameter),
            Length.ofInches(depth),
            Length.ofInches(Math.max(0, gravel)),
            Length.ofInches(Math.max(0, top)),
            hasTube ? inches(diameter * tube) : Optional.empty(),
            hasTube && fromBottom,
            inches(depth * frost),
            Length.ofInches(Math.max(0, depth * sleeve)),
            inches(line),
            HoleSizes.Wide.NONE);
    Style style =
        new Style(
            88,
            HoleSection.scale(UnitSystem.IMPERIAL, List.of(sizes), 88, 127),
            TestWriting.lettering());
    HoleSection.Picture picture = HoleSection.draw("section", "a hole", sizes, WORDS, style);
    Drawing drawing = picture.drawing();
    List<Element.Label> labels = labels(drawing);
    List<String> texts = new ArrayList<>(labels.stream().map(Element.Label::text).toList());
    texts.addAll(picture.leftOver());
    boolean usual = diameter <= 30 && depth >= 30 && frost * depth > 12 && line > 6;
    assertThat(usual && !picture.leftOver().isEmpty()).as("%s", picture.leftOver()).isFalse();
    assertThat(texts).contains(WORDS.diameter(), WORDS.concrete());
    assertThat(texts.contains(WORDS.gravel())).isEqualTo(gravel > 0);
    assertThat(texts.contains(WORDS.frost())).isEqualTo(frost > 0);
    assertThat(texts.contains(WORDS.sleeve())).isEqualTo(sleeve > 0);
    assertThat(texts.contains(WORDS.line())).isEqualTo(line > 0);
    assertThat(texts.contains(WORDS.lineToBottom().orElseThrow())).isEqualTo(line > 0);
    assertThat(texts.contains(WORDS.tube())).isEqualTo(hasTube);
    assertThat(texts.contains(WORDS.backfill())).isEqualTo(hasTube && fromBottom);
    assertNoneOverAnother(labels, drawing);
  }

  private static void assertNoneOverAnother(List<Element.Label> labels, Drawing drawing) {
    Plate area = Plate.between(0, 0, drawing.widthMm(), drawing.heightMm());
    for (int i = 0; i < labels.size(); i++) {
      Plate one = Plate.of(labels.get(i), TestWriting.lettering());
      assertThat(one.isInside(area)).as(labels.get(i).text()).isTrue();
      for (int j = 0; j < i; j++) {
        assertThat(one.overlaps(Plate.of(labels.get(j), TestWriting.lettering())))
            .as(labels.get(i).text() + " over " + labels.get(j).text())
            .isFalse();
      }
    }
  }
}
