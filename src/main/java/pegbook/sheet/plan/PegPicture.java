package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.safepegs.CartPath;
import pegbook.calc.safepegs.SafePegs;
import pegbook.calc.safepegs.SafePegs.Find;
import pegbook.calc.safepegs.SafePegs.PegString;
import pegbook.figures.Hole;
import pegbook.figures.SafePeg;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The pegs to scale: holes, heaps, the strips between them, pegs, the tapes that find each mark,
 * the strings. Pegs to tape from are filled squares, those that only carry strings open ones.
 */
public final class PegPicture {
  public static final Pen STRING = Pen.THIN;
  static final Pen TAPE = Pen.HAIR.dotted();
  static final Pen PATH = Pen.HAIR.grey();

  /** Half the side of a peg's square on paper. */
  public static final double PEG_MM = 1.1;

  private static final double MARGIN_MM = 12;
  private static final double LEAST_HEIGHT_MM = 90;
  private static final double CLEAR_MM = 1.4;
  private static final double SIZE = 8;
  private static final double FEATURE_WIDTH_MM = 34;

  private final PlanContent content;
  private final SafePegs pegs;
  private final PlanWords words;
  private final PlanView view;
  private final LabelPlacer placer;
  private final List<String> unnamed = new ArrayList<>();

  private PegPicture(PlanContent content, SafePegs pegs, PlanWords words, PlanView view) {
    this.content = content;
    this.pegs = pegs;
    this.words = words;
    this.view = view;
    this.placer = view.placer();
  }

  /**
   * Draws the picture at the largest scale of the series that fits.
   *
   * @param widthMm its width
   * @param heightMm the most it may be high
   */
  public static PlanPicture draw(
      PlanContent content,
      SafePegs pegs,
      PlanWords words,
      Lettering lettering,
      double widthMm,
      double heightMm,
      String id,
      String description) {
    Extent extent = extent(content, pegs);
    DrawingScale scale = scale(content, extent, widthMm, heightMm);
    double shownMm = scale.millimetres(new Length(extent.heightMetres()));
    double height =
        Math.min(
            heightMm, Math.max(LEAST_HEIGHT_MM, shownMm + 2 * MARGIN_MM + Furniture.HEIGHT_MM));
    Canvas canvas = new Canvas(widthMm, height, lettering);
    ClipWindow window =
        new ClipWindow(1, Furniture.HEIGHT_MM + 1, canvas.widthMm() - 1, canvas.heightMm() - 1);
    Spot middle = new Spot(canvas.widthMm() / 2, (Furniture.HEIGHT_MM + canvas.heightMm()) / 2);
    PlanView view = new PlanView(canvas, new PlanFrame(extent.centre(), middle, scale), window);
    PegPicture picture = new PegPicture(content, pegs, words, view);
    picture.draw();
    return new PlanPicture(canvas.drawing(id, description), scale, picture.unnamed);
  }

  private static DrawingScale scale(
      PlanContent content, Extent extent, double widthMm, double heightMm) {
    List<DrawingScale> series = DrawingScale.series(content.units());
    return DrawingScale.largestThatFits(
            content.units(),
            extent,
            widthMm - 2 * MARGIN_MM,
            heightMm - 2 * MARGIN_MM - Furniture.HEIGHT_MM)
        .orElse(series.get(series.size() - 1));
  }

  private static Extent extent(PlanContent content, SafePegs pegs) {
    List<Point> places = pegs.pegs().stream().map(peg -> peg.peg().at()).toList();
    return places.isEmpty() ? content.figure() : content.figure().with(Extent.of(places));
  }

  private void draw() {
    Furniture.draw(view.canvas(), view.frame().scale(), words);
    view.keepTextInside();
    pegs.paths().forEach(this::path);
    pegs.finds().forEach(this::tapes);
    new GroundLayer(view).draw(content.site(), content.benchmark());
    FigureLayer figure = new FigureLayer(view);
    figure.heaps(content.heaps());
    figure.floor(content.placement());
    figure.holes(content.holes());
    pegs.strings().forEach(this::string);
    pegs.pegs().forEach(peg -> square(peg.peg()));
    pegs.pegs().forEach(peg -> name(peg.peg()));
    content.holes().forEach(this::name);
    content.site().features().forEach(this::name);
    frame();
  }

