package pegbook.testing;

import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * Text shown by one instruction of the PDF.
 *
 * @param order place in the painting order of the page
 * @param text as it extracts
 * @param glyphs its letters
 * @param start where its base line begins
 * @param end where its base line ends
 * @param ink the box round its letters, turned as they are
 * @param box the upright box round them
 * @param font name of the font, without the subset's prefix
 * @param size height of type as printed, in points
 * @param degrees turn of the base line, anticlockwise from level
 * @param grey 0 black to 1 white
 * @param drawing number on the page of the drawing it stands in
 * @param clip what of the page may be painted here
 * @param path its place in the tag tree, outermost first
 */
public record TextRun(
    int order,
    String text,
    List<Glyph> glyphs,
    Position start,
    Position end,
    Quad ink,
    Box box,
    String font,
    double size,
    double degrees,
    double grey,
    OptionalInt drawing,
    Box clip,
    List<Tag> path) {

  private static final Pattern HEADING = Pattern.compile("H[1-6]?");

  /**
   * One letter.
   *
   * @param text as it extracts; empty when the PDF does not say
   * @param ink the box round its shape
   * @param blank true when it leaves no mark
   * @param missing true when the font has no shape for it
   */
  public record Glyph(String text, Quad ink, boolean blank, boolean missing) {}

  /** Names of the tags over it, outermost first. */
  public List<String> tags() {
    return path.stream().map(Tag::name).toList();
  }

  /** The innermost element of a name that it stands in. */
  public OptionalInt element(String name) {
    return path.stream()
        .filter(tag -> tag.name().equals(name) && tag.element() > 0)
        .mapToInt(Tag::element)
        .reduce((outer, inner) -> inner);
  }

  /** True for what is not content: the title strip, borders. */
  public boolean isArtifact() {
    return isUnder("Artifact");
  }

  public boolean isInDrawing() {
    return drawing.isPresent();
  }

  public boolean isUnder(String tag) {
    for (Tag above : path) {
      if (above.name().equals(tag)) {
        return true;
      }
    }
    return false;
  }

  /** True for the text of a heading of any level. */
  public boolean isHeading() {
    return path.stream().anyMatch(tag -> HEADING.matcher(tag.name()).matches());
  }
}
