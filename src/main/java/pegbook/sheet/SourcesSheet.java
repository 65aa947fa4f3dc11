package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pegbook.figures.Result;
import pegbook.job.Default;
import pegbook.packet.NumberedWorkings;
import pegbook.packet.Packet;
import pegbook.published.Citation;
import pegbook.published.Publication;
import pegbook.published.Publications;

/**
 * Assumptions and sources.
 *
 * @param title heading
 * @param defaults values that the job left out
 * @param noDefaults true when it left out nothing
 * @param assumes what the packet takes for granted
 * @param leavesOut what the packet does not do
 * @param sources publications that it leans on
 */
public record SourcesSheet(
    String title,
    List<Assumed> defaults,
    boolean noDefaults,
    List<String> assumes,
    List<String> leavesOut,
    List<Source> sources)
    implements Sheet {
  /** In the order in which they are printed; the words stand in the text bundle. */
  private static final List<String> ASSUMES =
      List.of(
          "free-standing", "undisturbed", "level-tapes", "vertical-holes", "bags", "from-above");

  private static final List<String> LEAVES_OUT =
      List.of("loads", "floor", "power", "survey", "approval", "weather");

  /** A value that was filled in. */
  public record Assumed(String path, String value, String basis) {}

  /** A publication, and the places in it that are used. */
  public record Source(String name, String described, List<Place> places, String status) {}

  /**
   * A place in a publication, with the mark that parts it from the next: as an element of its own
   * the mark could begin a line. A single word is never broken.
   */
  public record Place(String text, boolean word) {}

  /** Gathers what the packet assumed and cites. */
  public static SourcesSheet of(Packet packet, Writing writing) {
    Texts texts = writing.texts();
    List<Assumed> defaults =
        packet.job().defaults().stream().map(value -> assumed(value, texts)).toList();
    return new SourcesSheet(
        texts.say("sources.title"),
        defaults,
        defaults.isEmpty(),
        ASSUMES.stream().map(name -> texts.say("sources.assumes." + name)).toList(),
        LEAVES_OUT.stream().map(name -> texts.say("sources.leaves-out." + name)).toList(),
        sources(packet, texts));
  }

  private static Assumed assumed(Default value, Texts texts) {
    String basis = value.basis().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return new Assumed(value.path(), value.written(), texts.say("sources.basis." + basis));
  }

  /** Every citation of the packet, in the order of its sheets. */
  static List<Citation> citations(Packet packet) {
    Stream<Citation> formulas =
        packet.workings().groups().stream()
            .flatMap(group -> group.entries().stream())
            .map(NumberedWorkings.Entry::formula)
            .map(formula -> formula.source());
    Stream<Citation> findings =
        packet.findings().stream().flatMap(finding -> finding.citations().stream());
    Stream<Citation> further = packet.results().stream().map(Result::sources).flatMap(List::stream);
    return Stream.of(findings, formulas, further).flatMap(all -> all).distinct().toList();
  }

  private static List<Source> sources(Packet packet, Texts texts) {
    Map<String, Set<String>> placesById = new LinkedHashMap<>();
    Publications.all().forEach(each -> placesById.put(each.id(), new TreeSet<>()));
    List<Citation> citations = citations(packet);
    citations.forEach(
        citation -> {
          if (!citation.locator().isEmpty()) {
            placesById
                .getOrDefault(citation.publication(), new TreeSet<>())
                .add(citation.locator());
          }
        });
    List<String> cited = citations.stream().map(Citation::publication).distinct().toList();
    List<Source> sources = new ArrayList<>();
    placesById.forEach(
        (id, places) -> {
          if (cited.contains(id) && !id.equals(Citation.GEOMETRY.publication())) {
            sources.add(source(Publications.find(id), places, texts));
          }
        });
    return List.copyOf(sources);
  }

  private static Source source(Publication publication, Set<String> places, Texts texts) {
    return new Source(
        Publications.shortName(publication.id()),
        Stream.of(publication.title(), publication.edition(), publication.publisher())
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(", ")),
        places(new ArrayList<>(places)),
        new Sources(texts).status(publication));
  }

  private static List<Place> places(List<String> texts) {
    List<Place> places = new ArrayList<>();
    for (String text : texts) {
      String end = places.size() + 1 == texts.size() ? "" : ";";
      places.add(new Place(text + end, !text.contains(" ")));
    }
    return List.copyOf(places);
  }
}
