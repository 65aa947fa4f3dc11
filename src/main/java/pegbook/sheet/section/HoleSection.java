package pegbook.sheet.section;

import static pegbook.sheet.section.SectionFrame.SOIL_MM;

import java.util.ArrayList;
import java.util.List;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Dimension;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * Draws the section through a hole and writes its sizes at it: depths on its left, read from the
 * ground; on its right what is read from the datum line, and the height of the top. A size too
 * small for its dimension line is named by a label with a leader.
 */
public final class HoleSection {
  /** Height of type, points. */
  private static final double SIZE = 9;

  /** Distances of the dimension lines from the hole's wall. */
  private static final double FIRST_LINE_MM = 11;

  private static final double NEXT_LINE_MM = 18;
  private static final double LAST_LINE_MM = 25;

  private static final double ACROSS_LINE_MM = 7;

  /** A dimension wants this much more than its words. */
  private static final double ROOM_MM = 4;

  /** The words for gravel stand lower than its line, as the frost depth is often named above. */
  private static final double BELOW_FROST_DEGREES = -45;

  /** How far beyond the soil a pointing line ends. */
  private static final double BEYOND_SOIL_MM = 1.5;

  private final SectionFrame at;
  private final HoleWords words;
  private final Canvas canvas;
  private final LabelPlacer placer;
  private final List<String> leftOver = new ArrayList<>();

  private HoleSection(SectionFrame at, HoleWords words, Lettering lettering) {
    this.at = at;
    this.words = words;
    this.canvas = new Canvas(at.widthMm(), at.heightMm(), lettering);
    this.placer = new LabelPlacer(canvas);
  }

  /**
   * What the sections of a sheet share.
   *
   * @param widthMm of each drawing
   */
  public record Style(double widthMm, DrawingScale scale, Lettering lettering) {}

  /**
   * The largest scale at which the sections of all holes fit.
   *
   * @param widthMm of one drawing
   * @param heightMm the most that one may take
   */
  public static DrawingScale scale(
      UnitSystem units, List<HoleSizes> holes, double widthMm, double heightMm) {
    double wide = holes.stream().mapToDouble(hole -> hole.widest().metres()).max().orElse(0);
    double tall =
        holes.stream().mapToDouble(hole -> hole.dug().plus(hole.above()).metres()).max().orElse(0);
    return DrawingScale.largestThatFits(
            units,
            new Extent(0, 0, wide, tall),
            widthMm - SectionFrame.LEFT_MM - SectionFrame.RIGHT_MM,
            heightMm - SectionFrame.BELOW_MM - SectionFrame.OVER_MM)
        .orElseThrow(() -> new IllegalArgumentException("a hole too large for every scale"));
  }

  /**
   * A drawn section.
   *
   * @param leftOver words that found no room on a crowded drawing, for its caption
   */
  public record Picture(Drawing drawing, List<String> leftOver) {
    public Picture {
      leftOver = List.copyOf(leftOver);
    }
  }

  /**
   * Draws one section.
   *
   * @param id of the drawing
   * @param description what it shows, for readers who cannot see it
   */
  public static Picture draw(
      String id, String description, HoleSizes sizes, HoleWords words, Style style) {
    SectionFrame frame = new SectionFrame(sizes, style.scale(), style.widthMm());
    HoleSection section = new HoleSection(frame, words, style.lettering());
    new HoleBody(frame, section.canvas).draw();
    section.lines();
    section.depths();
    section.fromTheLine();
    section.across();
    section.materials();
    section.wideParts();
    return new Picture(section.canvas.drawing(id, description), section.leftOver);
  }

  /** The frost depth and the datum line, each named at its end. */
  private void lines() {
    at.sizes()
        .frost()
        .map(depth -> at.height(depth.negated()))
        .ifPresent(
            height -> {
              Spot end = new Spot(at.farRight() + FIRST_LINE_MM - 3, height);
              canvas.line(new Spot(at.farLeft() - SOIL_MM - 1, height), end, Pen.MEDIUM.dashed());
              place(words.frost(), end, 1, 0);
            });
    at.sizes()
        .line()
        .map(at::height)
        .ifPresent(
            height -> {
              Spot begin = new Spot(2, height);
              canvas.line(begin, new Spot(canvas.widthMm() - 2, height), Pen.THIN.boundary());
              place(words.line(), new Spot(at.farLeft() - FIRST_LINE_MM, height), 1, 90);
            });
  }

  /** On the left, downwards from the ground. */
  private void depths() {
    boolean gravel = at.sizes().gravel().isMoreThan(Length.ZERO);
    double first = gravel ? FIRST_LINE_MM : NEXT_LINE_MM;
    upright(at.farLeft(), at.ground(), at.underside(), -first, words.depth());
    if (gravel) {
      upright(at.farLeft(), at.ground(), at.bottom(), -NEXT_LINE_MM, words.dug());
    }
    if (at.top() > at.ground()) {
      double from = at.sizes().wide().isCapped() ? at.capRight() : at.shaftRight();
      double beside = at.farRight() + FIRST_LINE_MM - from;
      upright(from, at.top(), at.ground(), beside, words.top());
    }
  }

  /** On the right, downwards from the datum line. */
  private void fromTheLine() {
    at.sizes()
        .line()
        .map(at::height)
        .ifPresent(
            line -> {
              words
                  .lineToUnderside()
                  .ifPresent(
                      value -> upright(at.farRight(), line, at.underside(), NEXT_LINE_MM, value));
              words
                  .lineToBottom()
                  .ifPresent(
                      value -> upright(at.farRight(), line, at.bottom(), LAST_LINE_MM, value));
            });
  }

