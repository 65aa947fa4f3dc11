package pegbook.testing;

import static pegbook.testing.Problem.Kind.TEXT_ON_LINE;
import static pegbook.testing.Problem.Kind.TEXT_STRUCK;

import java.util.ArrayList;
import java.util.List;

/**
 * In tables and on the page no line touches a letter; in drawings no solid line strikes through the
 * middle of a text unless it was cleared in white under the text.
 */
final class LinesThroughText implements PageRule {
  /** One straight line with what is needed to judge it. */
  private record Line(Position from, Position to, Box box, int order) {}

  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    List<Problem> problems = new ArrayList<>();
    Bands<Line> pageLines =
        bands(page.paths().stream().filter(path -> path.drawing().isEmpty()).toList());
    for (TextRun run : page.runs()) {
      if (!run.isInDrawing() && pageLines.beside(run.box()).anyMatch(line -> touches(line, run))) {
        problems.add(new Problem(page.number(), TEXT_ON_LINE, PageRule.quoted(run)));
      }
    }
    for (int drawing = 0; drawing < page.drawings().size(); drawing++) {
      List<DrawnPath> paths = page.pathsOf(drawing);
      Bands<Line> solid = bands(paths.stream().filter(path -> !path.dashed()).toList());
      List<DrawnPath> clearings = paths.stream().filter(DrawnPath::isFilledWhite).toList();
      for (TextRun run : page.runsOf(drawing)) {
        if (solid.beside(run.box()).anyMatch(line -> strikes(line, run, clearings))) {
          problems.add(new Problem(page.number(), TEXT_STRUCK, PageRule.quoted(run)));
        }
      }
    }
    return problems;
  }

  /** Visible lines: strokes, and the edges of what is filled other than white. */
  private static Bands<Line> bands(List<DrawnPath> paths) {
    Bands<Line> lines = new Bands<>();
    for (DrawnPath path : paths) {
      boolean filled = path.fill().isPresent() && !path.isFilledWhite();
      if (path.isVisibleStroke() || filled) {
        for (DrawnPath.Piece piece : path.pieces()) {
          Box box = Box.around(List.of(piece.from(), piece.to()));
          lines.add(new Line(piece.from(), piece.to(), box, path.order()), box);
        }
      }
    }
    return lines;
  }

  private static boolean touches(Line line, TextRun run) {
    return near(line, run)
        && run.glyphs().stream()
            .filter(letter -> !letter.blank())
            .anyMatch(letter -> lengthInside(line, letter.ink().band(0.1, 0.9)) > Rules.CROSSING);
  }

  private static boolean near(Line line, TextRun run) {
    return run.box().overlap(line.box()) >= 0;
  }

  private static double lengthInside(Line line, Quad quad) {
    return quad.inside(line.from(), line.to())
        .map(part -> (part.to() - part.from()) * line.from().distanceTo(line.to()))
        .orElse(0.0);
  }

  private static boolean strikes(Line line, TextRun run, List<DrawnPath> clearings) {
    if (!near(line, run)) {
      return false;
    }
    Quad band = run.ink().band(0.2, 0.8);
    return lengthInside(line, band) > Rules.CROSSING
        && band.inside(line.from(), line.to())
            .map(part -> !isCleared(line, part, run, clearings))
            .orElse(false);
  }

  /** True when white lies over the line and under the text all along the part inside the text. */
  private static boolean isCleared(
      Line line, Quad.Part part, TextRun run, List<DrawnPath> clearings) {
    List<DrawnPath> between =
        clearings.stream()
            .filter(white -> white.order() > line.order() && white.order() < run.order())
            .toList();
    int steps = 8;
    for (int i = 0; i <= steps; i++) {
      double along = part.from() + (part.to() - part.from()) * i / steps;
      Position place = line.from().towards(line.to(), along);
      if (between.stream().noneMatch(white -> white.covers(place))) {
        return false;
      }
    }
    return true;
  }
}
