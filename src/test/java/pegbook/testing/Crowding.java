package pegbook.testing;

import static pegbook.testing.Problem.Kind.TEXT_CROWDED;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Texts that do not belong together do not read as one: those of two cells of a table, and those of
 * two labels on one line of a drawing, keep a gap.
 */
final class Crowding implements PageRule {
  /** Between the texts of two cells, mm; their paddings come to twice as much. */
  static final double CELLS = 1.2;

  /** Between two labels of a drawing, mm: about a space of the smallest type. */
  static final double LABELS = 0.5;

  /** Texts whose feet differ by no more, mm, stand on one line. */
  private static final double LINE = 1;

  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    List<Problem> problems = new ArrayList<>();
    Bands<TextRun> lines = new Bands<>();
    for (TextRun run : page.runs()) {
      double line = run.start().y();
      lines.add(run, new Box(0, line - LINE, 0, line + LINE));
    }
    for (TextRun one : page.runs()) {
      lines
          .beside(new Box(0, one.start().y(), 0, one.start().y()))
          .forEach(
              two -> {
                double gap = two.box().left() - one.box().right();
                if (gap > -0.1 && gap < CELLS && areCrowded(one, two, gap)) {
                  String texts = PageRule.quoted(one) + " and " + PageRule.quoted(two);
                  problems.add(new Problem(page.number(), TEXT_CROWDED, texts));
                }
              });
    }
    return problems;
  }

  private static boolean areCrowded(TextRun one, TextRun two, double gap) {
    if (Math.abs(one.start().y() - two.start().y()) > LINE) {
      return false;
    }
    if (one.isInDrawing() && two.isInDrawing()) {
      boolean goesOn = one.end().distanceTo(two.start()) < 0.05;
      return gap < LABELS && !goesOn && one.degrees() == 0 && two.degrees() == 0;
    }
    OptionalInt cell = cell(one);
    return cell.isPresent() && cell(two).isPresent() && !cell.equals(cell(two));
  }

  private static OptionalInt cell(TextRun run) {
    OptionalInt data = run.element("TD");
    return data.isPresent() ? data : run.element("TH");
  }
}
