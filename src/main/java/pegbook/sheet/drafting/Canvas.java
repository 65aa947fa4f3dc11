package pegbook.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.lettering.Lettering;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * Collects what is drawn. Knows where text stands and lines run, so that later text steps aside.
 * Text is painted over everything else.
 */
public final class Canvas {
  /** Bare paper kept between two texts. */
  static final double TEXT_GAP_MM = 0.6;

  private static final int CIRCLE_PARTS = 24;

  private final double widthMm;
  private final double heightMm;
  private final Lettering lettering;
  private final List<Element> shapes = new ArrayList<>();
  private final List<Element> texts = new ArrayList<>();

  /** Where text and leaders stand, what else text keeps off, and lines that it avoids. */
  private final Grid<Plate> takenAt;

  private final Grid<Plate> keptAt;
  private final Grid<Stroke> strokesAt;

  /** A stretch of drawn line that text avoids where it can. */
  record Stroke(Spot from, Spot to) {}

  /**
   * An empty canvas.
   *
   * @param widthMm set down to a hundredth of a millimetre, as the height
   */
  public Canvas(double widthMm, double heightMm, Lettering lettering) {
    this.widthMm = Math.floor(widthMm * 100 + 1e-6) / 100;
    this.heightMm = Math.floor(heightMm * 100 + 1e-6) / 100;
    this.lettering = lettering;
    this.takenAt = new Grid<>(this.widthMm, this.heightMm);
    this.keptAt = new Grid<>(this.widthMm, this.heightMm);
    this.strokesAt = new Grid<>(this.widthMm, this.heightMm);
  }

  private void take(Plate plate) {
    takenAt.add(plate, plate.low(), plate.high());
  }

  private void remember(Spot from, Spot to) {
    strokesAt.add(new Stroke(from, to), from, to);
  }

  public double widthMm() {
    return widthMm;
  }

  public double heightMm() {
    return heightMm;
  }

  public Lettering lettering() {
    return lettering;
  }

  /** The whole canvas. */
  public Plate area() {
    return Plate.between(0, 0, widthMm, heightMm);
  }

  public void line(Spot from, Spot to, Pen pen) {
    shapes.add(new Element.Line(from, to, pen));
    remember(from, to);
  }

  /** An open or closed row of lines. */
  public void path(List<Spot> spots, boolean closed, Pen pen) {
    shapes.add(new Element.Path(spots, closed, Optional.of(pen), Optional.empty()));
    remember(spots, closed);
  }

  /** A filled figure without an edge. */
  public void area(List<Spot> spots, Ink ink) {
    shapes.add(new Element.Path(spots, true, Optional.empty(), Optional.of(ink)));
    remember(spots, true);
  }

  public void circle(Spot centre, double radiusMm, Pen pen) {
    shapes.add(new Element.Circle(centre, radiusMm, Optional.of(pen), Optional.empty()));
    rememberCircle(centre, radiusMm);
  }

  /** A filled circle without an edge. */
  public void dot(Spot centre, double radiusMm) {
    shapes.add(new Element.Circle(centre, radiusMm, Optional.empty(), Optional.of(Ink.BLACK)));
    rememberCircle(centre, radiusMm);
  }

  /** Anything else that is not text; text does not avoid it. */
  public void under(Element shape) {
    if (shape instanceof Element.Label) {
      throw new IllegalArgumentException("text goes through write: " + shape);
    }
    shapes.add(shape);
  }

  private void remember(List<Spot> spots, boolean closed) {
    for (int i = 0; i + 1 < spots.size(); i++) {
      remember(spots.get(i), spots.get(i + 1));
    }
    if (closed) {
      remember(spots.get(spots.size() - 1), spots.get(0));
    }
  }

  private void rememberCircle(Spot centre, double radiusMm) {
    List<Spot> ring = new ArrayList<>();
    for (int i = 0; i < CIRCLE_PARTS; i++) {
      ring.add(Spots.towards(centre, 360.0 * i / CIRCLE_PARTS, radiusMm));
    }
    remember(ring, true);
  }

  /** Keeps a place free of text that comes later; leaders may run through it. */
  public void keepFree(Plate plate) {
    keptAt.add(plate, plate.low(), plate.high());
  }

  /**
   * True when text fits there: inside the canvas, over no other text, leader or place kept free.
   */
  public boolean isFree(Plate plate) {
    Plate withGap = plate.grown(TEXT_GAP_MM);
    return plate.isInside(area())
        && !takenAt.any(withGap.low(), withGap.high(), withGap::overlaps)
        && !keptAt.any(plate.low(), plate.high(), plate::overlaps);
  }

  /** True when the paper cleared round a text stays on the canvas. */
  boolean hasRoomToClear(Plate plate) {
    return plate.grown(TEXT_GAP_MM).isInside(area());
  }

  /** How many drawn lines run through a place. */
  int strokesThrough(Plate plate) {
    return strokesAt.count(
        plate.low(), plate.high(), stroke -> plate.isCrossedBy(stroke.from(), stroke.to()));
  }

  /** True when a stretch of line stays on the canvas, runs through no text, crosses no leader. */
  boolean isClear(Spot from, Spot to) {
    Spot low = new Spot(Math.min(from.x(), to.x()), Math.min(from.y(), to.y()));
    Spot high = new Spot(Math.max(from.x(), to.x()), Math.max(from.y(), to.y()));
    return isOn(from) && isOn(to) && !takenAt.any(low, high, plate -> plate.isCrossedBy(from, to));
  }

  /** True when a line of the widest pen that ends there is not cut by the edge. */
  private boolean isOn(Spot spot) {
    double edge = Pen.HEAVY.widthMm() / 2;
    return spot.x() >= edge
        && spot.y() >= edge
        && spot.x() <= widthMm - edge
        && spot.y() <= heightMm - edge;
  }

  /**
   * Writes a text at a fixed place, or nothing when it does not fit there.
   *
   * @return whether it was written
   */
  public boolean write(Element.Label label) {
    Plate plate = Plate.of(label, lettering);
    if (!isFree(plate) || (label.cleared() && !hasRoomToClear(plate))) {
      return false;
    }
    texts.add(label);
    take(plate);
    return true;
  }

  /**
   * Writes a text that must stand at a fixed place.
   *
   * @throws IllegalStateException when it does not fit there: it is too long for its drawing
   */
  public void writeFixed(Element.Label label) {
    if (!write(label)) {
      throw new IllegalStateException(
          "no room on a drawing of "
              + widthMm
              + " x "
              + heightMm
              + " mm for the text \""
              + label.text()
              + "\"");
    }
  }

  /** Draws a leader, which later text keeps off. */
  void leader(Stroke leader) {
    line(leader.from(), leader.to(), Pen.HAIR);
    take(
        new Plate(
            Spots.middle(leader.from(), leader.to()),
            Spots.distanceMm(leader.from(), leader.to()) / 2,
            0.1,
            Spots.directionDegrees(leader.from(), leader.to())));
  }

  /** Writes texts whose place was found free as a whole. */
  void write(List<Element.Label> labels, Plate whole) {
    texts.addAll(labels);
    take(whole);
  }

  /** The finished drawing; see {@link Drawing}. */
  public Drawing drawing(String id, String description) {
    List<Element> all = new ArrayList<>(shapes);
    all.addAll(texts);
    return new Drawing(id, widthMm, heightMm, description, all);
  }
}
