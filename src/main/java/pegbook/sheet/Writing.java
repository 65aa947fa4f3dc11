package pegbook.sheet;

import pegbook.job.Job;
import pegbook.job.Paper;
import pegbook.lettering.Lettering;

/**
 * What a sheet writes with.
 *
 * @param texts the packet's words
 * @param formats quantities in the packet's units
 * @param lettering widths of text in the packet's fonts
 * @param paper what it is printed on
 */
public record Writing(Texts texts, Formats formats, Lettering lettering, Paper paper) {
  /** For a job, in a language. */
  public static Writing of(Job job, Texts texts, Lettering lettering) {
    return new Writing(texts, Formats.of(job, texts), lettering, job.heading().paper());
  }

  /** The part of the paper that a sheet prints on. */
  public PageArea page() {
    return PageArea.of(paper);
  }
}
