package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.published.Citation;
import pegbook.published.Publication;
import pegbook.published.Publications;
import pegbook.published.Table;
import pegbook.testing.TrialPacket;

class SourcesSheetTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(20));
  }

  private static SourcesSheet sheet(TrialPacket trial) {
    return SourcesSheet.of(trial.packet(), trial.writing());
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everythingCitedIsListedWithItsPlaces(TrialPacket trial) {
    List<SourcesSheet.Source> sources = sheet(trial).sources();
    for (Citation citation : SourcesSheet.citations(trial.packet())) {
      if (citation.equals(Citation.GEOMETRY)) {
        continue;
      }
      Publication publication = Publications.find(citation.publication());
      SourcesSheet.Source source =
          sources.stream()
              .filter(one -> one.described().equals(described(publication)))
              .findFirst()
              .orElseThrow(() -> new AssertionError(citation + " is not listed"));
      if (!citation.locator().isEmpty()) {
        assertThat(source.places())
            .extracting(place -> place.text().replaceFirst(";$", ""))
            .contains(citation.locator());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyDefaultIsListed(TrialPacket trial) {
    assertThat(sheet(trial).defaults())
        .extracting(SourcesSheet.Assumed::path)
        .isEqualTo(trial.packet().job().defaults().stream().map(one -> one.path()).toList());
  }

  @ParameterizedTest
  @MethodSource("packets")
  void recalledSourcesSaySo(TrialPacket trial) {
    Set<String> recalled =
        Publications.all().stream()
            .filter(one -> one.status() == Publication.Status.MEMORY)
            .map(SourcesSheetTest::described)
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(sheet(trial).sources())
        .filteredOn(source -> recalled.contains(source.described()))
        .extracting(SourcesSheet.Source::status)
        .allMatch("from memory, confirm"::equals);
  }

  private static String described(Publication publication) {
    String edition = publication.edition().isEmpty() ? "" : publication.edition() + ", ";
    return publication.title() + ", " + edition + publication.publisher();
  }

  @Test
  void shortNamesBelongToPublications() {
    assertThat(Table.read("short_names").rows())
        .extracting(row -> row.text("id"))
        .isSubsetOf(Publications.all().stream().map(Publication::id).toList())
        .doesNotHaveDuplicates();
  }

  @Test
  void publicationsAreCalledShort() {
    assertThat(Publications.all())
        .extracting(one -> Publications.shortName(one.id()))
        .allSatisfy(name -> assertThat(name).hasSizeLessThanOrEqualTo(35));
  }
}
