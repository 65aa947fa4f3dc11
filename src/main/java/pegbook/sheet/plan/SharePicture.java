package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.geometry.Cell;
import pegbook.geometry.Point;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The floor shared out to its supports, north up, to scale: halfway lines, openings, and in each
 * part its support's name and its area. Where areas find no room the names stand alone, and the
 * table gives the areas.
 */
public final class SharePicture {
  private static final double MARGIN_MM = 5;
  private static final double LEAST_HEIGHT_MM = 60;
  private static final double SIZE = 8;
  private static final double DOT_MM = 0.9;
  private static final double CLEAR_MM = 1.5;
  private static final Pen HALFWAY = Pen.THIN;

  private final Content content;
  private final Canvas canvas;
  private final PlanFrame frame;
  private final LabelPlacer placer;
  private final List<String> unnamed = new ArrayList<>();

  /**
   * What is shown.
   *
   * @param units in which the scale is named
   * @param outline the floor's edge
   * @param parts by the support's name, in order
   * @param areas of the parts in words, by the same names
   */
  public record Content(
      UnitSystem units, List<Point> outline, Map<String, Cell> parts, Map<String, String> areas) {
    public Content {
      outline = List.copyOf(outline);
      parts = new LinkedHashMap<>(parts);
      areas = new LinkedHashMap<>(areas);
    }
  }

  private SharePicture(Content content, Canvas canvas, PlanFrame frame) {
    this.content = content;
    this.canvas = canvas;
    this.frame = frame;
    this.placer = new LabelPlacer(canvas);
  }

  /**
   * Draws the picture.
   *
   * @param widthMm its width
   * @param mostMm the most it may be high
   */
  public static PlanPicture draw(
      Content content,
      PlanWords words,
      Lettering lettering,
      double widthMm,
      double mostMm,
      String id,
      String description) {
    for (boolean areas : List.of(true, false)) {
      SharePicture picture = of(content, lettering, widthMm, mostMm);
      picture.draw(words, areas);
      if (picture.unnamed.isEmpty() || !areas) {
        return new PlanPicture(
            picture.canvas.drawing(id, description), picture.frame.scale(), picture.unnamed);
      }
    }
    throw new IllegalStateException("neither with areas nor without");
  }

  private static SharePicture of(
      Content content, Lettering lettering, double widthMm, double mostMm) {
    Extent extent = Extent.of(content.outline());
    List<DrawingScale> series = DrawingScale.series(content.units());
    DrawingScale scale =
        DrawingScale.largestThatFits(
                content.units(),
                extent,
                widthMm - 2 * MARGIN_MM,
                mostMm - 2 * MARGIN_MM - Furniture.HEIGHT_MM)
            .orElse(series.get(series.size() - 1));
    double shown = scale.millimetres(new Length(extent.heightMetres())) + 2 * MARGIN_MM;
    double height = Math.max(LEAST_HEIGHT_MM, Math.min(mostMm, shown + Furniture.HEIGHT_MM));
    Canvas canvas = new Canvas(widthMm, height, lettering);
    Spot middle = new Spot(canvas.widthMm() / 2, (Furniture.HEIGHT_MM + canvas.heightMm()) / 2);
    return new SharePicture(content, canvas, new PlanFrame(extent.centre(), middle, scale));
  }

  private void draw(PlanWords words, boolean areas) {
    Furniture.draw(canvas, frame.scale(), words);
    canvas.keepFree(Plate.between(0, 0, canvas.widthMm(), Furniture.HEIGHT_MM));
    content.parts().values().forEach(this::edges);
    canvas.path(content.outline().stream().map(frame::spot).toList(), true, FigureLayer.FLOOR);
    content.parts().values().forEach(cell -> support(frame.spot(cell.place())));
    content.parts().forEach((mark, cell) -> name(mark, cell, areas));
  }

  private void edges(Cell cell) {
    for (Cell.Piece piece : cell.pieces()) {
      canvas.path(frame.spots(piece.edge()), true, HALFWAY);
      piece.holes().forEach(hole -> canvas.path(frame.spots(hole), true, HALFWAY));
    }
  }

  private void support(Spot at) {
    canvas.dot(at, DOT_MM);
    canvas.keepFree(new Plate(at, DOT_MM + 0.4, DOT_MM + 0.4, 0));
  }

  private void name(String mark, Cell cell, boolean areas) {
    if (cell.pieces().isEmpty()) {
      unnamed.add(mark);
      return;
    }
    List<String> lines =
        areas ? List.of(mark, content.areas().getOrDefault(mark, "")) : List.of(mark);
    Wording wording = new Wording(lines, SIZE, true);
    if (!isNamed(wording, cell)) {
      unnamed.add(mark);
    }
  }

  /** Inside the part where the words fit there, else beside the support, outwards. */
  private boolean isNamed(Wording wording, Cell cell) {
    Spot inside = frame.spot(cell.largest().inside());
    if (isRoomInside(wording, cell.largest(), inside)) {
      return placer.placeOver(wording, inside, CLEAR_MM, 90);
    }
    Spot at = frame.spot(cell.place());
    Spot centre = frame.spot(frame.ground());
    double outwards = Spots.distanceMm(centre, at) < 1 ? 45 : Spots.directionDegrees(centre, at);
    return placer.place(wording, at, CLEAR_MM, outwards);
  }

  private boolean isRoomInside(Wording wording, Cell.Piece piece, Spot middle) {
    double halfWidth = wording.widthMm(canvas.lettering()) / 2 + CLEAR_MM / 2;
    double halfHeight = wording.heightMm() / 2 + CLEAR_MM / 2;
    return new Plate(middle, halfWidth, halfHeight, 0)
        .corners().stream().map(frame::place).allMatch(piece.edge()::contains);
  }
}
