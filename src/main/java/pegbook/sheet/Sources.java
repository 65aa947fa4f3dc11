package pegbook.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import pegbook.published.Citation;
import pegbook.published.Publication;
import pegbook.published.Publications;

/**
 * Citations in words: a short name and the place in it, and a warning where the value was recalled.
 *
 * @param texts the packet's words
 */
public record Sources(Texts texts) {
  /** One source. */
  public String write(Citation citation) {
    Publication publication = Publications.find(citation.publication());
    String name = name(citation);
    return publication.status() == Publication.Status.MEMORY
        ? name + " (" + texts.say("sources.status.memory") + ")"
        : name;
  }

  private String name(Citation citation) {
    if (citation.equals(Citation.COMMON_PRACTICE)) {
      return texts.say("sources.common-practice");
    }
    if (citation.equals(Citation.GEOMETRY)) {
      return texts.say("sources.geometry");
    }
    String name = Publications.shortName(citation.publication());
    return citation.locator().isEmpty() ? name : name + " " + citation.locator();
  }

  /** Several sources, joined. */
  public String write(List<Citation> citations) {
    return citations.stream().map(this::write).distinct().collect(Collectors.joining("; "));
  }

  /** How a publication's values were come by, in words. */
  public String status(Publication publication) {
    return texts.say("sources.status." + publication.status().name().toLowerCase(Locale.ROOT));
  }
}