  /** A dimension downwards, its line to the right of the wall, or to its left when negative. */
  private void upright(double x, double from, double to, double besideMm, String value) {
    Spot begin = new Spot(x, from);
    Spot end = new Spot(x, to);
    boolean room = canvas.lettering().widthMm(value, SIZE, false) + ROOM_MM <= from - to;
    if (!room || !Dimension.draw(canvas, begin, end, besideMm, value, SIZE)) {
      point(value, new Spot(x, (from + to) / 2), besideMm < 0 ? 180 : 0);
    }
  }

  private void across() {
    boolean belled = at.sizes().wide().isBelled();
    boolean capped = at.sizes().wide().isCapped();
    across(
        at.bottomLeft(),
        at.bottomRight(),
        at.bottom(),
        -ACROSS_LINE_MM,
        belled ? words.wide().bell() : words.diameter());
    if (capped) {
      across(at.capLeft(), at.capRight(), at.top(), ACROSS_LINE_MM, words.wide().cap());
    } else if (at.sizes().tube().isPresent()) {
      across(at.shaftLeft(), at.shaftRight(), at.top(), ACROSS_LINE_MM, words.tube());
    }
  }

  private void across(double left, double right, double y, double besideMm, String value) {
    Spot end = new Spot(right, y);
    if (!Dimension.draw(canvas, new Spot(left, y), end, besideMm, value, SIZE)) {
      place(value, end, 2, besideMm < 0 ? -45 : 45);
    }
  }

  /** What the lines across do not tell of bell, pad and cap: named beside them. */
  private void wideParts() {
    HoleSizes.Wide wide = at.sizes().wide();
    if (wide.isBelled()) {
      double middle = (at.wideTop() + at.edgeTop()) / 2;
      double slope = (at.right() + at.bottomRight()) / 2;
      point(words.wide().flare(), new Spot(slope, middle), 0);
      if (!words.wide().edge().isEmpty()) {
        double low = (at.edgeTop() + at.underside()) / 2;
        point(words.wide().edge(), new Spot(at.bottomRight(), low), 45);
      }
      point(words.wide().begins(), new Spot(at.left(), at.wideTop()), 180);
      double high = at.wideTop() * 0.25 + at.ground() * 0.75;
      point(words.diameter(), new Spot(at.right(), high), 0);
    }
    if (wide.pad()) {
      double middle = (at.underside() + at.wideTop()) / 2;
      point(words.wide().pad(), new Spot(at.right() - 1.5, middle), 0);
      point(words.wide().begins(), new Spot(at.shaftLeft(), at.wideTop()), 180);
    }
    if (wide.isCapped()) {
      point(
          words.wide().thickness(),
          new Spot(at.capLeft() + 1, (at.capBottom() + at.top()) / 2),
          180);
      if (at.sizes().tube().isPresent()) {
        double middle = (at.ground() + at.capBottom()) / 2;
        point(words.tube(), new Spot(at.shaftLeft(), middle), 180);
      }
    }
  }

  private void materials() {
    HoleSizes sizes = at.sizes();
    Spot concrete = new Spot((at.left() + at.right()) / 2, (at.underside() + at.ground()) / 2);
    double widthMm =
        sizes.tubeFromBottom() ? at.shaftRight() - at.shaftLeft() : at.right() - at.left();
    boolean fits = canvas.lettering().widthMm(words.concrete(), SIZE, false) + 2 <= widthMm;
    if (!fits || !canvas.write(inside(words.concrete(), concrete))) {
      point(words.concrete(), concrete, 180);
    }
    if (sizes.gravel().isMoreThan(Length.ZERO)) {
      double middle = (at.bottom() + at.underside()) / 2;
      point(words.gravel(), new Spot(at.bottomRight() - 1.5, middle), BELOW_FROST_DEGREES);
    }
    if (sizes.sleeve().isMoreThan(Length.ZERO)) {
      double right = sizes.tubeFromBottom() ? at.shaftRight() : at.right() - HoleBody.SLEEVE_MM;
      double middle = at.height(sizes.sleeve().times(-0.5));
      point(words.sleeve(), new Spot(right + HoleBody.SLEEVE_MM / 2, middle), 0);
    }
    if (sizes.tubeFromBottom()) {
      double middle = (at.shaftRight() + at.right()) / 2;
      double high = at.underside() * 0.3 + at.ground() * 0.7;
      point(words.backfill(), new Spot(middle, high), 0);
    }
  }

  private static Element.Label inside(String value, Spot middle) {
    return new Element.Label(middle, value, SIZE, Element.Anchor.CENTRE_MIDDLE, 0, false, true);
  }

  /** A level line from what is named to beyond the soil, and the words at its end. */
  private void point(String value, Spot target, double degrees) {
    boolean leftwards = Math.abs(degrees) > 90;
    double x =
        leftwards
            ? at.farLeft() - SOIL_MM - BEYOND_SOIL_MM
            : at.farRight() + SOIL_MM + BEYOND_SOIL_MM;
    Spot end = new Spot(x, target.y());
    canvas.line(target, end, Pen.HAIR);
    place(value, end, 0.8, degrees);
  }

  private void place(String value, Spot target, double clearMm, double firstDegrees) {
    if (!placer.place(Wording.of(value, SIZE), target, clearMm, firstDegrees)) {
      leftOver.add(value);
    }
  }
}
