package pegbook.sheet.plan;

import java.util.List;
import java.util.function.Function;
import pegbook.figures.Hole;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * Draws the parts of a figure whose marks stand too close to be named on one plan. The plan of the
 * whole is their key.
 *
 * @param content what the plans show
 * @param words on them
 * @param lettering widths of text
 * @param widthMm of every drawing
 * @param heightMm the most a drawing may be high
 */
record PartPictures(
    PlanContent content, PlanWords words, Lettering lettering, double widthMm, double heightMm) {
  private static final double SIZE = 8;

  /** Paper kept free round the marks of a part, for their names. */
  private static final double MARGIN_MM = 14;

  /** A part and its picture. */
  record Pictured(PlanPart part, PlanPicture picture) {}

  /**
   * The coarsest parts on which every mark has its name; where there are none, those that name the
   * most.
   *
   * @param id names the picture of a part
   * @param description tells it to those who cannot see it
   */
  List<Pictured> draw(Function<PlanPart, String> id, Function<PlanPart, String> description) {
    List<Pictured> best = List.of();
    for (PlanParts grid : PlanParts.GRIDS) {
      List<Pictured> parts =
          grid.of(content.holes()).stream()
              .map(
                  part ->
                      new Pictured(part, picture(part, id.apply(part), description.apply(part))))
              .toList();
      if (best.isEmpty() || unnamed(parts) < unnamed(best)) {
        best = parts;
      }
      if (unnamed(best) == 0) {
        return best;
      }
    }
    return best;
  }

  private static int unnamed(List<Pictured> parts) {
    return parts.stream().mapToInt(part -> part.picture().unnamed().size()).sum();
  }

  private PlanPicture picture(PlanPart part, String id, String description) {
    return SitePictures.best(first -> picture(part, id, description, first));
  }

  private PlanPicture picture(PlanPart part, String id, String description, List<String> first) {
    DrawingScale scale = scale(part);
    Extent ground = shown(part, scale);
    double high =
        Math.min(
            heightMm,
            scale.millimetres(new Length(ground.heightMetres())) + Furniture.HEIGHT_MM + 2);
    Canvas canvas = new Canvas(widthMm, high, lettering);
    ClipWindow window =
        new ClipWindow(1, Furniture.HEIGHT_MM + 1, canvas.widthMm() - 1, canvas.heightMm() - 1);
    Spot middle = new Spot(canvas.widthMm() / 2, (Furniture.HEIGHT_MM + canvas.heightMm()) / 2);
    PlanView view = new PlanView(canvas, new PlanFrame(ground.centre(), middle, scale), window);
    Furniture.draw(canvas, scale, words);
    view.keepTextInside();
    new GroundLayer(view).draw(content.site(), content.benchmark());
    FigureLayer figure = new FigureLayer(view);
    figure.floor(content.placement());
    figure.holes(seen(view));
    figure.baseline(content.baselineFirst(), content.baselineSecond());
    figure.part(part, false);
    PlanLabels labels = new PlanLabels(view, content.only(part.holes()), words, SIZE);
    labels.marks(first);
    canvas.path(window.corners(), true, Pen.THIN);
    return new PlanPicture(canvas.drawing(id, description), scale, labels.unnamed());
  }

  /** Holes of which the middle is seen: those of neighbouring parts too. */
  private List<Hole> seen(PlanView view) {
    return content.holes().stream().filter(hole -> view.isSeen(hole.centre())).toList();
  }

  private static Extent shown(PlanPart part, DrawingScale scale) {
    return part.ground().grown(Length.ofMillimetres(MARGIN_MM).metres() * scale.ratio());
  }

  private DrawingScale scale(PlanPart part) {
    List<DrawingScale> series = DrawingScale.series(content.units());
    return series.stream()
        .filter(
            scale -> {
              Extent ground = shown(part, scale);
              return scale.millimetres(new Length(ground.widthMetres())) <= widthMm - 2
                  && scale.millimetres(new Length(ground.heightMetres()))
                      <= heightMm - Furniture.HEIGHT_MM - 2;
            })
        .findFirst()
        .orElse(series.get(series.size() - 1));
  }
}
