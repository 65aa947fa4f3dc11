package pegbook.sheet.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import pegbook.figures.Hole;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;
import pegbook.sheet.plan.PartPictures.Pictured;

/**
 * Draws the site plan, and beside it a marking plan at a larger scale where the site is so much
 * larger than the figure that its marks would be crowded. At a scale hardly larger, a second plan
 * would only show the same once more.
 */
public final class SitePictures {
  private static final double SIZE = 8;

  /** Paper kept free round a site, and round a figure with its dimensions. */
  private static final double SITE_MARGIN_MM = 4;

  /** Paper kept free round a figure without its heaps, for two rows of dimensions. */
  private static final double MARKS_MARGIN_MM = 34;

  private static final double FIGURE_MARGIN_MM = 20;

  private static final double LEAST_HEIGHT_MM = 100;

  /** From this many times the scale on, a plan of its own is worth it. */
  private static final double WORTH = 1.6;

  /** Between two plans of parts on a page, for a caption. */
  private static final double BETWEEN_PARTS_MM = 12;

  /** A plan is drawn as often to find room for all names. */
  private static final int MOST_TIMES = 4;

  private final PlanContent content;
  private final PlanWords words;
  private final Lettering lettering;
  private final double widthMm;
  private final double siteHeightMm;
  private final double figureHeightMm;

  /**
   * Prepares to draw.
   *
   * @param widthMm of every drawing
   * @param siteHeightMm the most the site plan may be high
   * @param figureHeightMm the most a marking plan may be high
   */
  public SitePictures(
      PlanContent content,
      PlanWords words,
      Lettering lettering,
      double widthMm,
      double siteHeightMm,
      double figureHeightMm) {
    this.content = content;
    this.words = words;
    this.lettering = lettering;
    this.widthMm = widthMm;
    this.siteHeightMm = siteHeightMm;
    this.figureHeightMm = figureHeightMm;
  }

  /**
   * What is shown and in how much room.
   *
   * @param ground what must be seen at a scale, its margins on paper included
   */
  private record Sight(Function<DrawingScale, Extent> ground, double heightMm) {}

  private Sight site() {
    return new Sight(scale -> grown(content.all(), SITE_MARGIN_MM, scale), siteHeightMm);
  }

  private Sight figure() {
    return new Sight(scale -> grown(content.figure(), FIGURE_MARGIN_MM, scale), figureHeightMm);
  }

  /** Floor, holes and their dimensions alone: spoil and ties stand on the site plan. */
  private Sight marks() {
    return new Sight(scale -> grown(content.marks(), MARKS_MARGIN_MM, scale), figureHeightMm);
  }

  /** Everything, with room for the figure's dimensions, which may lie inside the lot. */
  private Sight both() {
    return new Sight(
        scale -> site().ground().apply(scale).with(figure().ground().apply(scale)), siteHeightMm);
  }

  private static Extent grown(Extent extent, double marginMm, DrawingScale scale) {
    return extent.grown(Length.ofMillimetres(marginMm).metres() * scale.ratio());
  }

  /** The scale at which all of it fits; the smallest of the series where none does. */
  private DrawingScale scale(Sight sight) {
    List<DrawingScale> series = DrawingScale.series(content.units());
    return series.stream()
        .filter(
            scale -> {
              Extent ground = sight.ground().apply(scale);
              return scale.millimetres(new Length(ground.widthMetres())) <= widthMm + 1e-9
                  && scale.millimetres(new Length(ground.heightMetres()))
                      <= sight.heightMm() - Furniture.HEIGHT_MM + 1e-9;
            })
        .findFirst()
        .orElse(series.get(series.size() - 1));
  }

  /** True when the figure gets a plan of its own. */
  public boolean isSplit() {
    return scale(both()).ratio() >= WORTH * scale(figure()).ratio();
  }

  /**
   * Draws all plans. Where marks stand too close for their names, the plan of the figure becomes
   * the key to plans of its parts, and only what no plan names remains unnamed.
   */
  public SitePlans draw(Descriptions descriptions) {
    List<Pictured> parts = List.of();
    PlanPicture site = site(descriptions.site(), parts);
    Optional<PlanPicture> marking = marking(descriptions.marking(), parts);
    if (marking.orElse(site).unnamed().stream().anyMatch(this::isMark)) {
      parts = parts(descriptions);
      site = marking.isPresent() ? site : site(descriptions.site(), parts);
      marking = marking(descriptions.marking(), parts);
    }
    return new SitePlans(
        site,
        marking,
        parts.stream()
            .map(part -> new SitePlans.Part(part.part().letter(), part.picture()))
            .toList());
  }

  /**
   * What the plans show, for those who cannot see them.
   *
   * @param part the same for a part, by its letter
   */
  public record Descriptions(String site, String marking, UnaryOperator<String> part) {}

  private List<Pictured> parts(Descriptions descriptions) {
    double height = (figureHeightMm - BETWEEN_PARTS_MM) / 2;
    return new PartPictures(content, words, lettering, widthMm, height)
        .draw(
            part -> "marking-plan-part-" + part.letter(),
            part -> descriptions.part().apply(part.letter()));
  }

  private boolean isMark(String name) {
    return content.holes().stream().anyMatch(hole -> hole.mark().equals(name));
  }

