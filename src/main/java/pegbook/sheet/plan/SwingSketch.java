package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.lettering.Lettering;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * A small drawing of how one mark is set: both tapes with their readings, the crossing and its
 * angle, the check. The line from the first mark to the second always runs to the right, so that
 * its left side is up; an arrow shows where north is. What finds no room in the drawing stands
 * beside it.
 */
public final class SwingSketch {
  private static final double SIZE = SwingBlock.SIZE;

  /** Between things that find no room in the drawing. */
  private static final String BETWEEN = " · ";

  private static final double MARGIN_MM = 8;
  private static final double DOT_MM = 0.9;
  private static final double CLEAR_MM = 1.8;
  private static final double ARC_MM = 5;

  /** How far the drawing may shrink so that the check's other mark comes in. */
  private static final double CHECK_SHARE = 0.6;

  private static final double[] PARTS = {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74};

  private static final Pen TAPE = Pen.MEDIUM;
  private static final Pen CHECK = Pen.THIN.dashed();

  /**
   * A mark on the ground with its name.
   *
   * @param name as printed
   * @param at where
   */
  public record Place(String name, Point at) {}

  /**
   * What a sketch shows.
   *
   * @param first the mark of the first tape
   * @param second the mark of the second tape
   * @param mark the mark to set; none for the baseline's own sketch
   * @param title the large name
   * @param notes said beside the drawing, each wrapped
   * @param readings of the first tape and, off the line, of the second
   * @param crossing angle of the tapes, in words; empty on the line
   * @param check the check's other mark, where there is one in the figure
   * @param checkReading its distance; empty without a check
   * @param north letter of north
   */
  public record Content(
      Place first,
      Place second,
      Optional<Place> mark,
      String title,
      List<String> notes,
      List<String> readings,
      String crossing,
      Optional<Place> check,
      String checkReading,
      String north) {
    public Content {
      notes = List.copyOf(notes);
      readings = List.copyOf(readings);
    }

    Content with(String note) {
      List<String> all = Stream.concat(notes.stream(), Stream.of(note)).toList();
      return new Content(
          first, second, mark, title, all, readings, crossing, check, checkReading, north);
    }

    Content withoutCheck() {
      return new Content(
          first, second, mark, title, notes, readings, crossing, Optional.empty(), "", north);
    }
  }

  private final Content content;
  private final Canvas canvas;
  private final LabelPlacer placer;
  private final Segment baseline;

  /** What finds no room in the drawing. */
  private final List<String> roomless = new ArrayList<>();

  /** From the ground to paper. */
  private record Frame(Point middle, Spot paper, double millimetresPerMetre) {
    Spot spot(Point local) {
      return Spots.shifted(
          paper,
          (local.east() - middle.east()) * millimetresPerMetre,
          (local.north() - middle.north()) * millimetresPerMetre);
    }
  }

  private SwingSketch(Content content, Canvas canvas) {
    this.content = content;
    this.canvas = canvas;
    this.placer = new LabelPlacer(canvas);
    this.baseline = new Segment(content.first().at(), content.second().at());
  }

  /**
   * Draws one sketch; without its check, which the notes name too, where more of the rest then
   * finds room.
   */
  public static Drawing draw(
      Content content,
      Lettering lettering,
      double widthMm,
      double heightMm,
      String id,
      String description) {
    SwingSketch sketch = of(content, lettering, widthMm, heightMm);
    if (!sketch.roomless.isEmpty() && content.check().isPresent()) {
      SwingSketch fewer = of(content.withoutCheck(), lettering, widthMm, heightMm);
      sketch = fewer.roomless.size() < sketch.roomless.size() ? fewer : sketch;
    }
    if (!sketch.roomless.isEmpty()) {
      Content told = sketch.content.with(String.join(BETWEEN, sketch.roomless));
      sketch = of(told, lettering, widthMm, heightMm);
    }
    return sketch.canvas.drawing(id, description);
  }

  private static SwingSketch of(
      Content content, Lettering lettering, double widthMm, double heightMm) {
    SwingSketch sketch = new SwingSketch(content, new Canvas(widthMm, heightMm, lettering));
    sketch.draw();
    return sketch;
  }

  private Point local(Place place) {
    return new Point(baseline.alongMetres(place.at()), baseline.offsetMetres(place.at()));
  }

  private void draw() {
    new SwingBlock(content, canvas).draw(baseline.from().azimuthTo(baseline.to()).degrees());
    border();
    List<Place> needed =
        Stream.concat(Stream.of(content.first(), content.second()), content.mark().stream())
            .toList();
    Frame near = frame(needed);
    List<Place> all = Stream.concat(needed.stream(), content.check().stream()).toList();
    Frame wide = frame(all);
    boolean withCheck =
        content.check().isPresent()
            && wide.millimetresPerMetre() >= CHECK_SHARE * near.millimetresPerMetre();
    Frame frame = withCheck ? wide : near;
    lines(frame, withCheck);
    readings(frame, withCheck);
    names(frame, withCheck);
  }

