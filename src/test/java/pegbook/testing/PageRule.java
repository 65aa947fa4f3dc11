package pegbook.testing;

import java.util.List;

/** One rule that pages keep. */
interface PageRule {
  /** What a page does against it. */
  List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules);

  /** A text as a problem names it. */
  static String quoted(TextRun run) {
    return "'" + run.text() + "' at " + run.box();
  }
}
