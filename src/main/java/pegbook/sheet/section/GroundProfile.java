package pegbook.sheet.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.Fills;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * A section along the marks, one column each: ground, holes, concrete, posts, and the level lines
 * over them. Heights are to scale; widths and ways from mark to mark are not.
 */
public final class GroundProfile {
  private static final double SIZE = 8;
  private static final double LEFT_MM = 5;
  private static final double RIGHT_MM = 30;

  /** A column with its readings under it, and one with the mark's name alone. */
  private static final double WIDE_COLUMN_MM = 16.5;

  private static final double NARROW_COLUMN_MM = 9.5;
  private static final double WIDEST_COLUMN_MM = 24;

  /** More marks than this are drawn in narrow columns. */
  private static final int WIDE_MARKS = 27;

  private static final double TALLEST_MM = 62;
  private static final double TALLEST_NARROW_MM = 44;
  private static final double FOOT_MM = 5.5;
  private static final double READING_MM = 4.2;
  private static final double OVER_MM = 5;
  private static final double HALF_HOLE_SHARE = 0.2;
  private static final double SHAFT_SHARE = 0.72;
  private static final double POST_SHARE = 0.3;

  /**
   * A mark's column. Heights are above the benchmark.
   *
   * @param mark its name
   * @param hole its heights, where its level is known
   * @param reading what the stick reads at the bare bottom, in words
   */
  public record Column(String mark, Optional<Heights> hole, String reading) {}

  /**
   * Heights at a mark.
   *
   * @param postTop where a post ends, where there is one
   */
  public record Heights(
      Length bottom, Length underside, Length ground, Length top, Optional<Length> postTop) {}

  /**
   * A level line across the drawing.
   *
   * @param words its name
   */
  public record LevelLine(Length height, String words, Pen pen) {}

  /**
   * What the drawings of a sheet share.
   *
   * @param lines level lines, the most wanted first
   * @param unknown written in the column of a mark without a level
   */
  public record Style(
      UnitSystem units,
      double widthMm,
      List<LevelLine> lines,
      String unknown,
      Lettering lettering) {
    public Style {
      lines = List.copyOf(lines);
    }
  }

  /**
   * The drawings.
   *
   * @param scale of their heights
   * @param readings true where readings stand under the names
   */
  public record Pictures(List<Drawing> drawings, DrawingScale scale, boolean readings) {
    public Pictures {
      drawings = List.copyOf(drawings);
    }
  }

  private final Canvas canvas;
  private final Style style;
  private final List<Column> columns;
  private final DrawingScale scale;
  private final double lowest;
  private final double columnMm;
  private final boolean readings;

  private GroundProfile(
      List<Column> columns, Style style, Range range, DrawingScale scale, boolean readings) {
    this.columns = columns;
    this.style = style;
    this.scale = scale;
    this.lowest = range.low();
    this.readings = readings;
    this.columnMm =
        Math.min(WIDEST_COLUMN_MM, (style.widthMm() - LEFT_MM - RIGHT_MM) / columns.size());
    double tall = scale.millimetres(new Length(range.high() - range.low()));
    this.canvas = new Canvas(style.widthMm(), base() + tall + OVER_MM, style.lettering());
  }

  /** Lowest and highest, metres. */
  private record Range(double low, double high) {}

  /**
   * Draws as many pictures as the marks need; none of marks of which no level is known.
   *
   * @param columns in the order of the marks; at least one with heights
   * @param id of the first drawing, without its number
   * @param description for readers who cannot see them
   */
  public static Pictures draw(List<Column> columns, Style style, String id, String description) {
    boolean wide = columns.size() <= WIDE_MARKS;
    double room = style.widthMm() - LEFT_MM - RIGHT_MM;
    int most = (int) Math.floor(room / (wide ? WIDE_COLUMN_MM : NARROW_COLUMN_MM));
    int parts = (columns.size() + most - 1) / most;
    int each = (columns.size() + parts - 1) / parts;
    Range range = range(columns, style.lines());
    DrawingScale scale =
        DrawingScale.largestThatFits(
                style.units(),
                new Extent(0, 0, 0, range.high() - range.low()),
                room,
                wide ? TALLEST_MM : TALLEST_NARROW_MM)
            .orElseThrow(() -> new IllegalArgumentException("heights too far apart to draw"));
    List<Drawing> drawings = new ArrayList<>();
    for (int from = 0; from < columns.size(); from += each) {
      List<Column> part = columns.subList(from, Math.min(columns.size(), from + each));
      if (part.stream().anyMatch(column -> column.hole().isPresent())) {
        GroundProfile profile = new GroundProfile(part, style, range, scale, wide);
        drawings.add(profile.picture(id + "-" + (drawings.size() + 1), description));
      }
    }
    return new Pictures(drawings, scale, wide);
  }

