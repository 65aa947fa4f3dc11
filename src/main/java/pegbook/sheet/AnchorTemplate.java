package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Anchors;
import pegbook.job.Sleeve;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.CheckBar;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The bolts of a pier's top at true size, to lay on the form; in as many parts as the paper asks
 * for. North is up. Neighbouring parts share a strip, with a line and two crosses to join them by.
 *
 * <p>Frame: millimetres from the middle of the pier, x to the east, y to the north.
 */
final class AnchorTemplate {
  /** Paper beyond the bolts. */
  private static final double MARGIN_MM = 12;

  /** What two parts have in common. */
  private static final double SHARED_MM = 14;

  private static final double HALF_CROSS_MM = 4;

  /** Where along a seam its crosses lie. */
  private static final double CROSS_SHARE = 0.18;

  /** A bolt's cross reaches this far past it. */
  private static final double PAST_BOLT_MM = 5;

  private static final double TYPE = 9;

  /** Under each part: its check bar. */
  private static final double BAR_MM = CheckBar.HEIGHT_MM + 4;

  private final Writing writing;
  private final Anchors anchors;
  private final Optional<Sleeve> sleeve;
  private final double pierRadiusMm;
  private final double halfMm;
  private final int columns;
  private final int rows;
  private final double partWidthMm;
  private final double partHeightMm;

  /**
   * A template of a pier's bolts.
   *
   * @param pier diameter of the concrete's top
   * @param room width and height that a part may take on paper
   */
  AnchorTemplate(
      Writing writing, Anchors anchors, Optional<Sleeve> sleeve, Length pier, Spot room) {
    this.writing = writing;
    this.anchors = anchors;
    this.sleeve = sleeve;
    this.pierRadiusMm = pier.millimetres() / 2;
    double least = anchors.circle().plus(anchors.size()).millimetres() / 2 + MARGIN_MM;
    double whole = pierRadiusMm + 2;
    double height = room.y() - BAR_MM;
    boolean wholeFits = 2 * whole <= Math.min(room.x(), height);
    this.halfMm = wholeFits ? Math.max(whole, least) : least;
    this.columns = parts(2 * halfMm, room.x());
    this.rows = parts(2 * halfMm, height);
    this.partWidthMm = (2 * halfMm + (columns - 1) * SHARED_MM) / columns;
    this.partHeightMm = (2 * halfMm + (rows - 1) * SHARED_MM) / rows;
  }

  private static int parts(double whole, double room) {
    return Math.max(1, (int) Math.ceil((whole - SHARED_MM) / (room - SHARED_MM) - 1e-9));
  }

