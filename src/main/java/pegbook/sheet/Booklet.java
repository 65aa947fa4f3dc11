package pegbook.sheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.sheet.drawing.Drawing;

/**
 * One printed document of the packet: which template puts which sheets in order.
 *
 * @param name file name without its ending, such as "binder" or "day-1"
 * @param template name of the document template
 * @param title title of the document
 * @param summary what it is about, in a sentence
 * @param sheets its sheets by their names in the template; a sheet that the job has no use for is
 *     empty
 * @param strip what stands at the foot of every page
 * @param texts its words
 */
public record Booklet(
    String name,
    String template,
    String title,
    String summary,
    Map<String, Optional<? extends Sheet>> sheets,
    Strip strip,
    Texts texts) {

  /**
   * The title strip's fields, ISO 7200, ready to print.
   *
   * @param job title of the job
   * @param revision its revision
   * @param issued its date of issue
   * @param owner whose job it is
   * @param maker what made the packet
   * @param hash short hash of the job file
   * @param caution the line of caution
   */
  public record Strip(
      String job,
      String revision,
      String issued,
      String owner,
      String maker,
      String hash,
      String caution) {}

  public Booklet {
    sheets = Collections.unmodifiableMap(new LinkedHashMap<>(sheets));
  }

  /** Every drawing of its sheets. */
  public List<Drawing> drawings() {
    return sheets.values().stream()
        .flatMap(Optional::stream)
        .flatMap(sheet -> sheet.drawings().stream())
        .toList();
  }
}