  private static Range range(List<Column> columns, List<LevelLine> lines) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Column column : columns) {
      if (column.hole().isPresent()) {
        Heights hole = column.hole().get();
        low = Math.min(low, hole.bottom().metres());
        high = Math.max(high, hole.top().max(hole.ground()).metres());
      }
    }
    for (LevelLine line : lines) {
      high = Math.max(high, line.height().metres());
      low = Math.min(low, line.height().metres());
    }
    return new Range(low, high);
  }

  private double base() {
    return FOOT_MM + (readings ? READING_MM : 0);
  }

  private double y(Length height) {
    return base() + scale.millimetres(new Length(height.metres() - lowest));
  }

  private double x(int column) {
    return LEFT_MM + columnMm * (column + 0.5);
  }

  private double halfHole() {
    return columnMm * HALF_HOLE_SHARE;
  }

  private double end() {
    return LEFT_MM + columnMm * columns.size();
  }

  private Drawing picture(String id, String description) {
    for (int i = 0; i < columns.size(); i++) {
      name(i);
      int at = i;
      columns.get(i).hole().ifPresent(hole -> hole(at, hole));
    }
    ground();
    lines();
    return canvas.drawing(id, description);
  }

  private void name(int at) {
    Column column = columns.get(at);
    write(column.mark(), new Spot(x(at), readings ? 1.5 + READING_MM : 1.5), true);
    String under = column.hole().isPresent() ? column.reading() : style.unknown();
    if (readings) {
      write(under, new Spot(x(at), 1.5), false);
    }
  }

  private void write(String text, Spot at, boolean bold) {
    canvas.write(new Element.Label(at, text, SIZE, Element.Anchor.CENTRE, 0, bold, false));
  }

  private void hole(int at, Heights hole) {
    double left = x(at) - halfHole();
    double right = x(at) + halfHole();
    double shaft = halfHole() * SHAFT_SHARE;
    double low = Math.min(y(hole.top()), y(hole.ground()));
    if (y(hole.underside()) > y(hole.bottom()) + 0.5) {
      Fills.gravel(canvas, SectionFrame.box(left, y(hole.bottom()), right, y(hole.underside())));
    }
    Fills.concrete(canvas, SectionFrame.box(left, y(hole.underside()), right, low));
    Fills.concrete(canvas, SectionFrame.box(x(at) - shaft, low, x(at) + shaft, y(hole.top())));
    canvas.path(
        List.of(
            new Spot(left, y(hole.ground())),
            new Spot(left, y(hole.bottom())),
            new Spot(right, y(hole.bottom())),
            new Spot(right, y(hole.ground()))),
        false,
        Pen.MEDIUM);
    canvas.line(
        new Spot(left, y(hole.underside())), new Spot(right, y(hole.underside())), Pen.HAIR);
    canvas.path(
        SectionFrame.box(x(at) - shaft, low, x(at) + shaft, y(hole.top())), true, Pen.MEDIUM);
    hole.postTop()
        .filter(top -> top.isMoreThan(hole.top()))
        .ifPresent(
            top ->
                canvas.path(
                    SectionFrame.box(
                        x(at) - halfHole() * POST_SHARE,
                        y(hole.top()),
                        x(at) + halfHole() * POST_SHARE,
                        y(top)),
                    true,
                    Pen.THIN));
  }

  /** From hole to hole; no line where the ground is not known. */
  private void ground() {
    for (int i = 0; i < columns.size(); i++) {
      Optional<Heights> here = columns.get(i).hole();
      if (here.isPresent()) {
        double y = y(here.get().ground());
        Optional<Heights> before = i == 0 ? Optional.empty() : columns.get(i - 1).hole();
        Spot left = new Spot(x(i) - halfHole(), y);
        if (before.isPresent()) {
          stretch(new Spot(x(i - 1) + halfHole(), y(before.get().ground())), left);
        } else {
          stretch(new Spot(x(i) - columnMm / 2 + 0.5, y), left);
        }
        if (i + 1 == columns.size() || columns.get(i + 1).hole().isEmpty()) {
          stretch(new Spot(x(i) + halfHole(), y), new Spot(x(i) + columnMm / 2 - 0.5, y));
        }
      }
    }
  }

  private void stretch(Spot from, Spot to) {
    Fills.groundLine(canvas, from, to);
  }

  private void lines() {
    LabelPlacer placer = new LabelPlacer(canvas);
    for (LevelLine line : style.lines()) {
      Spot right = new Spot(end() + 2, y(line.height()));
      canvas.line(new Spot(1, y(line.height())), right, line.pen());
    }
    for (LevelLine line : style.lines()) {
      Wording words = Wording.wrapped(line.words(), SIZE, RIGHT_MM - 6, style.lettering());
      placer.place(words, new Spot(end() + 2, y(line.height())), 0.8, 0);
    }
  }
}
