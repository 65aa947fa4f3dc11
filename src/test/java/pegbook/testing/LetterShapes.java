package pegbook.testing;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;

/**
 * Boxes of letters' shapes, as the fonts inside the PDF draw them, in parts of the type's height.
 */
final class LetterShapes {
  private final IdentityHashMap<COSBase, Map<Integer, Optional<Rectangle2D>>> known =
      new IdentityHashMap<>();

  /** The box of a letter; none when it leaves no mark. */
  Optional<Rectangle2D> box(PDFont font, int code) {
    return known
        .computeIfAbsent(font.getCOSObject(), any -> new LinkedHashMap<>())
        .computeIfAbsent(code, any -> measure(font, code));
  }

  /** Whether the font has no shape for a code, so that its stand-in box or nothing is printed. */
  static boolean isMissing(PDFont font, int code) {
    try {
      return font instanceof PDType0Font composite && composite.codeToGID(code) == 0;
    } catch (IOException broken) {
      throw new java.io.UncheckedIOException(broken);
    }
  }

  private static Optional<Rectangle2D> measure(PDFont font, int code) {
    if (!(font instanceof PDVectorFont shapes)) {
      throw new IllegalArgumentException("a font without outlines: " + font.getName());
    }
    try {
      return boxOf(shapes.getNormalizedPath(code));
    } catch (IOException broken) {
      throw new java.io.UncheckedIOException(broken);
    }
  }

  private static Optional<Rectangle2D> boxOf(GeneralPath path) {
    Rectangle2D box = null;
    double[] at = new double[6];
    for (PathIterator walk = path.getPathIterator(null, 1); !walk.isDone(); walk.next()) {
      if (walk.currentSegment(at) != PathIterator.SEG_CLOSE) {
        box = box == null ? new Rectangle2D.Double(at[0], at[1], 0, 0) : box;
        box.add(at[0], at[1]);
      }
    }
    return Optional.ofNullable(box)
        .filter(found -> found.getWidth() > 0 || found.getHeight() > 0)
        .map(
            found ->
                new Rectangle2D.Double(
                    found.getX() / 1000,
                    found.getY() / 1000,
                    found.getWidth() / 1000,
                    found.getHeight() / 1000));
  }
}
