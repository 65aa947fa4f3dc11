package pegbook.testing;

import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * Runs one page's instructions and notes what they paint. One class, because the library asks for
 * all of it in one subclass; what a run of letters means is left to {@link RunCollector}.
 */
final class PageEngine extends PDFGraphicsStreamEngine {
  static final double MM = 25.4 / 72;
  private static final double FLATNESS = 0.01;

  private final TagTree tree;
  private final Matrix toPaper;
  private final RunCollector letters;
  private final List<TextRun> runs = new ArrayList<>();
  private final List<DrawnPath> paths = new ArrayList<>();
  private final List<PrintedPage.PlacedDrawing> drawings = new ArrayList<>();
  private final Deque<List<Tag>> marks = new ArrayDeque<>();
  private final GeneralPath path = new GeneralPath();
  private int order;
  private int depth;
  private boolean clipping;

  PageEngine(PDPage page, TagTree tree, LetterShapes shapes) {
    super(page);
    this.tree = tree;
    this.toPaper =
        Matrix.getTranslateInstance(
            -page.getMediaBox().getLowerLeftX(), -page.getMediaBox().getLowerLeftY());
    this.letters = new RunCollector(shapes, toPaper);
  }

  List<TextRun> runs() {
    return runs;
  }

  List<DrawnPath> paths() {
    return paths;
  }

  List<PrintedPage.PlacedDrawing> drawings() {
    return drawings;
  }

  @Override
  public void showTextString(byte[] text) throws IOException {
    super.showTextString(text);
    finishRun();
  }

  @Override
  public void showTextStrings(COSArray array) throws IOException {
    super.showTextStrings(array);
    finishRun();
  }

  @Override
  protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) {
    letters.add(matrix, font, code, displacement, grey(getGraphicsState().getNonStrokingColor()));
  }

  private void finishRun() {
    letters.finish(order++, drawing(), clipBox(), tagPath()).ifPresent(runs::add);
  }

  @Override
  public void showForm(PDFormXObject form) throws IOException {
    enter(form);
    super.showForm(form);
    depth--;
  }

  @Override
  public void showTransparencyGroup(PDTransparencyGroup group) throws IOException {
    enter(group);
    super.showTransparencyGroup(group);
    depth--;
  }

  private void enter(PDFormXObject form) {
    if (depth == 0) {
      Matrix matrix =
          form.getMatrix().multiply(getGraphicsState().getCurrentTransformationMatrix());
      place(form.getBBox().transform(matrix));
    }
    depth++;
  }

  private void place(GeneralPath frame) {
    List<Position> corners = outlinesOf(frame).stream().flatMap(List::stream).toList();
    drawings.add(new PrintedPage.PlacedDrawing(Box.around(corners), tags()));
  }

  @Override
  public void drawImage(PDImage image) {
    Matrix matrix = getGraphicsState().getCurrentTransformationMatrix();
    place(new GeneralPath(matrix.createAffineTransform().createTransformedShape(UNIT)));
  }

  private static final Rectangle2D UNIT = new Rectangle2D.Double(0, 0, 1, 1);

  @Override
  public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
    int number = properties == null ? -1 : properties.getInt(COSName.MCID, -1);
    marks.push(
        number >= 0 && depth == 0
            ? tree.over(getPage(), number)
            : List.of(new Tag(tag == null ? "" : tag.getName(), 0, 0)));
  }

  @Override
  public void endMarkedContentSequence() {
    marks.pop();
  }

  private List<Tag> tagPath() {
    List<Tag> all = new ArrayList<>();
    marks.descendingIterator().forEachRemaining(all::addAll);
    return List.copyOf(all);
  }

  private List<String> tags() {
    return tagPath().stream().map(Tag::name).toList();
  }

  private OptionalInt drawing() {
    return depth == 0 ? OptionalInt.empty() : OptionalInt.of(drawings.size() - 1);
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    path.moveTo(p0.getX(), p0.getY());
    path.lineTo(p1.getX(), p1.getY());
    path.lineTo(p2.getX(), p2.getY());
    path.lineTo(p3.getX(), p3.getY());
    path.closePath();
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void clip(int windingRule) {
    path.setWindingRule(windingRule);
    clipping = true;
  }

  @Override
  public void endPath() {
    if (clipping) {
      getGraphicsState().intersectClippingPath(path);
      clipping = false;
    }
    path.reset();
  }

  @Override
  public void strokePath() {
    note(true, false);
  }

  @Override
  public void fillPath(int windingRule) {
    note(false, true);
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    note(true, true);
  }

  @Override
  public void shadingFill(COSName name) {
    throw new IllegalStateException("a shading on the page: " + name.getName());
  }

  private void note(boolean stroke, boolean fill) {
    List<List<Position>> outlines = outlinesOf(path);
    PDGraphicsState state = getGraphicsState();
    if (!outlines.isEmpty()) {
      double width =
          state.getLineWidth() * state.getCurrentTransformationMatrix().getScalingFactorX() * MM;
      paths.add(
          new DrawnPath(
              order++,
              outlines,
              Box.around(outlines.stream().flatMap(List::stream).toList()),
              stroke ? OptionalDouble.of(width) : OptionalDouble.empty(),
              state.getLineDashPattern().getDashArray().length > 0,
              grey(state.getStrokingColor()),
              fill ? OptionalDouble.of(grey(state.getNonStrokingColor())) : OptionalDouble.empty(),
              drawing(),
              clipBox(),
              tags()));
    }
    endPath();
  }

  private List<List<Position>> outlinesOf(GeneralPath shape) {
    List<List<Position>> outlines = new ArrayList<>();
    double[] at = new double[6];
    for (PathIterator walk = shape.getPathIterator(null, FLATNESS); !walk.isDone(); walk.next()) {
      int kind = walk.currentSegment(at);
      if (kind == PathIterator.SEG_MOVETO) {
        outlines.add(new ArrayList<>());
      }
      List<Position> last = outlines.get(outlines.size() - 1);
      last.add(kind == PathIterator.SEG_CLOSE ? last.get(0) : onPaper(at[0], at[1]));
    }
    return outlines.stream().filter(outline -> outline.size() > 1).map(List::copyOf).toList();
  }

  private Position onPaper(double x, double y) {
    return new Position((x + toPaper.getTranslateX()) * MM, (y + toPaper.getTranslateY()) * MM);
  }

  /** Bounds of all clipping paths in force; exact for upright rectangles, which is all we use. */
  private Box clipBox() {
    Box box = new Box(-1e6, -1e6, 1e6, 1e6);
    for (Path2D clip : getGraphicsState().getCurrentClippingPaths()) {
      Rectangle2D bounds = clip.getBounds2D();
      Position low = onPaper(bounds.getMinX(), bounds.getMinY());
      Position high = onPaper(bounds.getMaxX(), bounds.getMaxY());
      box = box.shared(new Box(low.x(), low.y(), high.x(), high.y()));
    }
    return box;
  }

  private static double grey(PDColor colour) {
    try {
      int rgb = colour.toRGB();
      return (0.299 * (rgb >> 16 & 255) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255)) / 255;
    } catch (IOException broken) {
      throw new java.io.UncheckedIOException(broken);
    }
  }
}
