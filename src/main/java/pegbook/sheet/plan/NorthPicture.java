package pegbook.sheet.plan;

import java.util.List;
import pegbook.calc.truenorth.TrueNorth;
import pegbook.calc.truenorth.TrueNorth.EqualShadows;
import pegbook.calc.truenorth.TrueNorth.Turn;
import pegbook.geometry.Compass;
import pegbook.lettering.Lettering;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * How north is found and turned from, seen from above: the pole's foot, the shadows, the north
 * line, its pegs, and the two tapes to the first mark. Directions are true; lengths are not.
 */
public final class NorthPicture {
  private static final double SIZE = 8;
  private static final double HEIGHT_MM = 84;
  private static final double CIRCLE_MM = 19;
  private static final double LINE_MM = 34;
  private static final double PEG_MM = 25;

  /**
   * Names in the picture, finished.
   *
   * @param north at the upper end of the line
   * @param south at its lower end
   * @param foot the pole's foot
   * @param noon the shadow at noon
   * @param first the first of two equal shadows
   * @param second the other
   * @param along the tape along the line
   * @param chord the tape across
   * @param mark the first mark, with its azimuth
   */
  public record Words(
      String north,
      String south,
      String foot,
      String noon,
      String first,
      String second,
      String along,
      String chord,
      String mark) {}

  private final Canvas canvas;
  private final LabelPlacer placer;
  private final Spot foot;
  private final TrueNorth north;
  private final Words words;

  private NorthPicture(TrueNorth north, Words words, Lettering lettering, double widthMm) {
    this.canvas = new Canvas(widthMm, HEIGHT_MM, lettering);
    this.placer = new LabelPlacer(canvas);
    this.foot = new Spot(widthMm / 2, HEIGHT_MM / 2);
    this.north = north;
    this.words = words;
  }

  /** Draws it. */
  public static Drawing draw(
      TrueNorth north, Words words, Lettering lettering, double widthMm, String description) {
    NorthPicture picture = new NorthPicture(north, words, lettering, widthMm);
    picture.line();
    picture.noonShadow();
    north.equal().ifPresent(picture::equalShadows);
    picture.turn();
    picture.label(words.foot(), picture.foot, 2, -30);
    return picture.canvas.drawing("true-north", description);
  }

  /** Degrees anticlockwise from x, of an azimuth. */
  private static double paper(double azimuthDegrees) {
    return 90 - azimuthDegrees;
  }

  private Spot at(double azimuthDegrees, double mm) {
    return Spots.towards(foot, paper(azimuthDegrees), mm);
  }

  private void label(String text, Spot target, double clearMm, double degrees) {
    placer.place(Wording.wrapped(text, SIZE, 34, canvas.lettering()), target, clearMm, degrees);
  }

  private void line() {
    Spot tip = at(0, LINE_MM);
    canvas.line(at(180, LINE_MM), tip, Pen.MEDIUM.centre());
    canvas.area(List.of(tip, Spots.shifted(tip, -1.4, -4), Spots.shifted(tip, 1.4, -4)), Ink.BLACK);
    canvas.writeFixed(
        new Element.Label(
            Spots.shifted(tip, 0, 1.5), words.north(), 11, Element.Anchor.CENTRE, 0, true, false));
    Spot low = at(180, LINE_MM);
    canvas.writeFixed(
        new Element.Label(
            Spots.shifted(low, 0, -4.5),
            words.south(),
            11,
            Element.Anchor.CENTRE,
            0,
            false,
            false));
    canvas.dot(foot, 0.9);
    canvas.circle(foot, 1.6, Pen.THIN);
  }

  private void noonShadow() {
    north
        .noon()
        .ifPresent(
            noon -> {
              double azimuth = noon.toNorth() ? 0 : 180;
              Spot tip = at(azimuth, CIRCLE_MM * 0.6);
              canvas.line(foot, tip, Pen.HEAVY);
              canvas.dot(tip, 0.8);
              label(words.noon(), tip, 1.5, 0);
            });
  }

  private void equalShadows(EqualShadows equal) {
    Spot first = at(equal.firstShadow().degrees(), CIRCLE_MM);
    Spot second = at(equal.secondShadow().degrees(), CIRCLE_MM);
    canvas.circle(foot, CIRCLE_MM, Pen.THIN.dashed());
    for (Spot tip : List.of(first, second)) {
      canvas.line(foot, tip, Pen.THIN);
      canvas.dot(tip, 0.8);
    }
    canvas.line(first, second, Pen.THIN.dashed());
    label(words.first(), first, 1.5, first.x() < foot.x() ? 180 : 0);
    label(words.second(), second, 1.5, second.x() < foot.x() ? 180 : 0);
  }

  /** The two tapes to the first mark's direction. */
  private void turn() {
    Turn turn = north.turn();
    double azimuth = turn.azimuth().degrees();
    double pegAzimuth = turn.peg() == Compass.NORTH ? 0 : 180;
    Spot peg = at(pegAzimuth, PEG_MM);
    Spot found = at(azimuth, PEG_MM);
    square(peg);
    square(at(180 - pegAzimuth, PEG_MM));
    canvas.line(foot, at(azimuth, LINE_MM), Pen.MEDIUM);
    if (!turn.onLine()) {
      canvas.line(peg, found, Pen.THIN.dashed());
      canvas.dot(found, 0.9);
    }
    label(words.mark(), at(azimuth, LINE_MM), 1.5, paper(azimuth));
    if (!turn.onLine()) {
      label(words.chord(), Spots.middle(peg, found), 1.5, paper(pegAzimuth));
    }
    label(words.along(), at(180 - pegAzimuth, PEG_MM), 2, 0);
  }

  private void square(Spot at) {
    canvas.path(
        List.of(
            Spots.shifted(at, -1, -1),
            Spots.shifted(at, 1, -1),
            Spots.shifted(at, 1, 1),
            Spots.shifted(at, -1, 1)),
        true,
        Pen.MEDIUM);
  }
}