  private void border() {
    double width = canvas.widthMm();
    double height = canvas.heightMm();
    double edge = Pen.THIN.widthMm() / 2;
    canvas.path(
        List.of(
            new Spot(edge, edge),
            new Spot(width - edge, edge),
            new Spot(width - edge, height - edge),
            new Spot(edge, height - edge)),
        true,
        Pen.THIN);
    canvas.keepFree(Plate.between(0, 0, SwingBlock.WIDTH_MM, height));
    canvas.keepFree(Plate.between(0, 0, width, 1));
    canvas.keepFree(Plate.between(0, height - 1, width, height));
    canvas.keepFree(Plate.between(width - 1, 0, width, height));
  }

  /** As large as fits beside the block. */
  private Frame frame(List<Place> places) {
    Extent extent = Extent.of(places.stream().map(this::local).toList());
    double wide = canvas.widthMm() - SwingBlock.WIDTH_MM - 2 * MARGIN_MM;
    double high = canvas.heightMm() - 2 * MARGIN_MM;
    double scale =
        Math.min(
            wide / Math.max(extent.widthMetres(), 1e-3),
            high / Math.max(extent.heightMetres(), 1e-3));
    Spot paper = new Spot((SwingBlock.WIDTH_MM + canvas.widthMm()) / 2, canvas.heightMm() / 2);
    return new Frame(extent.centre(), paper, scale);
  }

  private Spot spot(Frame frame, Place place) {
    return frame.spot(local(place));
  }

  private boolean isOnLine() {
    return content.readings().size() == 1;
  }

  private void lines(Frame frame, boolean withCheck) {
    Spot first = spot(frame, content.first());
    Spot second = spot(frame, content.second());
    canvas.line(first, second, Pen.HEAVY);
    dot(first);
    dot(second);
    content.mark().ifPresent(mark -> swing(spot(frame, mark), first, second));
    if (withCheck) {
      Spot other = spot(frame, content.check().orElseThrow());
      content.mark().ifPresent(mark -> canvas.line(spot(frame, mark), other, CHECK));
      dot(other);
    }
  }

  private void dot(Spot at) {
    canvas.dot(at, DOT_MM);
    canvas.keepFree(new Plate(at, DOT_MM + 0.5, DOT_MM + 0.5, 0));
  }

  /** Two tapes and their arcs; on the line one tape and a stroke across. */
  private void swing(Spot mark, Spot first, Spot second) {
    if (isOnLine()) {
      double across = Spots.directionDegrees(first, second) + 90;
      canvas.line(first, mark, Pen.HEAVY);
      canvas.line(
          Spots.towards(mark, across, -ARC_MM / 2),
          Spots.towards(mark, across, ARC_MM / 2),
          Pen.THICK);
    } else {
      canvas.line(first, mark, TAPE);
      canvas.line(second, mark, TAPE);
      arc(first, mark);
      arc(second, mark);
    }
    canvas.keepFree(new Plate(mark, 1.4, 1.4, 0));
  }

  private void arc(Spot centre, Spot mark) {
    double radius = Spots.distanceMm(centre, mark);
    double half = Math.min(40, StrictMath.toDegrees(ARC_MM / radius));
    double towards = Spots.directionDegrees(centre, mark);
    canvas.under(new Element.Arc(centre, radius, towards - half, 2 * half, Pen.THICK));
  }

  private void readings(Frame frame, boolean withCheck) {
    Spot first = spot(frame, content.first());
    Spot end = content.mark().map(mark -> spot(frame, mark)).orElse(spot(frame, content.second()));
    reading(first, end, content.readings().get(0), content.first().name());
    if (!isOnLine()) {
      Spot second = spot(frame, content.second());
      reading(second, end, content.readings().get(1), content.second().name());
    }
    if (withCheck) {
      Spot other = spot(frame, content.check().orElseThrow());
      reading(other, end, content.checkReading(), content.check().orElseThrow().name());
    }
  }

  /** Along the tape; else beside its middle; else in the block, with the mark it comes from. */
  private void reading(Spot from, Spot to, String text, String name) {
    LineText writer = new LineText(canvas, from, to, SIZE);
    for (double part : PARTS) {
      if (writer.write(text, part)) {
        return;
      }
    }
    if (!placer.place(Wording.of(text, SIZE), Spots.middle(from, to), CLEAR_MM)) {
      roomless.add(name + ": " + text);
    }
  }

  private void names(Frame frame, boolean withCheck) {
    name(frame, content.first(), 180);
    name(frame, content.second(), 0);
    content
        .mark()
        .ifPresent(
            mark -> {
              name(frame, mark, local(mark).north() >= 0 ? 90 : -90);
              if (!content.crossing().isEmpty()) {
                place(Wording.of(content.crossing(), SIZE), spot(frame, mark), inwards(mark));
              }
            });
    if (withCheck) {
      Place other = content.check().orElseThrow();
      name(frame, other, local(other).north() >= 0 ? 90 : -90);
    }
  }

  private double inwards(Place mark) {
    return local(mark).north() >= 0 ? -90 : 90;
  }

  private void name(Frame frame, Place place, double degrees) {
    place(Wording.bold(place.name(), SIZE + 1), spot(frame, place), degrees);
  }

  private void place(Wording wording, Spot at, double degrees) {
    if (!placer.place(wording, at, CLEAR_MM, degrees)) {
      roomless.add(String.join(" ", wording.lines()));
    }
  }
}
