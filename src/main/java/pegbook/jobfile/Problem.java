package pegbook.jobfile;

/**
 * One thing that keeps a job file from being read.
 *
 * @param file name of the file
 * @param line from 1
 * @param column from 1
 * @param path of the value, such as {@code supports.depth}; empty for the whole file
 * @param expected what should stand there
 * @param found what stands there
 * @param wayOut what to write instead; empty when there is no plain answer
 */
public record Problem(
    String file, int line, int column, String path, String expected, String found, String wayOut) {

  /**
   * The problem in one line, such as {@code input/x.json:14 supports.depth: expected a length with
   * its unit, found 900; write "900 mm"}.
   */
  public String text() {
    String where = path.isEmpty() ? "" : " " + path;
    String answer = wayOut.isEmpty() ? "" : "; " + wayOut;
    return file + ":" + line + where + ": expected " + expected + ", found " + found + answer;
  }
}
