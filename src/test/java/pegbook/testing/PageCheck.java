package pegbook.testing;

import java.util.ArrayList;
import java.util.List;

/** Holds every page of a PDF against the rules of the page. */
public final class PageCheck {
  private static final List<PageRule> RULES =
      List.of(
          new TextOverText(),
          new Crowding(),
          new CutText(),
          new LinesThroughText(),
          new CoveredText(),
          new TypeSize(),
          new LoneHeading(),
          new Tables(),
          new EmptyPage(),
          new Letters(),
          new Margins(),
          new Drawings(),
          new Fields());

  private PageCheck() {}

  /** Everything wrong on the pages of a PDF, page by page. */
  public static List<Problem> problems(byte[] pdf, Rules rules) {
    return problems(PdfReader.read(pdf), rules);
  }

  /** Everything wrong on the pages of a PDF that was read back. */
  public static List<Problem> problems(PrintedDocument document, Rules rules) {
    List<Problem> problems = new ArrayList<>();
    for (PrintedPage page : document.pages()) {
      for (PageRule rule : RULES) {
        problems.addAll(rule.problems(document, page, rules));
      }
    }
    return problems;
  }
}
