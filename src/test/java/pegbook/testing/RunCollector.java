package pegbook.testing;

import static pegbook.testing.PageEngine.MM;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Gathers the letters of one instruction into a run with its boxes. */
final class RunCollector {
  private final LetterShapes shapes;
  private final Matrix toPaper;
  private final List<TextRun.Glyph> glyphs = new ArrayList<>();
  private Matrix first = new Matrix();
  private Position end = new Position(0, 0);
  private String font = "";
  private double grey;

  RunCollector(LetterShapes shapes, Matrix toPaper) {
    this.shapes = shapes;
    this.toPaper = toPaper;
  }

  void add(Matrix textToPage, PDFont from, int code, Vector displacement, double inkGrey) {
    Matrix matrix = textToPage.multiply(toPaper);
    if (glyphs.isEmpty()) {
      first = matrix;
      font = from.getName().replaceFirst("^[A-Z]{6}\\+", "");
      grey = inkGrey;
    }
    end = at(matrix, displacement.getX(), 0);
    Optional<Rectangle2D> box = shapes.box(from, code);
    String text = from.toUnicode(code);
    glyphs.add(
        new TextRun.Glyph(
            text == null ? "" : text,
            quad(matrix, box.orElse(new Rectangle2D.Double(0, 0, displacement.getX(), 0.5))),
            box.isEmpty(),
            LetterShapes.isMissing(from, code)));
  }

  /** The run gathered since the last call; none when it is only spaces. */
  Optional<TextRun> finish(int order, OptionalInt drawing, Box clip, List<Tag> path) {
    List<TextRun.Glyph> letters = List.copyOf(glyphs);
    glyphs.clear();
    String text = letters.stream().map(TextRun.Glyph::text).collect(Collectors.joining());
    boolean onlySpaces =
        letters.stream().allMatch(letter -> letter.text().isBlank() && !letter.text().isEmpty());
    if (letters.isEmpty() || onlySpaces) {
      return Optional.empty();
    }
    double degrees = Math.toDegrees(Math.atan2(first.getShearY(), first.getScaleX()));
    Quad ink = around(letters, degrees);
    return Optional.of(
        new TextRun(
            order,
            text,
            letters,
            at(first, 0, 0),
            end,
            ink,
            ink.bounds(),
            font,
            Math.hypot(first.getShearX(), first.getScaleY()),
            degrees,
            grey,
            drawing,
            clip,
            path));
  }

  /** The smallest box with the text's own turn round its inked letters. */
  private static Quad around(List<TextRun.Glyph> letters, double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    boolean anyInk = letters.stream().anyMatch(letter -> !letter.blank());
    Box level =
        Box.around(
            letters.stream()
                .filter(letter -> !letter.blank() || !anyInk)
                .flatMap(letter -> letter.ink().corners().stream())
                .map(at -> new Position(at.x() * cos + at.y() * sin, at.y() * cos - at.x() * sin))
                .toList());
    return new Quad(
        turned(level.left(), level.bottom(), cos, sin),
        turned(level.right(), level.bottom(), cos, sin),
        turned(level.left(), level.top(), cos, sin));
  }

  private static Position turned(double x, double y, double cos, double sin) {
    return new Position(x * cos - y * sin, x * sin + y * cos);
  }

  private static Quad quad(Matrix matrix, Rectangle2D box) {
    return new Quad(
        at(matrix, box.getMinX(), box.getMinY()),
        at(matrix, box.getMaxX(), box.getMinY()),
        at(matrix, box.getMinX(), box.getMaxY()));
  }

  /** A place in the text's own space, in millimetres on the paper. */
  private static Position at(Matrix matrix, double x, double y) {
    return new Position(
        (matrix.getScaleX() * x + matrix.getShearX() * y + matrix.getTranslateX()) * MM,
        (matrix.getShearY() * x + matrix.getScaleY() * y + matrix.getTranslateY()) * MM);
  }
}