  /** Names the marks; a key to parts names the baseline's only, and leaves the others to them. */
  private void marks(PlanLabels labels, PlanView view, List<String> first, List<Pictured> parts) {
    if (parts.isEmpty()) {
      labels.marks(first);
      return;
    }
    List<Hole> ends =
        content.holes().stream()
            .filter(
                hole ->
                    hole.centre().equals(content.baselineFirst())
                        || hole.centre().equals(content.baselineSecond()))
            .toList();
    new PlanLabels(view, content.only(ends), words, SIZE).marks(List.of());
  }

  /** Names that found no room, on the parts too. */
  private static List<String> unnamed(PlanLabels labels, List<Pictured> parts) {
    return Stream.concat(
            labels.unnamed().stream(),
            parts.stream().flatMap(part -> part.picture().unnamed().stream()))
        .toList();
  }

  private PlanPicture site(String description, List<Pictured> parts) {
    return best(first -> site("site-plan-picture", description, first, parts));
  }

  /**
   * Draws again while names find no room, those first that found none. Of all tries the one that
   * names the most is taken.
   */
  static PlanPicture best(Function<List<String>, PlanPicture> draw) {
    PlanPicture best = draw.apply(List.of());
    List<String> first = best.unnamed();
    for (int time = 1; time < MOST_TIMES && !best.unnamed().isEmpty(); time++) {
      PlanPicture again = draw.apply(first);
      best = again.unnamed().size() < best.unnamed().size() ? again : best;
      first = Stream.concat(again.unnamed().stream(), first.stream()).distinct().toList();
    }
    return best;
  }

  private PlanPicture site(
      String id, String description, List<String> first, List<Pictured> parts) {
    boolean alone = !isSplit();
    Sight sight = alone ? both() : site();
    DrawingScale scale = scale(sight);
    PlanView view = view(sight, scale);
    draw(view, alone);
    edges(view, parts);
    PlanLabels labels = new PlanLabels(view, content, words, SIZE);
    if (alone) {
      marks(labels, view, first, parts);
      labels.sizes();
    }
    List<String> nameless = new RouteLayer(view, content).name(SIZE);
    labels.ties();
    labels.lotDistances();
    labels.features();
    labels.lotLines();
    if (alone) {
      labels.heaps();
    }
    return new PlanPicture(
        finish(view, id, description),
        scale,
        Stream.concat(unnamed(labels, parts).stream(), nameless.stream()).toList());
  }

  private static void edges(PlanView view, List<Pictured> parts) {
    FigureLayer figure = new FigureLayer(view);
    parts.forEach(part -> figure.part(part.part(), true));
  }

  /** The plan of the figure, where it gets one of its own. */
  private Optional<PlanPicture> marking(String description, List<Pictured> parts) {
    return isSplit()
        ? Optional.of(best(first -> marking("marking-plan-picture", description, first, parts)))
        : Optional.empty();
  }

  private PlanPicture marking(
      String id, String description, List<String> first, List<Pictured> parts) {
    DrawingScale scale = scale(marks());
    PlanView view = view(marks(), scale);
    ground(view);
    marks(view);
    edges(view, parts);
    PlanLabels labels = new PlanLabels(view, content, words, SIZE);
    // Sizes first: a name has other places beside its mark, a size has few.
    labels.sizes();
    marks(labels, view, first, parts);
    labels.features();
    labels.lotLines();
    return new PlanPicture(finish(view, id, description), scale, unnamed(labels, parts));
  }

  private PlanView view(Sight sight, DrawingScale scale) {
    Extent ground = sight.ground().apply(scale);
    double shownMm = scale.millimetres(new Length(ground.heightMetres()));
    double height =
        Math.min(sight.heightMm(), Math.max(LEAST_HEIGHT_MM, shownMm + Furniture.HEIGHT_MM));
    Canvas canvas = new Canvas(widthMm, height, lettering);
    ClipWindow window =
        new ClipWindow(1, Furniture.HEIGHT_MM + 1, canvas.widthMm() - 1, canvas.heightMm() - 1);
    Spot middle = new Spot(canvas.widthMm() / 2, (Furniture.HEIGHT_MM + canvas.heightMm()) / 2);
    return new PlanView(canvas, new PlanFrame(ground.centre(), middle, scale), window);
  }

  private void draw(PlanView view, boolean baseline) {
    ground(view);
    FigureLayer figure = new FigureLayer(view);
    figure.heaps(content.heaps());
    new RouteLayer(view, content).draw();
    if (baseline) {
      marks(view);
    } else {
      figure.floor(content.placement());
      figure.holes(content.holes());
    }
  }

  private void ground(PlanView view) {
    Furniture.draw(view.canvas(), view.frame().scale(), words);
    view.keepTextInside();
    new GroundLayer(view).draw(content.site(), content.benchmark());
  }

  private void marks(PlanView view) {
    FigureLayer figure = new FigureLayer(view);
    figure.floor(content.placement());
    figure.holes(content.holes());
    figure.baseline(content.baselineFirst(), content.baselineSecond());
  }

  private static Drawing finish(PlanView view, String id, String description) {
    view.canvas().path(view.window().corners(), true, Pen.THIN);
    return view.canvas().drawing(id, description);
  }
}
