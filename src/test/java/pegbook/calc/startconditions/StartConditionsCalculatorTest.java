package pegbook.calc.startconditions;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Floor;
import pegbook.job.UtilityMarking;
import pegbook.measure.Length;
import pegbook.testing.SiteJob;

class StartConditionsCalculatorTest {
  private static final LocalDate SEEN = LocalDate.of(2027, 5, 1);

  private static List<Finding> findings(Consumer<SiteJob> change) {
    SiteJob site = new SiteJob();
    site.hole("S1", Length.ofInches(46)).hole("P1", Length.ofInches(58));
    site.utilities = Optional.of(new UtilityMarking(SEEN, Optional.empty()));
    site.floor = Optional.of(floor(Floor.Use.PRIVATE_DECK));
    change.accept(site);
    return StartConditionsCalculator.calculate(site.job(), site.holes()).findings();
  }

  private static Floor floor(Floor.Use use) {
    return new Floor(
        use,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Finding only(List<Finding> findings, String id) {
    List<Finding> some = findings.stream().filter(one -> one.id().equals(id)).toList();
    assertThat(some).as("%s in %s", id, findings).hasSize(1);
    return some.get(0);
  }

  @Test
  void aSettledJobLeavesNoQuestion() {
    assertThat(findings(site -> {})).isEmpty();
  }

  @Test
  void unconfirmedUtilitiesStop() {
    Finding finding =
        only(findings(site -> site.utilities = Optional.empty()), "utilities-not-confirmed");
    assertThat(finding.kind()).isEqualTo(Kind.STOP);
    assertThat(finding.decides()).isEqualTo(Decider.UTILITY_SERVICE);
    assertThat(finding.arguments())
        .containsEntry("holes", Argument.of(2))
        .containsEntry("deepest", Argument.of(Length.ofInches(58)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"US", "GB", "NO"})
  void everyFindingHasASource(String country) {
    List<Finding> findings =
        findings(
            site -> {
              site.country = country;
              site.utilities = Optional.empty();
            });
    assertThat(findings).allSatisfy(one -> assertThat(one.citations()).isNotEmpty());
  }

  /** The life of marks is a State's: 30 days in the one that was read. */
  @ParameterizedTest
  @CsvSource({
    "2027-04-30, utilities-after-start, STOP",
    "2027-05-01, none, NOTE",
    "2027-05-31, none, NOTE",
    "2027-06-01, utility-marks-old, ASK"
  })
  void marksMustBeSeenBeforeTheStartAndNotBeOld(LocalDate start, String id, Kind kind) {
    List<Finding> findings = findings(site -> site.start = Optional.of(start));
    if (id.equals("none")) {
      assertThat(findings).extracting(Finding::place).doesNotContain("place.utilities");
    } else {
      assertThat(only(findings, id).kind()).isEqualTo(kind);
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Floor.Use.class,
      names = {"PUBLIC", "ASSEMBLY", "SCHOOL"})
  void publicUsesEndAtALicensedDesigner(Floor.Use use) {
    Finding finding =
        only(findings(site -> site.floor = Optional.of(floor(use))), "use-needs-designer");
    assertThat(finding.kind()).isEqualTo(Kind.STOP);
    assertThat(finding.decides()).isEqualTo(Decider.ENGINEER);
  }

  @ParameterizedTest
  @EnumSource(
      value = Floor.Use.class,
      mode = Mode.EXCLUDE,
      names = {"PUBLIC", "ASSEMBLY", "SCHOOL"})
  void privateUsesDoNotStop(Floor.Use use) {
    assertThat(findings(site -> site.floor = Optional.of(floor(use))))
        .extracting(Finding::place)
        .doesNotContain("floor.use");
  }

  @Test
  void whatIsNotSaidIsAsked() {
    List<Finding> findings =
        findings(
            site -> {
              site.floor = Optional.empty();
              site.authority = Optional.empty();
              site.permit = Optional.empty();
              site.issued = Optional.empty();
              site.people = 1;
            });
    assertThat(findings)
        .extracting(Finding::id)
        .containsExactly(
            "use-not-given",
            "authority-not-named",
            "permit-not-known",
            "crew-of-one",
            "issue-date-missing");
    assertThat(findings).noneMatch(finding -> finding.kind() == Kind.STOP);
  }

  @Test
  void codesOfTheUnitedStatesAreNamedAsSuchElsewhere() {
    Finding finding = only(findings(site -> site.country = "NO"), "rules-of-another-country");
    assertThat(finding.kind()).isEqualTo(Kind.ASK);
    assertThat(finding.arguments()).containsEntry("country", Argument.words("NO"));
  }
}