  /** The parts, from the upper left by rows. */
  List<Drawing> drawings(String id) {
    List<Drawing> drawings = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        drawings.add(new Part(column, row).drawing(id + "-" + (drawings.size() + 1)));
      }
    }
    return List.copyOf(drawings);
  }

  /** One part: a window of the whole. */
  private final class Part {
    private final int column;
    private final int row;
    private final double left;
    private final double bottom;
    private final Canvas canvas;

    Part(int column, int row) {
      this.column = column;
      this.row = row;
      this.left = -halfMm + column * (partWidthMm - SHARED_MM);
      this.bottom = halfMm - partHeightMm - row * (partHeightMm - SHARED_MM);
      double bar = CheckBar.length(writing.formats().units()).millimetres() + 4;
      this.canvas =
          new Canvas(
              Math.max(partWidthMm, bar) + 0.01, partHeightMm + BAR_MM + 0.01, writing.lettering());
    }

    Drawing drawing(String id) {
      joins();
      Spot middle = new Spot(0, 0);
      circle(middle, pierRadiusMm, Pen.MEDIUM.dashed());
      circle(middle, anchors.circle().millimetres() / 2, Pen.THIN.centre());
      line(new Spot(-halfMm, 0), new Spot(halfMm, 0), Pen.HAIR.centre());
      line(new Spot(0, -halfMm), new Spot(0, halfMm), Pen.HAIR.centre());
      north();
      for (int bolt = 0; bolt < anchors.count(); bolt++) {
        bolt(bolt);
      }
      sleeve.ifPresent(this::sleeve);
      CheckBar.draw(
          canvas,
          new Spot(2, 1.5),
          writing.formats().units(),
          writing
              .texts()
              .say(
                  "pier.template.bar",
                  Map.of(
                      "length",
                      writing.formats().size(CheckBar.length(writing.formats().units())))));
      return canvas.drawing(id, description());
    }

    private String description() {
      return writing
          .texts()
          .say(
              "pier.template.description",
              Map.of(
                  "bolts", writing.formats().count(anchors.count()),
                  "circle", writing.formats().size(anchors.circle())));
    }

    private Spot onPaper(Spot spot) {
      return new Spot(spot.x() - left, spot.y() - bottom + BAR_MM);
    }

    private boolean holds(Spot spot) {
      return spot.x() >= left
          && spot.x() <= left + partWidthMm
          && spot.y() >= bottom
          && spot.y() <= bottom + partHeightMm;
    }

    /** The part of a line that lies in the window, to a hundredth of a millimetre at its ends. */
    private void line(Spot from, Spot to, Pen pen) {
      double low = 0;
      double high = 1;
      double[] starts = {from.x() - left, from.y() - bottom};
      double[] ways = {to.x() - from.x(), to.y() - from.y()};
      double[] sizes = {partWidthMm, partHeightMm};
      for (int axis = 0; axis < 2; axis++) {
        if (Math.abs(ways[axis]) < 1e-9) {
          if (starts[axis] < 0 || starts[axis] > sizes[axis]) {
            return;
          }
        } else {
          double one = -starts[axis] / ways[axis];
          double other = (sizes[axis] - starts[axis]) / ways[axis];
          low = Math.max(low, Math.min(one, other));
          high = Math.min(high, Math.max(one, other));
        }
      }
      if (high > low) {
        Spot begin = new Spot(from.x() + low * ways[0], from.y() + low * ways[1]);
        Spot end = new Spot(from.x() + high * ways[0], from.y() + high * ways[1]);
        canvas.line(onPaper(begin), onPaper(end), pen);
      }
    }

    /** A circle, or those of its stretches that lie in the window. */
    private void circle(Spot centre, double radius, Pen pen) {
      int steps = 720;
      List<Spot> stretch = new ArrayList<>();
      boolean whole = true;
      for (int i = 0; i <= steps; i++) {
        Spot spot = Spots.towards(centre, 360.0 * i / steps, radius);
        if (holds(spot)) {
          stretch.add(onPaper(spot));
        } else {
          whole = false;
          close(stretch, pen);
        }
      }
      if (whole) {
        canvas.circle(onPaper(centre), radius, pen);
      } else {
        close(stretch, pen);
      }
    }

    private void close(List<Spot> stretch, Pen pen) {
      if (stretch.size() > 1) {
        canvas.path(List.copyOf(stretch), false, pen);
      }
      stretch.clear();
    }

    private Spot at(double azimuthDegrees, double radius) {
      return Spots.towards(new Spot(0, 0), 90 - azimuthDegrees, radius);
    }

    private void bolt(int number) {
      double azimuth = anchors.first().degrees() + 360.0 * number / anchors.count();
      double circle = anchors.circle().millimetres() / 2;
      double radius = anchors.size().millimetres() / 2;
      Spot bolt = at(azimuth, circle);
      double reach = radius + PAST_BOLT_MM;
      circle(bolt, radius, Pen.MEDIUM);
      line(Spots.shifted(bolt, -reach, 0), Spots.shifted(bolt, reach, 0), Pen.HAIR);
      line(Spots.shifted(bolt, 0, -reach), Spots.shifted(bolt, 0, reach), Pen.HAIR);
      write(beside(bolt, reach + 1.5), writing.formats().count(number + 1), TYPE + 1);
    }

    /** Off a bolt's cross, on the side towards the middle. */
    private Spot beside(Spot bolt, double away) {
      double degrees = (bolt.y() > 0 ? -1 : 1) * (bolt.x() > 0.1 ? 135 : 45);
      return Spots.towards(bolt, degrees, away);
    }

    private void sleeve(Sleeve pipe) {
      Spot centre = at(pipe.towards().degrees(), pipe.offset().millimetres());
      double radius = pipe.outside().millimetres() / 2;
      circle(centre, radius, Pen.MEDIUM);
      write(
          Spots.shifted(centre, 0, -Math.max(2, radius - 5)),
          writing.texts().say("pier.template.sleeve"),
          TYPE);
    }

    /** An arrow from the middle to true north. */
    private void north() {
      double tip =
          anchors.circle().millimetres() / 2 - anchors.size().millimetres() / 2 - PAST_BOLT_MM - 2;
      Spot end = new Spot(0, tip);
      line(new Spot(0, 0), end, Pen.MEDIUM);
      line(end, Spots.shifted(end, -1.6, -5), Pen.MEDIUM);
      line(end, Spots.shifted(end, 1.6, -5), Pen.MEDIUM);
      write(Spots.shifted(end, -4, -3), writing.texts().say("pier.template.north"), TYPE + 2);
    }

    /** Words where they lie in the window and do not cover others. */
    private void write(Spot middle, String words, double size) {
      if (holds(middle)) {
        canvas.write(
            new Element.Label(
                onPaper(middle), words, size, Element.Anchor.CENTRE_MIDDLE, 0, true, true));
      }
    }

    /** Lines and crosses by which the part joins its neighbours; each cross has its own name. */
    private void joins() {
      for (int seam = 1; seam < columns; seam++) {
        if (seam == column || seam == column + 1) {
          double x = -halfMm + seam * (partWidthMm - SHARED_MM) + SHARED_MM / 2;
          line(new Spot(x, bottom), new Spot(x, bottom + partHeightMm), Pen.THIN.dashed());
          int name = row * (columns - 1) + seam - 1;
          cross(new Spot(x, bottom + partHeightMm * CROSS_SHARE), name, 1);
          cross(new Spot(x, bottom + partHeightMm * (1 - CROSS_SHARE)), name, 2);
        }
      }
      for (int seam = 1; seam < rows; seam++) {
        if (seam == row || seam == row + 1) {
          double y = halfMm - seam * (partHeightMm - SHARED_MM) - SHARED_MM / 2;
          line(new Spot(left, y), new Spot(left + partWidthMm, y), Pen.THIN.dashed());
          int name = rows * (columns - 1) + column * (rows - 1) + seam - 1;
          cross(new Spot(left + partWidthMm * CROSS_SHARE, y), name, 1);
          cross(new Spot(left + partWidthMm * (1 - CROSS_SHARE), y), name, 2);
        }
      }
    }

    private void cross(Spot spot, int name, int number) {
      canvas.under(new Element.Circle(onPaper(spot), 1.5, Optional.of(Pen.THIN), Optional.empty()));
      line(
          Spots.shifted(spot, -HALF_CROSS_MM, 0),
          Spots.shifted(spot, HALF_CROSS_MM, 0),
          Pen.MEDIUM);
      line(
          Spots.shifted(spot, 0, -HALF_CROSS_MM),
          Spots.shifted(spot, 0, HALF_CROSS_MM),
          Pen.MEDIUM);
      write(Spots.shifted(spot, -3.6, 3.6), name(name) + number, TYPE);
    }

    /** A, B and so on, then AA. */
    private String name(int index) {
      String letter = Character.toString('A' + index % 26);
      return index < 26 ? letter : letter + letter;
    }
  }
}