  private Spot spot(String peg) {
    return view.spot(pegs.peg(peg).at());
  }

  /** Both edges of a strip; text may stand over them. */
  private void path(CartPath path) {
    double half = path.width().metres() / 2;
    Segment along = path.along();
    for (double offset : List.of(-half, half)) {
      under(
          view.spot(along.at(0, offset)),
          view.spot(along.at(along.length().metres(), offset)),
          PATH);
    }
  }

  private void tapes(Find find) {
    Spot mark = view.spot(content.placement().mark(find.mark()).at());
    under(spot(find.first().name()), mark, TAPE);
    under(spot(find.second().name()), mark, TAPE);
  }

  private void under(Spot from, Spot to, Pen pen) {
    view.window()
        .cut(from, to)
        .ifPresent(part -> view.canvas().under(new Element.Line(part.from(), part.to(), pen)));
  }

  private void string(PegString string) {
    view.line(spot(string.first()), spot(string.second()), STRING);
  }

  private void square(SafePeg peg) {
    Spot at = view.spot(peg.at());
    List<Spot> corners =
        List.of(
            Spots.shifted(at, -PEG_MM, -PEG_MM),
            Spots.shifted(at, PEG_MM, -PEG_MM),
            Spots.shifted(at, PEG_MM, PEG_MM),
            Spots.shifted(at, -PEG_MM, PEG_MM));
    if (peg.taped()) {
      view.canvas().area(corners, Ink.BLACK);
    } else {
      view.canvas().path(corners, true, Pen.MEDIUM);
    }
    view.canvas().keepFree(new Plate(at, PEG_MM, PEG_MM, 0));
  }

  private void name(SafePeg peg) {
    place(Wording.bold(peg.id(), SIZE + 1), view.spot(peg.at()), PEG_MM + 1, peg.at());
  }

  private void name(Hole hole) {
    double radius = view.millimetres(hole.diameter()) / 2;
    place(
        Wording.of(hole.mark(), SIZE), view.spot(hole.centre()), radius + CLEAR_MM, hole.centre());
  }

  private void place(Wording wording, Spot at, double clearMm, Point from) {
    boolean central = Point.ORIGIN.distanceTo(from).metres() < 1e-3;
    double outwards =
        central ? 45 : Spots.directionDegrees(view.spot(Point.ORIGIN), view.spot(from));
    if (!placer.place(wording, at, clearMm, outwards)) {
      unnamed.add(String.join(" ", wording.lines()));
    }
  }

  /** A feature of which a corner, an end or the middle is seen. */
  private void name(Feature feature) {
    List<Spot> spots = PlanContent.places(feature.shape()).stream().map(view::spot).toList();
    Wording wording =
        Wording.wrapped(feature.name(), SIZE, FEATURE_WIDTH_MM, view.canvas().lettering());
    for (int i = 0; i < spots.size(); i++) {
      var part = view.window().cut(spots.get(i), spots.get((i + 1) % spots.size()));
      Spot at = part.map(seen -> Spots.middle(seen.from(), seen.to())).orElse(spots.get(i));
      if (view.window().contains(at)) {
        if (!placer.place(wording, at, 2 * CLEAR_MM)) {
          unnamed.add(feature.name());
        }
        return;
      }
    }
  }

  private void frame() {
    ClipWindow window = view.window();
    view.canvas()
        .path(
            List.of(
                new Spot(window.left(), window.bottom()),
                new Spot(window.right(), window.bottom()),
                new Spot(window.right(), window.top()),
                new Spot(window.left(), window.top())),
            true,
            Pen.THIN);
  }
}
